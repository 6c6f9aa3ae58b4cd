#include "core/compare/platforms.h"

#include "core/geometry/polygon.h"
#include "core/site/bench_parts.h"

#include <algorithm>
#include <vector>

namespace core::compare {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using site::BenchEdges;
using site::BenchParts;
using site::BenchShape;
using site::GroundSurface;
using site::Pieces;
using site::PitCover;
using site::Tin;

/// False when a face cannot reach the edge of the survey; true when it has to be looked at closely.
bool mayLeave(const Tin& tin, const BenchShape& shape, const BenchEdges& edges, double level_m) {
  for (const auto& [a, b] : tin.rim) {
    const Vector3d& from = tin.points_m[a];
    const Vector3d& to = tin.points_m[b];
    double outside = 0;  // no place of the side lies less far outside the platform
    for (const site::Linear& outward : edges.outward)
      outside = std::max(outside, std::min(outward.at(from), outward.at(to)));
    if (std::max(from.z(), to.z()) > level_m + outside / shape.cut_batter) return true;
    if (std::min(from.z(), to.z()) < level_m - outside / shape.fill_batter) return true;
  }
  return false;
}

bool isInside(const GroundSurface& ground, const std::vector<Vector2d>& outline) {
  double area = 0;
  for (const site::Patch& patch : ground.over(outline)) area += site::planArea(patch);
  return area >= (1 - 1e-9) * geometry::signedArea(outline);
}

std::optional<BenchParts> surveyParts(const GroundSurface& ground, const BenchShape& shape, double level_m) {
  if (!isInside(ground, shape.outline_m)) return std::nullopt;
  const Tin& tin = *ground.tin();
  const BenchEdges edges(shape.outline_m);
  if (mayLeave(tin, shape, edges, level_m) && site::leavesSurvey(tin, shape, edges, level_m))
    return std::nullopt;
  const std::vector<Tin::Triangle> near = site::trianglesNear(tin, shape, edges, level_m, level_m);
  return site::tinBench(tin, near, shape, edges, level_m, Pieces::left_out);
}

}  // namespace

Platforms::Platforms(const Project& project, const site::SitePlan& site, const Vector2d& middle_m)
    : platform_(project.site.platform), lining_(project.lining), site_(site), middle_m_(middle_m) {}

std::optional<works::Platform> Platforms::of(const geometry::TankGeometry& tank) const {
  const site::PitShape pit = site::pitShape(tank, lining_);
  works::Platform result;
  if (!site_.has_relief) {
    result.topsoil_m3 =
        tank.outline().area(pit.rim_offset_m + pit.collar_m + platform_.walkway_m) * platform_.topsoil_m;
  } else {
    const std::optional<Moved> moved = onRelief(tank, pit);
    if (!moved) return std::nullopt;
    result = {moved->cut_m3, moved->fill_m3, moved->strip_m3, 0};
  }
  result.spoil_bank_m3 =
      std::max(0.0, tank.pitVolume() + result.cut_m3 - result.fill_m3 / platform_.compacted_per_bank);
  return result;
}

std::optional<Platforms::Moved> Platforms::onRelief(const geometry::TankGeometry& tank,
                                                    const site::PitShape& pit) const {
  if (!site_.ground->surface) return std::nullopt;
  const GroundSurface& ground = *site_.ground->surface;
  if (!ground.heightAt(middle_m_)) return std::nullopt;
  site::Placement placement{Vector2d::Zero(), site_.placement.turn_deg};
  placement.at_m = middle_m_ - placement.turned(tank.outline().centre());
  const BenchShape shape{site::platformOutline(pit, platform_.walkway_m, placement).points_m,
                         platform_.cut_batter, platform_.fill_batter, platform_.topsoil_m};
  const auto coverAt = [&](double level_m) {
    return site::leastCover(ground, pit, placement, level_m, platform_.topsoil_m);
  };
  if (platform_.level_by == PlatformLevel::natural_ground) {
    const std::optional<PitCover> cover = coverAt(site_.middle_level_m);
    return cover ? at(shape, cover->natural_level_m) : std::nullopt;
  }
  const std::optional<Moved> moved = platform_.level_by == PlatformLevel::balanced
                                         ? balanced(shape)
                                         : at(shape, site_.middle_level_m + platform_.level_m);
  if (!moved) return std::nullopt;
  const std::optional<PitCover> cover = coverAt(moved->level_m);
  return cover && !cover->isInNaturalGround() ? std::nullopt : moved;
}

std::optional<Platforms::Moved> Platforms::at(const BenchShape& shape, double level_m) const {
  const GroundSurface& ground = *site_.ground->surface;
  const std::optional<BenchParts> parts =
      ground.plane()
          ? site::planeBench(*ground.plane(), shape, BenchEdges(shape.outline_m), level_m, Pieces::left_out)
          : surveyParts(ground, shape, level_m);
  if (!parts) return std::nullopt;
  return Moved{level_m, parts->cut_m3, parts->fill_m3, parts->strip_m3};
}

std::optional<Platforms::Moved> Platforms::balanced(const BenchShape& shape) const {
  const auto bench = site::balancedBench(*site_.ground->surface, shape, {platform_.compacted_per_bank, 0});
  if (!bench) return std::nullopt;
  return Moved{bench->level_m, bench->cut_m3, bench->fill_m3, bench->strip_m3};
}

}  // namespace core::compare
