// Works, money and options in the real window: bars are moved, options typed and adopted, sizes searched.
#include "core/compare/search.h"
#include "core/works/schedule.h"
#include "ui/drawings/works_charts.h"
#include "ui/panels/chart_view.h"
#include "ui/panels/options_panel.h"
#include "ui/panels/screen_style.h"
#include "ui/window/main_window.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QSpinBox>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

#include <catch2/catch.hpp>

namespace {

using core::works::Task;

void showPanel(ui::MainWindow& window, const char* id) {
  auto& tabs = window_test::control<QTabWidget>(window, QStringLiteral("tabs"));
  for (int k = 0; k < tabs.count(); ++k) {
    if (tabs.widget(k)->objectName() == QLatin1String(id)) tabs.setCurrentIndex(k);
  }
}

const Task& task(ui::MainWindow& window, const char* id) {
  const Task* found = core::works::findTask(*window.document().plan().works, id);
  REQUIRE(found != nullptr);
  return *found;
}

int rowOf(ui::MainWindow& window, const char* id) {
  const auto& schedule = window.document().plan().works->schedule;
  return int(std::ranges::find(schedule, id, &Task::id) - schedule.begin());
}

}  // namespace

using namespace window_test;

TEST_CASE("Arrow keys move a bar by a day, plus gives it one more person, Delete forgets both; all undoes") {
  const auto window = makeWindow();
  showPanel(*window, "works_panel");
  auto& bars = control<ui::ChartView>(*window, QStringLiteral("chart.bars"));
  auto& area = control(*window, QStringLiteral("chart.bars.area"));
  bars.mark(rowOf(*window, "stone_bed"));
  const Task before = task(*window, "stone_bed");
  QTest::keyClick(&area, Qt::Key_Right);
  const Task moved = task(*window, "stone_bed");
  CHECK(moved.start > before.start);
  CHECK(bars.marked() == rowOf(*window, "stone_bed"));
  QTest::keyClick(&area, Qt::Key_Plus);
  CHECK(task(*window, "stone_bed").crew == before.crew + 1);
  CHECK(control<QSpinBox>(*window, QStringLiteral("task.people")).value() == before.crew + 1);
  QTest::keyClick(&area, Qt::Key_Delete);
  CHECK(task(*window, "stone_bed").start == before.start);
  CHECK(window->document().project().works->wishes.empty());
  for (int k = 0; k < 3; ++k) window->document().undoStack()->undo();
  CHECK(task(*window, "stone_bed").start == before.start);
  CHECK_FALSE(window->document().undoStack()->canUndo());
}

TEST_CASE("A bar dragged by the mouse starts later, in one step of undo") {
  const auto window = makeWindow();
  showPanel(*window, "works_panel");
  QTest::qWait(50);
  auto& bars = control<ui::ChartView>(*window, QStringLiteral("chart.bars"));
  auto& area = control(*window, QStringLiteral("chart.bars.area"));
  const auto& works = *window->document().plan().works;
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  const ui::drawings::Style style = ui::screenStyle(false);
  const double per_mm = area.logicalDpiX() / 25.4;
  const double day_mm = ui::drawings::workBarDayWidth(bars.box(), works, format, style);
  REQUIRE(day_mm > 0);
  const int row = rowOf(*window, "coat_1");
  const auto core_day = task(*window, "coat_1").start;
  std::optional<QPointF> grip;
  for (double y = bars.box().top(); y < bars.box().bottom() && !grip; y += 0.5) {
    const QPointF at(bars.box().center().x(), y);
    if (ui::drawings::workBarAt(bars.box(), at, works, format, style) == row) grip = at;
  }
  REQUIRE(grip);
  const QPoint from = (*grip * per_mm).toPoint();
  const QPoint to = from + QPoint(int(std::lround(4 * day_mm * per_mm)), 0);
  QTest::mousePress(&area, Qt::LeftButton, {}, from);
  QTest::mouseMove(&area, (from + to) / 2);
  QTest::mouseMove(&area, to);
  QTest::mouseRelease(&area, Qt::LeftButton, {}, to);
  const auto wishes = window->document().project().works->wishes;
  REQUIRE(wishes.size() == 1);
  CHECK(wishes[0].task == "coat_1");
  CHECK(wishes[0].not_before == core::works::addDays(core_day, 4));
  CHECK(window->document().undoStack()->count() == 1);
  CHECK(task(*window, "coat_1").start >= core::works::addDays(core_day, 4));
}

TEST_CASE("Date and people of a chosen task can be typed") {
  const auto window = makeWindow();
  showPanel(*window, "works_panel");
  auto& date = control<QDateEdit>(*window, QStringLiteral("task.not_before"));
  CHECK_FALSE(date.isEnabled());
  control<ui::ChartView>(*window, QStringLiteral("chart.bars")).mark(rowOf(*window, "excavate"));
  QTest::keyClick(&control(*window, QStringLiteral("chart.bars.area")), Qt::Key_Return);
  REQUIRE(date.isEnabled());
  date.setDate(date.date().addDays(10));
  CHECK(task(*window, "excavate").not_before.has_value());
  auto& people = control<QSpinBox>(*window, QStringLiteral("task.people"));
  people.setValue(9);
  CHECK(task(*window, "excavate").crew == 9);
  control<QAbstractButton>(*window, QStringLiteral("task.usual")).click();
  CHECK(window->document().project().works->wishes.empty());
}

TEST_CASE("A project without works, money or options is asked for them by a button") {
  const auto window = makeWindow();
  REQUIRE(window->document()
              .change(QStringLiteral("less"),
                      [](core::Project& p) {
                        p.works.reset();
                        p.prices.reset();
                        p.options.clear();
                      })
              .empty());
  showPanel(*window, "works_panel");
  control<QAbstractButton>(*window, QStringLiteral("works.ask")).click();
  CHECK(window->document().plan().works.has_value());
  showPanel(*window, "money_panel");
  control<QAbstractButton>(*window, QStringLiteral("money.ask")).click();
  REQUIRE(window->document().plan().cost.has_value());
  CHECK_FALSE(window->document().plan().cost->bill.missing.empty());
  CHECK(control<QTableWidget>(*window, QStringLiteral("bill.table")).rowCount() > 5);
}

TEST_CASE("Options: one is added, typed, compared and built; undo brings the first one back") {
  const auto window = makeWindow();
  REQUIRE(
      window->document().change(QStringLiteral("none"), [](core::Project& p) { p.options.clear(); }).empty());
  const core::Project before = window->document().project();
  showPanel(*window, "options_panel");
  control<QAbstractButton>(*window, QStringLiteral("options.add")).click();
  REQUIRE(window->document().project().options.size() == 1);
  auto& table = control<QTableWidget>(*window, QStringLiteral("options.table"));
  REQUIRE(table.columnCount() == 3);
  table.item(1, 2)->setText(QStringLiteral("1.1"));
  REQUIRE(window->document().project().options[0].changes[0].value == core::FieldValue(1.1));
  table.item(1, 2)->setText(QStringLiteral("deep"));
  CHECK_FALSE(control<QLabel>(*window, QStringLiteral("options.problem")).isHidden());
  CHECK(window->document().project().options[0].changes[0].value == core::FieldValue(1.1));
  auto& fields = control<QComboBox>(*window, QStringLiteral("options.field"));
  const int length = fields.findData(QStringLiteral("tank.length_m"));
  REQUIRE(length >= 0);
  table.setCurrentCell(1, 2);
  emit fields.activated(length);
  REQUIRE(window->document().project().options[0].changes.size() == 2);
  window->document().finishPlan();
  REQUIRE(window->document().plan().options.size() == 2);
  CHECK(window->document().plan().options[1].depth_m == Approx(1.1));
  CHECK(table.rowCount() > 8);
  table.setCurrentCell(1, 2);
  control<QAbstractButton>(*window, QStringLiteral("options.adopt")).click();
  CHECK(window->document().project().tank.depth_m == 1.1);
  REQUIRE(window->document().project().options.size() == 1);
  CHECK(window->document().project().options[0].changes[0].value == core::FieldValue(before.tank.depth_m));
  for (int k = 0; k < 4; ++k) window->document().undoStack()->undo();
  CHECK(window->document().project() == before);
}

TEST_CASE("Sizes are searched beside the window and taken by a button") {
  const auto window = makeWindow();
  REQUIRE(window->document()
              .change(QStringLiteral("few sizes"),
                      [](core::Project& p) {
                        p.search.least_length_m = 5;
                        p.search.most_length_m = 7;
                        p.search.least_width_m = 3;
                        p.search.most_width_m = 4;
                        p.search.least_depth_m = 1.2;
                        p.search.most_depth_m = 1.5;
                        p.search.step_m = 0.25;
                        p.water->target_years_in_ten = 1;
                      })
              .empty());
  showPanel(*window, "options_panel");
  control<QTabBar>(*window, QStringLiteral("options.pages")).setCurrentIndex(1);
  auto* panel = window->findChild<ui::OptionsPanel*>(QStringLiteral("options_panel"));
  REQUIRE(panel != nullptr);
  control<QAbstractButton>(*window, QStringLiteral("options.search_start")).click();
  REQUIRE(QTest::qWaitFor([&] { return !panel->worker().isRunning(); }, 60000));
  CHECK(panel->result().tried == core::compare::candidateCount(window->document().project()));
  REQUIRE(panel->result().largest);
  const auto largest = *panel->result().largest;
  control<QAbstractButton>(*window, QStringLiteral("options.take_largest")).click();
  CHECK(window->document().project().tank.length_m == Approx(largest.length_m));
  CHECK(window->document().plan().tank.full_volume_m3 == Approx(largest.full_volume_m3));
  window->document().undoStack()->undo();
  CHECK(window->document().project().tank.length_m != Approx(largest.length_m));
}

TEST_CASE("A search that is stopped gives no answer and leaves the window free") {
  const auto window = makeWindow();
  REQUIRE(window->document()
              .change(QStringLiteral("many sizes"),
                      [](core::Project& p) {
                        p.search = {};
                        p.search.step_m = 0.05;
                      })
              .empty());
  showPanel(*window, "options_panel");
  control<QTabBar>(*window, QStringLiteral("options.pages")).setCurrentIndex(1);
  auto* panel = window->findChild<ui::OptionsPanel*>(QStringLiteral("options_panel"));
  control<QAbstractButton>(*window, QStringLiteral("options.search_start")).click();
  auto& stop = control<QAbstractButton>(*window, QStringLiteral("options.search_stop"));
  REQUIRE_FALSE(stop.isHidden());
  stop.click();
  CHECK_FALSE(panel->worker().isRunning());
  panel->worker().wait();
  QCoreApplication::processEvents();
  CHECK(panel->result().tried == 0);
  CHECK(stop.isHidden());
}
