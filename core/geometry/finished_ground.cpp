#include "core/geometry/polygon.h"
#include "core/geometry/relief.h"

#include <limits>
#include <utility>

namespace core::geometry {

using Eigen::Vector2d;

FinishedGround::FinishedGround(const TankGeometry& tank, Relief relief, int facets_per_circle,
                               const Built& built)
    : relief_(std::move(relief)),
      ring_(tank.outline().ring(facets_per_circle)),
      middle_(tank.outline().centre()),
      rim_m_(tank.depth()),
      pit_edge_m_(tank.pitProfile().points.back().offset_m),
      platform_m_(std::max(relief_.platform_offset_m, pit_edge_m_)),
      outermost_m_(platform_m_ + relief_.reach_m),
      dug_m_(built.dug_m),
      is_platform_made_(built.is_platform_made) {}

double FinishedGround::offset(const Vector2d& at) const {
  double farthest = -std::numeric_limits<double>::infinity();
  for (Eigen::Index k = 0; k < ring_.size(); ++k) {
    const Vector2d normal = outwardNormal(ring_.base.col((k + 1) % ring_.size()) - ring_.base.col(k));
    // an edge of a facetted circle moves out less than its ends do
    farthest = std::max(farthest, normal.dot(at - ring_.base.col(k)) / normal.dot(ring_.direction.col(k)));
  }
  return farthest;
}

GroundHeights FinishedGround::heights(const Vector2d& at, double offset_m) const {
  const double outside = std::max(0.0, offset_m - platform_m_);
  const double natural = relief_.natural_m(at);
  if (!is_platform_made_) return {natural, -1, -1};
  return {natural, natural - (rim_m_ + outside / relief_.cut_batter),
          rim_m_ - outside / relief_.fill_batter - natural};
}

}  // namespace core::geometry
