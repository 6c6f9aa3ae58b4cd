#include "core/exchange/plan_json.h"
#include "core/plan.h"
#include "tests/support/water_project.h"

#include <cmath>

#include <catch2/catch.hpp>

using core::Project;
using core::water::WaterPlan;

namespace {

core::Plan planned(const Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return *plan;
}

WaterPlan water(const Project& project) {
  const core::Plan plan = planned(project);
  REQUIRE(plan.water.has_value());
  return *plan.water;
}

/// Years in ten of one tank and share of the beds, run by itself.
double yearsInTen(const core::water::TankCurve& tank, const core::water::DaySeries& series, double factor) {
  const auto run = core::water::run(tank, series, core::water::startVolume(tank, series, factor), factor);
  int good = 0;
  for (std::size_t y = 0; y < series.years(); ++y) {
    bool dry = false;
    for (std::size_t d = series.year_start[y]; d < series.year_start[y + 1]; ++d) dry |= run.dry[d] != 0;
    good += dry ? 0 : 1;
  }
  return 10.0 * good / static_cast<double>(series.years());
}

}  // namespace

TEST_CASE("the months add up to the year and the year closes") {
  const WaterPlan plan = water(support::waterProject());
  CHECK(plan.years == 30);
  CHECK(plan.closure < 1e-9);
  core::water::MonthFlows sum;
  for (const auto& month : plan.months) {
    sum.source += month.source;
    sum.beds += month.beds;
    sum.drawn += month.drawn;
    sum.unmet += month.unmet;
    sum.dry_days += month.dry_days;
    CHECK(month.drawn + month.unmet == Approx(month.need()).epsilon(1e-5));
  }
  CHECK(sum.source == Approx(plan.year.source));
  CHECK(sum.beds == Approx(plan.year.beds));
  CHECK(sum.dry_days == Approx(plan.dry_days_mean));
  CHECK(sum.unmet == Approx(plan.short_mean_m3).epsilon(1e-5));
  // 0.3 L/min all day is 432 L a day
  CHECK(plan.year.source == Approx(0.432 * 365).epsilon(1e-6));
  CHECK(plan.year.rain == Approx(plan.rain_mm / 1000 * plan.curve.catch_m2).epsilon(1e-5));
  CHECK(plan.volume_met_percent == Approx(100 * plan.year.drawn / plan.year.need()).epsilon(1e-5));
}

TEST_CASE("bands are in order, within the tank, and begin with the month of most rain") {
  const WaterPlan plan = water(support::waterProject());
  REQUIRE(plan.band.size() == core::water::kYearDays);
  CHECK(plan.band.front().month == 6);
  CHECK(plan.band.front().day == 1);
  CHECK(plan.band.back().month == 5);
  CHECK(plan.band.back().day == 30);
  for (const auto& day : plan.band) {
    CHECK(0 <= day.least);
    CHECK(day.least <= day.p10);
    CHECK(day.p10 <= day.p50);
    CHECK(day.p50 <= day.p90);
    CHECK(day.p90 <= day.most);
    CHECK(day.most <= plan.curve.full_m3 * (1 + 1e-6));
  }
}

TEST_CASE("the years with a dry day are those that are counted") {
  const WaterPlan plan = water(support::waterProject());
  int good = 0;
  int worst = 0;
  double short_m3 = 0;
  for (const auto& year : plan.each_year) {
    good += year.dry_days == 0 ? 1 : 0;
    worst = std::max(worst, year.dry_days);
    short_m3 = std::max(short_m3, year.short_m3);
    CHECK((year.dry_days > 0) == (year.short_m3 > 1e-3));
  }
  REQUIRE(0 < good);
  REQUIRE(good < 30);
  CHECK(plan.years_without_dry_day == good);
  CHECK(plan.years_in_ten == Approx(10.0 * good / 30));
  CHECK(plan.dry_days_worst == worst);
  CHECK(plan.short_worst_m3 == Approx(short_m3));
  CHECK(plan.years_in_ten == Approx(yearsInTen(plan.curve, *plan.series, 1)));
}

TEST_CASE("the smallest tank meets the target and a smaller one does not") {
  const Project project = support::waterProject();
  const WaterPlan plan = water(project);
  REQUIRE(plan.smallest_full_m3.has_value());
  const double target = project.water->target_years_in_ten;
  const auto sized = [&](double full_m3) {
    return core::water::scaled(plan.curve, core::water::factorFor(plan.curve, full_m3));
  };
  CHECK(yearsInTen(sized(*plan.smallest_full_m3 * 1.005), *plan.series, 1) >= target);
  CHECK(yearsInTen(sized(*plan.smallest_full_m3 * 0.98), *plan.series, 1) < target);
}

TEST_CASE("the largest beds meet the target and larger ones do not") {
  const Project project = support::waterProject();
  const WaterPlan plan = water(project);
  REQUIRE(plan.largest_bed_area_m2.has_value());
  const double target = project.water->target_years_in_ten;
  const double factor = *plan.largest_bed_area_m2 / plan.bed_area_m2;
  CHECK(yearsInTen(plan.curve, *plan.series, factor * 0.995) >= target);
  CHECK(yearsInTen(plan.curve, *plan.series, factor * 1.02) < target);
}

TEST_CASE("a steady need empties a full tank and a steady flow fills it in the days that arithmetic gives") {
  Project project = support::waterProject();
  core::Water& w = *project.water;
  w.beds.clear();
  w.losses = {1.05, 100, 0};  // covered and tight
  w.people = 40;
  w.l_per_person_day = 20;
  w.animals.clear();
  for (auto& month : w.source.months) month = {1, 10};
  for (auto& month : w.climate.months) {
    month.rain_mm = 0;
    month.wet_days = 0;
  }
  const core::Plan plan = planned(project);
  const double usable = plan.tank.usable_volume_m3;
  for (const auto& month : plan.water->lasts) {
    REQUIRE(month.days.has_value());
    CHECK(*month.days == static_cast<int>(std::floor(usable / 0.8)));
  }
  for (const auto& month : plan.water->fills) {
    REQUIRE(month.days.has_value());
    CHECK(*month.days == static_cast<int>(std::ceil(plan.tank.full_volume_m3 / 0.6)));
  }
}

TEST_CASE("one weather year is enough to know how long a full tank lasts from every month") {
  Project project = support::waterProject();
  project.water->people = 60;
  std::vector<core::DailyWeather> days(365);
  for (std::size_t k = 0; k < days.size(); ++k) {
    days[k].date = std::chrono::sys_days(std::chrono::year{2001} / 1 / 1) + std::chrono::days(k);
    days[k].rain_mm = k < 31 ? 2 : 0;
    days[k].t_min_c = 10;
    days[k].t_max_c = 22;
  }
  project.water->climate.kind = core::ClimateKind::daily;
  project.water->climate.daily = core::DailyRecord(days);
  for (const auto& month : water(project).lasts) {
    REQUIRE(month.days.has_value());
    CHECK(*month.days < 40);
  }
}

TEST_CASE("without need every day is met; without supply a tank never fills") {
  Project idle = support::waterProject();
  idle.water->beds.clear();
  idle.water->animals.clear();
  const WaterPlan none = water(idle);
  CHECK(none.years_in_ten == 10);
  CHECK(none.days_met_percent == 100);
  CHECK(none.volume_met_percent == 100);
  CHECK_FALSE(none.largest_bed_area_m2.has_value());
  Project dry = support::waterProject();
  for (auto& month : dry.water->source.months) month.flow_l_per_min = 0;
  for (auto& month : dry.water->climate.months) {
    month.rain_mm = 0;
    month.wet_days = 0;
  }
  const WaterPlan nothing = water(dry);
  CHECK(nothing.years_in_ten == 0);
  for (const auto& month : nothing.fills) CHECK_FALSE(month.days.has_value());
  CHECK_FALSE(nothing.smallest_full_m3.has_value());
}

TEST_CASE("there is no answer without latitude or climate") {
  Project project = support::waterProject();
  project.site.latitude_deg.reset();
  CHECK_FALSE(planned(project).water.has_value());
  project = support::waterProject();
  project.water->climate.months[4].wet_days.reset();
  CHECK_FALSE(planned(project).water.has_value());
  project.water.reset();
  CHECK_FALSE(planned(project).water.has_value());
}

TEST_CASE("weather years used again from an earlier plan change nothing") {
  const Project first = support::waterProject();
  Project second = first;
  second.tank.length_m += 1;
  second.water->beds[0].area_m2 = 60;
  Project third = second;
  third.water->climate.seed = 7;
  const core::Plan before = planned(first);
  for (const Project& project : {first, second, third}) {
    const auto again = core::plan(project, &before);
    REQUIRE(again.has_value());
    CHECK(core::exchange::planText(*again) == core::exchange::planText(planned(project)));
  }
}

TEST_CASE("more rain, more tap, more tank, fewer beds: never fewer good years") {
  const Project base = support::waterProject();
  const double years = water(base).years_in_ten;
  Project more = base;
  for (auto& month : more.water->source.months) month.flow_l_per_min *= 1.3;
  CHECK(water(more).years_in_ten >= years);
  more = base;
  more.tank.length_m *= 1.3;
  CHECK(water(more).years_in_ten >= years);
  more = base;
  for (auto& month : more.water->climate.months) month.rain_mm = *month.rain_mm * 1.3;
  CHECK(water(more).years_in_ten >= years);
  more = base;
  more.water->roof.area_m2 = 80;
  CHECK(water(more).years_in_ten >= years);
  more = base;
  more.water->beds[0].area_m2 *= 0.7;
  CHECK(water(more).years_in_ten >= years);
  more = base;
  more.water->losses.cover_percent = 75;
  CHECK(water(more).years_in_ten >= years);
}
