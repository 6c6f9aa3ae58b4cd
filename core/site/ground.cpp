#include "core/site/ground.h"

#include "core/geometry/polygon.h"

#include <cmath>
#include <numbers>
#include <utility>

#include <Eigen/Dense>

namespace core::site {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

/// Adds the moments of a patch for a least-squares plane z = a + b x + c y. Products of two linear functions
/// are integrated by the middles of the sides, which is exact.
void addMoments(const Patch& patch, const Vector2d& about, Matrix3d& normal, Vector3d& right) {
  for (std::size_t k = 1; k + 1 < patch.size(); ++k) {
    const std::array<Vector3d, 3> corner{patch[0], patch[k], patch[k + 1]};
    const double area =
        geometry::cross((corner[1] - corner[0]).head<2>(), (corner[2] - corner[0]).head<2>()) / 2;
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector3d middle = (corner[i] + corner[(i + 1) % 3]) / 2;
      const Vector3d row(1, middle.x() - about.x(), middle.y() - about.y());
      normal += area / 3 * row * row.transpose();
      right += area / 3 * middle.z() * row;
    }
  }
}

Linear inside(const Vector2d& a, const Vector2d& b) {
  const Vector2d n = -geometry::outwardNormal(b - a);
  return {{n.x(), n.y(), 0}, -n.dot(a)};
}

Patch clipped(Patch patch, const std::vector<Linear>& edges) {
  for (const Linear& edge : edges) {
    patch = keep(patch, edge);
    if (patch.empty()) break;
  }
  return patch;
}

}  // namespace

Fall fallOf(const Plane& plane) {
  const double steepness = plane.gradient.norm();
  Fall fall{100 * steepness, std::atan(steepness) / kDegree, {}};
  if (steepness < 1e-9) return fall;
  const double azimuth = std::atan2(-plane.gradient.x(), -plane.gradient.y()) / kDegree;
  fall.azimuth_deg = azimuth < 0 ? azimuth + 360 : azimuth;
  return fall;
}

GroundSurface GroundSurface::level(double level_m) {
  return plane({Vector2d::Zero(), level_m});
}

GroundSurface GroundSurface::slope(double fall_percent, double azimuth_deg) {
  const Vector2d downhill(std::sin(azimuth_deg * kDegree), std::cos(azimuth_deg * kDegree));
  return plane({-fall_percent / 100 * downhill, 0});
}

GroundSurface GroundSurface::plane(const Plane& plane) {
  GroundSurface ground;
  ground.plane_ = plane;
  return ground;
}

tl::expected<GroundSurface, TinFault> GroundSurface::spotHeights(std::span<const Vector3d> points_m,
                                                                 const std::atomic<bool>* cancel) {
  tl::expected<Tin, TinFault> tin = triangulated(points_m, cancel);
  if (!tin) return tl::unexpected(tin.error());
  GroundSurface ground;
  ground.tin_ = std::make_shared<const Survey>(std::move(*tin));
  return ground;
}

std::optional<double> GroundSurface::heightAt(const Vector2d& at) const {
  return tin_ ? tin_->lookup.heightAt(tin_->tin, at) : std::optional(plane_.at(at));
}

std::vector<Patch> GroundSurface::over(const std::vector<Vector2d>& convex) const {
  if (!tin_) {
    Patch patch;
    for (const Vector2d& p : convex) patch.emplace_back(p.x(), p.y(), plane_.at(p));
    return {patch};
  }
  std::vector<Linear> edges;
  for (std::size_t k = 0; k < convex.size(); ++k)
    edges.push_back(inside(convex[k], convex[(k + 1) % convex.size()]));
  Vector2d least = convex.front();
  Vector2d most = least;
  for (const Vector2d& p : convex) {
    least = least.cwiseMin(p);
    most = most.cwiseMax(p);
  }
  std::vector<Patch> patches;
  for (const std::uint32_t t : tin_->lookup.near(least, most)) {
    const std::array<Vector3d, 3> c = tin_->tin.corners(tin_->tin.triangles[t]);
    Patch patch = clipped({c.begin(), c.end()}, edges);
    if (!patch.empty()) patches.push_back(std::move(patch));
  }
  return patches;
}

std::optional<Plane> GroundSurface::planeOver(const std::vector<Vector2d>& convex) const {
  if (!tin_) return plane_;
  Vector2d about = Vector2d::Zero();
  for (const Vector2d& p : convex) about += p / static_cast<double>(convex.size());
  Matrix3d normal = Matrix3d::Zero();
  Vector3d right = Vector3d::Zero();
  double area = 0;
  for (const Patch& patch : over(convex)) {
    addMoments(patch, about, normal, right);
    area += planArea(patch);
  }
  const double whole = geometry::signedArea(convex);
  if (area < (1 - 1e-9) * whole) return std::nullopt;
  const Vector3d fit = normal.ldlt().solve(right);
  const Vector2d gradient(fit[1], fit[2]);
  return Plane{gradient, fit[0] - gradient.dot(about)};
}

tl::expected<GroundSurface, TinFault> groundSurface(const core::Ground& ground,
                                                    const std::atomic<bool>* cancel) {
  switch (ground.kind) {
    case GroundKind::level:
      return GroundSurface::level();
    case GroundKind::slope:
      return GroundSurface::slope(ground.fall_percent, ground.downhill_azimuth_deg);
    case GroundKind::spot_heights:
      break;
  }
  return GroundSurface::spotHeights(ground.points_m, cancel);
}

}  // namespace core::site
