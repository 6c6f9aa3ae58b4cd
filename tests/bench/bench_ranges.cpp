#include "core/cost/bill_lines.h"
#include "core/cost/factor_draws.h"
#include "core/works/labour.h"
#include "tests/support/priced_tank.h"

#include <array>
#include <cmath>
#include <map>
#include <string>

#include <benchmark/benchmark.h>
#include <fmt/format.h>

// How long the ranges take, beside a plain loop that reckons each draw anew: geometry, quantities, labour and
// bill of a project with the drawn figures put in. The plain loop leaves the first filling out.

namespace {

using namespace core::cost;

constexpr int kDraws = 100'000;
constexpr int kPlainDraws = 2'000;
constexpr double kMost_ms = 100;

const support::PricedTank& tank() {
  static const support::PricedTank instance([] {
    core::Project project = support::pricedProject();
    project.ranges.draws = kDraws;
    return project;
  }());
  return instance;
}

void put(core::Project& project, const core::Project& from, core::RangedInput input, double factor) {
  using I = core::RangedInput;
  core::Lining& lining = project.lining;
  if (input == I::thickness)
    for (std::size_t k = 0; k < lining.coats.size(); ++k)
      lining.coats[k].thickness_m = from.lining.coats[k].thickness_m * factor;
  if (input == I::unevenness) lining.unevenness_percent = from.lining.unevenness_percent * factor;
  if (input == I::dry_to_wet) lining.dry_to_wet = from.lining.dry_to_wet * factor;
  if (input == I::cement_density) lining.cement_loose_kg_m3 = from.lining.cement_loose_kg_m3 * factor;
  for (std::size_t k = 0; k < project.prices->items.size(); ++k) {
    core::PriceItem& item = project.prices->items[k];
    const bool is_wage = item.item == "labourer" || item.item == "mason";
    if (input == (is_wage ? I::wages : I::prices)) item.price = *from.prices->items[k].price * factor;
  }
}

/// Money of one draw.
double plainDraw(const core::Project& project, const core::works::Platform& platform, double digging,
                 double plastering) {
  const core::geometry::TankGeometry geometry(project.tank, project.lining);
  const core::lining::Quantities quantities = core::lining::quantities(geometry, project);
  double days = 0, mason_days = 0;
  for (const core::works::Labour& l : core::works::labour({geometry, project, quantities, platform})) {
    const double rate =
        l.task.starts_with("coat_") ? plastering : (l.task.starts_with("excavate") ? digging : 1);
    days += rate * l.days;
    mason_days += rate * l.mason_days;
  }
  return bill({geometry, project, quantities, days - mason_days, mason_days}).total;
}

void plainLoop(benchmark::State& state) {
  const support::PricedTank& from = tank();
  core::Project project = from.project;
  for (auto _ : state) {
    double sum = 0;
    for (std::uint64_t first = 0; first < kPlainDraws; first += kBlock) {
      std::array<std::array<double, kBlock>, kInputs> factors;
      for (std::size_t i = 0; i < kInputs; ++i) {
        const core::InputRange& range = from.project.ranges.inputs[i];
        FactorDraws(factorSpread(range), 1, range.input).fill(first, factors[i]);
      }
      for (std::size_t k = 0; k < kBlock && first + k < kPlainDraws; ++k) {
        for (std::size_t i = 0; i < kInputs; ++i)
          put(project, from.project, static_cast<core::RangedInput>(i), factors[i][k]);
        sum += plainDraw(project, from.platform,
                         factors[static_cast<std::size_t>(core::RangedInput::digging)][k],
                         factors[static_cast<std::size_t>(core::RangedInput::plastering)][k]);
      }
    }
    benchmark::DoNotOptimize(sum);
  }
}

void allRanges(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(ranges(tank().ranges()));
}

/// The draws alone, without what comes of them.
void drawsAlone(benchmark::State& state) {
  std::array<double, kBlock> factors;
  for (auto _ : state) {
    for (const core::InputRange& range : tank().project.ranges.inputs) {
      const FactorDraws draws(factorSpread(range), 1, range.input);
      for (std::uint64_t first = 0; first < kDraws; first += kBlock) {
        draws.fill(first, factors);
        benchmark::DoNotOptimize(factors.data());
      }
    }
  }
}

// Prints as usual and keeps the medians [ns].
class Medians : public benchmark::ConsoleReporter {
public:
  Medians() : ConsoleReporter(OO_None) {}

  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const Run& run : runs) {
      if (run.aggregate_name == "median") median_ns[run.run_name.function_name] = run.GetAdjustedCPUTime();
    }
  }
  std::map<std::string, double> median_ns;
};

}  // namespace

int main(int argc, char** argv) {
  using Function = void (*)(benchmark::State&);
  const std::array<std::pair<const char*, Function>, 3> kinds{
      {{"ranges", allRanges}, {"draws_alone", drawsAlone}, {"plain_loop", plainLoop}}};
  for (const auto& [name, function] : kinds)
    benchmark::RegisterBenchmark(name, function)->Repetitions(7)->MinTime(0.1)->ReportAggregatesOnly();
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  Medians medians;
  benchmark::RunSpecifiedBenchmarks(&medians);
  const double ranges_ns = medians.median_ns["ranges"] / kDraws;
  const double plain_ns = medians.median_ns["plain_loop"] / kPlainDraws;
  if (ranges_ns <= 0 || plain_ns <= 0) return 0;  // a filter was given
  fmt::print("{} draws: {:.1f} ms on one core, wanted under {} ms; the draws alone {:.1f} ms\n", kDraws,
             medians.median_ns["ranges"] / 1e6, kMost_ms, medians.median_ns["draws_alone"] / 1e6);
  fmt::print("{:.0f} ns a draw, {:.0f} times as fast as reckoning each draw anew ({:.0f} ns)\n", ranges_ns,
             plain_ns / ranges_ns, plain_ns);
  return 0;
}
