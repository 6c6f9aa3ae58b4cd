#include "ui/drawings/line_cuts.h"

#include <QPolygonF>
#include <algorithm>
#include <iterator>
#include <utility>

namespace ui::drawings {
namespace {

constexpr double kNear_mm = 0.4;

/// Share of the line from a to b, from and to, that lies in the room; empty when from >= to.
std::pair<double, double> shareInside(QPointF a, QPointF b, const QRectF& room) {
  double from = 0, to = 1;
  const auto clip = [&](double start, double step, double least, double most) {
    if (step == 0) {
      if (start <= least || start >= most) to = -1;
      return;
    }
    const double t = (least - start) / step, u = (most - start) / step;
    from = std::max(from, std::min(t, u));
    to = std::min(to, std::max(t, u));
  };
  clip(a.x(), b.x() - a.x(), room.left(), room.right());
  clip(a.y(), b.y() - a.y(), room.top(), room.bottom());
  return {from, to};
}

void addPiece(QPainterPath& path, QPointF from, QPointF to) {
  if (path.isEmpty() || path.currentPosition() != from) path.moveTo(from);
  path.lineTo(to);
}

void addOutside(QPainterPath& path, QPointF a, QPointF b, const std::vector<QRectF>& rooms) {
  std::vector<std::pair<double, double>> gaps;
  for (const QRectF& room : rooms) {
    const auto gap = shareInside(a, b, room);
    if (gap.first < gap.second) gaps.push_back(gap);
  }
  std::ranges::sort(gaps);
  double done = 0;
  for (const auto& [from, to] : gaps) {
    if (from > done) addPiece(path, a + done * (b - a), a + from * (b - a));
    done = std::max(done, to);
  }
  if (done == 0) return addPiece(path, a, b);
  if (done < 1) addPiece(path, a + done * (b - a), b);
}

}  // namespace

QPainterPath outside(const QPainterPath& lines, const std::vector<QRectF>& rooms) {
  std::vector<QRectF> near;
  std::ranges::copy_if(rooms, std::back_inserter(near), [reach = lines.boundingRect()](const QRectF& room) {
    return room.left() < reach.right() + kNear_mm && reach.left() - kNear_mm < room.right() &&
           room.top() < reach.bottom() + kNear_mm && reach.top() - kNear_mm < room.bottom();
  });
  if (near.empty()) return lines;
  QPainterPath out;
  for (const QPolygonF& polygon : lines.toSubpathPolygons()) {
    for (qsizetype k = 1; k < polygon.size(); ++k) addOutside(out, polygon[k - 1], polygon[k], near);
  }
  return out;
}

bool crosses(const QPainterPath& lines, const QRectF& room) {
  for (const QPolygonF& polygon : lines.toSubpathPolygons()) {
    for (qsizetype k = 1; k < polygon.size(); ++k) {
      const auto [from, to] = shareInside(polygon[k - 1], polygon[k], room);
      if (from < to) return true;
    }
  }
  return false;
}

}  // namespace ui::drawings
