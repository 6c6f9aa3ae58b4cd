#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include <Eigen/Core>

namespace core::geometry {

/// Triangles of a simple anticlockwise polygon without holes, all its corners used, none of the triangles
/// turned over. Corners in a straight line are allowed. Ear clipping, quadratic in the number of corners.
std::vector<std::array<std::uint32_t, 3>> triangulate(const std::vector<Eigen::Vector2d>& polygon);

}  // namespace core::geometry
