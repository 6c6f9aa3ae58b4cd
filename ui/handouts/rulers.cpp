#include "ui/handouts/rulers.h"

namespace ui::handouts {
namespace {

constexpr double kShort = 3, kFive = 4.5, kTen = 6.5;
constexpr double kAbove = 0.5, kNumberGap = 0.4;

double stroke(int mm) {
  return mm % 10 == 0 ? kTen : mm % 5 == 0 ? kFive : kShort;
}

}  // namespace

double rulerHeight_mm() {
  return kAbove + kTen + kNumberGap + lineHeight_mm(kBody) + 1;
}

void drawRuler(QPainter& painter, QPointF at, int length_mm, const Formatter& format) {
  painter.setPen(line(0.35));
  painter.drawLine(at, at + QPointF(length_mm, 0));
  for (int mm = 0; mm <= length_mm; ++mm) {
    painter.setPen(line(mm % 10 == 0 ? 0.35 : 0.25));
    painter.drawLine(at + QPointF(mm, 0), at + QPointF(mm, stroke(mm)));
  }
  for (int mm = 0; mm <= length_mm; mm += 10) {
    const QString number = format.integer(mm);
    const double wide = drawings::width_mm(number, kBody);
    drawLines(painter, at + QPointF(mm - wide / 2, kTen + kNumberGap), {number}, kBody);
  }
}

void addRuler(Sheet& sheet, int length_mm, const Formatter& format) {
  sheet.drawing(rulerHeight_mm(), [length_mm, format](QPainter& painter, const QRectF& box) {
    drawRuler(painter, {box.center().x() - length_mm / 2., box.top() + kAbove}, length_mm, format);
  });
}

}  // namespace ui::handouts
