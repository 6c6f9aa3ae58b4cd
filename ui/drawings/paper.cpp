#include "ui/drawings/paper.h"

#include <algorithm>

namespace ui::drawings {

QPolygonF Paper::polygon(const core::geometry::Outline& outline, double offset_m) const {
  const core::geometry::Ring ring = outline.ring(kFacets);
  QPolygonF polygon;
  for (Eigen::Index k = 0; k < ring.size(); ++k) polygon << at(ring.at(k, offset_m));
  polygon << polygon.front();
  return polygon;
}

QPainterPath Paper::outline(const core::geometry::Outline& outline, double offset_m) const {
  QPainterPath path;
  path.addPolygon(polygon(outline, offset_m));
  path.closeSubpath();
  return path;
}

QPainterPath polygonPath(const QPolygonF& polygon) {
  QPainterPath path;
  path.addPolygon(polygon);
  path.closeSubpath();
  return path;
}

bool hasLayer(const core::geometry::TankGeometry& tank, const std::string& id) {
  return std::ranges::any_of(tank.layers(), [&](const auto& layer) { return layer.id == id; });
}

std::optional<double> collarReach(const core::geometry::TankGeometry& tank) {
  if (!hasLayer(tank, "rim")) return std::nullopt;
  const auto profile = tank.layerProfile("rim", 1);
  return std::ranges::max(profile.points, {}, &core::geometry::ProfilePoint::offset_m).offset_m;
}

}  // namespace ui::drawings
