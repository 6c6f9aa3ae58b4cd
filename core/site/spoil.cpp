#include "core/site/spoil.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace core::site {
namespace {

using Eigen::Vector2d;

constexpr double kDegree = std::numbers::pi / 180;

double reach(const std::vector<Vector2d>& points, const Vector2d& from, const Vector2d& along) {
  double most = -std::numeric_limits<double>::infinity();
  for (const Vector2d& p : points) most = std::max(most, along.dot(p - from));
  return most;
}

double distanceToSegment(const Vector2d& p, const Vector2d& a, const Vector2d& b) {
  const Vector2d along = b - a;
  const double share = std::clamp(along.dot(p - a) / std::max(along.squaredNorm(), 1e-300), 0.0, 1.0);
  return (a + share * along - p).norm();
}

}  // namespace

SpoilHeap spoilHeap(const SpoilInput& input) {
  const double loose = input.bank_m3 * (1 + input.swell_percent / 100);
  if (!(loose > 0)) return {};
  const double t = std::tan(input.repose_deg * kDegree);
  // cone: V = pi r^2 h / 3 with h = r tan(repose)
  const double radius = std::cbrt(3 * loose / (std::numbers::pi * t));
  if (radius * t <= input.most_height_m) return {loose, radius * t, radius, 0};
  // frustum: V = pi h (R^2 + R r + r^2) / 3 with r = R - h / tan(repose)
  const double h = input.most_height_m;
  const double in = h / t;
  const double base = in / 2 + std::sqrt(loose / (std::numbers::pi * h) - in * in / 12);
  return {loose, h, base, base - in};
}

HeapPlace heapPlace(const std::vector<Vector2d>& pit_edge_m, const std::vector<Vector2d>& keep_clear_m,
                    const SpoilHeap& heap, double setback_m, double azimuth_deg) {
  Vector2d middle = Vector2d::Zero();
  for (const Vector2d& p : pit_edge_m) middle += p / static_cast<double>(pit_edge_m.size());
  const Vector2d along(std::sin(azimuth_deg * kDegree), std::cos(azimuth_deg * kDegree));
  double distance = reach(pit_edge_m, middle, along) + setback_m;
  if (!keep_clear_m.empty()) distance = std::max(distance, reach(keep_clear_m, middle, along));
  HeapPlace place{middle + (distance + heap.base_radius_m) * along, azimuth_deg,
                  std::numeric_limits<double>::infinity()};
  for (std::size_t k = 0; k < pit_edge_m.size(); ++k) {
    const double d =
        distanceToSegment(place.centre_m, pit_edge_m[k], pit_edge_m[(k + 1) % pit_edge_m.size()]);
    place.toe_to_edge_m = std::min(place.toe_to_edge_m, d - heap.base_radius_m);
  }
  return place;
}

double heapAzimuth(std::optional<double> downhill_azimuth_deg) {
  return downhill_azimuth_deg ? std::fmod(*downhill_azimuth_deg + 90, 360) : 90;
}

}  // namespace core::site
