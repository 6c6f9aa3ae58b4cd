#include "core/site/neighbours.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace core::site {

using Eigen::Vector2d;

Neighbours::Neighbours(const std::vector<Eigen::Vector3d>& points_m) : points_(points_m) {
  if (points_.empty()) {
    bucket_.resize(1);
    return;
  }
  least_ = Vector2d::Constant(std::numeric_limits<double>::infinity());
  Vector2d most = -least_;
  for (const Eigen::Vector3d& p : points_) {
    least_ = least_.cwiseMin(p.head<2>());
    most = most.cwiseMax(p.head<2>());
  }
  const Vector2d size = most - least_;
  // some three points to a bucket; never more buckets along a side than points
  const double n = static_cast<double>(points_.size());
  cell_m_ = std::max({std::sqrt(3 * size.prod() / n), size.maxCoeff() / n, 1e-9});
  columns_ = static_cast<long>(size.x() / cell_m_) + 1;
  rows_ = static_cast<long>(size.y() / cell_m_) + 1;
  bucket_.resize(static_cast<std::size_t>(columns_ * rows_));
  for (std::uint32_t k = 0; k < points_.size(); ++k)
    bucket_[static_cast<std::size_t>(row(points_[k].y()) * columns_ + column(points_[k].x()))].push_back(k);
}

long Neighbours::column(double x) const {
  return std::clamp(static_cast<long>((x - least_.x()) / cell_m_), 0L, columns_ - 1);
}

long Neighbours::row(double y) const {
  return std::clamp(static_cast<long>((y - least_.y()) / cell_m_), 0L, rows_ - 1);
}

std::vector<std::uint32_t> Neighbours::nearest(std::uint32_t k, std::size_t count) const {
  std::vector<std::pair<double, std::uint32_t>> found;
  const Vector2d at = points_[k].head<2>();
  const long c = column(at.x());
  const long r = row(at.y());
  const auto look = [&](long x, long y) {
    if (x < 0 || y < 0 || x >= columns_ || y >= rows_) return;
    for (const std::uint32_t other : bucket_[static_cast<std::size_t>(y * columns_ + x)]) {
      if (other != k) found.emplace_back((points_[other].head<2>() - at).squaredNorm(), other);
    }
  };
  // ring by ring; a ring is needed no more when enough lie nearer than anything in it can
  for (long ring = 0; ring <= std::max(columns_, rows_); ++ring) {
    const double safe = static_cast<double>(ring - 1) * cell_m_;
    const auto near =
        std::count_if(found.begin(), found.end(), [&](const auto& f) { return f.first <= safe * safe; });
    if (ring > 1 && static_cast<std::size_t>(near) >= count) break;
    for (long x = c - ring; x <= c + ring; ++x) {
      look(x, r - ring);
      if (ring > 0) look(x, r + ring);
    }
    for (long y = r - ring + 1; y < r + ring; ++y) {
      look(c - ring, y);
      look(c + ring, y);
    }
  }
  std::sort(found.begin(), found.end());
  if (found.size() > count) found.resize(count);
  std::vector<std::uint32_t> numbers;
  numbers.reserve(found.size());
  for (const auto& [distance, number] : found) numbers.push_back(number);
  return numbers;
}

}  // namespace core::site
