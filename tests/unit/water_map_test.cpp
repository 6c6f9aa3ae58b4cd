#include "core/water/map.h"
#include "core/water/sweep.h"
#include "tests/support/random_days.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

namespace {

using namespace core::water;

constexpr std::size_t kCells = 12;
constexpr std::size_t kYears = 10;
constexpr double kBeds_m2 = 80;
const std::atomic<bool> kGoOn = false;

TankCurve battered() {
  core::Tank tank;
  tank.batter = 0.4;
  return curveOf(core::geometry::TankGeometry(tank, core::Lining()));
}

TankCurve upright() {
  core::Tank tank;
  tank.batter = 0;
  core::Lining lining;
  lining.cove_radius_m = 0;
  return curveOf(core::geometry::TankGeometry(tank, lining));
}

/// Ten years of a dry season that some tanks outlast and others do not.
DaySeries seasons(double full_m3, double evaporation_mm) {
  support::Dice dice(301);
  DaySeries series = support::alikeDays({.household_m3 = 0.001 * full_m3}, kYears * 365);
  for (std::size_t year = 0; year < kYears; ++year) {
    const double rain_mm = dice.between(4, 12), need_m3 = full_m3 * dice.between(0.003, 0.009);
    for (std::size_t day = 365 * year; day < 365 * (year + 1); ++day) {
      const bool is_wet = day % 365 < 120;
      series.rain_mm[day] = is_wet ? static_cast<float>(rain_mm) : 0;
      series.supply_m3[day] = is_wet ? static_cast<float>(full_m3 * 0.02) : 0;
      series.beds_m3[day] = is_wet ? 0 : static_cast<float>(need_m3);
      series.evaporation_mm[day] = static_cast<float>(evaporation_mm);
    }
  }
  return series;
}

ReliabilityMap mapOf(const TankCurve& tank, const DaySeries& series, unsigned threads) {
  return reliabilityMap(tank, series, kBeds_m2, mapReach(tank.full_m3, kBeds_m2), kCells, threads, kGoOn);
}

int yearsByRun(const TankCurve& tank, const DaySeries& series, double bed_factor) {
  const Run ran = run(tank, series, startVolume(tank, series, bed_factor), bed_factor);
  int years = 0;
  for (std::size_t year = 0; year < series.years(); ++year) {
    const auto first = ran.dry.begin() + static_cast<std::ptrdiff_t>(series.year_start[year]);
    const auto last = ran.dry.begin() + static_cast<std::ptrdiff_t>(series.year_start[year + 1]);
    years += std::find(first, last, 1) == last ? 1 : 0;
  }
  return years;
}

}  // namespace

TEST_CASE("each cell of the map is what a run of that tank and those beds gives") {
  const TankCurve tank = battered();
  const DaySeries series = seasons(tank.full_m3, 1.5);
  const ReliabilityMap map = mapOf(tank, series, 2);
  REQUIRE(map.full_m3.size() == kCells);
  REQUIRE(map.bed_area_m2.size() == kCells);
  int one_year_off = 0;
  for (std::size_t row = 0; row < kCells; ++row) {
    for (std::size_t column = 0; column < kCells; ++column) {
      const TankCurve sized = scaled(tank, factorFor(tank, map.full_m3[column]));
      REQUIRE(sized.full_m3 == Approx(map.full_m3[column]).epsilon(1e-12));
      const double years = yearsByRun(sized, series, map.bed_area_m2[row] / kBeds_m2);
      const double off = std::abs(map.at(column, row) - 10 * years / kYears);
      CAPTURE(row, column, years);
      REQUIRE(off < 1.001);
      one_year_off += off > 0.001 ? 1 : 0;
    }
  }
  CHECK(one_year_off <= 1);  // of 144: a day whose need is only just met may fall either way
  const auto [least, most] = std::minmax_element(map.years_in_ten.begin(), map.years_in_ten.end());
  CHECK(*least < 2);  // the map has something to show
  CHECK(*most == 10);
}

TEST_CASE("the map is the same however many threads make it") {
  const TankCurve tank = battered();
  const DaySeries series = seasons(tank.full_m3, 1.5);
  const ReliabilityMap one = mapOf(tank, series, 1);
  CHECK(mapOf(tank, series, 3) == one);
  CHECK(mapOf(tank, series, 100) == one);
  CHECK(mapOf(tank, series, 0) == one);
}

TEST_CASE("without losses a larger tank and fewer beds never do worse") {
  const TankCurve tank = upright();
  DaySeries series = seasons(tank.full_m3, 0);
  std::fill(series.rain_mm.begin(), series.rain_mm.end(), 0.0F);
  const ReliabilityMap map = mapOf(tank, series, 2);
  for (std::size_t row = 0; row < kCells; ++row) {
    for (std::size_t column = 0; column < kCells; ++column) {
      CAPTURE(row, column);
      if (column > 0) REQUIRE(map.at(column, row) >= map.at(column - 1, row));
      if (row > 0) REQUIRE(map.at(column, row) <= map.at(column, row - 1));
    }
  }
  CHECK(map.at(0, kCells - 1) < map.at(kCells - 1, 0));
}

TEST_CASE("sizes and areas rise evenly up to the reach") {
  const TankCurve tank = upright();
  const ReliabilityMap map = reliabilityMap(tank, seasons(tank.full_m3, 3), kBeds_m2, {48, 200}, 5, 1, kGoOn);
  CHECK(map.full_m3.front() == Approx(48.0 / 5));
  CHECK(map.full_m3.back() == 48);
  CHECK(map.bed_area_m2 == std::vector<double>{0, 50, 100, 150, 200});
  CHECK(std::is_sorted(map.full_m3.begin(), map.full_m3.end()));
}

TEST_CASE("a battered tank has no size under the one whose floor is a point") {
  const TankCurve tank = battered();
  const double least = leastFull(tank);
  const ReliabilityMap map =
      reliabilityMap(tank, seasons(tank.full_m3, 3), kBeds_m2, {2 * least, 200}, 8, 1, kGoOn);
  REQUIRE(!map.empty());
  CHECK(map.full_m3.front() > least);
  CHECK(std::is_sorted(map.full_m3.begin(), map.full_m3.end()));
}

TEST_CASE("without beds the map has one row") {
  const TankCurve tank = upright();
  const DaySeries series = seasons(tank.full_m3, 3);
  const ReliabilityMap map = reliabilityMap(tank, series, 0, mapReach(tank.full_m3, 0), kCells, 2, kGoOn);
  CHECK(map.bed_area_m2 == std::vector<double>{0});
  REQUIRE(map.years_in_ten.size() == kCells);
  const TankCurve largest = scaled(tank, factorFor(tank, map.full_m3.back()));
  CHECK(map.at(kCells - 1, 0) == Approx(10.0 * yearsByRun(largest, series, 0) / kYears));
}

TEST_CASE("a cancelled map, a map without cells or years is empty") {
  const TankCurve tank = upright();
  const DaySeries series = seasons(tank.full_m3, 3);
  const MapReach reach = mapReach(tank.full_m3, kBeds_m2);
  const std::atomic<bool> cancelled = true;
  CHECK(reliabilityMap(tank, series, kBeds_m2, reach, kCells, 2, cancelled).empty());
  CHECK(reliabilityMap(tank, series, kBeds_m2, reach, 0, 2, kGoOn).empty());
  CHECK(reliabilityMap(tank, DaySeries(), kBeds_m2, reach, kCells, 2, kGoOn).empty());
}

TEST_CASE("the reach is about two and a half times what stands, a plain number") {
  CHECK(mapReach(20, 80).most_full_m3 == 50);
  CHECK(mapReach(20, 80).most_bed_area_m2 == 200);
  CHECK(mapReach(21, 0).most_full_m3 == 60);
  CHECK(mapReach(21, 0).most_bed_area_m2 == 0);
  CHECK(mapReach(33, 100).most_full_m3 == 100);
  CHECK(mapReach(0.9, 0.03).most_full_m3 == Approx(2.5));
  for (double full = 0.3; full < 500; full *= 1.07) {
    const double most = mapReach(full, 0).most_full_m3;
    CAPTURE(full, most);
    CHECK(most >= 2.5 * full * (1 - 1e-9));
    CHECK(most <= 2.5 * full * 1.51);
  }
}
