#pragma once

#include "core/geometry/tank_geometry.h"

#include <utility>
#include <vector>

#include <Eigen/Core>

namespace core::geometry {

inline constexpr double kPegUp_m = 0.3;      ///< top of a peg over the ground
inline constexpr double kStringUp_m = 0.15;  ///< string over the ground

/// Where pegs stand and strings run before digging, seen from above, in the tank's frame [m].
struct PegPlaces {
  std::vector<Eigen::Vector2d> pegs;
  std::vector<std::pair<Eigen::Vector2d, Eigen::Vector2d>> strings;
};

/// Pegs at the corners of a pit and 1 m clear of them on the sides' lines, with strings along those; of a
/// round pit its centre and eight about its edge.
PegPlaces pegPlaces(const TankGeometry& tank);

}  // namespace core::geometry
