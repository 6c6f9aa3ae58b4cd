#include "core/geometry/polygon.h"
#include "core/site/tin.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Height of a triangle's plane at a place inside it or, within rounding, on its edge.
std::optional<double> heightIn(const std::array<Vector3d, 3>& c, const Vector2d& at) {
  const Vector2d a = c[1].head<2>() - c[0].head<2>();
  const Vector2d b = c[2].head<2>() - c[0].head<2>();
  const Vector2d p = at - c[0].head<2>();
  const double whole = geometry::cross(a, b);
  const double u = geometry::cross(p, b) / whole;
  const double v = geometry::cross(a, p) / whole;
  constexpr double kRounding = 1e-9;
  if (u < -kRounding || v < -kRounding || u + v > 1 + kRounding) return std::nullopt;
  return c[0].z() + u * (c[1].z() - c[0].z()) + v * (c[2].z() - c[0].z());
}

}  // namespace

TinLookup::TinLookup(const Tin& tin) {
  least_ = Vector2d::Constant(std::numeric_limits<double>::infinity());
  Vector2d most = -least_;
  for (const Vector3d& p : tin.points_m) {
    least_ = least_.cwiseMin(p.head<2>());
    most = most.cwiseMax(p.head<2>());
  }
  const Vector2d size = (most - least_).cwiseMax(1e-9);
  const double wanted =
      std::sqrt(size.prod() / static_cast<double>(std::max<std::size_t>(tin.triangles.size(), 1)));
  constexpr double kMostPerSide = 2000;
  columns_ = static_cast<std::size_t>(std::clamp(std::ceil(size.x() / wanted), 1.0, kMostPerSide));
  rows_ = static_cast<std::size_t>(std::clamp(std::ceil(size.y() / wanted), 1.0, kMostPerSide));
  cell_ = {size.x() / static_cast<double>(columns_), size.y() / static_cast<double>(rows_)};

  start_.assign(columns_ * rows_ + 1, 0);
  for (std::size_t t = 0; t < tin.triangles.size(); ++t)
    eachBucket(tin, t, [&](std::size_t bucket) { ++start_[bucket + 1]; });
  for (std::size_t k = 1; k < start_.size(); ++k) start_[k] += start_[k - 1];
  content_.resize(start_.back());
  std::vector<std::uint32_t> next(start_.begin(), start_.end() - 1);
  for (std::size_t t = 0; t < tin.triangles.size(); ++t)
    eachBucket(tin, t, [&](std::size_t bucket) { content_[next[bucket]++] = static_cast<std::uint32_t>(t); });
}

std::size_t TinLookup::column(double x) const {
  const double k = std::floor((x - least_.x()) / cell_.x());
  return static_cast<std::size_t>(std::clamp(k, 0.0, static_cast<double>(columns_ - 1)));
}

std::size_t TinLookup::row(double y) const {
  const double k = std::floor((y - least_.y()) / cell_.y());
  return static_cast<std::size_t>(std::clamp(k, 0.0, static_cast<double>(rows_ - 1)));
}

template <typename Visit>
void TinLookup::eachBucket(const Tin& tin, std::size_t triangle, Visit visit) const {
  const std::array<Vector3d, 3> c = tin.corners(tin.triangles[triangle]);
  const Vector2d low = c[0].cwiseMin(c[1]).cwiseMin(c[2]).head<2>();
  const Vector2d high = c[0].cwiseMax(c[1]).cwiseMax(c[2]).head<2>();
  for (std::size_t r = row(low.y()); r <= row(high.y()); ++r) {
    for (std::size_t k = column(low.x()); k <= column(high.x()); ++k) visit(r * columns_ + k);
  }
}

std::vector<std::uint32_t> TinLookup::near(const Vector2d& least, const Vector2d& most) const {
  std::vector<std::uint32_t> found;
  for (std::size_t r = row(least.y()); r <= row(most.y()); ++r) {
    for (std::size_t k = column(least.x()); k <= column(most.x()); ++k) {
      const std::size_t bucket = r * columns_ + k;
      found.insert(found.end(), content_.begin() + start_[bucket], content_.begin() + start_[bucket + 1]);
    }
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

std::optional<double> TinLookup::heightAt(const Tin& tin, const Vector2d& at) const {
  if (!at.allFinite()) return std::nullopt;
  const std::size_t bucket = row(at.y()) * columns_ + column(at.x());
  for (std::uint32_t k = start_[bucket]; k < start_[bucket + 1]; ++k) {
    if (const auto height = heightIn(tin.corners(tin.triangles[content_[k]]), at)) return height;
  }
  return std::nullopt;
}

}  // namespace core::site
