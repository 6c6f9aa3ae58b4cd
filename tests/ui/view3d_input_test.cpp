#include "tests/ui/view3d_support.h"

#include <QAction>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QUndoStack>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <QWindow>
#include <ctime>

#include <catch2/catch.hpp>

using namespace core::geometry;
using namespace view3d_test;

namespace {

/// Window with a field, a view and a button, as the program has it.
struct Desk {
  explicit Desk(Kind kind) : view(makeView(kind).release()) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->addWidget(field = new QLineEdit);
    layout->addWidget(view);
    layout->addWidget(button = new QPushButton("b"));
    window.setCentralWidget(page);
    window.resize(500, 450);
    view->setScene(sceneOf({}));
    window.show();
    window.activateWindow();
    if (!QTest::qWaitForWindowActive(&window)) throw std::runtime_error("the window did not come up");
    for (QWindow* each : QGuiApplication::allWindows())
      if (each->objectName() == "pit_surface") surface = each;
  }

  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    surface ? QTest::keyClick(surface, key, modifiers) : QTest::keyClick(view, key, modifiers);
  }

  void drag(Qt::MouseButton button_held, QPoint from, QPoint by) {
    send(QEvent::MouseButtonPress, from, button_held, button_held);
    send(QEvent::MouseMove, from + by / 2, Qt::NoButton, button_held);
    send(QEvent::MouseMove, from + by, Qt::NoButton, button_held);
    send(QEvent::MouseButtonRelease, from + by, button_held, Qt::NoButton);
  }

  void wheel(int eighths) {
    QWheelEvent event({100, 100}, {100, 100}, {}, {0, eighths}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(target(), &event);
  }

  QObject* target() { return surface ? static_cast<QObject*>(surface) : view; }

  void send(QEvent::Type type, QPoint at, Qt::MouseButton button_now, Qt::MouseButtons held) {
    QMouseEvent event(type, at, at, button_now, held, Qt::NoModifier);
    QCoreApplication::sendEvent(target(), &event);
  }

  void focusView() {
    view->setFocus(Qt::TabFocusReason);
    waitFor([&] { return surface ? QGuiApplication::focusWindow() == surface : view->hasFocus(); });
  }

  QMainWindow window;
  ui::PitView* view;
  QLineEdit* field;
  QPushButton* button;
  QWindow* surface = nullptr;  // none when drawn in software
};

Kind eachKind() {
  return GENERATE(Kind::qt3d, Kind::software);
}

}  // namespace

TEST_CASE("a left drag turns, dragging to the right brings the left side round") {
  Desk desk(eachKind());
  const Camera before = desk.view->camera();
  desk.drag(Qt::LeftButton, {100, 100}, {50, 20});
  const Camera after = desk.view->camera();
  CHECK(after.azimuth_deg < before.azimuth_deg - 5);
  CHECK(after.elevation_deg > before.elevation_deg + 2);
  CHECK(after.target == before.target);
  CHECK(after.distance_m == before.distance_m);
}

TEST_CASE("a right or middle drag moves what is seen along with the pointer") {
  Desk desk(eachKind());
  const auto button = GENERATE(Qt::RightButton, Qt::MiddleButton);
  const Camera before = desk.view->camera();
  const int height = desk.view->height();
  desk.drag(button, {100, 100}, {40, -30});
  const Camera expected = panned(before, 40.0 / height, 30.0 / height);
  CHECK((desk.view->camera().target - expected.target).norm() < 1e-9);
  CHECK(desk.view->camera().azimuth_deg == before.azimuth_deg);
}

TEST_CASE("wheel and keys bring nearer and farther") {
  Desk desk(eachKind());
  const double start = desk.view->camera().distance_m;
  desk.wheel(120);
  const double nearer = desk.view->camera().distance_m;
  CHECK(nearer < start);
  desk.wheel(-120);
  CHECK(desk.view->camera().distance_m == Approx(start));
  desk.press(Qt::Key_Plus);
  CHECK(desk.view->camera().distance_m < start);
  desk.press(Qt::Key_Minus);
  CHECK(desk.view->camera().distance_m == Approx(start));
}

TEST_CASE("arrows turn, Home brings back the standard view, and each change is told") {
  Desk desk(eachKind());
  const Camera start = desk.view->camera();
  int told = 0;
  QObject::connect(desk.view, &ui::PitView::cameraChanged, [&] { ++told; });
  desk.press(Qt::Key_Right);
  CHECK(desk.view->camera().azimuth_deg > start.azimuth_deg);
  desk.press(Qt::Key_Up);
  CHECK(desk.view->camera().elevation_deg > start.elevation_deg);
  CHECK(told == 2);
  desk.press(Qt::Key_Home);
  CHECK((eye(desk.view->camera()) - eye(start)).norm() < 1e-9);
  CHECK(told == 3);
}

TEST_CASE("what the camera was set to is what comes back, and the same again is not told") {
  Desk desk(eachKind());
  Camera camera = desk.view->camera();
  camera.azimuth_deg = 12;
  int told = 0;
  QObject::connect(desk.view, &ui::PitView::cameraChanged, [&] { ++told; });
  desk.view->setCamera(camera);
  desk.view->setCamera(camera);
  CHECK(desk.view->camera() == camera);
  CHECK(told == 1);
}

TEST_CASE("Tab comes into the view and leaves it both ways") {
  Desk desk(eachKind());
  desk.focusView();
  desk.press(Qt::Key_Tab);
  CHECK(waitFor([&] { return QApplication::focusWidget() == desk.button; }));
  desk.focusView();
  desk.press(Qt::Key_Backtab, Qt::ShiftModifier);
  CHECK(waitFor([&] { return QApplication::focusWidget() == desk.field; }));
}

TEST_CASE("undo reaches the main window while the view has the focus") {
  Desk desk(eachKind());
  int undone = 0;
  auto* action = new QAction("u", &desk.window);
  action->setShortcut(QKeySequence::Undo);
  QObject::connect(action, &QAction::triggered, [&] { ++undone; });
  desk.window.addAction(action);
  desk.focusView();
  desk.press(Qt::Key_Z, Qt::ControlModifier);
  CHECK(waitFor([&] { return undone == 1; }, 2000));
}

TEST_CASE("a view that nothing happens to costs next to no time of the processor") {
  Desk desk(eachKind());
  picture(*desk.view);
  waitFor([] { return false; }, 200);
  const std::clock_t start = std::clock();
  waitFor([] { return false; }, 600);
  const double busy_ms = 1000.0 * double(std::clock() - start) / CLOCKS_PER_SEC;
  CHECK(busy_ms < 90);  // 15 % of one core; drawing without pause takes more than a whole one
}
