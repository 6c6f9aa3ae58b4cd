#include "ui/widgets/canvas.h"

#include <utility>

namespace ui {

namespace {

constexpr double kInch_mm = 25.4;

}  // namespace

Canvas::Canvas(QWidget* parent) : QWidget(parent) {}

void Canvas::setPaint(Paint paint) {
  paint_ = std::move(paint);
  update();
}

void Canvas::setPage(const QSizeF& size_mm, double zoom) {
  page_mm_ = size_mm;
  zoom_ = zoom;
  if (!size_mm.isEmpty()) setFixedSize((size_mm * pixelsPerMm()).toSize());
  update();
}

double Canvas::pixelsPerMm() const {
  return zoom_ * logicalDpiX() / kInch_mm;
}

void Canvas::paintEvent(QPaintEvent*) {
  if (!paint_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const double scale = pixelsPerMm();
  const QRectF box_mm(0, 0, width() / scale, height() / scale);
  if (!page_mm_.isEmpty()) painter.fillRect(rect(), Qt::white);
  painter.scale(scale, scale);
  paint_(painter, box_mm);
}

}  // namespace ui
