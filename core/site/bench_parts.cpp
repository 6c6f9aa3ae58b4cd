#include "core/site/bench_parts.h"

#include "core/geometry/polygon.h"

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// How far a point lies over a level [m].
Linear over(double level_m) {
  return {Vector3d::UnitZ(), -level_m};
}

}  // namespace

BenchEdges::BenchEdges(const std::vector<Vector2d>& outline) : corner(outline), sector(outline.size()) {
  const std::size_t n = outline.size();
  std::vector<Vector2d> normal;
  for (std::size_t k = 0; k < n; ++k) {
    normal.push_back(geometry::outwardNormal(corner[after(k)] - corner[k]));
    outward.push_back({{normal[k].x(), normal[k].y(), 0}, -normal[k].dot(corner[k])});
  }
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d& before = normal[(k + n - 1) % n];
    mitre.emplace_back((before + normal[k]) / (1 + before.dot(normal[k])));
  }
  for (std::size_t k = 0; k < n; ++k)
    sector[k] = {outward[k], outward[k] - outward[(k + n - 1) % n], outward[k] - outward[after(k)]};
}

void addPlatform(const Patch& ground, double level_m, double topsoil_m, Pieces pieces, BenchParts& parts) {
  const double area = planArea(ground);
  const Linear stripped = over(level_m) + (-topsoil_m);
  const Patch high = keep(ground, stripped);
  const Patch low = keep(ground, -stripped);
  parts.platform_m2 += area;
  parts.strip_m3 += area * topsoil_m;
  parts.cut_m3 += integral(high, stripped);
  parts.fill_m3 += integral(low, -stripped);
  parts.cut_m2 += planArea(high);
  parts.fill_m2 += planArea(low);
  if (pieces == Pieces::kept) parts.platform.push_back(moved(ground, {Vector3d::Zero(), level_m}));
}

}  // namespace core::site
