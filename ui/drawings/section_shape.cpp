#include "ui/drawings/section_shape.h"

#include "ui/drawings/paper.h"

#include <QPolygonF>
#include <algorithm>
#include <limits>

namespace ui::drawings {

SectionShape::SectionShape(const core::geometry::TankGeometry& tank, double n, SectionCut cut)
    : tank_(tank), ring_(tank.outline().ring(kFacets)), mm_per_m_(1000 / n), cut_(cut) {}

std::pair<double, double> SectionShape::span(double offset_m) const {
  const Eigen::Vector2d middle = tank_.outline().centre();
  const Eigen::Index along = cut_ == SectionCut::along ? 0 : 1, aside = 1 - along;
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (Eigen::Index k = 0; k < ring_.size(); ++k) {
    const Eigen::Vector2d a = ring_.at(k, offset_m), b = ring_.at((k + 1) % ring_.size(), offset_m);
    if ((a[aside] <= middle[aside]) == (b[aside] <= middle[aside])) continue;
    const double share = (middle[aside] - a[aside]) / (b[aside] - a[aside]);
    const double at = a[along] + share * (b[along] - a[along]) - middle[along];
    low = std::min(low, at);
    high = std::max(high, at);
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

QPainterPath SectionShape::pitEdge(double dug_m) const {
  if (dug_m <= 0) {
    const core::geometry::ProfilePoint edge = tank_.pitProfile().points.back();
    QPainterPath level(leftPoint(edge));
    level.lineTo(rightPoint(edge));
    return level;
  }
  const auto profile = tank_.pitProfile(dug_m);
  QPainterPath path(leftPoint(profile.points.back()));
  for (auto p = profile.points.rbegin() + 1; p != profile.points.rend(); ++p) path.lineTo(leftPoint(*p));
  for (const auto& p : profile.points) path.lineTo(rightPoint(p));
  return path;
}

}  // namespace ui::drawings
