#include "core/water/map.h"
#include "core/water/sweep.h"
#include "tests/bench/multiply_add_peak.h"
#include "tests/support/plain_balance.h"
#include "tests/support/random_days.h"

#include <algorithm>
#include <map>
#include <string>

#include <benchmark/benchmark.h>
#include <fmt/format.h>
#include <hwy/targets.h>

// How long a tank takes through a day: lanes side by side in single precision, one tank in double precision,
// and two plain writings of the same balance, one that finds the level by halving and one by Newton steps.

namespace {

using namespace core::water;

constexpr std::size_t kLanes = 4096;
constexpr std::size_t kYears = 50;
constexpr std::size_t kDays = kYears * 365;
constexpr std::size_t kCells = 64;
constexpr unsigned kThreads = 2;
constexpr double kBeds_m2 = 100;
constexpr long kRounds = 1'000'000;

// MulAdd and NegMulAdd of one step<Keep::slack> in core/water/sweep_kernel.cpp: inflow 1, losses 5, need 1,
// slack 1, tangents 2, two Newton steps of 4, surface 2. Beside them stand 9 additions, 8 minima or maxima
// and a reciprocal, which are not counted.
constexpr double kMultiplyAddsOfADay = 20;

core::geometry::TankGeometry geometry() {
  return core::geometry::TankGeometry(core::Tank(), core::Lining());
}

const DaySeries& days() {
  static const DaySeries series = [] {
    support::Dice dice(401);
    const double full_m3 = curveOf(geometry()).full_m3;
    DaySeries result = support::alikeDays({.household_m3 = 0.001 * full_m3, .seepage_mm_day = 1.5}, kDays);
    for (std::size_t day = 0; day < kDays; ++day) {
      const bool is_wet = day % 365 < 150;
      result.rain_mm[day] = is_wet && dice.chance(0.5) ? static_cast<float>(dice.between(0, 25)) : 0;
      result.evaporation_mm[day] = static_cast<float>(dice.between(2, 6));
      result.supply_m3[day] = static_cast<float>(full_m3 * (is_wet ? 0.02 : 0.002));
      result.beds_m3[day] = static_cast<float>(full_m3 * (is_wet ? 0 : dice.between(0, 0.01)));
    }
    return result;
  }();
  return series;
}

std::vector<Lane> lanes() {
  const TankCurve tank = curveOf(geometry());
  std::vector<Lane> result;
  for (std::size_t i = 0; i < kLanes; ++i) {
    result.push_back(
        {scaled(tank, 0.6 + static_cast<double>(i % 64) / 64), static_cast<double>(i / 64) / 32});
  }
  return result;
}

// The balance once more, plainly: Newton steps from the level of the day before, until they are small.
int newtonLoop(const TankCurve& tank, const DaySeries& series, double start_m3) {
  double volume = start_m3, z = tank.full_level_m;
  int dry_days = 0;
  for (std::size_t day = 0; day < series.days(); ++day) {
    for (double step = 1; step > 1e-9 || step < -1e-9; z -= step) {
      step = (tank.volume(z) - volume) / tank.surface(z);
    }
    const double losses =
        series.evaporation_mm[day] / 1000.0 * tank.surface(z) + series.seepage_mm_day / 1000 * tank.wetted(z);
    volume += series.supply_m3[day] + series.rain_mm[day] / 1000.0 * tank.catch_m2;
    volume = std::max(volume - losses, 0.0);
    const double need = series.household_m3[day] + static_cast<double>(series.beds_m3[day]);
    const double drawn = std::min(need, std::max(volume - tank.dead_m3, 0.0));
    dry_days += need > 0 && drawn < kMetShare * need ? 1 : 0;
    volume = std::min(volume - drawn, tank.full_m3);
  }
  return dry_days;
}

void fast(benchmark::State& state) {
  const std::vector<Lane> all = lanes();
  for (auto _ : state) benchmark::DoNotOptimize(yearsWithoutDryDay(all, days()));
}

void totals(benchmark::State& state) {
  const std::vector<Lane> all = lanes();
  for (auto _ : state) benchmark::DoNotOptimize(sweep(all, days()));
}

void oneRun(benchmark::State& state) {
  const TankCurve tank = curveOf(geometry());
  for (auto _ : state) benchmark::DoNotOptimize(run(tank, days(), tank.full_m3));
}

void halving(benchmark::State& state) {
  const support::PlainTank tank = support::plainTank(geometry());
  for (auto _ : state) benchmark::DoNotOptimize(support::plainRun(tank, days(), 0, kDays, tank.full_m3, 1));
}

void newton(benchmark::State& state) {
  const TankCurve tank = curveOf(geometry());
  for (auto _ : state) benchmark::DoNotOptimize(newtonLoop(tank, days(), tank.full_m3));
}

void wholeMap(benchmark::State& state) {
  const TankCurve tank = curveOf(geometry());
  const std::atomic<bool> go_on = false;
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        reliabilityMap(tank, days(), kBeds_m2, mapReach(tank.full_m3, kBeds_m2), kCells, kThreads, go_on));
  }
}

void peak(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(bench::multiplyAdds(kRounds));
}

// Prints as usual and keeps the medians [ns].
class Medians : public benchmark::ConsoleReporter {
public:
  Medians() : ConsoleReporter(OO_None) {}

  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const Run& run : runs) {
      if (run.aggregate_name != "median") continue;
      const bool is_map = run.run_name.function_name.starts_with("map");
      median_ns[run.run_name.function_name] = is_map ? run.GetAdjustedRealTime() : run.GetAdjustedCPUTime();
    }
  }
  std::map<std::string, double> median_ns;
};

/// Makes hwy dispatch to one instruction set, 0: the best there is.
void dispatchTo(std::int64_t target) {
  hwy::SetSupportedTargetsForTest(target);
  hwy::GetChosenTarget().DeInit();
}

using Function = void (*)(benchmark::State&);

void add(const std::string& name, Function function, std::int64_t target = 0) {
  const auto body = [function, target](benchmark::State& state) {
    dispatchTo(target);
    function(state);
  };
  benchmark::RegisterBenchmark(name.c_str(), body)->Repetitions(7)->MinTime(0.1)->ReportAggregatesOnly();
}

struct InstructionSet {
  std::string name;
  std::int64_t target;
};

std::vector<InstructionSet> instructionSets() {
  std::vector<InstructionSet> result;
  const std::int64_t supported = hwy::SupportedTargets();
  for (std::int64_t left = supported; left != 0; left &= left - 1) {
    dispatchTo(left & -left);
    const bool is_known = std::any_of(result.begin(), result.end(),
                                      [](const InstructionSet& set) { return set.name == sweepTarget(); });
    if (!is_known) result.push_back({sweepTarget(), left & -left});
  }
  dispatchTo(0);
  return result;
}

void print(const Medians& medians, const InstructionSet& set) {
  const auto median = [&](const std::string& name) { return medians.median_ns.at(name); };
  dispatchTo(set.target);
  const double peak_per_ns = bench::multiplyAdds(kRounds) / median("peak:" + set.name);
  const double day_ns = median("fast:" + set.name) / kLanes / kDays;
  fmt::print("{}: {:.3f} ns per tank-day on one core, {:.3f} ns with totals\n", set.name, day_ns,
             median("totals:" + set.name) / kLanes / kDays);
  fmt::print(
      "  {:.1f} times as fast as the plain balance by halving, {:.1f} times as the plain Newton loop\n",
      median("plain_halving") / kDays / day_ns, median("plain_newton") / kDays / day_ns);
  fmt::print("  {:.2f} of the peak, {:.1f} multiply-adds per ns; {} of them a tank-day\n",
             kMultiplyAddsOfADay / day_ns / peak_per_ns, peak_per_ns, kMultiplyAddsOfADay);
}

}  // namespace

int main(int argc, char** argv) {
  const std::vector<InstructionSet> sets = instructionSets();
  for (const InstructionSet& set : sets) {
    add("fast:" + set.name, fast, set.target);
    add("totals:" + set.name, totals, set.target);
    add("peak:" + set.name, peak, set.target);
  }
  add("map_64_x_64", wholeMap);
  add("run", oneRun);
  add("plain_halving", halving);
  add("plain_newton", newton);
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  Medians medians;
  benchmark::RunSpecifiedBenchmarks(&medians);
  if (medians.median_ns.size() < 3 * sets.size() + 4) return 0;  // a filter was given
  for (const InstructionSet& set : sets) print(medians, set);
  const auto median = [&](const char* name) { return medians.median_ns[name]; };
  fmt::print("one tank in double precision: {:.1f} ns a day; plain by halving {:.1f} ns, Newton {:.1f} ns\n",
             median("run") / kDays, median("plain_halving") / kDays, median("plain_newton") / kDays);
  fmt::print("map of {0} x {0} over {1} years on {2} threads: {3:.1f} ms\n", kCells, kYears, kThreads,
             median("map_64_x_64") / 1e6);
  return 0;
}
