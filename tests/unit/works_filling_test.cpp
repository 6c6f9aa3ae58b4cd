// The first filling in cases that can be reckoned by hand.
#include "core/works/filling.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

namespace {

using core::geometry::TankGeometry;
using core::works::addDays;
using core::works::Day;
using core::works::daysToFill;
using core::works::Filling;
using core::works::FillingDates;

Day day(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

/// Upright walls, 4 m x 3 m: 12 m2, 14 m around, 15 m3 up to 1.25 m.
core::Project prism() {
  core::Project project;
  project.tank.length_m = 4;
  project.tank.width_m = 3;
  project.tank.depth_m = 1.5;
  project.tank.freeboard_m = 0.25;
  project.tank.batter = 0;
  return project;
}

core::Project prismWith(double litres_a_day) {
  core::Project project = prism();
  project.works->fill_inflow_l_per_day = litres_a_day;
  return project;
}

/// Last coat on 24 February 2028, cured to the 28th; filling starts on the 28th.
FillingDates leapYear() {
  return {day(2028, 2, 24), day(2028, 2, 28), day(2028, 2, 28)};
}

Filling fillingOf(const core::Project& project, const FillingDates& dates,
                  const core::water::WaterPlan* water = nullptr) {
  return filling(TankGeometry(project.tank, project.lining), project, water, dates);
}

core::water::WaterPlan waterOf(const core::Project& project) {
  auto plan = core::water::waterPlan(TankGeometry(project.tank, project.lining), project.site, *project.water,
                                     nullptr);
  REQUIRE(plan);
  return *plan;
}

double litresAfter(const Filling& filling, Day last_cure) {
  double litres = 0;
  for (const auto& d : filling.days) litres += d.date > last_cure ? d.wetting_l : 0;
  return litres;
}

}  // namespace

TEST_CASE("filling: 3 m3 a day raise an upright tank of 12 m2 by 25 cm a day, over the leap day") {
  const Filling f = fillingOf(prismWith(3000), leapYear());
  CHECK(f.inflow_from == "entered");
  CHECK(f.inflow_m3_day == Approx(3));
  REQUIRE(f.days.size() == 5);
  for (std::size_t k = 0; k < 5; ++k) {
    const double level = 0.25 * static_cast<double>(k + 1);
    CHECK(f.days[k].date == addDays(day(2028, 2, 28), static_cast<int>(k)));
    CHECK(f.days[k].level_m == Approx(level));
    CHECK(f.days[k].volume_m3 == Approx(12 * level));
    CHECK(f.days[k].inflow_m3 == Approx(3));
    CHECK(f.days[k].lost_m3 == 0);
    CHECK(f.days[k].bare_wall_m2 == Approx(14 * (1.5 - level)));
  }
  CHECK(f.full_on == day(2028, 3, 3));  // 28 and 29 February, 1, 2 and 3 March
  CHECK_FALSE(f.is_held_back);
  CHECK(f.latest_start == day(2028, 2, 28));  // 4 days after the last coat
  CHECK(daysToFill(TankGeometry(prism().tank, {}), prismWith(3000), nullptr, day(2028, 2, 28)) == 5);
}

TEST_CASE("filling: bands of wall stay wet until the day before water covers them") {
  const Filling f = fillingOf(prismWith(3000), leapYear());
  REQUIRE(f.bands.size() == 6);  // five up to the overflow level, one above it
  for (int k = 0; k < 5; ++k) {
    const auto& band = f.bands[static_cast<std::size_t>(k)];
    CHECK(band.from_m == Approx(0.25 * k).margin(1e-12));
    CHECK(band.to_m == Approx(0.25 * (k + 1)));
    CHECK(band.area_m2 == Approx(14 * 0.25));
    CHECK(band.wet_from == day(2028, 2, 25));
    CHECK(band.covered_on == addDays(day(2028, 2, 28), k));
    // the first two would be covered before the end of curing or the day after it
    CHECK(band.wet_until == std::max(day(2028, 2, 28), addDays(day(2028, 2, 27), k)));
    CHECK(band.days == std::max(4, 3 + k));
  }
  const auto& above = f.bands.back();
  CHECK(above.from_m == Approx(1.25));
  CHECK(above.to_m == Approx(1.5));
  CHECK_FALSE(above.covered_on);
  CHECK(above.wet_until == day(2028, 2, 28));
  CHECK(above.days == 4);
}

TEST_CASE("filling: 8 L a day for each m2 of wall that is bare and must be wet") {
  const Filling f = fillingOf(prismWith(3000), leapYear());
  CHECK(f.days[0].wetting_l == Approx(8 * 14 * 1.25));  // still curing: up to the rim
  CHECK(f.days[1].wetting_l == Approx(8 * 14 * 0.75));  // then up to the overflow level
  CHECK(f.days[2].wetting_l == Approx(8 * 14 * 0.5));
  CHECK(f.days[3].wetting_l == Approx(8 * 14 * 0.25));
  CHECK(f.days[4].wetting_l == Approx(0).margin(1e-9));
  CHECK(f.wetting_after_cure_l == Approx(8 * 14 * 1.5));
}

TEST_CASE("filling: days between the end of curing and a late start cost water for sacks too") {
  FillingDates dates = leapYear();
  dates.start = day(2028, 3, 3);  // 29 February, 1 and 2 March with the tank empty
  const Filling f = fillingOf(prismWith(3000), dates);
  CHECK(f.wetting_after_cure_l == Approx(3 * 8 * 14 * 1.25 + 8 * 14 * (1.0 + 0.75 + 0.5 + 0.25)));
  CHECK(f.wetting_after_cure_l > litresAfter(f, dates.last_cure));
  CHECK(f.latest_start < f.start);
}

TEST_CASE("filling: the limit on the rise holds a strong inflow back") {
  const Filling f = fillingOf(prismWith(100000), leapYear());
  REQUIRE(f.days.size() == 3);
  CHECK(f.is_held_back);
  CHECK(f.days[0].level_m == Approx(0.5));
  CHECK(f.days[1].level_m == Approx(1.0));
  CHECK(f.days[2].level_m == Approx(1.25));
  CHECK(f.days[0].inflow_m3 == Approx(6));
  CHECK(f.days[2].inflow_m3 == Approx(3));
  CHECK(f.inflow_m3_day == Approx(100));
  // at exactly the limit nothing is held back
  CHECK_FALSE(fillingOf(prismWith(6000), leapYear()).is_held_back);
  CHECK(fillingOf(prismWith(6001), leapYear()).is_held_back);
}

TEST_CASE("filling: no more is let in on the last day than there is room for, and that is not held back") {
  core::Project project = prismWith(10000);
  project.works->fill_most_rise_m_per_day = 1;
  const Filling f = fillingOf(project, leapYear());
  REQUIRE(f.days.size() == 2);
  CHECK(f.days[1].inflow_m3 == Approx(5));
  CHECK(f.days[1].volume_m3 == Approx(15));
  CHECK_FALSE(f.is_held_back);
}

TEST_CASE("filling: carried by hand is what the inflow lacks by the end of the window") {
  // 28 February to 3 March: 5 days; 15 m3 wanted
  CHECK(fillingOf(prismWith(1000), leapYear()).carried_m3 == Approx(10));
  CHECK(fillingOf(prismWith(3000), leapYear()).carried_m3 == 0);
  CHECK(fillingOf(prismWith(2999), leapYear()).carried_m3 == Approx(0.005));
  core::Project slow_rise = prismWith(1000);
  slow_rise.works->fill_most_rise_m_per_day = 0.2;  // 5 days of 2.4 m3 are all that may be
  CHECK(fillingOf(slow_rise, leapYear()).carried_m3 == Approx(12 - 5));
  slow_rise.works->fill_inflow_l_per_day = 100000;
  CHECK(fillingOf(slow_rise, leapYear()).carried_m3 == 0);
  FillingDates late = leapYear();
  late.start = day(2028, 3, 2);  // two days of the window are left
  CHECK(fillingOf(prismWith(1000), late).carried_m3 == Approx(13));
  late.start = day(2028, 4, 1);
  CHECK(fillingOf(prismWith(1000), late).carried_m3 == Approx(15));
}

TEST_CASE("filling: without a known inflow there are no days and nothing is promised") {
  const Filling f = fillingOf(prism(), leapYear());
  CHECK(f.inflow_from == "none");
  CHECK(f.days.empty());
  CHECK_FALSE(f.full_on);
  CHECK(f.carried_m3 == Approx(15));
  for (const auto& band : f.bands) {
    CHECK_FALSE(band.covered_on);
    CHECK(band.wet_until == day(2028, 2, 28));
  }
  CHECK_FALSE(daysToFill(TankGeometry(prism().tank, {}), prism(), nullptr, day(2028, 2, 28)));
  core::Project dry_tap = prism();
  dry_tap.water.emplace();
  CHECK(fillingOf(dry_tap, leapYear()).inflow_from == "none");
}

TEST_CASE("filling: the source gives what it gives in the month of each day") {
  core::Project project = prism();
  project.water.emplace();
  project.water->source.months[2] = {2, 10};  // March: 2 L/min for 10 h = 1.2 m3 a day
  const Filling f = fillingOf(project, leapYear());
  CHECK(f.inflow_from == "source");
  CHECK(f.inflow_m3_day == 0);       // February
  REQUIRE(f.days.size() == 2 + 13);  // 15 m3 of 1.2 m3 a day
  CHECK(f.days[1].volume_m3 == 0);
  CHECK(f.days[2].volume_m3 == Approx(1.2));
  CHECK(f.full_on == day(2028, 3, 13));
  project.works->fill_inflow_l_per_day = 3000;  // what is entered goes before
  CHECK(fillingOf(project, leapYear()).inflow_from == "entered");
  CHECK(fillingOf(project, leapYear()).days.size() == 5);
}

TEST_CASE(
    "filling: what is lost is the month's evaporation of the surface and seepage of the wetted lining") {
  core::Project project = support::waterProject();
  project.tank = prism().tank;
  project.water->losses = {1.1, 25, 2};
  project.works->fill_inflow_l_per_day = 3000;
  const core::water::WaterPlan water = waterOf(project);
  double sum = 0;
  double count = 0;
  for (std::size_t d = 0; d < water.weather->days(); ++d) {
    if (water.weather->month[d] != 3) continue;
    sum += static_cast<double>(water.weather->et0_mm[d]);
    ++count;
  }
  const double evaporation_m = sum / count * 1.1 * 0.75 / 1000;
  CHECK(evaporation_m > 0.002);
  const Filling f = fillingOf(project, {day(2027, 4, 1), day(2027, 4, 5), day(2027, 4, 5)}, &water);
  REQUIRE(f.days.size() > 2);
  CHECK(f.days[0].lost_m3 == Approx(12 * evaporation_m + 12 * 0.002));
  const double level = f.days[0].level_m;
  CHECK(level == Approx((3 - f.days[0].lost_m3) / 12));
  CHECK(f.days[1].lost_m3 == Approx(12 * evaporation_m + (12 + 14 * level) * 0.002));
}

TEST_CASE("filling: losses are made up for within the limit on the rise") {
  core::Project project = support::waterProject();
  project.tank = prism().tank;
  project.water->losses = {1, 100, 5};  // no evaporation
  project.works->fill_inflow_l_per_day = 50000;
  const core::water::WaterPlan water = waterOf(project);
  const Filling f = fillingOf(project, leapYear(), &water);
  REQUIRE(f.days.size() == 3);
  CHECK(f.days[0].level_m == Approx(0.5));
  CHECK(f.days[0].inflow_m3 == Approx(6 + 0.005 * 12));
  CHECK(f.days[1].level_m == Approx(1));
  CHECK(f.days[1].inflow_m3 == Approx(6 + 0.005 * 19));
}

TEST_CASE("filling: the mass closes, with batter, cove and losses") {
  core::Project project = support::waterProject();
  project.lining.cove_radius_m = 0.15;
  project.tank.batter = 0.3;
  const core::water::WaterPlan water = waterOf(project);
  for (const double litres : {300.0, 900.0, 5000.0, 60000.0}) {
    project.works->fill_inflow_l_per_day = litres;
    const Filling f = fillingOf(project, {day(2027, 4, 1), day(2027, 4, 5), day(2027, 4, 6)}, &water);
    const TankGeometry tank(project.tank, project.lining);
    double volume = 0;
    double level = 0;
    for (const auto& d : f.days) {
      volume += d.inflow_m3 - d.lost_m3;
      CHECK(d.volume_m3 == Approx(volume).margin(1e-12));
      CHECK(tank.volumeToLevel(d.level_m) == Approx(volume).margin(1e-7));
      CHECK(d.inflow_m3 <= litres / 1000);
      CHECK(d.inflow_m3 >= 0);
      CHECK(d.level_m - level <= project.works->fill_most_rise_m_per_day + 1e-9);
      CHECK(d.bare_wall_m2 == Approx(tank.wettedArea(tank.depth()) - tank.wettedArea(d.level_m)));
      level = d.level_m;
    }
    CHECK(f.full_on.has_value() == (level > tank.fullLevel() - 1e-9));
    CHECK(f.wetting_after_cure_l == Approx(litresAfter(f, day(2027, 4, 5))));
  }
}

TEST_CASE("filling: higher bands are covered later, and all bands together are the wall") {
  core::Project project;
  project.works->fill_inflow_l_per_day = 2500;
  project.works->wall_band_m = 0.2;
  const Filling f = fillingOf(project, {day(2027, 12, 20), day(2027, 12, 24), day(2027, 12, 24)});
  const TankGeometry tank(project.tank, project.lining);
  double area = 0;
  for (std::size_t k = 0; k < f.bands.size(); ++k) {
    area += f.bands[k].area_m2;
    CHECK(f.bands[k].from_m == (k == 0 ? 0 : f.bands[k - 1].to_m));
    if (k == 0 || k + 1 == f.bands.size()) continue;
    CHECK(f.bands[k].covered_on >= f.bands[k - 1].covered_on);
    CHECK(f.bands[k].wet_until >= f.bands[k - 1].wet_until);
  }
  CHECK(area == Approx(tank.wallArea()));
  CHECK(f.bands.size() == 8);  // 1.35 m in steps of 0.2 m, and the freeboard
  CHECK(f.bands[6].to_m == Approx(1.35));
  CHECK(f.bands[6].covered_on == f.full_on);
  CHECK(f.full_on > day(2028, 1, 1));
}

TEST_CASE("filling: a tank without freeboard has no band above the overflow level") {
  core::Project project = prismWith(3000);
  project.tank.freeboard_m = 0;
  const Filling f = fillingOf(project, leapYear());
  CHECK(f.bands.size() == 6);
  CHECK(f.bands.back().covered_on == f.full_on);
}

TEST_CASE("filling: a source that only makes up for the losses never fills the tank within a year") {
  core::Project project = support::waterProject();
  project.tank = prism().tank;
  project.water->losses = {1, 100, 5};        // no evaporation, seepage alone
  project.works->fill_inflow_l_per_day = 95;  // 5 mm over 19 m2: 12 m2 of floor and 14 m of wall to 0.5 m
  const core::water::WaterPlan water = waterOf(project);
  const Filling f = fillingOf(project, leapYear(), &water);
  CHECK(f.days.size() == 366);
  CHECK_FALSE(f.full_on);
  CHECK(f.days.back().level_m < 0.5);
  CHECK(f.days.back().level_m > 0.4);
  CHECK(f.bands[0].covered_on);
  CHECK_FALSE(f.bands[3].covered_on);
  CHECK(f.bands[3].wet_until == f.days.back().date);
  CHECK(f.bands.back().wet_until == day(2028, 2, 28));
  CHECK_FALSE(daysToFill(TankGeometry(project.tank, project.lining), project, &water, day(2028, 2, 28)));
  project.works->fill_inflow_l_per_day = 60;  // no more than the floor lets through
  const Filling dry = fillingOf(project, leapYear(), &water);
  CHECK(dry.days.back().volume_m3 == Approx(0).margin(1e-12));
}
