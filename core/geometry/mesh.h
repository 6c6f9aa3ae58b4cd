#pragma once

#include "core/geometry/outline.h"

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include <Eigen/Core>

namespace core::geometry {

/// Closed triangle surface. z is up; triangles run anticlockwise seen from outside; vertices are shared.
struct Mesh {
  std::vector<Eigen::Vector3d> points;  ///< [m]
  std::vector<std::array<std::uint32_t, 3>> triangles;

  bool empty() const { return triangles.empty(); }
};

/// Point of a profile: the wall stands at `offset_m` from the clear floor outline at level `z_m`.
struct ProfilePoint {
  double offset_m;
  double z_m;
};

/// Cross-section of a solid that follows the outline all round. z_m = 0 is the finished floor.
/// Open: it starts and ends with a flat cap (the whole outline at that level). Closed: a collar, last point
/// joined to the first. The solid lies to the left of the path when z is drawn upward and offset to the right
/// (bottom outward, then up).
struct Profile {
  std::vector<ProfilePoint> points;
  enum class Ends { capped, joined } ends = Ends::capped;
};

/// Volume of the solid of a profile on the exact outline [m3]; straight segments are exact (prismoidal).
double volume(const Outline& outline, const Profile& profile);

/// Closed mesh of the solid of a profile on a facetted outline.
Mesh solid(const Ring& ring, const Profile& profile);

/// Volume enclosed by a closed mesh [m3], positive when triangles face outward.
double volume(const Mesh& mesh);

/// Surface of a mesh [m2].
double area(const Mesh& mesh);

/// Vertical plane through `point` (x, y); the side that `normal` points to is cut away.
struct CutPlane {
  Eigen::Vector2d point = Eigen::Vector2d::Zero();
  Eigen::Vector2d normal = Eigen::Vector2d::UnitY();
};

/// What stays of a closed mesh behind a vertical plane, closed again by a flat section face.
struct CutMesh {
  Mesh mesh;                               ///< closed; empty when nothing stays
  std::size_t first_section_triangle = 0;  ///< triangles from here on are the section face
  std::vector<std::uint32_t>
      origin;  ///< for each triangle before the section face: the triangle it was part of
};

/// Cuts a closed mesh open. The plane is moved by at most 2 micrometres when it would pass through a vertex.
CutMesh cut(const Mesh& mesh, const CutPlane& plane);

}  // namespace core::geometry
