#pragma once

#include "core/geometry/camera.h"

#include <QObject>
#include <QPointF>

class QKeyEvent;
class QMouseEvent;
class QWheelEvent;

namespace ui::view3d {

/// Turns mouse, wheel and keys of a window or widget into camera moves. Left drag turns, right or middle drag
/// moves, the wheel and + - go nearer and farther, arrows turn, Home asks for the standard view. Keys held
/// with Ctrl, Alt or Meta pass by.
class OrbitControls : public QObject {
  Q_OBJECT

public:
  /// Filters the events of `source`, which must be a QWindow or a QWidget.
  explicit OrbitControls(QObject* source);

  void setCamera(const core::geometry::Camera& camera) { camera_ = camera; }
  bool isDragging() const { return buttons_ != Qt::NoButton; }

signals:
  void moved(const core::geometry::Camera& camera);
  void homeAsked();
  /// Tab or Backtab in a window, which has no chain of its own.
  void focusLeaves(bool forward);

protected:
  bool eventFilter(QObject* source, QEvent* event) override;

private:
  double heightOfSource() const;
  void move(const core::geometry::Camera& camera);
  void press(const QMouseEvent& event);
  void drag(const QMouseEvent& event);
  void release(const QMouseEvent& event);
  void wheel(const QWheelEvent& event);
  bool key(const QKeyEvent& event);

  QObject* source_;
  core::geometry::Camera camera_;
  Qt::MouseButtons buttons_ = Qt::NoButton;
  QPointF last_;
};

}  // namespace ui::view3d
