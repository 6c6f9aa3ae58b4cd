// The tab Water in a real window: charts, tables, the map beside the window, a daily record from a file.
#include "core/exchange/weather_csv.h"
#include "ui/drawings/water_charts.h"
#include "ui/panels/chart_view.h"
#include "ui/panels/figures.h"
#include "ui/panels/map_worker.h"
#include "ui/panels/water_charts_view.h"
#include "ui/panels/water_panel.h"
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
#include <QTimer>
#include <algorithm>
#include <cmath>

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

constexpr int kNone = -1;

/// Invented days from 2005 on.
QByteArray record(int count = 365 * 12 + 3, int missing = 700) {
  std::vector<core::DailyWeather> days;
  const std::chrono::sys_days first = std::chrono::year{2005} / 1 / 1;
  for (int k = 0; k < count; ++k) {
    if (k == missing) continue;
    core::DailyWeather day{};
    day.date = first + std::chrono::days(k);
    day.rain_mm = k % 11 == 0 ? 12 : 0;
    day.t_min_c = 11;
    day.t_max_c = 24;
    days.push_back(day);
  }
  return QByteArray::fromStdString(core::exchange::weatherCsvText(days));
}

void pasteAt(ui::MainWindow& window, const char* list, int row, int column, const QString& cells) {
  table(window, list).setCurrentCell(row, column);
  QApplication::clipboard()->setText(cells);
  control<QAbstractButton>(window, QString::fromLatin1(list) + QStringLiteral(".paste")).click();
}

QString problemOf(ui::MainWindow& window, const char* list) {
  return control<QLabel>(window, QString::fromLatin1(list) + QStringLiteral(".problem")).text();
}

/// Shows the map and waits until it is fine.
ui::WaterChartsView& openMap(ui::MainWindow& window) {
  openWaterTab(window);
  control<QTabBar>(window, QStringLiteral("chart.kind")).setCurrentIndex(2);
  auto& charts = control<ui::WaterChartsView>(window, QStringLiteral("water_charts"));
  REQUIRE(waitFor([&] { return !charts.map().empty() && !charts.isRefining(); }));
  return charts;
}

const ui::Figure& figure(const std::vector<ui::Figure>& all, const char* id) {
  const auto found = std::ranges::find(all, QString::fromLatin1(id), &ui::Figure::id);
  REQUIRE(found != all.end());
  return *found;
}

/// Gives the first bed a crop of the user's own, "Taro", and adds a second own crop, "Yam".
void growTaro(ui::MainWindow& window) {
  REQUIRE(window.document()
              .change(QStringLiteral("own crops"),
                      [](core::Project& project) {
                        project.water->crops.resize(2);
                        project.water->crops[0].name = "Taro";
                        project.water->crops[1].name = "Yam";
                        project.water->beds[0].crop = "Taro";
                      })
              .empty());
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

TEST_CASE("The map with a marked cell outlives the loss of the weather") {
  const auto window = makeWindow();
  auto& charts = openMap(*window);
  auto& view = control<ui::ChartView>(*window, QStringLiteral("chart.map"));
  view.mark(70);
  window->document().change(QStringLiteral("flow"), [](core::Project& project) {
    project.water->source.months[0].flow_l_per_min *= 2;
  });
  CHECK(charts.isRefining());
  window->document().change(QStringLiteral("latitude"),
                            [](core::Project& project) { project.site.latitude_deg.reset(); });
  REQUIRE_FALSE(window->document().plan().water.has_value());
  CHECK_FALSE(charts.isRefining());
  CHECK(charts.map().empty());
  CHECK_FALSE(view.marked().has_value());
  window->document().undoStack()->undo();
  REQUIRE(waitFor([&] { return !charts.map().empty() && !charts.isRefining(); }));
}

TEST_CASE("The map with a marked cell is shown again after the weather was lost behind another chart") {
  const auto window = makeWindow();
  auto& charts = openMap(*window);
  auto& view = control<ui::ChartView>(*window, QStringLiteral("chart.map"));
  auto& kinds = control<QTabBar>(*window, QStringLiteral("chart.kind"));
  view.mark(70);
  kinds.setCurrentIndex(0);
  window->document().change(QStringLiteral("latitude"),
                            [](core::Project& project) { project.site.latitude_deg.reset(); });
  kinds.setCurrentIndex(2);
  CHECK(charts.map().empty());
  CHECK_FALSE(view.marked().has_value());
  CHECK_FALSE(view.grab().isNull());  // paints
}

TEST_CASE("The marked cell stays with its tank and beds when another map takes the place of its own") {
  const auto window = makeWindow();
  auto& charts = openMap(*window);
  auto& view = control<ui::ChartView>(*window, QStringLiteral("chart.map"));
  const core::water::ReliabilityMap before = charts.map();
  const std::size_t column = 40, row = 30;
  view.mark(int(row * before.full_m3.size() + column));
  window->document().change(QStringLiteral("flow"), [](core::Project& project) {
    for (core::SourceMonth& month : project.water->source.months) month.flow_l_per_min *= 2;
  });
  REQUIRE(waitFor([&] { return !charts.isRefining(); }));
  REQUIRE(view.marked().has_value());
  const auto place = std::size_t(*view.marked());
  const core::water::ReliabilityMap& now = charts.map();
  const auto within = [](const std::vector<double>& sizes) { return (sizes.back() - sizes.front()) / 25; };
  CHECK(std::abs(now.full_m3[place % now.full_m3.size()] - before.full_m3[column]) < within(now.full_m3));
  CHECK(std::abs(now.bed_area_m2[place / now.full_m3.size()] - before.bed_area_m2[row]) <
        within(now.bed_area_m2));
}

TEST_CASE("A block of cells with more rows or columns than there is room for is refused, not cut off") {
  const auto window = makeWindow();
  const std::string before = bytes(*window);
  const char* const list = "water.climate.months";
  pasteAt(*window, list, 11, 0, QStringLiteral("10\t2\n20\t3\n"));
  CHECK(bytes(*window) == before);
  CHECK(problemOf(*window, list).contains(QStringLiteral("found 13; allowed up to 12")));
  CHECK(problemOf(*window, list).endsWith(QStringLiteral("Nothing was pasted.")));
  pasteAt(*window, list, 0, 5, QStringLiteral("2\t6\n2\t6\t1\n"));
  CHECK(bytes(*window) == before);
  CHECK(problemOf(*window, list).startsWith(QStringLiteral("Climate of February")));
  CHECK(problemOf(*window, list).contains(QStringLiteral("found 8; allowed up to 7")));
  pasteAt(*window, list, 0, 5, QStringLiteral("2\t6\n2\t6\n"));
  CHECK(waterOf(*window).climate.months[1].wind_m_s == 2);
}

TEST_CASE("A crop that is no choice stays when its editor is opened and left") {
  const auto window = makeWindow();
  openWaterTab(*window);
  control<QTabBar>(*window, QStringLiteral("water.pages")).setCurrentIndex(2);
  auto& beds = table(*window, "water.beds");
  const std::string before = bytes(*window);
  beds.item(0, 0)->setText(QStringLiteral("nothing that grows"));
  const auto open = [&]() -> QComboBox& {
    beds.editItem(beds.item(0, 0));
    auto* box = beds.findChild<QComboBox*>();
    REQUIRE(box != nullptr);
    return *box;
  };
  const auto leave = [&](QComboBox& box) {
    QTest::keyClick(&box, Qt::Key_Return);
    REQUIRE(waitFor([&] { return beds.findChild<QComboBox*>() == nullptr; }));
  };
  QComboBox& box = open();
  CHECK(box.currentIndex() == -1);
  leave(box);
  CHECK(bytes(*window) == before);
  CHECK(beds.item(0, 0)->text() == QStringLiteral("nothing that grows"));
  QTest::keyClick(&beds, Qt::Key_Escape);
  QComboBox& again = open();
  again.setCurrentIndex(again.findData(QStringLiteral("potato")));
  REQUIRE(again.currentIndex() >= 0);
  leave(again);
  CHECK(waterOf(*window).beds[0].crop == "potato");
}

TEST_CASE("An own crop that a bed grows can be given another name, in one step") {
  const auto window = makeWindow();
  growTaro(*window);
  const int steps = window->document().undoStack()->index();
  table(*window, "water.crops").item(0, 0)->setText(QStringLiteral("Cocoyam"));
  CHECK(waterOf(*window).crops[0].name == "Cocoyam");
  CHECK(waterOf(*window).beds[0].crop == "Cocoyam");
  CHECK(window->document().undoStack()->index() == steps + 1);
  window->document().undoStack()->undo();
  CHECK(waterOf(*window).crops[0].name == "Taro");
  CHECK(waterOf(*window).beds[0].crop == "Taro");
  // two names that change places
  pasteAt(*window, "water.crops", 0, 0, QStringLiteral("Yam\nTaro\n"));
  CHECK(waterOf(*window).crops[0].name == "Yam");
  CHECK(waterOf(*window).beds[0].crop == "Yam");
}

TEST_CASE("A record without a whole year is told as such, not as weather that is missing") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  window->readWeather(write(folder, record(100, kNone)));
  REQUIRE(waterOf(*window).climate.daily.days().size() == 100);
  REQUIRE_FALSE(window->document().plan().water.has_value());
  for (const char* label : {"water.headline", "water.record"})
    CHECK(control<QLabel>(*window, QString::fromLatin1(label))
              .text()
              .contains(QStringLiteral("no whole year without gaps")));
  const auto all = ui::figures(window->document().project(), window->document().plan(), ui::Formatter());
  for (const char* id : {"lasting", "sizes"})
    CHECK(figure(all, id).reckoning.contains(QStringLiteral("no whole year")));
}

TEST_CASE("A record that was taken is told as done, and stays to be read when there are notes") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  const auto* text = window->messages().findChild<QLabel*>(QStringLiteral("message_text"));
  const auto* timer = window->messages().findChild<QTimer*>();
  REQUIRE(text != nullptr);
  REQUIRE(timer != nullptr);
  const auto told = [&] { return window->messages().text().replace(QChar::Nbsp, QLatin1Char(' ')); };
  window->readWeather(write(folder, record(1, kNone)));
  CHECK(told() == QStringLiteral("weather.csv: 1 day taken."));
  CHECK(timer->isActive());
  window->readWeather(write(folder, record()));
  CHECK(told().startsWith(QStringLiteral("weather.csv: 4,382 days taken.\n")));
  CHECK(text->foregroundRole() == QPalette::WindowText);
  CHECK_FALSE(timer->isActive());
  window->readWeather(folder.filePath(QStringLiteral("none.csv")));
  CHECK(text->foregroundRole() == QPalette::BrightText);
}

TEST_CASE("The tiles tell sizes and years as the sheets do, and a part of a dry day is not none") {
  const auto window = makeWindow();
  core::Plan plan = window->document().plan();
  const core::Project& project = window->document().project();
  core::water::WaterPlan& water = *plan.water;
  water.dry_days_mean = 0.3;
  water.years_in_ten = 7.96;
  water.smallest_full_m3 = 30.1;
  water.largest_bed_area_m2 = 159.9;
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  const auto tile = [&](const char* id) {
    ui::Figure found = figure(ui::figures(project, plan, format), id);
    found.rest.replace(QChar::Nbsp, QLatin1Char(' '));
    return found;
  };
  CHECK(tile("lasting").value == QStringLiteral("7.9"));
  CHECK(tile("lasting").rest.startsWith(QStringLiteral("days short of water in a mean year 0.3,")));
  CHECK(tile("lasting").reckoning.contains(QStringLiteral("less than the need can be drawn")));
  CHECK(tile("sizes").rest == QString::fromUtf8("smallest tank 31,000 L\nlargest beds 150 m²"));
  water.smallest_full_m3 = 0.001;
  water.largest_bed_area_m2 = water.most_tried_area_m2 = 1000;
  CHECK(tile("sizes").rest == QString::fromUtf8("almost any tank\nbeds of 1,000 m² or more"));
  water.smallest_full_m3.reset();
  water.largest_bed_area_m2.reset();
  water.most_tried_m3 = 200;
  CHECK(tile("sizes").rest == QStringLiteral("no tank up to 200,000 L\nno beds, however small"));
}

TEST_CASE("A field of a table is shown on the table's own page") {
  const auto window = makeWindow();
  openWaterTab(*window);
  auto& panel = control<ui::WaterPanel>(*window, QStringLiteral("water_panel"));
  const auto& pages = control<QTabBar>(*window, QStringLiteral("water.pages"));
  const std::pair<const char*, int> all[] = {{"water.source.readings[0].seconds", 1},
                                             {"water.beds[0].crop", 2},
                                             {"water.climate.months[3].rain_mm", 3},
                                             {"water.source.months[11].hours_per_day", 1}};
  for (const auto& [path, page] : all) {
    INFO(path);
    CHECK(panel.goTo(QString::fromLatin1(path)));
    CHECK(pages.currentIndex() == page);
  }
  CHECK_FALSE(panel.goTo(QStringLiteral("tank.depth_m")));
}

TEST_CASE("Folds of what the project does not have are hidden, but not the one whose button adds it") {
  const auto window = makeWindow();
  const auto is_hidden = [&](const char* id) {
    const QString name = QStringLiteral("section.") + QString::fromLatin1(id);
    return control<QWidget>(*window, name).parentWidget()->isHidden();
  };
  CHECK_FALSE(is_hidden("needs"));
  core::Project bare;
  bare.works.reset();
  REQUIRE(window->document().load(bare).empty());
  for (const char* water : {"catchments", "needs", "weather"}) CHECK(is_hidden(water));
  for (const char* other : {"place", "tank", "lining", "quantities", "bill", "works", "practice"})
    CHECK_FALSE(is_hidden(other));
}
