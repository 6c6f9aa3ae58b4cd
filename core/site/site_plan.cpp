#include "core/site/site_plan.h"

#include "core/geometry/polygon.h"
#include "core/site/ground_lines.h"
#include "core/site/survey.h"
#include "core/site/thresholds.h"
#include "core/works/earthwork.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <utility>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// The tank's frame is moved so that the middle of the tank comes to the place entered.
Placement placementOf(const geometry::TankGeometry& tank, const core::Site& site) {
  Placement placement;
  if (site.ground.kind == GroundKind::level) return placement;
  placement.turn_deg = site.position.turn_deg;
  placement.at_m = -placement.turned(tank.outline().centre());
  if (site.ground.kind == GroundKind::spot_heights)
    placement.at_m += Vector2d(site.position.east_m, site.position.north_m);
  return placement;
}

/// Benches at one site, each level asked for in its own way.
class Benches {
public:
  Benches(const SitePlan& plan, const PitShape& pit, const core::Platform& platform)
      : ground_(*plan.ground->surface), plan_(plan), pit_(pit), platform_(platform) {}

  tl::expected<Bench, BenchFault> at(PlatformLevel level_by) const {
    switch (level_by) {
      case PlatformLevel::balanced:
        return balancedBench(ground_, plan_.shape, {platform_.compacted_per_bank, 0});
      case PlatformLevel::given:
        return benchAt(ground_, plan_.shape, plan_.middle_level_m + platform_.level_m);
      case PlatformLevel::natural_ground:
        break;
    }
    const std::optional<PitCover> cover = coverAt(plan_.middle_level_m);
    if (!cover) return tl::unexpected(BenchFault::outside_survey);
    return benchAt(ground_, plan_.shape, cover->natural_level_m);
  }

  std::optional<PitCover> coverAt(double level_m) const {
    return leastCover(ground_, pit_, plan_.placement, level_m, platform_.topsoil_m);
  }

private:
  const GroundSurface& ground_;
  const SitePlan& plan_;
  const PitShape& pit_;
  const core::Platform& platform_;
};

void addBench(SitePlan& plan, const PitShape& pit, const core::Platform& platform) {
  const GroundSurface& ground = *plan.ground->surface;
  const Benches benches(plan, pit, platform);
  for (const PlatformLevel level_by :
       {PlatformLevel::natural_ground, PlatformLevel::balanced, PlatformLevel::given}) {
    tl::expected<Bench, BenchFault> bench = benches.at(level_by);
    const bool is_chosen = level_by == platform.level_by;
    if (!bench) {
      if (is_chosen) plan.fault = bench.error();
      continue;
    }
    const std::optional<PitCover> cover = benches.coverAt(bench->level_m);
    plan.choices.push_back({level_by, bench->level_m - plan.middle_level_m, bench->cut_m3, bench->fill_m3,
                            cover ? cover->least_m : 0});
    if (!is_chosen) continue;
    plan.bench = std::move(*bench);
    plan.cover = cover;
  }
  if (const std::optional<Plane> under = ground.planeOver(plan.shape.outline_m)) plan.fall = fallOf(*under);
  if (!plan.bench) return;
  plan.pegs = benchPegs(ground, plan.shape, *plan.bench);
  plan.topsoil_m3 = plan.bench->strip_m3;
}

/// What the heap must leave free: the platform, and the setback before cut and fill as before the pit.
std::vector<Vector2d> keptClear(const SitePlan& plan, double azimuth_deg) {
  const double azimuth = azimuth_deg * std::numbers::pi / 180;
  const Vector2d back = plan.setback_m * Vector2d(std::sin(azimuth), std::cos(azimuth));
  std::vector<Vector2d> clear = plan.shape.outline_m;
  if (!plan.bench) return clear;
  for (const geometry::Mesh* face : {&plan.bench->cut_face, &plan.bench->fill_face}) {
    for (const Vector3d& p : face->points) clear.emplace_back(p.head<2>() + back);
  }
  return clear;
}

void addSpoil(SitePlan& plan, const geometry::TankGeometry& tank, const core::Site& site,
              const PitShape& pit) {
  const Bench none;
  const Bench& bench = plan.bench ? *plan.bench : none;
  const double left_m3 = tank.pitVolume() + bench.cut_m3 - bench.fill_m3 / site.platform.compacted_per_bank;
  plan.spoil_bank_m3 = std::max(0.0, left_m3);
  plan.lacking_bank_m3 = std::max(0.0, -left_m3);
  plan.setback_m = threshold("spoil.setback").value;
  const bool has_place = !plan.has_relief || plan.bench.has_value();
  if (!site.soil || plan.spoil_bank_m3 <= 0 || !has_place) return;
  plan.heap = spoilHeap({.bank_m3 = plan.spoil_bank_m3,
                         .swell_percent = works::swellPercent(*site.soil),
                         .repose_deg = threshold("spoil.repose").value,
                         .most_height_m = threshold("spoil.most_height").value,
                         .setback_m = plan.setback_m});
  const std::vector<Vector2d> edge = siteOutline(pit.outline, pit.rim_offset_m, plan.placement).points_m;
  const double azimuth_deg = site.spoil_azimuth_deg.value_or(heapAzimuth(plan.fall.azimuth_deg));
  plan.heap_place = heapPlace(edge, keptClear(plan, azimuth_deg), *plan.heap, plan.setback_m, azimuth_deg);
}

}  // namespace

std::shared_ptr<const SurveyedGround> surveyedGround(const core::Ground& ground,
                                                     const std::atomic<bool>* cancel) {
  Problems notes;
  Problems faults;
  tl::expected<GroundSurface, TinFault> surface = groundSurface(ground, cancel);
  if (ground.kind == GroundKind::spot_heights && surface) {
    notes = checkSurvey(ground.points_m, {}, cancel);
    const auto is_note = [](const Problem& problem) { return isSurveyNote(problem.code); };
    const auto end_of_notes = std::stable_partition(notes.begin(), notes.end(), is_note);
    faults.assign(end_of_notes, notes.end());
    notes.erase(end_of_notes, notes.end());
  }
  if (cancel && *cancel) surface = tl::unexpected(TinFault::cancelled);
  return std::make_shared<const SurveyedGround>(
      SurveyedGround{ground, std::move(surface), std::move(notes), std::move(faults)});
}

SitePlan sitePlan(const geometry::TankGeometry& tank, const core::Site& site, const Lining& lining,
                  std::shared_ptr<const SurveyedGround> earlier) {
  SitePlan plan;
  plan.ground = earlier && earlier->from == site.ground ? std::move(earlier) : surveyedGround(site.ground);
  plan.has_relief = site.ground.kind != GroundKind::level;
  plan.placement = placementOf(tank, site);
  const PitShape pit = pitShape(tank, lining);
  const core::Platform& platform = site.platform;
  plan.shape = {platformOutline(pit, platform.walkway_m, plan.placement).points_m, platform.cut_batter,
                platform.fill_batter, platform.topsoil_m};
  plan.platform_m2 = tank.outline().area(pit.rim_offset_m + pit.collar_m + platform.walkway_m);
  plan.topsoil_m3 = plan.platform_m2 * platform.topsoil_m;
  if (plan.has_relief && plan.ground->surface) {
    const Vector2d middle = plan.placement.toSite(tank.outline().centre());
    const std::optional<double> level = plan.ground->surface->heightAt(middle);
    plan.middle_level_m = level.value_or(0);
    if (level) {
      addBench(plan, pit, platform);
    } else {
      plan.fault = BenchFault::outside_survey;
    }
  }
  addSpoil(plan, tank, site, pit);
  addGroundLines(plan, tank, pit);
  DownhillSide side{groundLine(plan, GroundOf::finished),
                    {},
                    pitReach(plan, tank, pit),
                    pitReach(plan, tank, pit, Side::uphill),
                    {}};
  if (plan.bench && plan.bench->fill_m3 > 0) side.under_fill = groundLine(plan, GroundOf::natural_under);
  if (site.water_table_depth_m)
    side.water_z_m = tank.depth() + plan.middle_level_m - plan.rimLevel() - *site.water_table_depth_m;
  plan.stability = stability(tank, site, side);
  return plan;
}

std::optional<double> finishedGround(const SitePlan& plan, const Vector2d& at) {
  if (!plan.ground->surface) return std::nullopt;
  const std::optional<double> natural = plan.ground->surface->heightAt(at);
  if (!plan.bench || !natural) return natural;
  const std::vector<Vector2d>& corner = plan.shape.outline_m;
  double outside = 0;
  for (std::size_t k = 0; k < corner.size(); ++k) {
    const Vector2d& next = corner[(k + 1) % corner.size()];
    outside = std::max(outside, geometry::outwardNormal(next - corner[k]).dot(at - corner[k]));
  }
  const double level = plan.bench->level_m;
  if (outside <= 0) return level;
  const double cut = level + outside / plan.shape.cut_batter;
  const double fill = level - outside / plan.shape.fill_batter;
  if (*natural > cut) return cut;
  return std::max(*natural, fill);
}

Vector3d inTankFrame(const SitePlan& plan, const geometry::TankGeometry& tank, const Vector3d& at_m) {
  const Vector2d at = plan.placement.toTank(at_m.head<2>());
  return {at.x(), at.y(), at_m.z() - plan.rimLevel() + tank.depth()};
}

}  // namespace core::site
