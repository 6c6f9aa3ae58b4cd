#include "core/geometry/triangulate.h"

#include "core/geometry/polygon.h"

#include <cstddef>

namespace core::geometry {
namespace {

using Eigen::Vector2d;

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  return cross(b - a, c - a);
}

/// Whether corner `at` can be cut off: it turns left and no other corner lies in or on the triangle.
bool isEar(const std::vector<Vector2d>& p, const std::vector<std::uint32_t>& left, std::size_t at) {
  const std::size_t n = left.size();
  const std::uint32_t ia = left[(at + n - 1) % n];
  const std::uint32_t ib = left[at];
  const std::uint32_t ic = left[(at + 1) % n];
  const double area = turn(p[ia], p[ib], p[ic]);
  const double tolerance = 1e-12 * ((p[ib] - p[ia]).squaredNorm() + (p[ic] - p[ib]).squaredNorm());
  if (area <= tolerance) return false;
  for (const std::uint32_t k : left) {
    if (k == ia || k == ib || k == ic) continue;
    if (turn(p[ia], p[ib], p[k]) >= -tolerance && turn(p[ib], p[ic], p[k]) >= -tolerance &&
        turn(p[ic], p[ia], p[k]) >= -tolerance) {
      return false;
    }
  }
  return true;
}

}  // namespace

std::vector<std::array<std::uint32_t, 3>> triangulate(const std::vector<Vector2d>& polygon) {
  std::vector<std::array<std::uint32_t, 3>> triangles;
  std::vector<std::uint32_t> left(polygon.size());
  for (std::uint32_t k = 0; k < left.size(); ++k) left[k] = k;
  std::size_t at = 0;
  std::size_t misses = 0;
  while (left.size() > 2) {
    const std::size_t n = left.size();
    at %= n;
    // after a full round without an ear only slivers within rounding are left: close them as they stand
    if (n == 3 || misses >= n || isEar(polygon, left, at)) {
      triangles.push_back({left[(at + n - 1) % n], left[at], left[(at + 1) % n]});
      left.erase(left.begin() + static_cast<std::ptrdiff_t>(at));
      misses = 0;
    } else {
      ++at;
      ++misses;
    }
  }
  return triangles;
}

}  // namespace core::geometry
