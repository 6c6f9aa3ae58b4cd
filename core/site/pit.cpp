#include "core/site/pit.h"

#include "core/geometry/polygon.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

double outside(const std::vector<Vector2d>& convex, const Vector2d& p) {
  double most = -std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k < convex.size(); ++k) {
    const Vector2d out = geometry::outwardNormal(convex[(k + 1) % convex.size()] - convex[k]);
    most = std::max(most, out.dot(p - convex[k]));
  }
  return most;
}

/// Height of wall or floor above the pit floor, for a point in the pit's plan.
double heightOfPit(const PitShape& pit, const std::vector<Vector2d>& floor, const Vector2d& p) {
  const double run = pit.rim_offset_m - pit.floor_offset_m;
  const double out = outside(floor, p);
  constexpr double kOnEdge_m = 1e-9;
  if (run <= kOnEdge_m) return out >= -kOnEdge_m ? pit.depth_m : 0;
  return pit.depth_m * std::clamp(out / run, 0.0, 1.0);
}

}  // namespace

Vector2d Placement::turned(const Vector2d& direction) const {
  const double turn = turn_deg * std::numbers::pi / 180;
  const double c = std::cos(turn);
  const double s = std::sin(turn);
  return {c * direction.x() - s * direction.y(), s * direction.x() + c * direction.y()};
}

Vector2d Placement::turnedBack(const Vector2d& direction) const {
  return Placement{Vector2d::Zero(), -turn_deg}.turned(direction);
}

PitShape pitShape(const geometry::TankGeometry& tank, const Lining& lining) {
  const double floor_level = tank.depth() - tank.pitDepth();
  return {tank.outline(), tank.pitOffset(tank.depth()), tank.pitOffset(floor_level), tank.pitDepth(),
          lining.rim_width_m};
}

SiteOutline siteOutline(const geometry::Outline& outline, double offset_m, const Placement& placement,
                        int facets_per_circle) {
  const geometry::Ring ring = outline.ring(facets_per_circle);
  SiteOutline result;
  for (Eigen::Index k = 0; k < ring.size(); ++k)
    result.points_m.push_back(placement.toSite(ring.at(k, offset_m)));
  result.area_error = 1 - geometry::signedArea(result.points_m) / outline.area(offset_m);
  if (result.area_error < 1e-12) result.area_error = 0;
  return result;
}

SiteOutline platformOutline(const PitShape& pit, double walkway_m, const Placement& placement,
                            int facets_per_circle) {
  return siteOutline(pit.outline, pit.rim_offset_m + pit.collar_m + walkway_m, placement, facets_per_circle);
}

std::optional<PitCover> leastCover(const GroundSurface& ground, const PitShape& pit,
                                   const Placement& placement, double level_m, double topsoil_m) {
  const std::vector<Vector2d> floor = siteOutline(pit.outline, pit.floor_offset_m, placement).points_m;
  const std::vector<Vector2d> rim = siteOutline(pit.outline, pit.rim_offset_m, placement).points_m;
  PitCover cover{std::numeric_limits<double>::infinity(), Vector3d::Zero(), 0};
  double area = 0;
  for (const Patch& patch : ground.over(rim)) {
    area += planArea(patch);
    for (const Vector3d& p : patch) {
      const double z = level_m - pit.depth_m + heightOfPit(pit, floor, p.head<2>());
      const double here = p.z() - topsoil_m - z;
      if (here < cover.least_m) cover = {here, {p.x(), p.y(), z}, 0};
    }
  }
  if (area < (1 - 1e-9) * geometry::signedArea(rim)) return std::nullopt;
  cover.natural_level_m = level_m + cover.least_m;
  return cover;
}

}  // namespace core::site
