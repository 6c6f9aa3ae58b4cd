// The tab Pipes in a real window: asked for, filled in, read by keys, and taken back.
#include "ui/panels/chart_view.h"
#include "ui/panels/delivery_panel.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

using namespace window_test;

namespace {

void openTab(ui::MainWindow& window) {
  control<QTabWidget>(window, QStringLiteral("tabs"))
      .setCurrentWidget(&control(window, QStringLiteral("delivery_panel")));
}

void forgetDelivery(ui::MainWindow& window) {
  window.document().change(QStringLiteral("none"), [](core::Project& project) { project.delivery.reset(); });
}

void addRow(ui::MainWindow& window, const char* list) {
  control<QAbstractButton>(window, QString::fromLatin1(list) + QStringLiteral(".add")).click();
}

}  // namespace

TEST_CASE("Pipes are asked for by a button, and undo takes them out again") {
  const auto window = makeWindow();
  forgetDelivery(*window);
  openTab(*window);
  const std::string before = bytes(*window);
  auto& ask = control<QAbstractButton>(*window, QStringLiteral("delivery.ask"));
  auto& pages = control<QTabBar>(*window, QStringLiteral("delivery.pages"));
  REQUIRE(ask.isVisible());
  CHECK_FALSE(pages.isVisible());
  ask.click();
  CHECK(window->document().project().delivery.has_value());
  CHECK(pages.isVisible());
  CHECK_FALSE(ask.isVisible());
  for (int k = 0; k < pages.count(); ++k) {
    pages.setCurrentIndex(k);
    QTest::qWait(20);
  }
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == before);
  CHECK(ask.isVisible());
}

TEST_CASE("A line typed point by point brings water, and its diagram is read by keys") {
  const auto window = makeWindow();
  forgetDelivery(*window);
  openTab(*window);
  control<QAbstractButton>(*window, QStringLiteral("delivery.ask")).click();
  const QString silent = control<QLabel>(*window, QStringLiteral("delivery.source.answers")).text();
  addRow(*window, "delivery.source.route");
  addRow(*window, "delivery.source.route");
  auto& table = control<QTableWidget>(*window, QStringLiteral("delivery.source.route"));
  REQUIRE(table.rowCount() == 2);
  table.item(0, 1)->setText(QStringLiteral("6"));
  table.item(1, 0)->setText(QStringLiteral("120"));
  table.item(1, 1)->setText(QStringLiteral("0.2"));
  const auto& plan = window->document().plan().delivery;
  REQUIRE(plan.has_value());
  REQUIRE(plan->source.has_value());
  REQUIRE(plan->source->full.has_value());
  CHECK(plan->source->full->flow_m3_s > 0);
  CHECK(control<QLabel>(*window, QStringLiteral("delivery.source.answers")).text() != silent);
  auto& chart = control<ui::ChartView>(*window, QStringLiteral("chart.source"));
  chart.mark(0);
  CHECK(chart.marked() == 0);
  // a distance that goes back is refused and stays to be seen
  table.item(1, 0)->setText(QStringLiteral("-3"));
  CHECK(window->document().project().delivery->source.route[1].distance_m == 120);
}

TEST_CASE("A finding of the pipes opens their page and the editor of its field") {
  const auto window = makeWindow();
  forgetDelivery(*window);
  openTab(*window);
  control<QAbstractButton>(*window, QStringLiteral("delivery.ask")).click();
  window->document().change(QStringLiteral("storm"), [](core::Project& project) {
    project.delivery->overflow.width_m = 0.05;
    project.delivery->overflow.storm_mm_h = 400;
    project.tank.freeboard_m = 0.02;
  });
  const auto& findings = window->document().plan().findings;
  CHECK(std::ranges::any_of(findings, [](const core::Finding& f) {
    return f.code == "delivery_rim_overtopped" || f.code == "delivery_overflow_small";
  }));
}
