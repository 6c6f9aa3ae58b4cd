// Findings of site and safety: a project that raises each, one that clears it at the value named, the border.
#include "core/plan.h"
#include "core/site/thresholds.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <catch2/catch.hpp>

using core::Project;
using core::Severity;

namespace {

/// A site of which all is known and nothing is wrong.
Project sound() {
  Project p;
  p.tank.batter = 1.2;
  core::Site& site = p.site;
  site.soil = core::Soil::firm_loam;
  site.clay_percent = 20;
  site.water_table_depth_m = 20;
  site.edge_distance_m = 50;
  site.edge_height_m = 2;
  site.rock_floor = false;
  site.house_downhill_m = 500;
  site.toddlers_within_20_m = false;
  return p;
}

std::optional<core::Finding> find(const Project& p, const std::string& code) {
  const auto plan = core::plan(p);
  REQUIRE(plan.has_value());
  const auto& all = plan->findings;
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const core::Finding& f) { return f.code == code; });
  return found == all.end() ? std::nullopt : std::optional(*found);
}

bool raises(const Project& p, const std::string& code, Severity severity) {
  const auto finding = find(p, code);
  if (finding) CHECK(finding->severity == severity);
  return finding.has_value();
}

double number(const Project& p, const std::string& code, const std::string& name) {
  const auto finding = find(p, code);
  REQUIRE(finding.has_value());
  for (const core::FindingValue& value : finding->values) {
    if (value.name == name) return value.number;
  }
  FAIL(code << " has no value " << name);
  return 0;
}

double fallOf(double angle_deg) {
  return 100 * std::tan(angle_deg * std::numbers::pi / 180);
}

}  // namespace

TEST_CASE("a sound site raises none of them") {
  const auto plan = core::plan(sound());
  REQUIRE(plan.has_value());
  for (const core::Finding& f : plan->findings) {
    INFO(f.code);
    CHECK_FALSE(f.code.starts_with("site_"));
  }
}

TEST_CASE("loose fill and soft wet ground stop the work; rock is a caution") {
  Project p = sound();
  p.site.soil = core::Soil::loose_fill;
  CHECK(raises(p, "site_on_fill", Severity::stop));
  p.site.soil = core::Soil::soft_wet;
  CHECK(raises(p, "site_soft_wet", Severity::stop));
  CHECK_FALSE(find(p, "site_on_fill"));
  p.site.rock_floor = true;
  CHECK(raises(p, "site_rock_floor", Severity::caution));
}

TEST_CASE("swelling soil from 35 % clay: our own proposal") {
  Project p = sound();
  p.site.clay_percent = 34.9;
  CHECK_FALSE(find(p, "site_swelling_soil"));
  p.site.clay_percent = 35;
  CHECK(raises(p, "site_swelling_soil", Severity::caution));
}

TEST_CASE("the batter of the cut against 29 CFR 1926 Subpart P, appendix B, table B-1") {
  // Type B 1:1, type C 1 1/2:1; firm loam is taken as B, sand as C (own)
  Project p = sound();
  p.tank.depth_m = 1.6;
  p.tank.batter = 1;
  CHECK_FALSE(find(p, "site_cut_too_steep"));
  p.tank.batter = 0.99;
  CHECK(raises(p, "site_cut_too_steep", Severity::caution));
  CHECK(number(p, "site_cut_too_steep", "wanted") == 1);
  p.site.soil = core::Soil::sandy;
  CHECK(number(p, "site_cut_too_steep", "wanted") == 1.5);
  p.tank.batter = 1.5;
  CHECK_FALSE(find(p, "site_cut_too_steep"));
  p.site.soil.reset();  // not known counts as the weakest
  p.tank.batter = 1.4;
  CHECK(number(p, "site_cut_too_steep", "wanted") == 1.5);
  p.tank.depth_m = 1.2;  // under 1.5 m of pit the table is not asked for
  CHECK_FALSE(find(p, "site_cut_too_steep"));
}

TEST_CASE("a cut higher than the weakest soil of its class bears, and cleared at the height named") {
  Project p = sound();
  p.tank.batter = 0.1;
  p.tank.depth_m = 2.2;
  REQUIRE(raises(p, "site_cut_too_high", Severity::caution));
  const double most_m = number(p, "site_cut_too_high", "most_m");
  const double pit_m = number(p, "site_cut_too_high", "pit_depth_m");
  p.tank.depth_m += most_m - pit_m - 1e-6;
  CHECK_FALSE(find(p, "site_cut_too_high"));
  p.tank.depth_m += 2e-6;
  CHECK(find(p, "site_cut_too_high"));
}

TEST_CASE("slopes: caution from 15 degrees, stop from 25") {
  Project p = sound();
  p.site.ground.kind = core::GroundKind::slope;
  p.site.ground.fall_percent = fallOf(14.99);
  CHECK_FALSE(find(p, "site_slope_steep"));
  p.site.ground.fall_percent = fallOf(15.01);
  CHECK(raises(p, "site_slope_steep", Severity::caution));
  p.site.ground.fall_percent = fallOf(24.99);
  CHECK_FALSE(find(p, "site_slope_too_steep"));
  p.site.ground.fall_percent = fallOf(25.01);
  CHECK(raises(p, "site_slope_too_steep", Severity::stop));
  CHECK_FALSE(find(p, "site_slope_steep"));
}

TEST_CASE("the edge downhill: two rules, a caution where they disagree, a stop under both") {
  Project p = sound();
  p.site.edge_height_m = 3;
  p.site.edge_distance_m = 2;
  REQUIRE(raises(p, "site_edge_near", Severity::caution));
  const double own_m = number(p, "site_edge_near", "own_m");
  CHECK(number(p, "site_edge_near", "code_m") == Approx(1));  // a third of the drop
  p.site.edge_distance_m = own_m;
  CHECK_FALSE(find(p, "site_edge_near"));
  p.site.edge_distance_m = own_m - 1e-6;
  CHECK(find(p, "site_edge_near"));
  p.site.edge_distance_m = 1;
  CHECK(find(p, "site_edge_near"));
  p.site.edge_distance_m = 1 - 1e-6;
  CHECK(raises(p, "site_edge_too_near", Severity::stop));
  p.site.edge_distance_m.reset();
  CHECK(raises(p, "site_edge_unknown", Severity::caution));
}

TEST_CASE("ground water lifts the empty tank: stop, caution, cleared by a deeper water table") {
  Project p = sound();
  p.tank.batter = 0;
  p.site.water_table_depth_m = 0;
  CHECK(raises(p, "site_uplift", Severity::stop));
  CHECK(number(p, "site_uplift", "factor") < 1);
  // the water table at which the caution ends lies where the factor is 1.2 (own)
  double dry = 20, wet = 0;
  for (int k = 0; k < 60; ++k) {
    p.site.water_table_depth_m = (dry + wet) / 2;
    const bool lifts = find(p, "site_uplift") || find(p, "site_uplift_near");
    (lifts ? wet : dry) = (dry + wet) / 2;
  }
  p.site.water_table_depth_m = wet;
  REQUIRE(raises(p, "site_uplift_near", Severity::caution));
  CHECK(number(p, "site_uplift_near", "factor") == Approx(1.2));
  p.site.water_table_depth_m.reset();
  CHECK(raises(p, "site_water_table_unknown", Severity::caution));
}

TEST_CASE("a house within 100 m downhill, and one that is not known") {
  Project p = sound();
  p.site.house_downhill_m = 100;
  CHECK(raises(p, "site_house_in_flow_path", Severity::caution));
  p.site.house_downhill_m = 100.1;
  CHECK_FALSE(find(p, "site_house_in_flow_path"));
  p.site.house_downhill_m.reset();
  CHECK(raises(p, "site_house_unknown", Severity::caution));
}

TEST_CASE("small children near: a stop until the fence is planned") {
  Project p = sound();
  p.site.toddlers_within_20_m = true;
  CHECK(raises(p, "site_toddlers_no_fence", Severity::stop));
  p.site.fence_planned = false;
  CHECK(raises(p, "site_toddlers_no_fence", Severity::stop));
  p.site.fence_planned = true;
  CHECK_FALSE(find(p, "site_toddlers_no_fence"));
  p.site.fence_planned.reset();
  p.site.toddlers_within_20_m.reset();
  CHECK(raises(p, "site_toddlers_unknown", Severity::caution));
}

TEST_CASE("runoff led straight in, cleared by a silt trap; frost by the coldest month") {
  Project p = sound();
  p.water = support::waterProject().water;
  CHECK_FALSE(find(p, "site_runoff_straight_in"));
  p.water->roof.area_m2 = 20;
  CHECK(raises(p, "site_runoff_straight_in", Severity::caution));
  p.site.silt_trap_planned = true;
  CHECK_FALSE(find(p, "site_runoff_straight_in"));
  p.water->climate.months[11].t_min_c = 0;
  CHECK_FALSE(find(p, "site_frost"));
  p.water->climate.months[11].t_min_c = -0.1;
  CHECK(number(p, "site_frost", "month") == 12);
}

TEST_CASE("an override counts when engineer, licence, reason and date are all there") {
  core::StopOverride word;
  CHECK_FALSE(word.isRecorded());
  word = {"A. Tesh", "CE 1", "drained and tested", std::chrono::year{2027} / 1 / 5};
  CHECK(word.isRecorded());
  for (int k = 0; k < 4; ++k) {
    core::StopOverride part = word;
    if (k == 0) part.engineer.clear();
    if (k == 1) part.licence.clear();
    if (k == 2) part.reason.clear();
    if (k == 3) part.date.reset();
    CHECK_FALSE(part.isRecorded());
  }
}
