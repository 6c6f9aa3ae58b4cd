#pragma once

#include "core/geometry/mesh.h"

#include <vector>

#include <Eigen/Core>

/// The same questions answered by CGAL, the Computational Geometry Algorithms Library.
namespace support::cgal {

struct Solid {
  bool manifold =
      false;  ///< every face could be joined: each edge in two faces with opposite directions at most
  bool closed = false;
  bool outward = false;   ///< the normal of an extreme vertex's faces points outward
  bool positive = false;  ///< volume_m3 > 0
  double volume_m3 = 0;
  double area_m2 = 0;

  bool sound() const { return manifold && closed && outward && positive; }
};

Solid solid(const core::geometry::Mesh& mesh);
bool selfIntersects(const core::geometry::Mesh& mesh);

/// Area of a vertical section [m2], from the loops of Polygon_mesh_slicer with holes left out.
double sectionArea(const core::geometry::Mesh& mesh, const core::geometry::CutPlane& plane);

using Polygon = std::vector<Eigen::Vector2d>;

/// A convex polygon with each edge's line moved outward, corners from an exact intersection of the lines.
Polygon offset(const Polygon& polygon, double by_m);
double area(const Polygon& polygon);
double perimeter(const Polygon& polygon);
/// Area of the convex hull of all sums of a point of `a` and a point of `b`: their Minkowski sum when both
/// are convex.
double sumArea(const Polygon& a, const Polygon& b);

struct Hull {
  double volume_m3;
  double area_m2;
};

/// Convex hull of a polygon at one level and a polygon at another.
Hull frustum(const Polygon& low, double low_m, const Polygon& high, double high_m);

}  // namespace support::cgal
