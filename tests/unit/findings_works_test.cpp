// Each finding of works, money and options: a project that raises it, one that clears it, and the border.
#include "core/compare/refine.h"
#include "core/plan.h"

#include <algorithm>
#include <optional>
#include <string>

#include <catch2/catch.hpp>

namespace {

using core::Project;

/// A tank that a large crew builds, with water that fills it in days.
Project quiet() {
  Project p;
  p.site.latitude_deg = 28;
  p.site.elevation_m = 1400;
  p.site.soil = core::Soil::firm_loam;
  p.site.clay_percent = 25;
  p.works->plasterers = 40;
  p.works->masons = 14;
  p.works->mixing_places = 10;
  p.works->placing_minutes = 200;
  p.works->fill_inflow_l_per_day = 40000;
  p.works->fill_most_rise_m_per_day = 4;
  return p;
}

/// Dry and mild months the year round, but rain in July.
core::Water mildWater() {
  core::Water water;
  for (core::ClimateMonth& month : water.climate.months) {
    month.rain_mm = 0;
    month.wet_days = 0;
    month.t_min_c = 12;
    month.t_max_c = 24;
    month.wind_m_s = 1;
    month.humidity_percent = 70;
  }
  water.climate.months[6].rain_mm = 600;
  water.climate.months[6].wet_days = 25;
  water.climate.years = 20;
  return water;
}

core::Plan planOf(const Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return *plan;
}

std::optional<core::Finding> find(const core::Plan& plan, const std::string& code) {
  const auto it = std::ranges::find(plan.findings, code, &core::Finding::code);
  return it == plan.findings.end() ? std::nullopt : std::optional(*it);
}

bool raises(const Project& p, const std::string& code) {
  return find(planOf(p), code).has_value();
}

double number(const core::Finding& f, const std::string& name) {
  const auto it = std::ranges::find(f.values, name, &core::FindingValue::name);
  REQUIRE(it != f.values.end());
  return it->number;
}

std::string tokenOf(const core::Finding& f, const std::string& name) {
  const auto it = std::ranges::find(f.values, name, &core::FindingValue::name);
  REQUIRE(it != f.values.end());
  return it->token;
}

}  // namespace

TEST_CASE("a crew one short of what a coat needs is a caution with the size it could do") {
  Project p = quiet();
  const int needed = planOf(p).works->coat_checks.front().needed;
  p.works->plasterers = needed;
  CHECK_FALSE(raises(p, "coat_crew_small"));
  p.works->plasterers = needed - 1;
  const auto found = find(planOf(p), "coat_crew_small");
  REQUIRE(found);
  CHECK(number(*found, "needed") == needed);
  // a tank of that size is indeed within the crew
  p.tank.length_m = number(*found, "length_m");
  p.tank.width_m = number(*found, "width_m");
  CHECK(planOf(p).works->coat_checks.front().needed <= needed - 1);
  CHECK(planOf(p).tank.full_volume_m3 == Approx(number(*found, "full_m3")).epsilon(1e-6));
}

TEST_CASE("masons, mixing places and setting time of a batch are told apart") {
  Project p = quiet();
  CHECK_FALSE(raises(p, "works_masons_few"));
  CHECK_FALSE(raises(p, "works_batches_slow"));
  CHECK_FALSE(raises(p, "works_batch_sets"));
  const auto check = planOf(p).works->coat_checks.front();
  p.works->masons = check.masons_needed - 1;
  CHECK(raises(p, "works_masons_few"));
  p = quiet();
  int places = 0;
  const core::Plan as_is = planOf(p);
  for (const auto& coat : as_is.works->coat_checks) places = std::max(places, coat.mixing_places_needed);
  p.works->mixing_places = places;
  CHECK_FALSE(raises(p, "works_batches_slow"));
  p.works->mixing_places = std::max(1, places - 1);
  p.works->minutes_per_batch = 60;
  CHECK(raises(p, "works_batches_slow"));
  p = quiet();
  p.works->plasterers = 6;
  p.works->mixing_places = 1;
  p.works->placing_minutes = 10;
  const auto sets = find(planOf(p), "works_batch_sets");
  REQUIRE(sets);
  CHECK(number(*sets, "half_minutes") == Approx(number(*sets, "minutes") / 2));
}

TEST_CASE("a fence that is wanted on the day of a coat asks for more people than there are") {
  Project p = quiet();
  p.works->plasterers = 10;
  p.site.fence_planned = true;
  CHECK_FALSE(raises(p, "works_people_short"));
  const core::Plan plan = planOf(p);
  p.works->wishes = {{"fence", core::works::findTask(*plan.works, "coat_2")->start, {}}};
  const auto found = find(planOf(p), "works_people_short");
  REQUIRE(found);
  CHECK(number(*found, "needed") == 10 + p.works->diggers);
  CHECK(number(*found, "there") == 10);
}

TEST_CASE("a wish for a task that the plan does not have is a note") {
  Project p = quiet();
  p.works->wishes = {{"coat_2", {}, 20}};
  CHECK_FALSE(raises(p, "works_wish_unused"));
  p.works->wishes.push_back({"coat_9", {}, 20});
  const auto found = find(planOf(p), "works_wish_unused");
  REQUIRE(found);
  CHECK(tokenOf(*found, "task") == "coat_9");
}

TEST_CASE("first filling: inflow not known, begun late, never full, walls wet for long") {
  Project p = quiet();
  for (const char* code :
       {"works_fill_inflow_unknown", "works_fill_late", "works_fill_never_full", "works_walls_wet_long"}) {
    INFO(code);
    CHECK_FALSE(raises(p, code));
  }
  p.works->fill_inflow_l_per_day.reset();
  CHECK(raises(p, "works_fill_inflow_unknown"));
  p.works->fill_inflow_l_per_day = 1500;
  CHECK(raises(p, "works_walls_wet_long"));
  CHECK_FALSE(raises(p, "works_fill_never_full"));
  p.works->fill_inflow_l_per_day = 1;
  CHECK(raises(p, "works_fill_never_full"));
  p = quiet();
  const auto plan = planOf(p);
  const auto latest = plan.works->filling->latest_start;
  p.works->wishes = {{"fill", latest, {}}};
  CHECK_FALSE(raises(p, "works_fill_late"));
  p.works->wishes = {{"fill", core::works::addDays(latest, 1), {}}};
  CHECK(raises(p, "works_fill_late"));
}

TEST_CASE("coats in the rains against the best week of the year") {
  Project p = quiet();
  p.water = mildWater();
  p.works->start_date = std::chrono::year{2027} / 1 / 10;
  CHECK_FALSE(raises(p, "works_weather_risk"));
  p.works->start_date = std::chrono::year{2027} / 7 / 1;
  const auto found = find(planOf(p), "works_weather_risk");
  REQUIRE(found);
  CHECK(number(*found, "best_percent") == Approx(100));
  CHECK(number(*found, "rain_percent") > 50);
  CHECK(number(*found, "frost_percent") == 0);
  // and the start that it names clears it
  const std::string best = tokenOf(*found, "best_start");
  REQUIRE(best.size() == 10);
  p.works->start_date = std::chrono::year{std::stoi(best.substr(0, 4))} /
                        static_cast<unsigned>(std::stoi(best.substr(5, 2))) /
                        static_cast<unsigned>(std::stoi(best.substr(8, 2)));
  CHECK_FALSE(raises(p, "works_weather_risk"));
}

TEST_CASE("a coat on a hot, dry, windy day dries fast") {
  Project p = quiet();
  p.water = mildWater();
  CHECK_FALSE(raises(p, "works_coat_dries_fast"));
  for (core::ClimateMonth& month : p.water->climate.months) {
    month.t_min_c = 24;
    month.t_max_c = 40;
    month.humidity_percent = 20;
    month.wind_m_s = 6;
  }
  CHECK(raises(p, "works_coat_dries_fast"));
}

TEST_CASE("records: few of them in force, or far from what is entered and not in force") {
  Project p = quiet();
  p.records.work = {{core::RecordedWork::stone_bed, 10, 80}};
  CHECK(raises(p, "records_few"));
  CHECK_FALSE(raises(p, "records_differ"));
  p.records.in_force = false;
  CHECK_FALSE(raises(p, "records_few"));
  CHECK(raises(p, "records_differ"));
  p.records.work = {{core::RecordedWork::stone_bed, 10, 45}};  // as entered
  CHECK_FALSE(raises(p, "records_differ"));
  p.records.in_force = true;
  p.records.work.resize(3, p.records.work.front());
  CHECK_FALSE(raises(p, "records_few"));
}

TEST_CASE("prices that are missing are counted, a bag over a porter's load is split") {
  Project p = quiet();
  p.prices.emplace();
  const auto missing = find(planOf(p), "cost_prices_missing");
  REQUIRE(missing);
  CHECK(number(*missing, "count") == static_cast<double>(planOf(p).cost->bill.missing.size()));
  for (core::PriceItem& item : p.prices->items) item.price = 10;
  CHECK_FALSE(raises(p, "cost_prices_missing"));
  CHECK_FALSE(raises(p, "cost_bag_split"));
  p.prices->items.front().carried_by = core::Carrier::porter;  // cement
  p.prices->porter.price_per_trip = 5;
  CHECK(raises(p, "cost_bag_split"));
  p.prices->porter.load_kg = 50;
  CHECK_FALSE(raises(p, "cost_bag_split"));
}

TEST_CASE("an option that cannot be built is told by its letter") {
  Project p = quiet();
  p.options = {{"deep", {{"tank.depth_m", 1.7}}},
               {"lined too thick", {{"lining.coats[0].thickness_m", 0.3}, {"tank.depth_m", 0.3}}}};
  core::Plan plan = planOf(p);
  core::compare::refine(p, plan);
  const auto found = find(plan, "option_not_buildable");
  REQUIRE(found);
  CHECK(tokenOf(*found, "option") == "C");
  p.options.pop_back();
  plan = planOf(p);
  core::compare::refine(p, plan);
  CHECK_FALSE(find(plan, "option_not_buildable"));
}
