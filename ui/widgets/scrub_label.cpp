#include "ui/widgets/scrub_label.h"

#include <QMouseEvent>

namespace ui {

namespace {

constexpr int kPixelsPerStep = 4;

}  // namespace

ScrubLabel::ScrubLabel(const QString& text, QWidget* parent) : QLabel(text, parent) {
  setCursor(Qt::SizeHorCursor);
}

void ScrubLabel::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  down_ = true;
  steps_ = 0;
  pressed_x_ = event->globalPosition().toPoint().x();
  emit scrubStarted();
}

void ScrubLabel::mouseMoveEvent(QMouseEvent* event) {
  if (!down_) return;
  const int steps = (event->globalPosition().toPoint().x() - pressed_x_) / kPixelsPerStep;
  if (steps == steps_) return;
  steps_ = steps;
  emit scrubbed(steps);
}

void ScrubLabel::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !down_) return;
  down_ = false;
  emit scrubFinished();
}

}  // namespace ui
