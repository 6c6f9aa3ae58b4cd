// The tab Water in a real window: charts, tables, the map beside the window, a daily record from a file.
#include "core/exchange/weather_csv.h"
#include "ui/drawings/water_charts.h"
#include "ui/panels/chart_view.h"
#include "ui/panels/map_worker.h"
#include "ui/panels/water_charts_view.h"
#include "ui/widgets/message_bar.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QSlider>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include <catch2/catch.hpp>

using namespace window_test;

namespace {

const core::Water& waterOf(ui::MainWindow& window) {
  return *window.document().project().water;
}

QTableWidget& table(ui::MainWindow& window, const char* list) {
  return control<QTableWidget>(window, QString::fromLatin1(list));
}

void openWaterTab(ui::MainWindow& window) {
  control<QTabWidget>(window, QStringLiteral("tabs"))
      .setCurrentWidget(&control(window, QStringLiteral("water_panel")));
}

QString write(const QTemporaryDir& folder, const QByteArray& text) {
  const QString path = folder.filePath(QStringLiteral("weather.csv"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(text);
  return path;
}

/// Twelve years of invented days; day 700 is missing.
QByteArray record() {
  std::vector<core::DailyWeather> days;
  const std::chrono::sys_days first = std::chrono::year{2005} / 1 / 1;
  for (int k = 0; k < 365 * 12 + 3; ++k) {
    if (k == 700) continue;
    core::DailyWeather day{};
    day.date = first + std::chrono::days(k);
    day.rain_mm = k % 11 == 0 ? 12 : 0;
    day.t_min_c = 11;
    day.t_max_c = 24;
    days.push_back(day);
  }
  return QByteArray::fromStdString(core::exchange::weatherCsvText(days));
}

}  // namespace

TEST_CASE("The headline answers, and follows a change at once") {
  const auto window = makeWindow();
  openWaterTab(*window);
  auto& headline = control<QLabel>(*window, QStringLiteral("water.headline"));
  const QString before = headline.text();
  CHECK(before.contains(QStringLiteral("of 10 years")));
  table(*window, "water.beds").item(0, 1)->setText(QStringLiteral("900"));
  CHECK(waterOf(*window).beds[0].area_m2 == 900);
  CHECK(headline.text() != before);
  window->document().undoStack()->undo();
  CHECK(headline.text() == before);
}

TEST_CASE("A project that does not ask can be made to ask") {
  const auto window = makeWindow();
  REQUIRE(window->document().load(core::Project{}).empty());
  CHECK_FALSE(window->document().project().water.has_value());
  control<QAbstractButton>(*window, QStringLiteral("water.ask")).click();
  REQUIRE(window->document().project().water.has_value());
  CHECK_FALSE(window->document().plan().water.has_value());  // no climate yet
  window->document().undoStack()->undo();
  CHECK_FALSE(window->document().project().water.has_value());
}

TEST_CASE("A wrong cell stays to be seen with a message and changes nothing") {
  const auto window = makeWindow();
  openWaterTab(*window);
  auto& months = table(*window, "water.climate.months");
  const auto before = waterOf(*window);
  auto& problem = control<QLabel>(*window, QStringLiteral("water.climate.months.problem"));
  for (const char* wrong : {"rain", "-1", "99999"}) {
    months.item(3, 0)->setText(QString::fromLatin1(wrong));
    CHECK(months.item(3, 0)->text() == QString::fromLatin1(wrong));
    CHECK_FALSE(problem.isHidden());
    CHECK(problem.text().contains(QString::fromLatin1(wrong).remove(QLatin1Char('-'))));
    CHECK(waterOf(*window) == before);
  }
  QTest::keyClick(&months, Qt::Key_Escape);
  CHECK(problem.isHidden());
  CHECK(months.item(3, 0)->text() != QStringLiteral("99999"));
  // across fields: more wet days than the month has
  months.item(1, 1)->setText(QStringLiteral("30"));
  CHECK_FALSE(problem.isHidden());
  CHECK(waterOf(*window) == before);
}

TEST_CASE("A block of cells is pasted as one step, or not at all") {
  const auto window = makeWindow();
  auto& months = table(*window, "water.climate.months");
  const std::string before = bytes(*window);
  months.setCurrentCell(0, 0);
  QApplication::clipboard()->setText(QStringLiteral("10\t2\t5\t19\n20\t3\t6\t21\n"));
  control<QAbstractButton>(*window, QStringLiteral("water.climate.months.paste")).click();
  CHECK(waterOf(*window).climate.months[0].rain_mm == 10);
  CHECK(waterOf(*window).climate.months[1].t_max_c == 21);
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == before);
  QApplication::clipboard()->setText(QStringLiteral("10\t2\n20\tmany\n"));
  control<QAbstractButton>(*window, QStringLiteral("water.climate.months.paste")).click();
  CHECK(bytes(*window) == before);
  CHECK(control<QLabel>(*window, QStringLiteral("water.climate.months.problem"))
            .text()
            .contains(QStringLiteral("many")));
}

TEST_CASE("Beds are added with a crop of the table or of one's own, and taken out") {
  const auto window = makeWindow();
  auto& beds = table(*window, "water.beds");
  const int rows = beds.rowCount();
  control<QAbstractButton>(*window, QStringLiteral("water.beds.add")).click();
  CHECK(beds.rowCount() == rows + 1);
  control<QAbstractButton>(*window, QStringLiteral("water.crops.add")).click();
  control<QAbstractButton>(*window, QStringLiteral("water.crops.add")).click();
  REQUIRE(waterOf(*window).crops.size() == 2);
  table(*window, "water.crops").item(0, 0)->setText(QStringLiteral("Taro"));
  beds.item(rows, 0)->setText(QStringLiteral("Taro"));
  CHECK(waterOf(*window).beds[std::size_t(rows)].crop == "Taro");
  beds.item(rows, 0)->setText(QStringLiteral("nothing that grows"));
  CHECK(waterOf(*window).beds[std::size_t(rows)].crop == "Taro");
  beds.setCurrentCell(rows, 0);
  control<QAbstractButton>(*window, QStringLiteral("water.beds.remove")).click();
  CHECK(beds.rowCount() == rows);
}

TEST_CASE("The medians of the readings become flows") {
  const auto window = makeWindow();
  control<QAbstractButton>(*window, QStringLiteral("water.readings.use")).click();
  const auto months = core::water::readingsByMonth(waterOf(*window).source.readings);
  REQUIRE_FALSE(months.empty());
  for (const auto& month : months)
    CHECK(waterOf(*window).source.months[std::size_t(month.month - 1)].flow_l_per_min ==
          month.median_l_per_min);
}

TEST_CASE("A daily record is read from a file, with its gaps named, and taken out again") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  window->readWeather(write(folder, record()));
  CHECK(waterOf(*window).climate.kind == core::ClimateKind::daily);
  CHECK(waterOf(*window).climate.daily.days().size() == 365 * 12 + 2);
  CHECK(window->messages().text().contains(QStringLiteral("2006")));  // the missing day's year
  REQUIRE(window->document().plan().water.has_value());
  CHECK(window->document().plan().water->weather->years_left_out.size() == 1);
  const std::string with_record = bytes(*window);
  control<QAbstractButton>(*window, QStringLiteral("water.forget")).click();
  CHECK(waterOf(*window).climate.daily.empty());
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == with_record);
}

TEST_CASE("A bad daily record changes nothing and its rows are named") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  const std::string before = bytes(*window);
  QByteArray text = "date,rain_mm,t_min_c,t_max_c\n2001-01-01,1,5,20\n2001-01-02,wet,5,20\n";
  window->readWeather(write(folder, text));
  CHECK(bytes(*window) == before);
  CHECK(window->messages().text().contains(QStringLiteral("3")));
  CHECK(window->messages().text().contains(QStringLiteral("wet")));
  window->readWeather(folder.filePath(QStringLiteral("none.csv")));
  CHECK(bytes(*window) == before);
}

TEST_CASE("The charts read out what the arrow keys walk to") {
  const auto window = makeWindow();
  openWaterTab(*window);
  auto& area = control(*window, QStringLiteral("chart.level.area"));
  auto& reading = control<QLabel>(*window, QStringLiteral("chart.level.reading"));
  QTest::keyClick(&area, Qt::Key_Home);
  QTest::keyClick(&area, Qt::Key_Right);
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  const auto& plan = *window->document().plan().water;
  CHECK(reading.text() == ui::drawings::levelReading(plan, 1, format));
  CHECK(area.accessibleDescription() == reading.text());
  QTest::keyClick(&area, Qt::Key_End);
  CHECK(reading.text() == ui::drawings::levelReading(plan, int(plan.band.size()) - 1, format));
  auto& months = control(*window, QStringLiteral("chart.flows.area"));
  QTest::keyClick(&months, Qt::Key_End);
  CHECK(control<QLabel>(*window, QStringLiteral("chart.flows.reading")).text() ==
        ui::drawings::flowsReading(plan, 11, format));
}

TEST_CASE("The map comes coarse, then fine, and follows the next change") {
  const auto window = makeWindow();
  openWaterTab(*window);
  control<QTabBar>(*window, QStringLiteral("chart.kind")).setCurrentIndex(2);
  auto& charts = control<ui::WaterChartsView>(*window, QStringLiteral("water_charts"));
  REQUIRE(waitFor([&] { return !charts.map().empty() && !charts.isRefining(); }));
  CHECK(charts.map().full_m3.size() == 64);
  const auto first = charts.map();
  window->document().change(QStringLiteral("flow"), [](core::Project& project) {
    for (core::SourceMonth& month : project.water->source.months) month.flow_l_per_min *= 2;
  });
  CHECK(charts.isRefining());
  REQUIRE(waitFor([&] { return !charts.isRefining(); }));
  CHECK_FALSE(charts.map() == first);
}

TEST_CASE("A start of the map drops what an older start was reckoning") {
  const auto window = makeWindow();
  ui::MapWorker worker;
  std::vector<std::pair<std::size_t, double>> came;
  QObject::connect(&worker, &ui::MapWorker::ready, [&](const core::water::ReliabilityMap& map, bool) {
    came.emplace_back(map.full_m3.size(), map.full_m3.back());
  });
  core::water::WaterPlan plan = *window->document().plan().water;
  for (int k = 0; k < 20; ++k) {
    plan.curve = core::water::scaled(plan.curve, 1.1);
    worker.start(plan);
  }
  REQUIRE(waitFor([&] { return came.size() >= 2; }));
  worker.wait();
  QApplication::processEvents();
  REQUIRE(came.size() == 2);
  CHECK(came[0].first < came[1].first);
  CHECK(came[1].second == core::water::mapReach(plan.curve.full_m3, plan.bed_area_m2).most_full_m3);
}

TEST_CASE("The water of the pit follows a day of a middle and of a dry year") {
  const auto window = makeWindow();
  auto& by = control<QComboBox>(*window, QStringLiteral("water.by"));
  auto& slider = control<QSlider>(*window, QStringLiteral("water.level"));
  auto& text = control<QLabel>(*window, QStringLiteral("water.text"));
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  const auto& plan = window->document().plan();
  by.setCurrentIndex(1);
  CHECK(slider.maximum() == 364);
  slider.setValue(300);
  CHECK(text.text().contains(format.litres(plan.water->band[300].p50)));
  by.setCurrentIndex(2);
  CHECK(text.text().contains(format.litres(plan.water->band[300].p10)));
  by.setCurrentIndex(0);
  CHECK(text.text().contains(format.litres(plan.tank.full_volume_m3)));
}
