#include "ui/view3d/orbit_controls.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <QWidget>
#include <QWindow>
#include <cmath>

namespace ui::view3d {
namespace {

using core::geometry::Camera;

constexpr double kTurnPerPixel_deg = 0.4;
constexpr double kTurnPerKey_deg = 5;
constexpr double kMovePerKey = 0.05;
constexpr double kKeyZoom = 0.9;
constexpr double kWheelZoom = 0.999;  // per eighth of a degree

struct Arrow {
  int right = 0, up = 0;
};

Arrow arrowOf(int key) {
  switch (key) {
    case Qt::Key_Left:
      return {-1, 0};
    case Qt::Key_Right:
      return {1, 0};
    case Qt::Key_Up:
      return {0, 1};
    case Qt::Key_Down:
      return {0, -1};
    default:
      return {};
  }
}

double zoomOf(int key) {
  if (key == Qt::Key_Plus || key == Qt::Key_Equal) return kKeyZoom;
  if (key == Qt::Key_Minus) return 1 / kKeyZoom;
  return 1;
}

}  // namespace

OrbitControls::OrbitControls(QObject* source) : QObject(source), source_(source) {
  source->installEventFilter(this);
}

bool OrbitControls::eventFilter(QObject*, QEvent* event) {
  switch (event->type()) {
    case QEvent::MouseButtonPress:
      press(*static_cast<QMouseEvent*>(event));
      return false;
    case QEvent::MouseMove:
      drag(*static_cast<QMouseEvent*>(event));
      return false;
    case QEvent::MouseButtonRelease:
      release(*static_cast<QMouseEvent*>(event));
      return false;
    case QEvent::Wheel:
      wheel(*static_cast<QWheelEvent*>(event));
      return true;
    case QEvent::KeyPress:
      return key(*static_cast<QKeyEvent*>(event));
    default:
      return false;
  }
}

double OrbitControls::heightOfSource() const {
  const auto* widget = qobject_cast<QWidget*>(source_);
  const int height = widget ? widget->height() : qobject_cast<QWindow*>(source_)->height();
  return std::max(height, 1);
}

void OrbitControls::move(const Camera& camera) {
  if (camera == camera_) return;
  camera_ = camera;
  emit moved(camera_);
}

void OrbitControls::press(const QMouseEvent& event) {
  buttons_ = event.buttons() & (Qt::LeftButton | Qt::RightButton | Qt::MiddleButton);
  last_ = event.position();
}

void OrbitControls::drag(const QMouseEvent& event) {
  if (buttons_ == Qt::NoButton) return;
  const QPointF by = event.position() - last_;
  last_ = event.position();
  if (buttons_ & Qt::LeftButton)
    move(orbited(camera_, -kTurnPerPixel_deg * by.x(), kTurnPerPixel_deg * by.y()));
  else
    move(panned(camera_, by.x() / heightOfSource(), -by.y() / heightOfSource()));
}

void OrbitControls::release(const QMouseEvent& event) {
  buttons_ = buttons_ & event.buttons();
}

void OrbitControls::wheel(const QWheelEvent& event) {
  move(zoomed(camera_, std::pow(kWheelZoom, event.angleDelta().y())));
}

bool OrbitControls::key(const QKeyEvent& event) {
  if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) return false;
  const bool forward = event.key() == Qt::Key_Tab;
  if (qobject_cast<QWindow*>(source_) && (forward || event.key() == Qt::Key_Backtab)) {
    emit focusLeaves(forward);
    return true;
  }
  if (event.key() == Qt::Key_Home) {
    emit homeAsked();
    return true;
  }
  const Arrow arrow = arrowOf(event.key());
  const double zoom = zoomOf(event.key());
  if (arrow.right == 0 && arrow.up == 0 && zoom == 1) return false;
  const bool shifted = event.modifiers() & Qt::ShiftModifier;
  if (zoom != 1)
    move(zoomed(camera_, zoom));
  else if (shifted)
    move(panned(camera_, -kMovePerKey * arrow.right, -kMovePerKey * arrow.up));
  else
    move(orbited(camera_, kTurnPerKey_deg * arrow.right, kTurnPerKey_deg * arrow.up));
  return true;
}

}  // namespace ui::view3d
