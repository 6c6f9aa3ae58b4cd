#include "tests/ui/view3d_support.h"
#include "ui/view3d/palette.h"

#include <QCoreApplication>
#include <QProcess>
#include <QScreen>
#include <QTabWidget>

#include <catch2/catch.hpp>

using namespace core::geometry;
using namespace view3d_test;

namespace {

/// Runs one of the hidden test cases below in a process of its own; whether it ended well.
bool runsWell(const QString& tag, const QMap<QString, QString>& variables = {}) {
  QProcess child;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  for (auto it = variables.begin(); it != variables.end(); ++it) environment.insert(it.key(), it.value());
  child.setProcessEnvironment(environment);
  child.setProcessChannelMode(QProcess::MergedChannels);
  child.start(QCoreApplication::applicationFilePath(), {"[" + tag + "]"});
  const bool ended = child.waitForFinished(60000);
  const QByteArray said = child.readAll();
  INFO(said.toStdString());
  CHECK(said.contains("All tests passed"));
  CHECK(ended);
  CHECK(child.exitStatus() == QProcess::NormalExit);
  CHECK(child.exitCode() == 0);
  return ended && child.exitStatus() == QProcess::NormalExit && child.exitCode() == 0;
}

}  // namespace

TEST_CASE("views that come and go leave a clean exit") {
  for (const QString tag :
       {"come-and-go", "never-shown", "alive-at-exit", "tabs", "back-in-front", "closed-while-taking"})
    CHECK(runsWell(tag));
}

TEST_CASE("at two real pixels to a logical one the picture has twice the size and the same places") {
  CHECK(runsWell("double-size", {{"QT_SCALE_FACTOR", "2"}}));
}

TEST_CASE("with OpenGL the view is drawn by Qt 3D") {
  CHECK(runsWell("kind", {{"EXPECTED_KIND", "qt3d"}}));
}

TEST_CASE("without OpenGL, with an old one, or when told so, the view is drawn in software") {
  CHECK(runsWell("kind", {{"EXPECTED_KIND", "software"}, {"QT_XCB_GL_INTEGRATION", "none"}}));
  CHECK(runsWell("kind", {{"EXPECTED_KIND", "software"}, {"MESA_GL_VERSION_OVERRIDE", "2.1"}}));
  CHECK(runsWell("kind", {{"EXPECTED_KIND", "software"}, {"TANKWRIGHT_SOFTWARE_VIEW", "1"}}));
  CHECK(runsWell("kind", {{"EXPECTED_KIND", "software"}, {"QT_QPA_PLATFORM", "offscreen"}, {"DISPLAY", ""}}));
}

// The cases below run in processes of their own.

TEST_CASE("made, shown and deleted again and again", "[.come-and-go]") {
  for (int k = 0; k < 5; ++k) {
    const std::unique_ptr<ui::PitView> view(ui::makePitView(nullptr));
    view->setScene(sceneOf({}));
    show(*view);
    if (k % 2) CHECK_FALSE(picture(*view).isNull());
  }
}

TEST_CASE("made and deleted without being shown", "[.never-shown]") {
  for (int k = 0; k < 3; ++k) {
    const std::unique_ptr<ui::PitView> view(ui::makePitView(nullptr));
    view->setScene(sceneOf({}));
    CHECK_FALSE(view->kind().isEmpty());
  }
}

TEST_CASE("a widget on the heap with a view in it is left to the end", "[.alive-at-exit]") {
  auto* window = new QTabWidget;
  ui::PitView* view = ui::makePitView(window);
  window->addTab(view, "a");
  view->setScene(sceneOf({}));
  window->resize(400, 300);
  window->show();
  CHECK_FALSE(picture(*view).isNull());
}

TEST_CASE("tabs hide and show views, scenes change while hidden", "[.tabs]") {
  QTabWidget tabs;
  ui::PitView* one = ui::makePitView(&tabs);
  ui::PitView* other = ui::makePitView(&tabs);
  tabs.addTab(one, "a");
  tabs.addTab(other, "b");
  tabs.resize(400, 300);
  tabs.show();
  for (int k = 0; k < 6; ++k) {
    one->setScene(sceneOf({.facets = 12 + 100 * (k % 3), .shape = core::Shape::round}));
    other->setScene(sceneOf({.water_m = 0.3 * (k % 3)}));
    tabs.setCurrentIndex(k % 2);
    CHECK_FALSE(picture(k % 2 ? *other : *one).isNull());
  }
}

/// Colour in the middle of a widget as the screen shows it.
QColor onScreen(const QWidget& widget) {
  const QPoint middle = widget.mapToGlobal(widget.rect().center());
  const QImage image = widget.screen()->grabWindow(0, middle.x(), middle.y(), 1, 1).toImage();
  return image.pixelColor(0, 0);
}

TEST_CASE("the pit is painted again when its tab comes back to the front", "[.back-in-front]") {
  QTabWidget tabs;
  ui::PitView* view = ui::makePitView(&tabs);
  auto* other = new QWidget(&tabs);
  other->setAutoFillBackground(true);
  other->setPalette(QPalette(Qt::magenta));
  tabs.addTab(view, "pit");
  tabs.addTab(other, "other");
  tabs.resize(400, 300);
  view->setScene(sceneOf({}));
  tabs.show();
  CHECK_FALSE(picture(*view).isNull());
  REQUIRE(waitFor([&] { return onScreen(*view).saturation() > 20; }));
  const QColor pit = onScreen(*view);
  for (int k = 0; k < 3; ++k) {
    tabs.setCurrentIndex(1);
    REQUIRE(waitFor([&] { return onScreen(*other) == QColor(Qt::magenta); }));
    tabs.setCurrentIndex(0);
    CHECK(waitFor([&] { return onScreen(*view) == pit; }, 5000));
  }
}

TEST_CASE("a view is deleted while its picture is being taken", "[.closed-while-taking]") {
  for (int k = 0; k < 3; ++k) {
    const std::unique_ptr<ui::PitView> view(ui::makePitView(nullptr));
    view->setScene(sceneOf({}));
    show(*view);
    view->grabImage([](const QImage&) {});
    CHECK(view->isVisible());
  }
}

TEST_CASE("places and colours at double size", "[.double-size]") {
  const auto kind = GENERATE(Kind::qt3d, Kind::software);
  const auto view = makeView(kind);
  const Scene scene = sceneOf({});
  view->setScene(scene);
  show(*view, {400, 300});
  const Camera camera = cameraFor(ViewPreset::section, scene, *view);
  view->setCamera(camera);
  const QImage image = picture(*view);
  CHECK(image.size() == QSize(800, 600));
  CHECK(image.devicePixelRatio() == 2);
  CHECK(isWatery(colourAt(image, camera, {0.7, 0, 0.6})));
  CHECK(isOf(colourAt(image, camera, {0.7, 0, -kCoat2_m - kCoat1_m / 2}), Role::coat, 1));
}

TEST_CASE("the kind of view suits the machine and shows the pit", "[.kind]") {
  const std::unique_ptr<ui::PitView> view(ui::makePitView(nullptr));
  CHECK(view->kind() == qEnvironmentVariable("EXPECTED_KIND"));
  CHECK(ui::openGlIsUsable() == (view->kind() == "qt3d"));
  const Scene scene = sceneOf({});
  view->setScene(scene);
  show(*view);
  const Camera camera = cameraFor(ViewPreset::section, scene, *view);
  view->setCamera(camera);
  CHECK(isWatery(colourAt(picture(*view), camera, {0.7, 0, 0.6})));
}
