#pragma once

#include <array>
#include <atomic>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include <Eigen/Core>
#include <tl/expected.hpp>

namespace core::site {

/// Why spot heights could not be joined to triangles.
enum class TinFault {
  too_few,    ///< fewer than three different points
  collinear,  ///< all in one line: no area
  cancelled,
  failed,  ///< no sound triangulation was found
};

/// Spot heights joined to triangles, anticlockwise seen from above. Delaunay: no point lies inside the
/// circumscribed circle of a triangle, within rounding. Two points at one place (within 1e-9 of the extent)
/// count as one: the first is used.
struct Tin {
  using Triangle = std::array<std::uint32_t, 3>;
  /// As given; where points almost on one place or circle defeat the triangulation, moved in plan by at most
  /// a millionth of the survey's extent.
  std::vector<Eigen::Vector3d> points_m;
  std::vector<Triangle> triangles;
  std::vector<std::array<std::uint32_t, 2>> rim;  ///< sides that belong to one triangle only
  std::vector<std::uint32_t> unused;              ///< points that are no corner: repeated ones, rising

  std::array<Eigen::Vector3d, 3> corners(const Triangle& t) const {
    return {points_m[t[0]], points_m[t[1]], points_m[t[2]]};
  }
};

/// Triangulation of spot heights [m] by Qhull. 100,000 points take under a second of processor time.
/// @param cancel looked at every few hundred points; may be null
tl::expected<Tin, TinFault> triangulated(std::span<const Eigen::Vector3d> points_m,
                                         const std::atomic<bool>* cancel = nullptr);

/// Finds the triangle over a place by a grid of buckets.
class TinLookup {
public:
  explicit TinLookup(const Tin& tin);

  /// Triangles whose boxes may touch a box, rising.
  std::vector<std::uint32_t> near(const Eigen::Vector2d& least, const Eigen::Vector2d& most) const;
  /// Height of the surface at (x, y) [m]; nothing outside the triangles.
  std::optional<double> heightAt(const Tin& tin, const Eigen::Vector2d& at) const;

private:
  Eigen::Vector2d least_, cell_;
  std::size_t columns_ = 1, rows_ = 1;
  std::vector<std::uint32_t> start_;    // of each bucket in `content_`, and the end
  std::vector<std::uint32_t> content_;  // triangles whose box touches the bucket

  std::size_t column(double x) const;
  std::size_t row(double y) const;
  template <typename Visit>
  void eachBucket(const Tin& tin, std::size_t triangle, Visit visit) const;
};

}  // namespace core::site
