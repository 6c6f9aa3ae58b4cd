#include "ui/handouts/symbols.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

constexpr int kMostBoxes = 60;
constexpr double kBox = 6, kBoxStep = 7.4, kGroupGap = 4;

/// Paints `count` signs in rows of groups of five.
void addGroups(Sheet& sheet, int count, double step, double high,
               const std::function<void(QPainter&, QPointF)>& sign) {
  const double group = 5 * step + kGroupGap;
  const int per_row = 5 * std::max(1, static_cast<int>((sheet.width() + kGroupGap) / group));
  for (int first = 0; first < count; first += per_row) {
    const int row = std::min(per_row, count - first);
    sheet.add({high, [=](QPainter& painter, QPointF at) {
                 for (int k = 0; k < row; ++k) sign(painter, at + QPointF(k * step + k / 5 * kGroupGap, 0));
               }});
  }
}

void drawBag(QPainter& painter, QPointF at) {
  QPainterPath bag(at + QPointF(0.5, 0.5));
  bag.lineTo(at + QPointF(6.5, 0.5));
  bag.lineTo(at + QPointF(5.8, 2));
  bag.quadTo(at + QPointF(7.6, 5), at + QPointF(6.5, 8.5));
  bag.lineTo(at + QPointF(0.5, 8.5));
  bag.quadTo(at + QPointF(-0.6, 5), at + QPointF(1.2, 2));
  bag.closeSubpath();
  painter.setPen(line(0.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(bag);
  painter.drawLine(at + QPointF(1.2, 2), at + QPointF(5.8, 2));
}

struct PartPicture {
  double share;  // of a whole box, 0..1
  QString name;
};

std::vector<PartPicture> boxesOf(const std::vector<MixPart>& mix) {
  std::vector<PartPicture> boxes;
  for (const MixPart& part : mix) {
    double left = part.parts;
    while (left > 1e-9) {
      boxes.push_back({std::min(1., left), part.name});
      left -= 1;
    }
  }
  return boxes;
}

void drawGaugeBox(QPainter& painter, const QRectF& box, const PartPicture& picture) {
  painter.setPen(line(0.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box);
  const double level = box.bottom() - box.height() * picture.share;
  if (picture.share < 1) {
    painter.setPen(line(0.35));
    painter.drawLine(QPointF(box.left(), level), QPointF(box.right(), level));
  }
  drawLines(painter, {box.left(), box.bottom() + 0.3}, {picture.name}, kBody, box.width(), CellAlign::centre);
}

double widestName(const std::vector<MixPart>& mix) {
  double widest = 12;
  for (const MixPart& part : mix) widest = std::max(widest, drawings::width_mm(part.name, kBody));
  return widest;
}

}  // namespace

Tally tallyFor(int count) {
  int each = 1;
  for (const int next : {2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
    if ((count + each - 1) / each > kMostBoxes) each = next;
  }
  return {(count + each - 1) / each, each};
}

void addTally(Sheet& sheet, const Tally& tally) {
  addGroups(sheet, tally.boxes, kBoxStep, kBox + 1.6,
            [](QPainter& painter, QPointF at) { drawTickBox(painter, at + QPointF(0.25, 0.25), kBox); });
}

void addBags(Sheet& sheet, const Tally& tally) {
  addGroups(sheet, tally.boxes, 8.2, 10.5,
            [](QPainter& painter, QPointF at) { drawBag(painter, at + QPointF(0.8, 0)); });
}

void addMixParts(Sheet& sheet, const std::vector<MixPart>& mix) {
  const std::vector<PartPicture> boxes = boxesOf(mix);
  const double wide = widestName(mix), step = wide + 3, high = 12;
  const int per_row = std::max(1, static_cast<int>((sheet.width() + 3) / step));
  if (boxes.size() > static_cast<std::size_t>(3 * per_row))
    return;  // too many to be a picture; the words say it
  for (std::size_t first = 0; first < boxes.size(); first += static_cast<std::size_t>(per_row)) {
    const std::size_t last = std::min(boxes.size(), first + static_cast<std::size_t>(per_row));
    const std::vector<PartPicture> row(boxes.begin() + static_cast<std::ptrdiff_t>(first),
                                       boxes.begin() + static_cast<std::ptrdiff_t>(last));
    sheet.add({high + lineHeight_mm(kBody) + 2, [=](QPainter& painter, QPointF at) {
                 for (std::size_t k = 0; k < row.size(); ++k) {
                   drawGaugeBox(
                       painter,
                       QRectF(at.x() + 0.3 + static_cast<double>(k) * step, at.y() + 0.3, wide, high),
                       row[k]);
                 }
               }});
  }
}

}  // namespace ui::handouts
