#include "ui/drawings/section_shape.h"

#include "ui/drawings/paper.h"

#include <QPolygonF>
#include <algorithm>
#include <limits>

namespace ui::drawings {

SectionShape::SectionShape(const core::geometry::TankGeometry& tank, double n)
    : tank_(tank), ring_(tank.outline().ring(kFacets)), mm_per_m_(1000 / n) {}

std::pair<double, double> SectionShape::span(double offset_m) const {
  const Eigen::Vector2d middle = tank_.outline().centre();
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (Eigen::Index k = 0; k < ring_.size(); ++k) {
    const Eigen::Vector2d a = ring_.at(k, offset_m), b = ring_.at((k + 1) % ring_.size(), offset_m);
    if ((a.x() <= middle.x()) == (b.x() <= middle.x())) continue;
    const double y = a.y() + (middle.x() - a.x()) / (b.x() - a.x()) * (b.y() - a.y()) - middle.y();
    low = std::min(low, y);
    high = std::max(high, y);
  }
  return low <= high ? std::pair(low, high) : std::pair(0., 0.);
}

QPainterPath SectionShape::face(const core::geometry::Profile& profile) const {
  QPolygonF right, left;
  for (const auto& p : profile.points) {
    right << rightPoint(p);
    left << leftPoint(p);
  }
  QPainterPath path;
  if (profile.ends == core::geometry::Profile::Ends::capped) {
    std::reverse(left.begin(), left.end());
    path.addPolygon(right + left);
  } else {
    path.addPolygon(right);
    path.closeSubpath();
    path.addPolygon(left);
  }
  path.closeSubpath();
  return path;
}

QPainterPath SectionShape::pitEdge() const {
  const auto profile = tank_.pitProfile();
  QPainterPath path(leftPoint(profile.points.back()));
  for (auto p = profile.points.rbegin() + 1; p != profile.points.rend(); ++p) path.lineTo(leftPoint(*p));
  for (const auto& p : profile.points) path.lineTo(rightPoint(p));
  return path;
}

}  // namespace ui::drawings
