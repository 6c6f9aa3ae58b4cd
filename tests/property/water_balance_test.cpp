// The daily balance against a plain second writing of it, and its laws on random tanks and days.
#include "core/water/balance.h"
#include "core/water/sweep.h"
#include "tests/support/plain_balance.h"
#include "tests/support/random_days.h"
#include "tests/support/random_tank.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

#include <catch2/catch.hpp>
#include <hwy/targets.h>

namespace {

using namespace core::water;
using core::Shape;
using core::geometry::TankGeometry;

constexpr std::size_t kDaysOfThirtyYears = 30 * 365;

struct Case {
  TankGeometry geometry;
  TankCurve tank;
  DaySeries series;
  double bed_factor;
};

/// Random tanks that can hold water over their dead depth.
class Cases {
public:
  explicit Cases(std::uint64_t seed) : tanks_(seed) {}

  TankGeometry nextTank() {
    for (;;) {
      const support::TankAndLining t = tanks_.next(kShapes[next_++ % kShapes.size()]);
      const TankGeometry tank(t.tank, t.lining);
      if (tank.fullLevel() > tank.deadLevel() + 0.05) return tank;
    }
  }

  Case next(std::size_t days) {
    const TankGeometry tank = nextTank();
    const TankCurve curve = curveOf(tank);
    return {tank, curve, support::randomDays(dice(), curve.full_m3, days), dice().between(0, 2)};
  }

  support::Dice& dice() { return tanks_.dice(); }

private:
  static constexpr std::array kShapes{Shape::rectangle, Shape::round, Shape::polygon};
  support::RandomTanks tanks_;
  std::size_t next_ = 0;
};

double throughput(const Totals& t) {
  return t.start + t.supply + t.rain;
}

double closure(const Totals& t) {
  const double out = t.evaporation + t.seepage + t.drawn + t.spill;
  return std::abs(t.end - t.start + out - t.supply - t.rain) / throughput(t);
}

template <typename Volumes>
double worstDifference(const Volumes& a, const std::vector<double>& b) {
  double worst = a.size() == b.size() ? 0 : 1e9;
  for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i) {
    worst = std::max(worst, std::abs(static_cast<double>(a[i]) - b[i]));
  }
  return worst;
}

/// Largest difference of any sum, over throughput.
double worstSum(const Totals& a, const support::PlainRun& b) {
  return std::max({std::abs(a.rain - b.rain), std::abs(a.evaporation - b.evaporation),
                   std::abs(a.seepage - b.seepage), std::abs(a.drawn - b.drawn), std::abs(a.unmet - b.unmet),
                   std::abs(a.spill - b.spill)}) /
         (throughput(a) + a.drawn + a.unmet);
}

int drySum(const std::vector<int>& days) {
  return std::accumulate(days.begin(), days.end(), 0);
}

bool same(const Totals& a, const Totals& b) {
  return a.supply == b.supply && a.rain == b.rain && a.evaporation == b.evaporation &&
         a.seepage == b.seepage && a.drawn == b.drawn && a.unmet == b.unmet && a.spill == b.spill &&
         a.start == b.start && a.end == b.end;
}

bool same(const LaneResult& a, const LaneResult& b) {
  return a.years_without_dry_day == b.years_without_dry_day && a.dry_days == b.dry_days &&
         same(a.totals, b.totals);
}

std::vector<Lane> randomLanes(Cases& cases, std::size_t count) {
  std::vector<Lane> lanes;
  for (std::size_t i = 0; i < count; ++i) {
    lanes.push_back({curveOf(cases.nextTank()), cases.dice().between(0, 2)});
  }
  return lanes;
}

}  // namespace

TEST_CASE("the curve of a tank is its geometry above the cove") {
  Cases cases(201);
  for (int i = 0; i < 500; ++i) {
    const TankGeometry tank = cases.nextTank();
    const TankCurve curve = curveOf(tank);
    for (const double share : {0.0, 0.3, 0.6, 1.0}) {
      const double z = share * tank.fullLevel();
      CAPTURE(i, z);
      REQUIRE(curve.surface(z) == Approx(tank.outline().area(tank.clearOffset(z))).epsilon(1e-12));
      REQUIRE(curve.wetted(z) == Approx(tank.wettedArea(z)).epsilon(1e-12));
      REQUIRE(std::abs(curve.level(curve.volume(z)) - z) < 2e-12);
    }
    REQUIRE(curve.volume(tank.fullLevel()) == Approx(curve.full_m3).epsilon(1e-12));
    REQUIRE(curve.full_m3 == tank.volumeToLevel(tank.fullLevel()));
    REQUIRE(curve.dead_m3 == tank.volumeToLevel(tank.deadLevel()));
    REQUIRE(curve.level(2 * curve.full_m3) == tank.fullLevel());
  }
}

TEST_CASE("a scaled curve is the curve of the tank with its plan scaled") {
  for (const double batter : {0.0, 0.3, 1.0}) {
    core::Tank tank;
    tank.batter = batter;
    tank.measured_at = core::MeasuredAt::floor;
    core::Lining lining;
    lining.cove_radius_m = 0;
    const double k = 1.7;
    const TankCurve curve = scaled(curveOf(TankGeometry(tank, lining)), k);
    tank.length_m *= k;
    tank.width_m *= k;
    tank.corner_radius_m *= k;
    const TankCurve larger = curveOf(TankGeometry(tank, lining));
    CAPTURE(batter);
    CHECK(curve.a0 == Approx(larger.a0).epsilon(1e-12));
    CHECK(curve.a1 == Approx(larger.a1).epsilon(1e-12));
    CHECK(curve.a2 == Approx(larger.a2).epsilon(1e-12));
    CHECK(curve.w1 == Approx(larger.w1).epsilon(1e-12));
    CHECK(curve.w2 == Approx(larger.w2).epsilon(1e-12));
    CHECK(curve.full_m3 == Approx(larger.full_m3).epsilon(1e-12));
    CHECK(curve.dead_m3 == Approx(larger.dead_m3).epsilon(1e-12));
    CHECK(curve.catch_m2 == Approx(larger.catch_m2).epsilon(1e-12));
  }
}

TEST_CASE("the factor for a full volume gives it") {
  Cases cases(202);
  for (int i = 0; i < 1000; ++i) {
    const TankCurve curve = curveOf(cases.nextTank());
    const double least = leastFull(curve);
    const double wanted = least + (curve.full_m3 - least) * std::pow(10, cases.dice().between(-2, 2));
    CAPTURE(i, wanted, least);
    REQUIRE(scaled(curve, factorFor(curve, wanted)).full_m3 == Approx(wanted).epsilon(1e-12));
    REQUIRE(factorFor(curve, curve.full_m3) == Approx(1).epsilon(1e-12));
    REQUIRE(scaled(curve, 1).dead_m3 == Approx(curve.dead_m3).epsilon(1e-12));
    if (least > 0) REQUIRE_THROWS_AS(factorFor(curve, 0.99 * least), std::logic_error);
  }
}

TEST_CASE("run and sweep agree with the plain balance over thirty years") {
  Cases cases(203);
  int days_off = 0;
  double worst_run = 0, worst_sum = 0, worst_sweep = 0;
  for (int i = 0; i < 1000; ++i) {
    const Case c = cases.next(kDaysOfThirtyYears);
    const support::PlainTank plain = support::plainTank(c.geometry);
    const double start = support::plainStart(plain, c.series, c.bed_factor);
    const support::PlainRun expected =
        support::plainRun(plain, c.series, 0, c.series.days(), start, c.bed_factor);
    const Run ran = run(c.tank, c.series, startVolume(c.tank, c.series, c.bed_factor), c.bed_factor);
    const LaneResult swept = sweep({{c.tank, c.bed_factor}}, c.series).front();
    const std::vector<float> volumes = sweepVolumes({{c.tank, c.bed_factor}}, c.series).front();
    CAPTURE(i, c.tank.full_m3);
    REQUIRE(std::equal(ran.dry.begin(), ran.dry.end(), expected.dry.begin(), expected.dry.end()));
    REQUIRE(std::abs(ran.totals.start - start) < 1e-9 * c.tank.full_m3);
    REQUIRE(std::abs(ran.totals.end - expected.volume_m3.back()) < 1e-9 * c.tank.full_m3);
    worst_run = std::max(worst_run, worstDifference(ran.volume_m3, expected.volume_m3) / c.tank.full_m3);
    worst_sum = std::max(worst_sum, worstSum(ran.totals, expected));
    worst_sweep = std::max(worst_sweep, worstDifference(volumes, expected.volume_m3) / c.tank.full_m3);
    days_off += std::abs(swept.dry_days - drySum(expected.dry));
  }
  CAPTURE(worst_run, worst_sum, worst_sweep, days_off);
  CHECK(worst_run < 6.1e-8);  // columns are single precision: half a unit in the last place
  CHECK(worst_sum < 1e-9);
  CHECK(worst_sweep < 1e-3);
  CHECK(days_off < 1100);  // of 11 million: a day whose need is only just met may fall either way
}

TEST_CASE("each instruction set keeps to the same bound") {
  const std::int64_t supported = hwy::SupportedTargets();
  std::vector<std::string> names;
  for (std::int64_t left = supported; left != 0; left &= left - 1) {
    hwy::SetSupportedTargetsForTest(left & -left);
    hwy::GetChosenTarget().DeInit();
    names.push_back(sweepTarget());
    Cases cases(204);
    for (int i = 0; i < 50; ++i) {
      const Case c = cases.next(kDaysOfThirtyYears / 3);
      const Run ran = run(c.tank, c.series, startVolume(c.tank, c.series, c.bed_factor), c.bed_factor);
      const std::vector<double> expected(ran.volume_m3.begin(), ran.volume_m3.end());
      const std::vector<float> volumes = sweepVolumes({{c.tank, c.bed_factor}}, c.series).front();
      CAPTURE(names, i);
      REQUIRE(worstDifference(volumes, expected) < 1e-3 * c.tank.full_m3);
      REQUIRE(closure(sweep({{c.tank, c.bed_factor}}, c.series).front().totals) < 1e-5);
    }
  }
  hwy::SetSupportedTargetsForTest(0);
  hwy::GetChosenTarget().DeInit();
  CHECK(names.size() > 1);
}

TEST_CASE("water is neither made nor lost in a run") {
  Cases cases(205);
  double worst = 0;
  for (int i = 0; i < 10000; ++i) {
    const Case c = cases.next(400);
    const double start = cases.dice().between(0, 1) * c.tank.full_m3;
    const Run ran = run(c.tank, c.series, start, c.bed_factor);
    worst = std::max(worst, closure(ran.totals));
    REQUIRE(*std::min_element(ran.volume_m3.begin(), ran.volume_m3.end()) >= 0);
    REQUIRE(*std::max_element(ran.volume_m3.begin(), ran.volume_m3.end()) <=
            static_cast<float>(c.tank.full_m3));
  }
  CAPTURE(worst);
  CHECK(worst < 1e-9);
}

TEST_CASE("water is neither made nor lost in a sweep, single precision allowed for") {
  Cases cases(206);
  double worst = 0;
  for (int i = 0; i < 200; ++i) {
    const Case c = cases.next(i % 20 == 0 ? 50 * 365 : 400);
    const std::vector<Lane> lanes = randomLanes(cases, 50);
    for (const LaneResult& result : sweep(lanes, c.series)) worst = std::max(worst, closure(result.totals));
  }
  CAPTURE(worst);
  CHECK(worst < 1e-5);
}

TEST_CASE("a trickle into a large full tank is not lost to rounding") {
  const TankCurve tank = scaled(curveOf(Cases(207).nextTank()), 5);
  for (const double trickle : {1e-6, 1e-5, 1e-4}) {
    const DaySeries series = support::alikeDays({.supply_m3 = trickle * tank.full_m3}, 50 * 365);
    const LaneResult result = sweep({{tank, 1}}, series).front();
    CAPTURE(trickle);
    CHECK(result.totals.spill == Approx(result.totals.supply).epsilon(1e-3));
    CHECK(closure(result.totals) < 1e-5);
  }
}

TEST_CASE("more supply never gives more dry days") {
  Cases cases(208);
  for (int i = 0; i < 300; ++i) {
    Case c = cases.next(3 * 365);
    int before = static_cast<int>(c.series.days()) + 1;
    int years_before = 0;
    for (int step = 0; step < 4; ++step) {
      const Run ran = run(c.tank, c.series, startVolume(c.tank, c.series, c.bed_factor), c.bed_factor);
      const int dry = std::accumulate(ran.dry.begin(), ran.dry.end(), 0);
      const std::vector<Lane> lanes{{c.tank, c.bed_factor}};
      const int years = yearsWithoutDryDay(lanes, c.series).front();
      CAPTURE(i, step);
      REQUIRE(dry <= before);
      REQUIRE(years >= years_before);
      before = dry;
      years_before = years;
      for (float& supply : c.series.supply_m3) supply = 1.2F * supply + 0.001F;
    }
  }
}

TEST_CASE("a lane is the same whatever stands beside it and wherever it stands") {
  Cases cases(209);
  const DaySeries series = cases.next(5 * 365).series;
  std::vector<Lane> lanes = randomLanes(cases, 201);
  const std::vector<LaneResult> all = sweep(lanes, series);
  const std::vector<int> years = yearsWithoutDryDay(lanes, series);
  for (std::size_t i = 0; i < lanes.size(); ++i) {
    CAPTURE(i);
    REQUIRE(same(sweep({lanes[i]}, series).front(), all[i]));
    REQUIRE(years[i] == all[i].years_without_dry_day);
  }
  std::rotate(lanes.begin(), lanes.begin() + 3, lanes.end());
  const std::vector<LaneResult> moved = sweep(lanes, series);
  for (std::size_t i = 0; i < lanes.size(); ++i) REQUIRE(same(moved[i], all[(i + 3) % lanes.size()]));
}

TEST_CASE("a cancelled sweep comes back empty") {
  Cases cases(210);
  const Case c = cases.next(2 * 365);
  std::atomic<bool> cancel = true;
  const std::vector<Lane> lanes{{c.tank, 1}};
  CHECK(sweep(lanes, c.series, &cancel).empty());
  CHECK(yearsWithoutDryDay(lanes, c.series, &cancel).empty());
  cancel = false;
  CHECK(sweep(lanes, c.series, &cancel).size() == 1);
  CHECK(yearsWithoutDryDay(lanes, c.series, &cancel).size() == 1);
  CHECK(sweep({}, c.series).empty());
}
