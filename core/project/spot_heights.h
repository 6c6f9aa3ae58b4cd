#pragma once

#include <initializer_list>
#include <memory>
#include <span>
#include <utility>
#include <vector>

#include <Eigen/Core>

namespace core {

/// Spot heights [m], x east, y north, z up; shared by all copies of a project and copied only when changed.
class SpotHeights {
public:
  using List = std::vector<Eigen::Vector3d>;

  SpotHeights() = default;
  SpotHeights(List points)
      : points_(std::make_shared<List>(std::move(points))) {}  // NOLINT(google-explicit-constructor)
  SpotHeights(std::initializer_list<Eigen::Vector3d> points) : SpotHeights(List(points)) {}

  const List& list() const {
    static const List none;
    return points_ ? *points_ : none;
  }
  operator std::span<const Eigen::Vector3d>() const { return list(); }  // NOLINT(google-explicit-constructor)
  std::size_t size() const { return list().size(); }
  bool empty() const { return list().empty(); }
  const Eigen::Vector3d& operator[](std::size_t k) const { return list()[k]; }
  auto begin() const { return list().begin(); }
  auto end() const { return list().end(); }

  void clear() { points_.reset(); }
  void emplace_back(double x_m, double y_m, double z_m) {
    if (!points_ || points_.use_count() > 1) points_ = std::make_shared<List>(list());
    points_->emplace_back(x_m, y_m, z_m);
  }

  /// True when both are one and the same list, without comparing it.
  bool isSharedWith(const SpotHeights& other) const { return points_ == other.points_; }
  bool operator==(const SpotHeights& other) const { return isSharedWith(other) || list() == other.list(); }

private:
  std::shared_ptr<List> points_;  // null: none
};

}  // namespace core
