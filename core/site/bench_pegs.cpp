#include "core/site/bench_pegs.h"

#include "core/geometry/polygon.h"
#include "core/site/bench_parts.h"

#include <cmath>
#include <optional>

#include <fmt/format.h>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// How far along a ray it meets a step of a line [lengths of `along`], if at all.
std::optional<double> meet(const Vector2d& from, const Vector2d& along, const Vector3d& a,
                           const Vector3d& b) {
  constexpr double kEnd = 1e-6;  // of the step's length, so that a ray through a joint is not lost
  const Vector2d step = (b - a).head<2>();
  const double turn = geometry::cross(along, step);
  if (std::abs(turn) < 1e-12 * along.norm() * step.norm()) return std::nullopt;
  const Vector2d to = a.head<2>() - from;
  const double share = geometry::cross(to, along) / turn;
  const double distance = geometry::cross(to, step) / turn;
  if (share < -kEnd || share > 1 + kEnd || distance < -1e-9) return std::nullopt;
  return distance;
}

std::optional<Vector2d> daylight(const Bench& bench, DaylightLine::Of of, const Vector2d& from,
                                 const Vector2d& along) {
  std::optional<double> nearest;
  for (const DaylightLine& line : bench.daylight) {
    if (line.of != of) continue;
    for (std::size_t k = 0; k + 1 < line.line.size(); ++k) {
      const auto at = meet(from, along, line.line[k], line.line[k + 1]);
      if (at && (!nearest || *at < *nearest)) nearest = at;
    }
  }
  if (!nearest) return std::nullopt;
  return from + *nearest * along;
}

}  // namespace

std::vector<BenchPeg> benchPegs(const GroundSurface& ground, const BenchShape& shape, const Bench& bench,
                                int most) {
  const BenchEdges edges(shape.outline_m);
  const std::size_t every =
      (edges.size() + static_cast<std::size_t>(most) - 1) / static_cast<std::size_t>(most);
  std::vector<BenchPeg> pegs;
  int number = 0;
  for (std::size_t k = 0; k < edges.size(); k += every) {
    const Vector2d& corner = edges.corner[k];
    const std::optional<double> height = ground.heightAt(corner);
    if (!height) continue;
    ++number;
    const double dig = *height - bench.level_m;
    pegs.push_back({fmt::format("P{}", number),
                    "platform_corner",
                    {corner.x(), corner.y(), bench.level_m},
                    *height,
                    dig,
                    0});
    const auto of = dig >= 0 ? DaylightLine::Of::cut : DaylightLine::Of::fill;
    const std::optional<Vector2d> out = daylight(bench, of, corner, edges.mitre[k]);
    const std::optional<double> there = out ? ground.heightAt(*out) : std::nullopt;
    if (!there) continue;  // the corner lies on the ground, or no daylight
    pegs.push_back({fmt::format("Q{}", number),
                    of == DaylightLine::Of::cut ? "daylight_cut" : "daylight_fill",
                    {out->x(), out->y(), *there},
                    *there,
                    0,
                    (*out - corner).norm(),
                    *there - bench.level_m});
  }
  return pegs;
}

}  // namespace core::site
