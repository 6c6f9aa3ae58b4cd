// The daily balance in cases that can be solved by hand.
#include "core/water/balance.h"
#include "core/water/sweep.h"
#include "tests/support/random_days.h"

#include <cmath>
#include <numeric>

#include <catch2/catch.hpp>

namespace {

using namespace core::water;
using support::alikeDays;

constexpr double kFull_m = 1.25;  // level

/// Rectangular tank of 4 m x 3 m at the floor, without a cove.
TankCurve tankWith(double batter, double dead_depth_m) {
  core::Tank tank;
  tank.measured_at = core::MeasuredAt::floor;
  tank.length_m = 4;
  tank.width_m = 3;
  tank.corner_radius_m = 0;
  tank.depth_m = 1.5;
  tank.freeboard_m = 0.25;
  tank.dead_depth_m = dead_depth_m;
  tank.batter = batter;
  core::Lining lining;
  lining.cove_radius_m = 0;
  return curveOf(core::geometry::TankGeometry(tank, lining));
}

/// Upright walls: 12 m2 and 15 m3.
TankCurve prism(double dead_depth_m = 0) {
  return tankWith(0, dead_depth_m);
}

int dryDays(const Run& run) {
  return std::accumulate(run.dry.begin(), run.dry.end(), 0);
}

double levelAfter(const TankCurve& tank, double evaporation_mm, std::size_t days) {
  const DaySeries series = alikeDays({.evaporation_mm = evaporation_mm}, days);
  return tank.level(run(tank, series, tank.full_m3).totals.end);
}

}  // namespace

TEST_CASE("a prism of 4 x 3 m filled to 1.25 m holds 15 m3") {
  const TankCurve tank = prism(0.1);
  CHECK(tank.full_m3 == Approx(15));
  CHECK(tank.dead_m3 == Approx(1.2));
  CHECK(tank.surface(0.7) == Approx(12));
  CHECK(tank.wetted(1.0) == Approx(12 + 14));
  CHECK(tank.catch_m2 == Approx(12));
  CHECK(tank.level(6) == Approx(0.5));
}

TEST_CASE("an even inflow fills the tank on the day its sum reaches the volume, then spills") {
  const Run filled = run(prism(), alikeDays({.supply_m3 = 0.4}, 50), 0);
  CHECK(filled.volume_m3[36] == Approx(37 * 0.4));
  CHECK(filled.volume_m3[37] == 15);  // 38 x 0.4 = 15.2
  CHECK(filled.spill_m3[36] == 0);
  CHECK(filled.spill_m3[37] == Approx(0.2).epsilon(1e-5));
  CHECK(filled.spill_m3[40] == Approx(0.4));
  CHECK(filled.totals.spill == Approx(50 * 0.4 - 15).epsilon(1e-6));
}

TEST_CASE("an even need empties the tank down to the dead depth") {
  const Run drawn = run(prism(0.1), alikeDays({.household_m3 = 0.5}, 40), 15);
  CHECK(drawn.volume_m3[26] == Approx(15 - 27 * 0.5));
  CHECK(dryDays(drawn) == 13);                                         // 13.8 / 0.5 = 27.6 days
  CHECK(drawn.drawn_m3[27] == Approx(13.8 - 27 * 0.5).epsilon(1e-5));  // what is left over the dead depth
  CHECK(drawn.unmet_m3[28] == Approx(0.5));
  CHECK(drawn.totals.end == Approx(1.2));
  CHECK(drawn.totals.unmet == Approx(40 * 0.5 - 13.8));
}

TEST_CASE("as much in as out keeps the water where it is") {
  const Run steady = run(prism(), alikeDays({.supply_m3 = 0.5, .beds_m3 = 0.25}, 1000), 7, 2);
  CHECK(steady.totals.end == Approx(7));
  CHECK(dryDays(steady) == 0);
}

TEST_CASE("evaporation lowers a prism evenly, past the dead depth, and stops at the floor") {
  const Run run_down = run(prism(0.1), alikeDays({.evaporation_mm = 5}, 300), 15);
  CHECK(run_down.volume_m3[99] == Approx(15 - 100 * 0.005 * 12));
  CHECK(run_down.volume_m3[239] == Approx(15 - 240 * 0.005 * 12));  // 0.6 m3, under the dead 1.2 m3
  CHECK(run_down.volume_m3[260] == Approx(0).margin(1e-12));
  CHECK(run_down.totals.evaporation == Approx(15));
}

TEST_CASE("evaporation lowers a battered tank by its depth: closed form at first order in the day") {
  // dV/dt = -e A is dz/dt = -e whatever the shape. With A taken at the start of each day the level falls by
  // e + e^2 A'/(2A) + ...: over n days at most n e^2 max(A'/2A) too much, here A'/A <= P/A at the floor x
  // batter = 14/12 x 0.5; a tenth more bears the terms of higher order.
  const TankCurve tank = tankWith(0.5, 0);
  const auto error = [&](double e_mm, std::size_t days) {
    return kFull_m - static_cast<double>(days) * e_mm / 1000 - levelAfter(tank, e_mm, days);
  };
  const double bound = 100 * 0.008 * 0.008 * (14.0 / 12 * 0.5) / 2 * 1.1;
  CHECK(error(8, 100) > 0);
  CHECK(error(8, 100) < bound);
  CHECK(error(8, 100) / error(4, 200) ==
        Approx(2).epsilon(0.01));  // first order: half the step, half the error
}

TEST_CASE("seepage goes through the wetted floor and walls") {
  DaySeries series = alikeDays({.seepage_mm_day = 2}, 1);
  CHECK(run(prism(), series, 15).totals.seepage == Approx(0.002 * (12 + 14 * 1.25)));
}

TEST_CASE("losses take no more than there is, in proportion") {
  const DaySeries series = alikeDays({.evaporation_mm = 6, .supply_m3 = 0.04, .seepage_mm_day = 2}, 10);
  const Run dry = run(prism(), series, 0);
  CHECK(dry.totals.evaporation == Approx(0.3));  // three quarters of 0.4 m3: floor and surface are alike
  CHECK(dry.totals.seepage == Approx(0.1));
  CHECK(dry.totals.end == Approx(0).margin(1e-12));
}

TEST_CASE("rain falls into the opening at the rim") {
  const TankCurve tank = tankWith(0.5, 0);
  const Run rained = run(tank, alikeDays({.rain_mm = 10}, 1), 1);
  CHECK(rained.totals.rain == Approx(0.010 * (4 + 1.5) * (3 + 1.5)));
  CHECK(rained.totals.end == Approx(1 + rained.totals.rain));
}

TEST_CASE("an empty tank meets nothing and a day without need is not dry") {
  const Run empty = run(prism(), alikeDays({.beds_m3 = 0.2}, 5), 0);
  CHECK(dryDays(empty) == 5);
  CHECK(empty.totals.unmet == Approx(1.0));
  CHECK(dryDays(run(prism(), alikeDays({.beds_m3 = 0.2}, 5), 0, 0)) == 0);
  CHECK(dryDays(run(prism(), alikeDays({}, 5), 0)) == 0);
}

TEST_CASE("a need met to 99.9 % is met") {
  const DaySeries almost = alikeDays({.supply_m3 = 0.9995, .household_m3 = 1}, 3);
  const DaySeries short_of = alikeDays({.supply_m3 = 0.9985, .household_m3 = 1}, 3);
  CHECK(dryDays(run(prism(), almost, 0)) == 0);
  CHECK(dryDays(run(prism(), short_of, 0)) == 3);
}

TEST_CASE("the start is what the last year leaves of a full tank") {
  DaySeries series = alikeDays({.household_m3 = 0.02}, 730);
  CHECK(startVolume(prism(), series) == Approx(15 - 365 * 0.02));
  for (std::size_t day = 365; day < 730; ++day) series.household_m3[day] = 0.01F;
  CHECK(startVolume(prism(), series) == Approx(15 - 365 * 0.01));
  CHECK(sweep({{prism(), 1}}, series).front().totals.start == Approx(15 - 365 * 0.01));
  series.year_start.clear();
  CHECK(startVolume(prism(), series) == 15);
}

TEST_CASE("years without a dry day are counted year by year") {
  // 0.05 m3 a day is 18.25 m3 a year: from what a year leaves, full tank 15 m3, the tank runs dry in each
  // year unless the source helps
  DaySeries series = alikeDays({.household_m3 = 0.05}, 3 * 365);
  for (std::size_t day = 365; day < 730; ++day) series.supply_m3[day] = 0.06F;
  const std::vector<Lane> lanes{{prism(), 1}};
  CHECK(yearsWithoutDryDay(lanes, series) == std::vector<int>{1});
  const LaneResult result = sweep(lanes, series).front();
  CHECK(result.years_without_dry_day == 1);
  CHECK(result.dry_days == dryDays(run(prism(), series, startVolume(prism(), series))));
}
