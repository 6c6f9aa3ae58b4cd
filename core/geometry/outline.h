#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"

#include <vector>

#include <Eigen/Core>

namespace core::geometry {

/// Points of an outline that move outward in straight lines as the outline grows: point k at offset d is
/// base_k + d * direction_k. Anticlockwise. Edges keep their direction at every offset, so the strip between
/// two offsets is made of plane quads.
struct Ring {
  Eigen::Matrix2Xd base;       ///< positions at offset 0 [m]
  Eigen::Matrix2Xd direction;  ///< move per unit offset [m/m]

  Eigen::Index size() const { return base.cols(); }
  Eigen::Vector2d at(Eigen::Index k, double offset_m) const {
    return base.col(k) + offset_m * direction.col(k);
  }
};

/// The clear floor outline of a tank and the family of outlines parallel to it.
/// A convex polygon with sharp or rounded corners, or a circle. Offset d [m] is positive outward.
///   area      A(d) = A0 + P0 d + C d^2
///   perimeter P(d) = P0 + 2 C d
/// with C = sum of cot(interior angle / 2) for sharp corners and pi for round ones.
/// Valid for d >= leastOffset().
class Outline {
public:
  /// Convex, anticlockwise polygon with every corner rounded to `radius_m` (0: sharp).
  /// @param corners_m polygon of the straight edges' lines [m]; at least 3, strictly convex
  static Outline polygon(std::vector<Eigen::Vector2d> corners_m, double radius_m);
  /// Circle about the origin.
  static Outline circle(double radius_m);
  /// Rectangle about the origin, length along x.
  static Outline rectangle(double length_m, double width_m, double radius_m);

  double area(double offset_m) const;       ///< [m2]
  double perimeter(double offset_m) const;  ///< [m]
  /// Integral of area dz between two levels while the offset runs linearly from `from_m` to `to_m` [m3];
  /// exact.
  double volume(double from_m, double to_m, double height_m) const;
  double cornerCoefficient() const { return c_; }
  /// Smallest offset for which every edge (and a round corner's radius) is still there [m].
  double leastOffset() const { return least_offset_m_; }

  bool isCircle() const { return corners_.empty(); }
  double radius() const { return radius_m_; }  ///< of the circle or the corners at offset 0 [m]
  /// Sharp corners at an offset [m], where the lines of the straight edges meet; empty for a circle.
  std::vector<Eigen::Vector2d> corners(double offset_m) const;
  /// Extent along x and y at an offset [m].
  Eigen::Vector2d size(double offset_m) const;
  Eigen::Vector2d centre() const { return centre_; }  ///< middle of the extents [m]

  /// Facetted outline with `facets_per_circle` facets to a full turn; vertices lie on the true curve.
  Ring ring(int facets_per_circle) const;

private:
  std::vector<Eigen::Vector2d> corners_;  // sharp corners at offset 0
  std::vector<Eigen::Vector2d> mitres_;   // move of a sharp corner per unit offset
  Eigen::Vector2d centre_ = Eigen::Vector2d::Zero();
  double radius_m_ = 0;
  double a0_ = 0, p0_ = 0, c_ = 0, least_offset_m_ = 0;
};

/// Problems of a polygon as typed: too few corners, clockwise, self-touching, not strictly convex. Path
/// "tank.outline_m[k]".
Problems checkOutline(const std::vector<Eigen::Vector2d>& corners_m);

}  // namespace core::geometry
