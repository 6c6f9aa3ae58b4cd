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

const std::vector<double> kEarthSpacing_mm{0.9, 0.9, 3.2};
constexpr double kEarth_deg = 45;

struct Span {
  double from, to;
};

/// Ground within a depth of a surface, asked along level lines of a turned frame. The parts near each piece
/// of the surface are put together and the air over the surface is taken away, span by span.
class EarthBand {
public:
  EarthBand(const QPolygonF& surface, double deep_mm, const QTransform& turn)
      : surface_(turn.map(surface)), deep_(deep_mm), box_(surface_.boundingRect()) {
    const QRectF around =
        surface.boundingRect().adjusted(-2 * deep_mm, -2 * deep_mm, 2 * deep_mm, 2 * deep_mm);
    QPolygonF air = surface;  // and what lies beyond both ends
    air << QPointF(surface.back().x(), around.bottom()) << around.bottomRight() << around.topRight()
        << around.topLeft() << around.bottomLeft() << QPointF(surface.front().x(), around.bottom());
    air_ = {turn.map(air)};
  }

  double top() const { return box_.top() - deep_; }
  double bottom() const { return box_.bottom() + deep_; }

  std::vector<Span> at(double y) const {
    std::vector<Span> earth;
    const std::vector<double> air = crossings(air_, y);
    for (const Span& near : spansNear(y)) {
      double from = near.from;
      for (std::size_t i = 1; i < air.size(); i += 2) {
        if (air[i] <= from || air[i - 1] >= near.to) continue;
        if (air[i - 1] > from) earth.push_back({from, air[i - 1]});
        from = air[i];
      }
      if (from < near.to) earth.push_back({from, near.to});
    }
    return earth;
  }

private:
  QPolygonF surface_;
  double deep_;
  QRectF box_;
  QList<QPolygonF> air_;

  /// Joined spans of the line that lie within the depth of the surface.
  std::vector<Span> spansNear(double y) const {
    std::vector<Span> spans;
    for (qsizetype k = 0; k + 1 < surface_.size(); ++k) {
      addBeside(spans, surface_[k], surface_[k + 1], y);
      if (k > 0) addAbout(spans, surface_[k], y);
    }
    std::ranges::sort(spans, {}, &Span::from);
    std::vector<Span> joined;
    for (const Span& span : spans) {
      if (!joined.empty() && span.from <= joined.back().to) {
        joined.back().to = std::max(joined.back().to, span.to);
      } else {
        joined.push_back(span);
      }
    }
    return joined;
  }

  void addBeside(std::vector<Span>& spans, QPointF a, QPointF b, double y) const {
    const QPointF along = b - a;
    const double length = std::hypot(along.x(), along.y());
    if (length < 1e-9) return;
    const QPointF aside = QPointF(-along.y(), along.x()) * (deep_ / length);
    const std::vector<double> xs = crossings({QPolygonF{a + aside, b + aside, b - aside, a - aside}}, y);
    if (xs.size() == 2) spans.push_back({xs[0], xs[1]});
  }

  void addAbout(std::vector<Span>& spans, QPointF p, double y) const {
    const double square = deep_ * deep_ - (y - p.y()) * (y - p.y());
    if (square <= 0) return;
    spans.push_back({p.x() - std::sqrt(square), p.x() + std::sqrt(square)});
  }
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
  return lineHatch(region, kEarth_deg, kEarthSpacing_mm);
}

QPainterPath earthHatch(const QPolygonF& surface, double deep_mm) {
  const QTransform level = QTransform().rotate(kEarth_deg);
  const QTransform back = level.inverted();
  const EarthBand band(surface, deep_mm, level);
  QPainterPath lines;
  std::size_t k = 0;
  for (double y = band.top() + kEarthSpacing_mm[0] / 2; y < band.bottom();
       y += kEarthSpacing_mm[k++ % kEarthSpacing_mm.size()]) {
    for (const Span& span : band.at(y)) {
      lines.moveTo(back.map(QPointF(span.from, y)));
      lines.lineTo(back.map(QPointF(span.to, y)));
    }
  }
  return lines;
}

}  // namespace ui::drawings
