#pragma once

#include <cstddef>
#include <vector>

#include <Eigen/Core>

namespace core::geometry {

/// z of the cross product of two vectors in the plane.
inline double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
  return a.x() * b.y() - a.y() * b.x();
}

/// Unit normal to the right of an edge: outward for an anticlockwise polygon.
inline Eigen::Vector2d outwardNormal(const Eigen::Vector2d& edge) {
  return Eigen::Vector2d(edge.y(), -edge.x()).normalized();
}

/// Area of a polygon [m2], positive when anticlockwise (shoelace formula).
inline double signedArea(const std::vector<Eigen::Vector2d>& corners) {
  double twice = 0;
  for (std::size_t k = 0; k < corners.size(); ++k) {
    twice += cross(corners[k] - corners[0], corners[(k + 1) % corners.size()] - corners[0]);
  }
  return twice / 2;
}

}  // namespace core::geometry
