// The tab Ground in a real window: level of the platform, spot heights typed, pasted and read, large surveys
// beside the window, findings that point to a place.
#include "ui/panels/editor_panel.h"
#include "ui/panels/findings_list.h"
#include "ui/panels/ground_panel.h"
#include "ui/widgets/survey_table.h"
#include "ui/widgets/waiting.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QSlider>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QTimer>
#include <algorithm>
#include <cmath>

using namespace window_test;

namespace {

void openTab(ui::MainWindow& window) {
  control<QTabWidget>(window, QStringLiteral("tabs"))
      .setCurrentWidget(&control(window, QStringLiteral("ground_panel")));
}

void makeSlope(ui::MainWindow& window, double fall_percent) {
  const core::Problems problems =
      window.document().change(QStringLiteral("slope"), [&](core::Project& project) {
        project.site.ground = {core::GroundKind::slope, fall_percent, 180, {}};
      });
  REQUIRE(problems.empty());
}

void paste(ui::MainWindow& window, const QString& text) {
  QApplication::clipboard()->setText(text);
  control<QAbstractButton>(window, QStringLiteral("site.ground.points_m.paste")).click();
}

/// Rows of a grid that falls 8 % to the south.
QString grid(int side, double step_m) {
  QString text;
  for (int i = 0; i < side; ++i) {
    for (int k = 0; k < side; ++k) {
      const double x = (i - side / 2) * step_m;
      const double y = (k - side / 2) * step_m;
      text += QStringLiteral("%1,%2,%3\n").arg(x).arg(y).arg(100 + 0.08 * y, 0, 'f', 4);
    }
  }
  return text;
}

const core::Platform& platformOf(ui::MainWindow& window) {
  return window.document().project().site.platform;
}

}  // namespace

TEST_CASE("The platform's level is dragged in one undo step and goes back to natural ground by its button") {
  const auto window = makeWindow();
  makeSlope(*window, 12);
  openTab(*window);
  const std::string before = bytes(*window);
  auto& slider = control<QSlider>(*window, QStringLiteral("platform.level"));
  REQUIRE(slider.isVisible());
  const double natural_m =
      window->document().plan().site.bench->level_m - window->document().plan().site.middle_level_m;
  CHECK(std::abs(slider.value() / 1000.0 - natural_m) < 0.001);
  const int steps = window->document().undoStack()->count();
  slider.setSliderDown(true);
  for (const int value : {-300, -200, 50}) slider.setValue(value);
  slider.setSliderDown(false);
  CHECK(platformOf(*window).level_by == core::PlatformLevel::given);
  CHECK(platformOf(*window).level_m == 0.05);
  CHECK(window->document().undoStack()->count() == steps + 1);
  const QString answers = control<QLabel>(*window, QStringLiteral("ground.answers")).text();
  control<QAbstractButton>(*window, QStringLiteral("platform.natural_ground")).click();
  CHECK(platformOf(*window).level_by == core::PlatformLevel::natural_ground);
  CHECK(control<QLabel>(*window, QStringLiteral("ground.answers")).text() != answers);
  window->document().undoStack()->undo();
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == before);
}

TEST_CASE("By hand the platform goes on from the level it has") {
  const auto window = makeWindow();
  makeSlope(*window, 12);
  openTab(*window);
  const double natural_m =
      window->document().plan().site.bench->level_m - window->document().plan().site.middle_level_m;
  control<QAbstractButton>(*window, QStringLiteral("platform.given")).click();
  CHECK(platformOf(*window).level_by == core::PlatformLevel::given);
  CHECK(std::abs(platformOf(*window).level_m - natural_m) < 0.001);
}

TEST_CASE("A row that cannot be read is named and nothing changes; a good table becomes the ground") {
  const auto window = makeWindow();
  openTab(*window);
  const std::string before = bytes(*window);
  paste(*window, QStringLiteral("0,0,1\n10,0,one\n0,8,1.4\n"));
  auto& problem = control<QLabel>(*window, QStringLiteral("site.ground.points_m.problem"));
  CHECK_FALSE(problem.isHidden());
  CHECK(problem.text().contains(QLatin1Char('2')));
  CHECK(bytes(*window) == before);
  paste(*window, grid(9, 5));
  const core::Ground& ground = window->document().project().site.ground;
  CHECK(ground.kind == core::GroundKind::spot_heights);
  CHECK(ground.points_m.size() == 81);
  CHECK(problem.isHidden());
  CHECK(window->document().plan().site.bench.has_value());
  undoAll(*window);
  CHECK(bytes(*window) == before);
}

TEST_CASE("Two heights at one place are refused with both rows; doubtful points are listed and shown") {
  const auto window = makeWindow();
  openTab(*window);
  paste(*window, grid(5, 8) + QStringLiteral("0,0,107\n"));
  const QString refused = control<QLabel>(*window, QStringLiteral("site.ground.points_m.problem")).text();
  CHECK(refused.contains(QStringLiteral("26")));
  CHECK(refused.contains(QStringLiteral("13")));
  CHECK(window->document().project().site.ground.kind != core::GroundKind::spot_heights);
  paste(*window, grid(9, 5) + QStringLiteral("1.5,1.5,109\n"));
  auto& notes = control<QLabel>(*window, QStringLiteral("site.ground.points_m.notes"));
  REQUIRE_FALSE(notes.isHidden());
  emit notes.linkActivated(QStringLiteral("81"));
  CHECK(control<QTableView>(*window, QStringLiteral("site.ground.points_m")).currentIndex().row() == 81);
}

TEST_CASE("Points can be typed one by one before there are enough of them") {
  const auto window = makeWindow();
  openTab(*window);
  control<QTabBar>(*window, QStringLiteral("ground.pages")).setCurrentIndex(1);
  auto& add = control<QAbstractButton>(*window, QStringLiteral("site.ground.points_m.add"));
  auto& table = control<QTableView>(*window, QStringLiteral("site.ground.points_m"));
  for (int k = 0; k < 4; ++k) add.click();
  REQUIRE(table.model()->rowCount() == 4);
  CHECK(table.model()->setData(table.model()->index(3, 1), QStringLiteral("7.5"), Qt::EditRole));
  CHECK(window->document().project().site.ground.points_m[3].y() == 7.5);
  CHECK_FALSE(table.model()->setData(table.model()->index(3, 1), QStringLiteral("up"), Qt::EditRole));
  CHECK_FALSE(control<QLabel>(*window, QStringLiteral("site.ground.points_m.problem")).isHidden());
  table.selectRow(0);
  control<QAbstractButton>(*window, QStringLiteral("site.ground.points_m.remove")).click();
  CHECK(table.model()->rowCount() == 3);
}

TEST_CASE("Choosing spot heights without any opens their table") {
  const auto window = makeWindow();
  window->editor().openAll();
  const std::string before = bytes(*window);
  auto& kind = control<QComboBox>(*window, QStringLiteral("site.ground.kind"));
  kind.setCurrentIndex(kind.findData(QStringLiteral("spot_heights")));
  emit kind.activated(kind.currentIndex());
  CHECK(bytes(*window) == before);
  CHECK(control(*window, QStringLiteral("site.ground.points_m")).isVisible());
}

TEST_CASE("100,000 spot heights are joined beside the window, and giving up changes nothing") {
  const auto window = makeWindow();
  openTab(*window);
  int ticks = 0;
  QTimer ticker;
  QObject::connect(&ticker, &QTimer::timeout, [&] { ++ticks; });
  ticker.start(10);
  const QString many = grid(316, 0.5);  // 99,856 points
  const std::string before = bytes(*window);
  QTimer giver_up;
  QObject::connect(&giver_up, &QTimer::timeout, [&] {
    auto* button = window->findChild<QAbstractButton*>(QStringLiteral("waiting.give_up"));
    if (button != nullptr && button->isVisible()) button->click();
  });
  giver_up.start(5);
  QElapsedTimer clock;
  clock.start();
  paste(*window, many);
  giver_up.stop();
  const bool was_quick = window->document().project().site.ground.points_m.size() > 50000;
  if (!was_quick) {
    CHECK(bytes(*window) == before);
    ticks = 0;
    clock.restart();
    paste(*window, many);
  }
  WARN("taken in " << clock.elapsed() << " ms with " << ticks << " turns of the event loop");
  REQUIRE(window->document().project().site.ground.points_m.size() == 99856);
  CHECK(ticks > 3);
  CHECK(control<QTableView>(*window, QStringLiteral("site.ground.points_m")).model()->rowCount() == 99856);
  // an edit of the tank uses the triangles again
  const auto ground = window->document().plan().site.ground;
  window->document().change(QStringLiteral("depth"), [](core::Project& p) { p.tank.depth_m = 1.3; });
  CHECK(window->document().plan().site.ground == ground);
  window->document().undoStack()->undo();
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == before);
}

TEST_CASE("While work runs beside the window nothing else is opened or closed, and the work's dialog stays") {
  const auto window = makeWindow();
  int shown = 0;
  QTimer meddler;
  QObject::connect(&meddler, &QTimer::timeout, [&] {
    auto* dialog = window->findChild<QDialog*>(QStringLiteral("waiting"));
    if (dialog == nullptr || !dialog->isVisible()) return;
    ++shown;
    CHECK(ui::isRunningBeside());
    dialog->close();
    QTest::keyClick(dialog, Qt::Key_Escape);
    CHECK(dialog->isVisible());
    CHECK_FALSE(window->openFile(QStringLiteral("none.tankwright")));
    window->close();
    CHECK(window->isVisible());
  });
  meddler.start(50);
  const bool done = ui::runBeside(window.get(), QStringLiteral("work"), ui::Patience::must_wait,
                                  [](const std::atomic<bool>&) { QThread::msleep(900); });
  meddler.stop();
  CHECK(done);
  CHECK(shown > 0);
  CHECK_FALSE(ui::isRunningBeside());
}

TEST_CASE("Spot heights come from a file in grid coordinates; what was taken off is told") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("survey.csv"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  QByteArray text = "northing,easting,level\n";
  for (int i = 0; i < 5; ++i) {
    for (int k = 0; k < 5; ++k)
      text += QByteArray::number(3066000 + 8 * k) + ',' + QByteArray::number(334200 + 8 * i) + ',' +
              QByteArray::number(1450 + 0.6 * k) + '\n';
  }
  file.write(text);
  file.close();
  window->readSurvey(path);
  const core::Site& site = window->document().project().site;
  REQUIRE(site.ground.points_m.size() == 25);
  CHECK(std::abs(site.ground.points_m[0].x()) <= 1000);
  CHECK(control<QLabel>(*window, QStringLiteral("site.ground.points_m.problem"))
            .text()
            .contains(QStringLiteral("334")));
  CHECK(window->document().plan().site.fall.percent > 7);
}

TEST_CASE("The downhill side is searched beside the window and its finding comes by itself") {
  const auto window = makeWindow();
  window->document().change(QStringLiteral("edge"), [](core::Project& project) {
    project.site.soil = core::Soil::sandy;
    project.site.edge_distance_m = 0.5;
    project.site.edge_height_m = 4;
  });
  const auto has_slip = [&] {
    return std::ranges::any_of(window->document().plan().findings,
                               [](const core::Finding& f) { return f.code.starts_with("site_slip"); });
  };
  CHECK_FALSE(has_slip());
  CHECK(waitFor(has_slip));
  CHECK(waitFor([&] {
    return window->findChild<QWidget*>(QStringLiteral("finding.site_slip_likely")) != nullptr ||
           window->findChild<QWidget*>(QStringLiteral("finding.site_slip_near")) != nullptr;
  }));
}

TEST_CASE("A finding shows its field in the editor and its place in the picture") {
  const auto window = makeWindow();
  makeSlope(*window, 40);
  openTab(*window);
  auto* list = window->findChild<ui::FindingsList*>();
  REQUIRE(list != nullptr);
  const auto& findings = window->document().plan().findings;
  const auto found = std::ranges::find(findings, "site_slope_steep", &core::Finding::code);
  REQUIRE(found != findings.end());
  REQUIRE(found->at_m.has_value());
  emit list->findingWanted(*found);
  CHECK(control<QTabWidget>(*window, QStringLiteral("tabs")).currentWidget() ==
        &control(*window, QStringLiteral("pit_panel")));
  CHECK(waitFor([&] { return control(*window, QStringLiteral("site.ground.fall_percent")).isVisible(); }));
}
