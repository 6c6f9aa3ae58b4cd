// Each finding: a project that raises it, one that clears it, and where there is a threshold, the border.
#include "core/plan.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string>

#include <catch2/catch.hpp>

namespace {

core::Project quiet() {
  core::Project p;
  p.tank.depth_m = 1.5;
  p.site.soil = core::Soil::firm_loam;
  p.site.clay_percent = 25;
  p.works->plasterers = 40;
  return p;
}

std::vector<core::Finding> found(const core::Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return plan->findings;
}

std::optional<core::Finding> find(const std::vector<core::Finding>& all, const std::string& code) {
  const auto it = std::find_if(all.begin(), all.end(), [&](const auto& f) { return f.code == code; });
  return it == all.end() ? std::nullopt : std::optional(*it);
}

std::ptrdiff_t countOf(const std::vector<core::Finding>& all, const std::string& code) {
  return std::count_if(all.begin(), all.end(), [&](const auto& f) { return f.code == code; });
}

bool raises(const core::Project& p, const std::string& code) {
  return find(found(p), code).has_value();
}

double number(const core::Finding& f, const std::string& name) {
  for (const auto& v : f.values) {
    if (v.name == name) return v.number;
  }
  FAIL("no value " << name);
  return 0;
}

}  // namespace

TEST_CASE("findings: every code is in the list, stops come first") {
  const auto known = core::findingCodes();
  CHECK(std::set(known.begin(), known.end()).size() == known.size());
  core::Project p = quiet();
  p.tank.depth_m = 2.6;
  const auto all = found(p);
  for (const auto& f : all) CHECK(std::find(known.begin(), known.end(), f.code) != known.end());
  CHECK(all.front().severity == core::Severity::stop);
  CHECK(std::is_sorted(all.begin(), all.end(),
                       [](const auto& a, const auto& b) { return a.severity > b.severity; }));
}

TEST_CASE("pit depth: ladder from 1.2 m, cave-in protection from 1.5 m, hand-dug limit 2.5 m") {
  // ladder and protection: 29 CFR 1926 Subpart P (4 ft and 5 ft); hand-dug limit: our own proposal
  const auto deep = [](double pit_m) {
    core::Project p = quiet();
    p.tank.depth_m = pit_m - 0.12 - p.lining.stone_bed_m;  // pit depth = depth + coats + bed
    return p;
  };
  CHECK_FALSE(raises(deep(1.199), "pit_ladder"));
  CHECK(raises(deep(1.2001), "pit_ladder"));
  CHECK_FALSE(raises(deep(1.499), "pit_cave_in"));
  CHECK(raises(deep(1.5001), "pit_cave_in"));
  CHECK_FALSE(raises(deep(2.499), "pit_too_deep_by_hand"));
  CHECK(raises(deep(2.501), "pit_too_deep_by_hand"));
  CHECK(find(found(deep(2.501)), "pit_too_deep_by_hand")->severity == core::Severity::stop);
}

TEST_CASE("clay in the mix: 10 to 15 % wanted, and the sand that reaches it is named") {
  // Practical Action technical brief: earth plaster wants 10-15 % clay
  core::Project p = quiet();
  p.site.clay_percent = 40;  // 3:3 halves it to 20 %
  const auto high = find(found(p), "clay_share_high");
  REQUIRE(high);
  CHECK(high->severity == core::Severity::caution);
  const double sand = number(*high, "sand_per_soil");
  for (auto& coat : p.lining.coats) coat.sand = coat.soil * sand * 1.0001;
  CHECK_FALSE(raises(p, "clay_share_high"));

  p = quiet();
  p.site.clay_percent = 12;  // halved to 6 %
  const auto low = find(found(p), "clay_share_low");
  REQUIRE(low);
  for (auto& coat : p.lining.coats) coat.sand = coat.soil * number(*low, "sand_per_soil") * 0.9999;
  CHECK_FALSE(raises(p, "clay_share_low"));

  p.site.clay_percent = 9.9;
  CHECK(raises(p, "clay_share_cannot_reach"));
  p.site.clay_percent = 20;
  for (auto& coat : p.lining.coats) coat.sand = coat.soil;
  CHECK_FALSE(raises(p, "clay_share_low"));  // exactly 10 %
  p.site.clay_percent = 30;
  CHECK_FALSE(raises(p, "clay_share_high"));  // exactly 15 %
  p.site.clay_percent.reset();
  CHECK(raises(p, "clay_unknown"));
  CHECK_FALSE(raises(quiet(), "clay_unknown"));
}

TEST_CASE("curing: fewer than 7 days is said, and a cure that outlasts the fill window") {
  // IS 456:2000, 13.5.1: at least 7 days (second-hand)
  core::Project p = quiet();
  CHECK(raises(p, "curing_short"));
  for (auto& coat : p.lining.coats) coat.cure_days = 7;
  CHECK_FALSE(raises(p, "curing_short"));
  CHECK(raises(p, "cure_outlasts_fill_window"));
  p.works->fill_within_days = 7;
  CHECK_FALSE(raises(p, "cure_outlasts_fill_window"));
}

TEST_CASE("a crew too small for a coat in one go is told how many would do it") {
  core::Project p = quiet();
  p.works->plasterers = 3;
  const auto small = find(found(p), "coat_crew_small");
  REQUIRE(small);
  p.works->plasterers = static_cast<int>(number(*small, "needed"));
  const auto again = found(p);
  const auto other = find(again, "coat_crew_small");
  CHECK((!other || number(*other, "coat") != number(*small, "coat")));
  p.works->plasterers = static_cast<int>(number(*small, "needed")) - 1;
  CHECK(raises(p, "coat_crew_small"));
}

TEST_CASE("soil not known is said; unsure is not safe") {
  core::Project p = quiet();
  CHECK_FALSE(raises(p, "soil_unknown"));
  p.site.soil.reset();
  CHECK(raises(p, "soil_unknown"));
  CHECK_FALSE(core::plan(p)->earthwork.spoil_loose_m3);
}

TEST_CASE("smaller than the recommended tank, at the border and when the recommendation is changed") {
  // 5 x 3 x 1.5 m: common practice, no source
  core::Project p = quiet();
  p.tank.length_m = 5;
  p.tank.width_m = 3;
  p.tank.batter = 0;
  CHECK_FALSE(raises(p, "smaller_than_recommended"));
  p.tank.width_m = 2.99;
  CHECK(raises(p, "smaller_than_recommended"));
  p.practice.smallest_width_m = 2.9;
  CHECK_FALSE(raises(p, "smaller_than_recommended"));
}

TEST_CASE("parts of the file that are absent are named") {
  core::Project p = quiet();
  CHECK(find(found(p), "part_absent")->values[0].token == "water");
  CHECK(countOf(found(p), "part_absent") == 3);
  p.prices.emplace();
  CHECK(countOf(found(p), "part_absent") == 2);
  p.kept.push_back({"/tank/colour", "\"green\""});
  CHECK(find(found(p), "unknown_key")->values[0].token == "/tank/colour");
}
