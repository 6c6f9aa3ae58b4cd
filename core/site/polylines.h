#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include <Eigen/Core>

namespace core::site {

/// Line in space through several points; closed when the last point repeats the first.
using Polyline = std::vector<Eigen::Vector3d>;

/// Joins steps between numbered points to the longest runs, in a fixed order.
/// @param steps pairs of point numbers, in any direction
std::vector<std::vector<std::uint32_t>> joined(const std::vector<std::array<std::uint32_t, 2>>& steps);

/// Gives points that lie within `within_m` of each other one number.
class Welder {
public:
  explicit Welder(double within_m) : within_m_(within_m) {}

  std::uint32_t add(const Eigen::Vector3d& p);
  const std::vector<Eigen::Vector3d>& points() const { return points_; }

private:
  using Cell = std::array<std::int64_t, 3>;
  struct Entry {
    Cell cell;
    std::uint32_t point;
  };
  double within_m_;
  std::vector<Eigen::Vector3d> points_;
  std::vector<std::vector<Entry>> table_ = std::vector<std::vector<Entry>>(1024);

  Cell cellOf(const Eigen::Vector3d& p) const;
  std::vector<Entry>& bucketOf(const Cell& cell);
  void grow();
};

}  // namespace core::site
