#include "core/site/tin.h"

#include "core/geometry/polygon.h"
#include "core/site/delaunay.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::cross;
using Index = std::uint32_t;

// Qbb scales, Qz adds a point at infinity for points on one circle, Q5 leaves out a check of thick facets
// that takes as long as the rest; what comes out is checked here.
constexpr const char* kOptions = "qhull d Qbb Qz Q12 Q5";

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  return cross(b - a, c - a);
}

/// Plan of the points about their middle, each place once.
struct Plan {
  std::vector<Vector2d> at;
  std::vector<Index> number;  ///< in the list as given
  double extent = 0;
};

Plan planOf(std::span<const Vector3d> points, std::vector<Index>& unused) {
  Plan plan;
  Vector2d least = Vector2d::Constant(std::numeric_limits<double>::infinity());
  Vector2d most = -least;
  for (const Vector3d& p : points) {
    least = least.cwiseMin(p.head<2>());
    most = most.cwiseMax(p.head<2>());
  }
  const Vector2d middle = (least + most) / 2;
  plan.extent = (most - least).maxCoeff();
  const double same = 1e-9 * plan.extent;
  std::vector<Index> order(points.size());
  std::iota(order.begin(), order.end(), Index{0});
  std::stable_sort(order.begin(), order.end(), [&](Index a, Index b) {
    return points[a].x() != points[b].x() ? points[a].x() < points[b].x() : points[a].y() < points[b].y();
  });
  for (const Index k : order) {
    const Vector2d at = points[k].head<2>() - middle;
    if (!plan.at.empty() && (plan.at.back() - at).cwiseAbs().maxCoeff() <= same) {
      unused.push_back(k);
      continue;
    }
    plan.at.push_back(at);
    plan.number.push_back(k);
  }
  return plan;
}

bool isCollinear(const Plan& plan) {
  const Vector2d a = plan.at.front();
  const auto far = std::max_element(
      plan.at.begin(), plan.at.end(),
      [&](const Vector2d& p, const Vector2d& q) { return (p - a).squaredNorm() < (q - a).squaredNorm(); });
  const double length = (*far - a).norm();
  return std::all_of(plan.at.begin(), plan.at.end(), [&](const Vector2d& p) {
    return std::abs(cross(*far - a, p - a)) <= 1e-9 * length * length;
  });
}

/// Cuts a face with its corners on one circle into triangles.
void addFan(const Plan& plan, std::vector<Index> corners, std::vector<Tin::Triangle>& out) {
  if (corners.size() < 3) return;
  Vector2d middle = Vector2d::Zero();
  for (const Index k : corners) middle += plan.at[k] / static_cast<double>(corners.size());
  const auto angle = [&](Index k) {
    return std::atan2(plan.at[k].y() - middle.y(), plan.at[k].x() - middle.x());
  };
  std::sort(corners.begin(), corners.end(), [&](Index a, Index b) { return angle(a) < angle(b); });
  for (std::size_t k = 1; k + 1 < corners.size(); ++k)
    out.push_back({corners[0], corners[k], corners[k + 1]});
}

void addTriangle(const Plan& plan, Tin::Triangle t, std::vector<Tin::Triangle>& out) {
  if (turn(plan.at[t[0]], plan.at[t[1]], plan.at[t[2]]) < 0) std::swap(t[1], t[2]);
  out.push_back(t);
}

std::vector<Tin::Triangle> trianglesOf(const Plan& plan, const DelaunayFaces& faces) {
  std::vector<Tin::Triangle> triangles;
  triangles.reserve(2 * plan.at.size());
  auto corner = faces.corners.begin();
  for (const std::uint32_t size : faces.size) {
    if (size == 3) {
      addTriangle(plan, {corner[0], corner[1], corner[2]}, triangles);
    } else {
      addFan(plan, {corner, corner + size}, triangles);
    }
    corner += size;
  }
  return triangles;
}

/// Area of the convex hull [m2] of points in the order of x, then y (Andrew's monotone chain).
double hullArea(const std::vector<Vector2d>& points) {
  std::vector<Vector2d> hull;
  const auto take = [&](auto from, auto to) {
    const std::size_t least = hull.size() + 1;
    for (auto p = from; p != to; ++p) {
      while (hull.size() > least && turn(hull[hull.size() - 2], hull.back(), *p) <= 0) hull.pop_back();
      hull.push_back(*p);
    }
    hull.pop_back();
  };
  take(points.begin(), points.end());
  take(points.rbegin(), points.rend());
  return geometry::signedArea(hull);
}

/// True when the triangles cover the hull once: none turned over, their areas adding up to the hull's.
bool isSound(const Plan& plan, std::vector<Tin::Triangle>& triangles) {
  double twice = 0;
  const double flat = 1e-12 * plan.extent * plan.extent;
  const auto area = [&](const Tin::Triangle& t) { return turn(plan.at[t[0]], plan.at[t[1]], plan.at[t[2]]); };
  if (std::any_of(triangles.begin(), triangles.end(), [&](const auto& t) { return area(t) < -flat; }))
    return false;
  std::erase_if(triangles, [&](const auto& t) { return area(t) <= 1e-6 * flat; });
  for (const Tin::Triangle& t : triangles) twice += area(t);
  std::vector<bool> used(plan.at.size(), false);
  for (const Tin::Triangle& t : triangles) {
    for (const Index k : t) used[k] = true;
  }
  const double hull = hullArea(plan.at);
  return std::abs(twice / 2 - hull) <= 1e-9 * hull &&
         std::find(used.begin(), used.end(), false) == used.end();
}

/// Points moved to a fine square grid.
std::vector<Vector3d> snapped(std::span<const Vector3d> points) {
  Vector2d least = points.front().head<2>();
  Vector2d most = least;
  for (const Vector3d& p : points) {
    least = least.cwiseMin(p.head<2>());
    most = most.cwiseMax(p.head<2>());
  }
  const double step = 1e-6 * (most - least).maxCoeff();
  std::vector<Vector3d> moved(points.begin(), points.end());
  for (Vector3d& p : moved)
    p.head<2>() = least + step * ((p.head<2>() - least) / step).array().round().matrix();
  return moved;
}

/// Sides of one triangle only, in order of their corners.
std::vector<std::array<std::uint32_t, 2>> rimOf(const std::vector<Tin::Triangle>& triangles) {
  std::vector<std::array<std::uint32_t, 2>> sides;
  sides.reserve(3 * triangles.size());
  for (const Tin::Triangle& t : triangles) {
    for (std::size_t k = 0; k < 3; ++k)
      sides.push_back({std::min(t[k], t[(k + 1) % 3]), std::max(t[k], t[(k + 1) % 3])});
  }
  std::sort(sides.begin(), sides.end());
  std::vector<std::array<std::uint32_t, 2>> rim;
  for (std::size_t k = 0; k < sides.size(); ++k) {
    const bool is_shared =
        (k > 0 && sides[k] == sides[k - 1]) || (k + 1 < sides.size() && sides[k] == sides[k + 1]);
    if (!is_shared) rim.push_back(sides[k]);
  }
  return rim;
}

tl::expected<Tin, TinFault> tryOnce(std::span<const Vector3d> points_m, const std::atomic<bool>* cancel) {
  Tin tin;
  const Plan plan = planOf(points_m, tin.unused);
  if (plan.at.size() < 3) return tl::unexpected(TinFault::too_few);
  if (isCollinear(plan)) return tl::unexpected(TinFault::collinear);
  std::vector<double> xy;
  xy.reserve(2 * plan.at.size());
  for (const Vector2d& p : plan.at) xy.insert(xy.end(), {p.x(), p.y()});
  DelaunayFaces faces;
  const DelaunayResult result = delaunay(xy, kOptions, cancel, faces);
  if (result == DelaunayResult::cancelled) return tl::unexpected(TinFault::cancelled);
  tin.triangles = trianglesOf(plan, faces);
  if (result == DelaunayResult::failed || !isSound(plan, tin.triangles))
    return tl::unexpected(TinFault::failed);
  for (Tin::Triangle& t : tin.triangles) t = {plan.number[t[0]], plan.number[t[1]], plan.number[t[2]]};
  tin.rim = rimOf(tin.triangles);
  tin.points_m.assign(points_m.begin(), points_m.end());
  std::sort(tin.unused.begin(), tin.unused.end());
  return tin;
}

}  // namespace

tl::expected<Tin, TinFault> triangulated(std::span<const Vector3d> points_m,
                                         const std::atomic<bool>* cancel) {
  if (points_m.size() < 3) return tl::unexpected(TinFault::too_few);
  auto tin = tryOnce(points_m, cancel);
  if (tin || tin.error() != TinFault::failed) return tin;
  return tryOnce(snapped(points_m), cancel);
}

}  // namespace core::site
