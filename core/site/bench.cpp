#include "core/site/bench.h"

#include "core/geometry/polygon.h"
#include "core/site/bench_parts.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel && cancel->load(std::memory_order_relaxed);
}

geometry::Mesh meshOf(const std::vector<Patch>& patches) {
  geometry::Mesh mesh;
  Welder welder(1e-7);
  for (const Patch& patch : patches) {
    std::vector<std::uint32_t> corner;
    for (const Vector3d& p : patch) corner.push_back(welder.add(p));
    for (std::size_t k = 1; k + 1 < corner.size(); ++k) {
      if (corner[0] == corner[k] || corner[k] == corner[k + 1] || corner[k + 1] == corner[0]) continue;
      mesh.triangles.push_back({corner[0], corner[k], corner[k + 1]});
    }
  }
  mesh.points = welder.points();
  return mesh;
}

void addLines(const std::vector<std::array<Vector3d, 2>>& steps, DaylightLine::Of of, Bench& bench) {
  Welder welder(1e-7);
  std::vector<std::array<std::uint32_t, 2>> numbered;
  for (const auto& [from, to] : steps) {
    const std::array<std::uint32_t, 2> step{welder.add(from), welder.add(to)};
    if (step[0] != step[1]) numbered.push_back(step);
  }
  for (const std::vector<std::uint32_t>& run : joined(numbered)) {
    DaylightLine line{of, {}};
    for (const std::uint32_t k : run) line.line.push_back(welder.points()[k]);
    bench.daylight.push_back(std::move(line));
  }
}

Bench benchOf(const BenchParts& parts, double level_m) {
  Bench bench;
  bench.level_m = level_m;
  bench.cut_m3 = parts.cut_m3;
  bench.fill_m3 = parts.fill_m3;
  bench.strip_m3 = parts.strip_m3;
  bench.platform_m2 = parts.platform_m2;
  bench.cut_face_m2 = parts.cut_face_m2;
  bench.fill_face_m2 = parts.fill_face_m2;
  addLines(parts.cut_daylight, DaylightLine::Of::cut, bench);
  addLines(parts.fill_daylight, DaylightLine::Of::fill, bench);
  bench.platform = meshOf(parts.platform);
  bench.cut_face = meshOf(parts.cut_face);
  bench.fill_face = meshOf(parts.fill_face);
  return bench;
}

/// Volumes at any level between two, over the triangles that matter there.
class Levels {
public:
  Levels(const GroundSurface& ground, const BenchShape& shape, double least_m, double most_m)
      : ground_(ground), shape_(shape), edges_(shape.outline_m) {
    if (const Tin* tin = ground.tin()) near_ = trianglesNear(*tin, shape, edges_, least_m, most_m);
  }

  std::optional<BenchParts> at(double level_m, Pieces pieces) const {
    if (const Plane* plane = ground_.plane()) return planeBench(*plane, shape_, edges_, level_m, pieces);
    return tinBench(*ground_.tin(), near_, shape_, edges_, level_m, pieces);
  }

  bool leaves(double level_m) const {
    return ground_.tin() && leavesSurvey(*ground_.tin(), shape_, edges_, level_m);
  }

private:
  const GroundSurface& ground_;
  const BenchShape& shape_;
  BenchEdges edges_;
  std::vector<Tin::Triangle> near_;
};

struct Range {
  double least = std::numeric_limits<double>::infinity();
  double most = -least;
};

/// Heights of the ground under the platform; nothing when the survey does not cover it.
std::optional<Range> heights(const GroundSurface& ground, const BenchShape& shape) {
  Range range;
  double area = 0;
  for (const Patch& patch : ground.over(shape.outline_m)) {
    area += planArea(patch);
    for (const Vector3d& p : patch) {
      range.least = std::min(range.least, p.z());
      range.most = std::max(range.most, p.z());
    }
  }
  if (area < (1 - 1e-9) * geometry::signedArea(shape.outline_m)) return std::nullopt;
  return range;
}

tl::expected<Bench, BenchFault> finished(const Levels& levels, double level_m) {
  const std::optional<BenchParts> parts = levels.at(level_m, Pieces::kept);
  if (!parts) return tl::unexpected(BenchFault::never_daylights);
  if (levels.leaves(level_m)) return tl::unexpected(BenchFault::leaves_survey);
  return benchOf(*parts, level_m);
}

double surplus(const BenchParts& parts, const Balance& balance) {
  return (parts.cut_m3 + balance.more_bank_m3) * balance.compacted_per_bank - parts.fill_m3;
}

/// Level at which nothing is left over, between two where too much and too little is. Newton's steps (a
/// level change moves the volumes by their areas), halving where one leaves the range.
tl::expected<double, BenchFault> balancedLevel(const Levels& levels, const Balance& balance, Range range,
                                               const std::atomic<bool>* cancel) {
  double level = (range.least + range.most) / 2;
  for (int i = 0; i < 200; ++i) {
    if (isCancelled(cancel)) return tl::unexpected(BenchFault::cancelled);
    const std::optional<BenchParts> parts = levels.at(level, Pieces::left_out);
    if (!parts) return tl::unexpected(BenchFault::never_daylights);
    const double left = surplus(*parts, balance);
    if (std::abs(left) <= 1e-9 * std::max(parts->fill_m3, 1.0) || range.most - range.least < 1e-13)
      return level;
    (left > 0 ? range.least : range.most) = level;
    const double per_metre = parts->cut_m2 * balance.compacted_per_bank + parts->fill_m2;
    const double next = per_metre > 0 ? level + left / per_metre : range.most;
    level = next > range.least && next < range.most ? next : (range.least + range.most) / 2;
  }
  return tl::unexpected(BenchFault::cannot_balance);
}

}  // namespace

tl::expected<Bench, BenchFault> benchAt(const GroundSurface& ground, const BenchShape& shape, double level_m,
                                        const std::atomic<bool>* cancel) {
  if (!heights(ground, shape)) return tl::unexpected(BenchFault::outside_survey);
  if (isCancelled(cancel)) return tl::unexpected(BenchFault::cancelled);
  return finished(Levels(ground, shape, level_m, level_m), level_m);
}

tl::expected<Bench, BenchFault> balancedBench(const GroundSurface& ground, const BenchShape& shape,
                                              const Balance& balance, const std::atomic<bool>* cancel) {
  const std::optional<Range> under = heights(ground, shape);
  if (!under) return tl::unexpected(BenchFault::outside_survey);
  const double area = geometry::signedArea(shape.outline_m);
  // above `most` the fill on the platform alone takes more than there is; below `least` there is no fill
  const double spare = std::max(balance.more_bank_m3, 0.0) * balance.compacted_per_bank / area;
  const double lack = std::max(-balance.more_bank_m3, 0.0) / area;
  const Range range{under->least - shape.topsoil_m - lack, under->most + spare};
  const Levels levels(ground, shape, range.least, range.most);
  const auto level = balancedLevel(levels, balance, range, cancel);
  if (!level) return tl::unexpected(level.error());
  return finished(levels, *level);
}

}  // namespace core::site
