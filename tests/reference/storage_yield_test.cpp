// Storage needed for a yield: worked examples of the sequent peak procedure, met by our balance with its
// losses off. A reservoir's periods stand for our days; what is named TAF is a thousand acre-feet.
#include "core/water/balance.h"
#include "core/water/sweep.h"
#include "tests/reference/feather_river.h"

#include <algorithm>
#include <functional>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using namespace core::water;

enum class Passes { one, two };

DaySeries flows(const std::vector<double>& inflow, double release, Passes passes) {
  DaySeries series;
  for (int pass = 0; pass < (passes == Passes::two ? 2 : 1); ++pass) {
    for (const double q : inflow) series.supply_m3.push_back(static_cast<float>(q));
  }
  const std::size_t n = series.supply_m3.size();
  series.household_m3.assign(n, static_cast<float>(release));
  for (std::vector<float>* none : {&series.rain_mm, &series.evaporation_mm, &series.beds_m3})
    none->assign(n, 0.0F);
  series.year_start = {0, n};
  return series;
}

/// Upright walls, 1 m deep.
TankCurve prism(double full_m3) {
  TankCurve tank;
  tank.a0 = tank.full_m3 = tank.catch_m2 = full_m3;
  tank.full_level_m = tank.rim_level_m = 1;
  return tank;
}

Run fromFull(double full_m3, const DaySeries& series) {
  return run(prism(full_m3), series, full_m3);
}

bool nothingUnmet(const Run& run, const DaySeries& series) {
  return run.totals.unmet < 1e-6 * series.household_m3.front();
}

bool noDryDay(const Run& run, const DaySeries&) {
  return std::count(run.dry.begin(), run.dry.end(), 1) == 0;
}

using Enough = bool (*)(const Run&, const DaySeries&);

/// By halving, starting full.
double smallest(const DaySeries& series, Enough enough, double most = 1e4) {
  double low = 0;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + most) / 2;
    (enough(fromFull(middle, series), series) ? most : low) = middle;
  }
  return most;
}

/// Loucks and van Beek, Water Resources Systems Planning and Management, UNESCO 2005, table 11.2; inputs and
/// "Reservoir size needed: 7.500000" as worked in the course UC Davis ECI 273 (J. Herman), lecture 3.
const std::vector<double> kTable_11_2{1, 3, 3, 5, 8, 6, 7, 2, 1};
constexpr double kRelease_11_2 = 3.5;

std::vector<double> featherRiver_TAF() {
  std::vector<double> flow;
  for (const int q : feather_river::kFlow_acre_feet) flow.push_back(q / 1000.0);
  return flow;
}

}  // namespace

TEST_CASE("Loucks and van Beek table 11.2: storage 7.5, the record run twice") {
  const DaySeries series = flows(kTable_11_2, kRelease_11_2, Passes::two);
  CHECK(smallest(series, nothingUnmet) == Approx(7.5).margin(1e-5));
  // a day counts as met from 99.9 % of its need on
  const double no_dry_day = smallest(series, noDryDay);
  CHECK(no_dry_day <= 7.5 + 1e-5);
  CHECK(no_dry_day >= 7.5 - (1 - kMetShare) * kRelease_11_2 - 1e-5);
}

TEST_CASE("Loucks and van Beek table 11.2: deficits of the second pass, column K") {
  // K of the second pass: 6.5, 7, 7.5, 6, 1.5, 0, 0, 1.5, 4, by the recurrence K = max(0, K + R - Q) of the
  // table; a tank of 7.5 is short of full by as much
  const Run ran = fromFull(7.5, flows(kTable_11_2, kRelease_11_2, Passes::two));
  const std::vector<double> deficits{6.5, 7, 7.5, 6, 1.5, 0, 0, 1.5, 4};
  for (std::size_t t = 0; t < deficits.size(); ++t) {
    CAPTURE(t);
    CHECK(7.5 - ran.volume_m3[9 + t] == Approx(deficits[t]).margin(1e-5));
  }
}

TEST_CASE("Loucks and van Beek table 11.2: one pass would find only 4") {
  CHECK(smallest(flows(kTable_11_2, kRelease_11_2, Passes::one), nothingUnmet) == Approx(4).margin(1e-5));
}

TEST_CASE("Loucks and van Beek table 11.2: lanes side by side need 7.5 too") {
  const DaySeries series = flows(kTable_11_2, kRelease_11_2, Passes::two);
  std::vector<Lane> lanes;
  for (const double full_m3 : {7.0, 7.49, 7.5, 8.0}) lanes.push_back({prism(full_m3), 1});
  CHECK(yearsWithoutDryDay(lanes, series) == std::vector<int>{0, 0, 1, 1});
}

TEST_CASE("Feather River 1905 to 2020: 2369.25 TAF for 200 TAF a month") {
  // printed as the result of the sequent peak procedure over the record, UC Davis ECI 273 (J. Herman),
  // lecture 3
  const DaySeries series = flows(featherRiver_TAF(), 200, Passes::one);
  CHECK(smallest(series, nothingUnmet) == Approx(2369.25).margin(0.005));
}

TEST_CASE("Feather River, August 1975 to November 1977: the critical period alone gives the same") {
  const std::vector<double> all = featherRiver_TAF();
  const auto first = all.begin() + (1975 - 1905) * 12 - 2;  // the record starts in October
  const DaySeries series = flows({first, first + 28}, 200, Passes::one);
  CHECK(series.supply_m3.front() == Approx(127.00));
  CHECK(series.supply_m3.back() == Approx(82.73));
  CHECK(smallest(series, nothingUnmet) == Approx(2369.25).margin(0.005));
  const Run ran = fromFull(2369.25, series);
  CHECK(std::min_element(ran.volume_m3.begin(), ran.volume_m3.end()) == ran.volume_m3.end() - 1);
}

TEST_CASE("Feather River: 3500 TAF meet 300 TAF in 0.93406 of the months") {
  // printed 0.9340579710144927, that is 1289 of 1380 months, UC Davis ECI 273 (J. Herman), lecture 4: start
  // full, release the demand or what there is, spill over 3500
  const DaySeries series = flows(featherRiver_TAF(), 300, Passes::one);
  const Run ran = fromFull(3500, series);
  const auto is_met = [&](float unmet) { return unmet <= 1e-6F * 300; };
  const auto met = std::count_if(ran.unmet_m3.begin(), ran.unmet_m3.end(), is_met);
  CHECK(met == 1289);
  CHECK(static_cast<double>(met) / 1380 == Approx(0.9340579710144927).epsilon(1e-15));
}
