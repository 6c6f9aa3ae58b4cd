#include "tests/support/cgal_mesh.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Polygon_mesh_processing/orientation.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Polygon_mesh_slicer.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/boost/graph/helpers.h>
#include <CGAL/convex_hull_2.h>
#include <CGAL/convex_hull_3.h>

namespace support::cgal {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Exact = CGAL::Exact_predicates_exact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;
using Loop = CGAL::Polygon_2<Kernel>;
using Polyline = std::vector<Kernel::Point_3>;
namespace processing = CGAL::Polygon_mesh_processing;

bool build(const core::geometry::Mesh& mesh, Surface& surface) {
  std::vector<Surface::Vertex_index> at;
  at.reserve(mesh.points.size());
  for (const Eigen::Vector3d& p : mesh.points) at.push_back(surface.add_vertex({p.x(), p.y(), p.z()}));
  bool all = true;
  for (const auto& t : mesh.triangles) {
    all = surface.add_face(at[t[0]], at[t[1]], at[t[2]]) != Surface::null_face() && all;
  }
  return all;
}

Loop loop(const Polygon& polygon) {
  Loop result;
  for (const Eigen::Vector2d& p : polygon) result.push_back({p.x(), p.y()});
  return result;
}

Loop flat(const Polyline& line, const Eigen::Vector2d& along) {
  Loop result;
  for (auto p = line.begin(); p + 1 != line.end(); ++p) {
    result.push_back({along.x() * p->x() + along.y() * p->y(), p->z()});
  }
  return result;
}

bool isHole(const Loop& of, const std::vector<Loop>& loops) {
  const auto around = [&](const Loop& other) {
    return &other != &of && other.has_on_bounded_side(of.vertex(0));
  };
  return std::count_if(loops.begin(), loops.end(), around) % 2 == 1;
}

Exact::Line_2 movedEdge(const Eigen::Vector2d& from, const Eigen::Vector2d& to, double by_m) {
  const Eigen::Vector2d along = to - from;
  const Eigen::Vector2d out = Eigen::Vector2d(along.y(), -along.x()) / std::hypot(along.x(), along.y());
  const Exact::FT by(by_m);
  const Exact::Point_2 at(Exact::FT(from.x()) + by * out.x(), Exact::FT(from.y()) + by * out.y());
  return {at, Exact::Vector_2(Exact::FT(to.x()) - from.x(), Exact::FT(to.y()) - from.y())};
}

}  // namespace

Solid solid(const core::geometry::Mesh& mesh) {
  Solid result;
  Surface surface;
  result.manifold = build(mesh, surface) && !surface.is_empty();
  result.closed = CGAL::is_closed(surface);
  if (!result.manifold || !result.closed) return result;
  result.outward = processing::is_outward_oriented(surface);
  result.volume_m3 = CGAL::to_double(processing::volume(surface));
  result.area_m2 = CGAL::to_double(processing::area(surface));
  result.positive = result.volume_m3 > 0;
  return result;
}

bool selfIntersects(const core::geometry::Mesh& mesh) {
  Surface surface;
  return !build(mesh, surface) || processing::does_self_intersect(surface);
}

double sectionArea(const core::geometry::Mesh& mesh, const core::geometry::CutPlane& plane) {
  Surface surface;
  build(mesh, surface);
  const Eigen::Vector2d n = plane.normal.normalized();
  std::vector<Polyline> lines;
  CGAL::Polygon_mesh_slicer<Surface, Kernel> slicer(surface);
  slicer(Kernel::Plane_3({plane.point.x(), plane.point.y(), 0}, Kernel::Vector_3(n.x(), n.y(), 0)),
         std::back_inserter(lines));
  std::vector<Loop> loops;
  for (const Polyline& line : lines) {
    if (line.size() > 3) loops.push_back(flat(line, {-n.y(), n.x()}));
  }
  double sum = 0;
  for (const Loop& one : loops) sum += (isHole(one, loops) ? -1 : 1) * std::abs(one.area());
  return sum;
}

Polygon offset(const Polygon& polygon, double by_m) {
  const std::size_t n = polygon.size();
  Polygon result;
  for (std::size_t k = 0; k < n; ++k) {
    const auto before = movedEdge(polygon[(k + n - 1) % n], polygon[k], by_m);
    const auto after = movedEdge(polygon[k], polygon[(k + 1) % n], by_m);
    const auto meet = CGAL::intersection(before, after);
    const auto& at = boost::get<Exact::Point_2>(meet.value());
    result.emplace_back(CGAL::to_double(at.x()), CGAL::to_double(at.y()));
  }
  return result;
}

double area(const Polygon& polygon) {
  return loop(polygon).area();
}

double perimeter(const Polygon& polygon) {
  const Loop one = loop(polygon);
  double sum = 0;
  for (auto edge = one.edges_begin(); edge != one.edges_end(); ++edge)
    sum += std::sqrt(edge->squared_length());
  return sum;
}

double sumArea(const Polygon& a, const Polygon& b) {
  std::vector<Kernel::Point_2> sums;
  for (const Eigen::Vector2d& p : a) {
    for (const Eigen::Vector2d& q : b) sums.emplace_back(p.x() + q.x(), p.y() + q.y());
  }
  Loop hull;
  CGAL::convex_hull_2(sums.begin(), sums.end(), std::back_inserter(hull));
  return hull.area();
}

Hull frustum(const Polygon& low, double low_m, const Polygon& high, double high_m) {
  std::vector<Kernel::Point_3> points;
  for (const Eigen::Vector2d& p : low) points.emplace_back(p.x(), p.y(), low_m);
  for (const Eigen::Vector2d& p : high) points.emplace_back(p.x(), p.y(), high_m);
  Surface hull;
  CGAL::convex_hull_3(points.begin(), points.end(), hull);
  return {CGAL::to_double(processing::volume(hull)), CGAL::to_double(processing::area(hull))};
}

}  // namespace support::cgal
