#include "core/findings.h"
#include "core/plan.h"
#include "tests/support/water_project.h"

#include <algorithm>

#include <catch2/catch.hpp>

using core::Finding;
using core::Project;

namespace {

std::vector<Finding> found(const Project& project) {
  const auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return plan->findings;
}

int count(const Project& project, const char* code) {
  const auto all = found(project);
  return static_cast<int>(
      std::count_if(all.begin(), all.end(), [&](const Finding& f) { return f.code == code; }));
}

bool raises(const Project& project, const char* code) {
  return count(project, code) > 0;
}

double valueOf(const Project& project, const char* code, const char* name) {
  for (const Finding& finding : found(project)) {
    if (finding.code != code) continue;
    for (const core::FindingValue& value : finding.values) {
      if (value.name == name) return value.number;
    }
  }
  FAIL(code << " has no value " << name);
  return 0;
}

/// Enough water for everything: raises nothing but notes on how it was reckoned.
Project plenty() {
  Project p = support::waterProject();
  for (auto& month : p.water->source.months) month.flow_l_per_min = 5;
  return p;
}

}  // namespace

TEST_CASE("latitude, elevation and climate that are not known are said") {
  Project p = plenty();
  for (const char* code : {"water_latitude_unknown", "water_elevation_unknown", "water_climate_unknown"})
    CHECK_FALSE(raises(p, code));
  p.site.latitude_deg.reset();
  p.site.elevation_m.reset();
  p.water->climate.months[0].rain_mm.reset();
  for (const char* code : {"water_latitude_unknown", "water_elevation_unknown", "water_climate_unknown"})
    CHECK(raises(p, code));
}

TEST_CASE("no supply and no need are said") {
  Project p = plenty();
  CHECK_FALSE(raises(p, "water_no_supply"));
  for (auto& month : p.water->source.months) month.flow_l_per_min = 0;
  CHECK(raises(p, "water_no_supply"));
  p.water->roof = {20, 0.8, 0};
  CHECK_FALSE(raises(p, "water_no_supply"));
  p.water->roof.runoff = 0;
  CHECK(raises(p, "water_no_supply"));
  CHECK_FALSE(raises(p, "water_no_need"));
  p.water->beds.clear();
  p.water->animals.clear();
  CHECK(raises(p, "water_no_need"));
}

TEST_CASE("people who use the water are told that it is not for drinking") {
  Project p = plenty();
  CHECK_FALSE(raises(p, "water_not_for_drinking"));
  p.water->people = 1;
  CHECK(raises(p, "water_not_for_drinking"));
}

TEST_CASE("a missed target names what would meet it, and at that value it is met") {
  Project p = support::waterProject();
  p.water->source.months[3].flow_l_per_min = 0.1;
  p.water->target_years_in_ten = 10;
  p.water->beds[0].area_m2 = 250;
  REQUIRE(raises(p, "water_target_missed"));
  const double area = valueOf(p, "water_target_missed", "largest_bed_area_m2");
  p.water->beds[0].area_m2 = area * 0.999;
  CHECK_FALSE(raises(p, "water_target_missed"));
  p.water->beds[0].area_m2 = area * 1.03;
  CHECK(raises(p, "water_target_missed"));
}

TEST_CASE("a tank that never fills is said") {
  Project p = plenty();
  CHECK_FALSE(raises(p, "water_never_full"));
  for (auto& month : p.water->source.months) month.flow_l_per_min = 0;
  for (auto& month : p.water->climate.months) {
    month.rain_mm = 0;
    month.wet_days = 0;
  }
  CHECK(raises(p, "water_never_full"));
}

TEST_CASE("years made from means alone are said to differ too little") {
  Project p = plenty();
  CHECK_FALSE(raises(p, "water_rain_spread_unknown"));
  p.water->climate.rain_cv_percent.reset();
  CHECK(raises(p, "water_rain_spread_unknown"));
}

TEST_CASE("few weather years are said: nine are few, ten are not") {
  Project p = plenty();
  p.water->climate.years = 10;
  CHECK_FALSE(raises(p, "water_years_few"));
  p.water->climate.years = 9;
  CHECK(valueOf(p, "water_years_few", "years") == 9);
  CHECK_FALSE(raises(p, "water_record_short"));  // these are made, not measured
}

TEST_CASE("beds that need nothing drawn are not told to be entered") {
  Project p = plenty();
  p.water->animals.clear();
  p.water->crops.push_back({.name = "fallow", .kc_ini = 0, .kc_mid = 0, .kc_end = 0});
  p.water->beds[0].crop = "fallow";
  REQUIRE(core::plan(p)->water->year.need() <= 0);
  CHECK_FALSE(raises(p, "water_no_need"));
}

TEST_CASE("a record without a whole year says so") {
  Project p = plenty();
  std::vector<core::DailyWeather> days(300);
  for (std::size_t k = 0; k < days.size(); ++k) {
    days[k].date = std::chrono::sys_days(std::chrono::year{2001} / 1 / 1) + std::chrono::days(k);
    days[k].rain_mm = 1;
    days[k].t_min_c = 10;
    days[k].t_max_c = 22;
  }
  p.water->climate.kind = core::ClimateKind::daily;
  p.water->climate.daily = core::DailyRecord(days);
  CHECK(raises(p, "water_record_no_whole_year"));
  p.water->climate.kind = core::ClimateKind::monthly;
  CHECK_FALSE(raises(p, "water_record_no_whole_year"));
}

TEST_CASE("gaps of a record are said, whichever rule is used") {
  Project p = plenty();
  std::vector<core::DailyWeather> days;
  const std::chrono::sys_days first = std::chrono::year{2001} / 1 / 1;
  for (int k = 0; k < 365 * 12; ++k) {
    core::DailyWeather day{};
    day.date = first + std::chrono::days(k);
    day.rain_mm = k % 9 == 0 ? 8 : 0;
    day.t_min_c = 10;
    day.t_max_c = 22;
    days.push_back(day);
  }
  p.water->climate.kind = core::ClimateKind::daily;
  p.water->climate.daily = core::DailyRecord(days);
  CHECK_FALSE(raises(p, "water_record_years_left_out"));
  CHECK_FALSE(raises(p, "water_record_filled"));
  days[1000].rain_mm.reset();
  p.water->climate.daily = core::DailyRecord(days);
  CHECK(raises(p, "water_record_years_left_out"));
  CHECK_FALSE(raises(p, "water_record_filled"));
  p.water->climate.gaps = core::GapRule::nearest_year;
  CHECK_FALSE(raises(p, "water_record_years_left_out"));
  CHECK(valueOf(p, "water_record_filled", "values") == 1);
}

TEST_CASE("bucket-and-watch readings: few, too quick, one apart, and a flow that is not theirs") {
  Project p = plenty();
  p.water->source.months[2].flow_l_per_min = 10;
  auto& readings = p.water->source.readings;
  for (const double seconds : {90.0, 91.0, 89.0}) readings.push_back({3, 15, seconds});  // 10 L/min
  CHECK(valueOf(p, "water_readings_few", "count") == 3);
  readings.push_back({3, 15, 90.5});
  CHECK_FALSE(raises(p, "water_readings_few"));
  CHECK_FALSE(raises(p, "water_reading_outlier"));
  CHECK_FALSE(raises(p, "water_flow_differs_from_readings"));
  readings.push_back({3, 15, 30});
  CHECK(valueOf(p, "water_reading_outlier", "row") == 4);
  CHECK_FALSE(raises(p, "water_reading_too_quick"));
  readings.push_back({3, 15, 2.9});
  CHECK(valueOf(p, "water_reading_too_quick", "seconds") == Approx(2.9));
  readings.resize(4);
  p.water->source.months[2].flow_l_per_min = 11.2;
  CHECK(valueOf(p, "water_flow_differs_from_readings", "month") == 3);
  p.water->source.months[2].flow_l_per_min = 10.9;
  CHECK_FALSE(raises(p, "water_flow_differs_from_readings"));
}

TEST_CASE("two methods of evapotranspiration that differ are shown side by side") {
  Project p = plenty();
  for (auto& month : p.water->climate.months) month.wind_m_s = 6;
  CHECK(raises(p, "water_et0_methods_differ"));
  const double penman = valueOf(p, "water_et0_methods_differ", "penman_monteith_mm");
  const double hargreaves = valueOf(p, "water_et0_methods_differ", "hargreaves_mm");
  CHECK(std::abs(hargreaves / penman - 1) > 0.05);
  p.water->climate.et0_method = core::Et0Method::hargreaves;
  CHECK(valueOf(p, "water_et0_methods_differ", "penman_monteith_mm") == Approx(penman));
}
