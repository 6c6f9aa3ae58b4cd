#pragma once

#include <cstdint>
#include <vector>

#include <Eigen/Core>

namespace core::site {

/// Nearest neighbours in plan by a grid of buckets.
class Neighbours {
public:
  explicit Neighbours(const std::vector<Eigen::Vector3d>& points_m);

  /// The `count` points nearest to point `k` in plan without itself, nearest first; fewer if there are none.
  std::vector<std::uint32_t> nearest(std::uint32_t k, std::size_t count) const;

private:
  const std::vector<Eigen::Vector3d>& points_;
  Eigen::Vector2d least_ = Eigen::Vector2d::Zero();
  double cell_m_ = 1;
  long columns_ = 1, rows_ = 1;
  std::vector<std::vector<std::uint32_t>> bucket_;

  long column(double x) const;
  long row(double y) const;
};

}  // namespace core::site
