// The tank on its ground: level of the platform, cut and fill, spoil, lines, and what the picture takes.
#include "core/compare/refine.h"
#include "core/plan.h"
#include "core/site/relief.h"
#include "core/site/thresholds.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using core::GroundKind;
using core::PlatformLevel;
using core::Project;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double kPi = std::numbers::pi;

Project onSlope(double fall_percent, double azimuth_deg) {
  Project p;
  p.water.reset();
  p.site.soil = core::Soil::firm_loam;
  p.site.ground = {GroundKind::slope, fall_percent, azimuth_deg, {}};
  return p;
}

/// Spot heights of the same even slope, 60 m square, every 5 m.
core::SpotHeights surveyOf(double fall_percent, double azimuth_deg) {
  const Vector2d down(std::sin(azimuth_deg * kPi / 180), std::cos(azimuth_deg * kPi / 180));
  core::SpotHeights::List points;
  for (int i = -6; i <= 6; ++i) {
    for (int k = -6; k <= 6; ++k) {
      const Vector2d at(5 * i, 5 * k);
      points.emplace_back(at.x(), at.y(), 1200 - fall_percent / 100 * down.dot(at));
    }
  }
  return points;
}

core::Plan planned(const Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan.has_value());
  return *plan;
}

double overMiddle(const core::Plan& plan) {
  REQUIRE(plan.site.bench.has_value());
  return plan.site.bench->level_m - plan.site.middle_level_m;
}

}  // namespace

TEST_CASE("level ground takes no cut and no fill; topsoil comes off the platform, the pit is the spoil") {
  Project p = onSlope(0, 0);
  p.site.ground.kind = GroundKind::level;
  const core::Plan plan = planned(p);
  CHECK(plan.earthwork.bench_cut_m3 == 0.0);
  CHECK(plan.earthwork.bench_fill_m3 == 0.0);
  // 6.0 x 3.5 m clear floor: pit rim and 0.6 m of walkway on each side
  const double out = 2 * (plan.geometry.pitOffset(plan.geometry.depth()) + 0.6);
  CHECK_THAT(plan.earthwork.topsoil_m3.value(), WithinRel((6 + out) * (3.5 + out) * 0.15, 1e-12));
  CHECK_THAT(plan.earthwork.spoil_bank_m3.value(), WithinRel(plan.earthwork.pit_volume_m3, 1e-12));
  CHECK_FALSE(plan.site.bench.has_value());
  CHECK(plan.site.across.empty());
}

TEST_CASE("the platform in natural ground lies at the stripped ground of the lowest pit edge") {
  // Falls south: lowest at the long side y = -half width; its level is ground there less the topsoil
  const Project p = onSlope(12, 180);
  const core::Plan plan = planned(p);
  const double half_m = 3.5 / 2 + plan.geometry.pitOffset(plan.geometry.depth());
  CHECK_THAT(overMiddle(plan), WithinAbs(-0.12 * half_m - 0.15, 1e-9));
  REQUIRE(plan.site.cover.has_value());
  CHECK_THAT(plan.site.cover->least_m, WithinAbs(0, 1e-9));
  CHECK(plan.site.cover->isInNaturalGround());
}

TEST_CASE("a balanced platform compacts its cut into its fill, and stands partly on fill") {
  Project p = onSlope(12, 90);
  p.site.platform.level_by = PlatformLevel::balanced;
  p.site.platform.compacted_per_bank = 0.85;
  const core::Plan plan = planned(p);
  CHECK_THAT(plan.earthwork.bench_fill_m3.value(),
             WithinRel(0.85 * plan.earthwork.bench_cut_m3.value(), 1e-8));
  CHECK_FALSE(plan.site.cover->isInNaturalGround());
  // dug out of pit and cut, less what lies in the fill as it lay before
  CHECK_THAT(plan.earthwork.spoil_bank_m3.value(), WithinRel(plan.earthwork.pit_volume_m3, 1e-8));
}

TEST_CASE("a level given counts from the ground at the middle of the tank, whatever the survey's datum") {
  Project p = onSlope(10, 200);
  p.site.platform.level_by = PlatformLevel::given;
  p.site.platform.level_m = -0.35;
  CHECK_THAT(overMiddle(planned(p)), WithinAbs(-0.35, 1e-12));
  p.site.ground.kind = GroundKind::spot_heights;
  p.site.ground.points_m = surveyOf(10, 200);
  p.site.position = {3, -2, 0};
  const core::Plan plan = planned(p);
  CHECK_THAT(overMiddle(plan), WithinAbs(-0.35, 1e-12));
  const double down = 3 * std::sin(200 * kPi / 180) - 2 * std::cos(200 * kPi / 180);
  CHECK_THAT(plan.site.middle_level_m, WithinAbs(1200 - 0.1 * down, 1e-9));
}

TEST_CASE(
    "spot heights of an even slope give the volumes of the closed form for every way to find the level") {
  for (const double azimuth : {0.0, 37.0, 180.0, 301.0}) {
    for (const PlatformLevel level_by :
         {PlatformLevel::natural_ground, PlatformLevel::balanced, PlatformLevel::given}) {
      Project p = onSlope(14, azimuth);
      p.site.platform.level_by = level_by;
      p.site.platform.level_m = 0.1;
      p.site.position.turn_deg = 25;
      const core::Plan even = planned(p);
      p.site.ground.kind = GroundKind::spot_heights;
      p.site.ground.points_m = surveyOf(14, azimuth);
      const core::Plan surveyed = planned(p);
      INFO(azimuth << " " << static_cast<int>(level_by));
      CHECK_THAT(surveyed.earthwork.bench_cut_m3.value(),
                 WithinAbs(even.earthwork.bench_cut_m3.value(), 1e-6));
      CHECK_THAT(surveyed.earthwork.bench_fill_m3.value(),
                 WithinAbs(even.earthwork.bench_fill_m3.value(), 1e-6));
      CHECK_THAT(surveyed.site.fall.percent, WithinAbs(14, 1e-6));
      CHECK(std::abs(std::remainder(surveyed.site.fall.azimuth_deg.value() - azimuth, 360)) < 1e-4);
    }
  }
}

TEST_CASE("a polygon stands with its middle at the place entered and its frame turns back") {
  Project p = onSlope(8, 180);
  p.tank.shape = core::Shape::polygon;
  p.site.ground.kind = GroundKind::spot_heights;
  p.site.ground.points_m = surveyOf(8, 180);
  p.site.position = {4, -3, 30};
  const core::Plan plan = planned(p);
  const Vector2d centre = plan.geometry.outline().centre();
  CHECK((plan.site.placement.toSite(centre) - Vector2d(4, -3)).norm() < 1e-12);
  const Vector3d back =
      core::site::inTankFrame(plan.site, plan.geometry, {4, -3, plan.site.rimLevel() - plan.tank.depth_m});
  CHECK((back - Vector3d(centre.x(), centre.y(), 0)).norm() < 1e-9);
}

TEST_CASE("finished ground is the platform inside, natural far off, and between the faces in between") {
  const Project p = onSlope(20, 180);
  const core::Plan plan = planned(p);
  const double level = plan.site.bench->level_m;
  CHECK(core::site::finishedGround(plan.site, {0, 0}) == level);
  CHECK_THAT(core::site::finishedGround(plan.site, {0, 25}).value(), WithinAbs(0.2 * 25, 1e-9));
  const double edge_m = 3.5 / 2 + plan.geometry.pitOffset(plan.geometry.depth()) + 0.6;
  // 0.5 m uphill of the platform's edge the cut face, 1 : 1, stands 0.5 m over it
  CHECK_THAT(core::site::finishedGround(plan.site, {0, edge_m + 0.5}).value(), WithinAbs(level + 0.5, 1e-9));
  for (const core::site::GroundSample& s : plan.site.across)
    CHECK(std::abs(s.finished_m - s.natural_m) < 1.5);
  CHECK_THAT(plan.site.across.front().natural_m, WithinAbs(plan.site.across.front().finished_m, 1e-9));
  CHECK_THAT(plan.site.across.back().natural_m, WithinAbs(plan.site.across.back().finished_m, 1e-9));
}

TEST_CASE("the heap swells, and its toe stays 0.6 m back from the pit: 29 CFR 1926.651(j)(2), 2 ft") {
  for (const double azimuth : {0.0, 45.0, 180.0, 270.0}) {
    Project p = onSlope(12, 180);
    p.site.spoil_azimuth_deg = azimuth;
    const core::Plan plan = planned(p);
    REQUIRE(plan.site.heap_place.has_value());
    CHECK(plan.site.heap_place->toe_to_edge_m >= 0.6 - 1e-9);
    // Merritt: earth and loam swell 25 %
    CHECK_THAT(plan.earthwork.spoil_loose_m3.value(), WithinRel(1.25 * plan.site.spoil_bank_m3, 1e-12));
    CHECK_THAT(plan.site.heap->loose_m3, WithinRel(plan.earthwork.spoil_loose_m3.value(), 1e-9));
  }
}

TEST_CASE("why there is no platform is told; volumes are then absent, not zero") {
  Project p = onSlope(8, 180);
  p.site.ground.kind = GroundKind::spot_heights;
  p.site.ground.points_m = surveyOf(8, 180);
  p.site.position = {200, 0, 0};
  CHECK(planned(p).site.fault == core::site::BenchFault::outside_survey);
  p.site.position = {26.5, 0, 0};
  const core::Plan leaves = planned(p);
  CHECK(leaves.site.fault.has_value());
  CHECK_FALSE(leaves.earthwork.bench_cut_m3.has_value());
  CHECK_FALSE(leaves.earthwork.spoil_loose_m3.has_value());
  Project steep = onSlope(70, 180);  // over 1 : 1.5
  CHECK(planned(steep).site.fault == core::site::BenchFault::never_daylights);
}

TEST_CASE("the ground of an earlier plan is used again, with the same outcome") {
  Project p = onSlope(9, 180);
  p.site.ground.kind = GroundKind::spot_heights;
  p.site.ground.points_m = surveyOf(9, 180);
  const core::Plan first = planned(p);
  p.tank.depth_m = 1.3;
  const auto again = core::plan(p, &first);
  REQUIRE(again.has_value());
  CHECK(again->site.ground == first.site.ground);
  CHECK(again->earthwork.bench_cut_m3 == planned(p).earthwork.bench_cut_m3);
  p.site.ground.points_m.emplace_back(0.3, 0.3, 1201);
  const auto other = core::plan(p, &first);
  REQUIRE(other.has_value());
  CHECK(other->site.ground != first.site.ground);
}

TEST_CASE("the picture's ground is the plan's, turned with the tank") {
  Project p = onSlope(15, 90);
  p.site.position.turn_deg = 90;  // the length runs north; downhill is the tank's -y
  const core::Plan plan = planned(p);
  const auto relief = core::site::reliefOf(plan.site, plan.geometry, p.lining, p.site.platform.walkway_m);
  REQUIRE(relief.has_value());
  CHECK((relief->downhill.value() - Vector2d(0, -1)).norm() < 1e-9);
  const double middle = relief->natural_m({0, 0});
  CHECK_THAT(middle, WithinAbs(plan.tank.depth_m - overMiddle(plan), 1e-9));
  CHECK_THAT(relief->natural_m({0, -10}), WithinAbs(middle - 1.5, 1e-9));
  CHECK_THAT(relief->natural_m({10, 0}), WithinAbs(middle, 1e-9));
}

TEST_CASE("the downhill side is searched only where there is one; a weaker or wetter one has less") {
  Project p = onSlope(0, 0);
  p.site.ground.kind = GroundKind::level;
  CHECK(planned(p).site.stability.slips.empty());
  p.site.edge_distance_m = 1;
  p.site.edge_height_m = 3;
  core::Plan edge = planned(p);
  CHECK(edge.site.stability.slips.size() == 2);
  CHECK_FALSE(edge.site.stability.leastFactor().has_value());
  core::compare::refine(p, edge);
  const core::site::Stability& s = edge.site.stability;
  REQUIRE(s.slips[0].critical.has_value());
  REQUIRE(s.slips[1].critical.has_value());
  CHECK(s.slips[1].critical->slip.factor < s.slips[0].critical->slip.factor);
  CHECK(s.leastFactor() == s.slips[1].critical->slip.factor);
  for (const core::site::EdgeSlip& slip : s.slips)
    CHECK(slip.critical->slip.from_x_m <= s.upper_end_most_m + 1e-6);
  p.site.soil = core::Soil::stiff_clay;
  core::Plan strong = planned(p);
  core::compare::refine(p, strong);
  CHECK(strong.site.stability.leastFactor() > s.leastFactor());
  p.site.soil.reset();
  CHECK(planned(p).site.stability.cuts.empty());
}

TEST_CASE(
    "the cut's heights are Culmann's of the low, typical and high soil; the vertical one in closed form") {
  // 4 c / gamma tan(45 + phi / 2), as in the reference test of core/site/stability.h; firm loam low: 5 kPa,
  // 18 degrees, 16 kN/m3
  Project p = onSlope(5, 0);
  const core::site::Stability s = planned(p).site.stability;
  REQUIRE(s.cuts.size() == 3);
  CHECK_THAT(s.cuts[0].vertical_m.value(), WithinRel(4 * 5 / 16.0 * std::tan((45 + 9) * kPi / 180), 1e-12));
  CHECK(s.cuts[0].culmann_safe_m.value() < s.cuts[0].culmann_m.value());
  CHECK(s.cuts[0].culmann_m.value() < s.cuts[2].culmann_m.value());
}
