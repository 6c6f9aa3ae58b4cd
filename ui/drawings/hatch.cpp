#include "ui/drawings/hatch.h"

#include <QPolygonF>
#include <QTransform>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::drawings {
namespace {

/// Places along the level y where it crosses the outline of the region, in order.
std::vector<double> crossings(const QList<QPolygonF>& polygons, double y) {
  std::vector<double> xs;
  for (const QPolygonF& polygon : polygons) {
    for (qsizetype k = 0; k < polygon.size(); ++k) {
      const QPointF a = polygon[k], b = polygon[(k + 1) % polygon.size()];
      if ((a.y() <= y) == (b.y() <= y)) continue;
      xs.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
  }
  std::ranges::sort(xs);
  return xs;
}

/// What lies inside the region at three levels close together.
class Band {
public:
  Band(const QList<QPolygonF>& polygons, double y, double half)
      : levels_{crossings(polygons, y - half), crossings(polygons, y), crossings(polygons, y + half)} {}

  /// True when the region reaches `clear` to both sides of x at all three levels.
  bool holds(double x, double clear) const {
    return std::ranges::all_of(levels_, [&](const std::vector<double>& xs) {
      for (std::size_t i = 1; i < xs.size(); i += 2) {
        if (xs[i - 1] + clear <= x && x <= xs[i] - clear) return true;
      }
      return false;
    });
  }

private:
  std::array<std::vector<double>, 3> levels_;
};

/// Jump from one dot, stone or row to the next that looks scattered but is always the same.
double scatter(int k) {
  const double x = std::sin(12.9898 * (k + 1)) * 43758.5453;
  return x - std::floor(x);
}

}  // namespace

QPainterPath lineHatch(const QPainterPath& region, double angle_deg, const std::vector<double>& spacing_mm) {
  const QTransform level = QTransform().rotate(angle_deg);
  const QTransform back = level.inverted();
  const QList<QPolygonF> polygons = region.toSubpathPolygons(level);
  const QRectF box = level.map(region).boundingRect();
  QPainterPath lines;
  std::size_t k = 0;
  double y = box.top() + spacing_mm[0] / 2;
  while (y < box.bottom()) {
    const std::vector<double> xs = crossings(polygons, y);
    for (std::size_t i = 1; i < xs.size(); i += 2) {
      lines.moveTo(back.map(QPointF(xs[i - 1], y)));
      lines.lineTo(back.map(QPointF(xs[i], y)));
    }
    y += spacing_mm[k++ % spacing_mm.size()];
  }
  return lines;
}

QPainterPath dotHatch(const QPainterPath& region, double spacing_mm, double diameter_mm) {
  const QList<QPolygonF> polygons = region.toSubpathPolygons();
  const QRectF box = region.boundingRect();
  const double r = diameter_mm / 2;
  QPainterPath dots;
  const auto addRow = [&](double y, double first) {
    const Band band(polygons, y, 1.3 * r);
    const int count = static_cast<int>((box.right() - first) / spacing_mm) + 1;
    for (int k = 0; k < count; ++k) {
      const double x = first + k * spacing_mm;
      if (band.holds(x, 1.8 * r)) dots.addEllipse(QPointF(x, y), r, r);
    }
  };
  const double pitch = spacing_mm * 0.75, first = std::ceil(box.left() / spacing_mm) * spacing_mm;
  const int rows = static_cast<int>(box.height() / pitch) + 1;
  for (int row = 0; row < rows; ++row) {
    addRow(box.top() + spacing_mm / 2 + row * pitch, first + (row % 2) * spacing_mm / 2);
  }
  return dots;
}

QPainterPath stones(const QRectF& layer) {
  QPainterPath out;
  const double h = layer.height();
  int k = 0;
  double x = layer.left() + 0.1 * h;
  for (; x < layer.right() - 0.6 * h; ++k) {
    const double w = std::min(h * (0.9 + 0.7 * scatter(k)), layer.right() - 0.1 * h - x);
    const double top = layer.top() + 0.18 * h * scatter(k + 50),
                 bottom = layer.bottom() - 0.1 * h * scatter(k + 90);
    out.addRoundedRect(QRectF(QPointF(x, top), QPointF(x + w, bottom)), w * 0.4, (bottom - top) * 0.45);
    x += w + 0.12 * h;
  }
  return out;
}

CoatHatch coatHatch(const QPainterPath& region, int coat) {
  if (coat % 2 == 1) return {dotHatch(region, 1.6, 0.5), {}};
  return {{}, lineHatch(region, coat % 4 == 2 ? 45 : -45, {1.5})};
}

QPainterPath earthHatch(const QPainterPath& region) {
  return lineHatch(region, 45, {0.9, 0.9, 3.2});
}

}  // namespace ui::drawings
