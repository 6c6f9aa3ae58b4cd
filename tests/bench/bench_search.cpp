#include "core/compare/search.h"
#include "core/plan.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <ctime>
#include <string>
#include <vector>

#include <fmt/format.h>

// How long the search takes for each size it tries, from a thousand sizes to a hundred thousand: when the
// time is in proportion to their number, the processor time for one stays the same. Beside it stands a plain
// loop that makes the whole plan of some of the same sizes.

namespace {

using core::Project;
using Clock = std::chrono::steady_clock;

constexpr int kYears = 30;
constexpr int kRuns = 5;
constexpr std::size_t kSample = 40;  // sizes of the plain loop
const std::atomic<bool> kGoOn = false;

Project project() {
  Project p = support::waterProject();
  p.water->climate.years = kYears;
  p.prices.emplace();
  for (core::PriceItem& item : p.prices->items) item.price = 100;
  return p;
}

Project onSlope() {
  Project p = project();
  p.site.ground = {core::GroundKind::slope, 12, 200, {}};
  return p;
}

Project onSurvey() {
  Project p = project();
  p.site.ground.kind = core::GroundKind::spot_heights;
  core::SpotHeights::List points;
  for (int x = -30; x <= 30; x += 6) {
    for (int y = -30; y <= 30; y += 6)
      points.emplace_back(x, y, 0.1 * x + 0.3 * std::sin(0.2 * x) * std::cos(0.15 * y));
  }
  p.site.ground.points_m = points;
  return p;
}

/// The same range of sizes in steps that make about so many of them.
void setSizes(Project& p, double sizes) {
  constexpr double kPlan_m = 8, kDepth_m = 2;
  p.search = {};
  p.search.least_length_m = p.search.least_width_m = 2;
  p.search.most_length_m = p.search.most_width_m = 2 + kPlan_m;
  p.search.least_depth_m = 0.5;
  p.search.most_depth_m = 0.5 + kDepth_m;
  p.search.step_m = std::cbrt(kPlan_m * kPlan_m * kDepth_m / sizes);
}

/// Time by the clock, and of all processors together.
struct Took {
  double clock_s = 0, processor_s = 0;
};

template <typename Work>
Took took(Work work) {
  const Clock::time_point start = Clock::now();
  const std::clock_t processor = std::clock();
  work();
  return {std::chrono::duration<double>(Clock::now() - start).count(),
          static_cast<double>(std::clock() - processor) / CLOCKS_PER_SEC};
}

/// The middle of several runs by processor time.
Took searchTook(const Project& p, const core::Plan& plan, unsigned threads) {
  std::vector<Took> runs;
  for (int k = 0; k < kRuns; ++k) {
    runs.push_back(took([&] {
      const auto found = core::compare::searchSizes(p, plan, threads, {}, kGoOn);
      if (found.tried != core::compare::candidateCount(p)) fmt::print("not all sizes were tried\n");
    }));
  }
  std::sort(runs.begin(), runs.end(),
            [](const Took& a, const Took& b) { return a.processor_s < b.processor_s; });
  return runs[kRuns / 2];
}

/// Whole plans of sizes spread evenly over those that are searched, weather years and ground used again.
double planSeconds(const Project& p, const core::Plan& plan) {
  const core::SearchLimits& s = p.search;
  return took([&] {
           for (std::size_t k = 0; k < kSample; ++k) {
             const double share = (static_cast<double>(k) + 0.5) / kSample;
             core::compare::Candidate size;
             size.length_m = s.least_length_m + share * (s.most_length_m - s.least_length_m);
             size.width_m = s.least_width_m + share * (s.most_width_m - s.least_width_m);
             size.depth_m = s.least_depth_m + share * (s.most_depth_m - s.least_depth_m);
             if (!core::plan(core::compare::withSize(p, size), &plan)) fmt::print("a size has no plan\n");
           }
         }).processor_s /
         kSample;
}

void print(const std::string& name, Project p) {
  setSizes(p, 1000);
  const core::Plan plan = core::plan(p).value();
  double each = 0;
  for (const double sizes : {1e3, 1e4, 1e5}) {
    setSizes(p, sizes);
    const auto count = static_cast<double>(core::compare::candidateCount(p));
    for (const unsigned threads : {1U, 2U}) {
      const Took found = searchTook(p, plan, threads);
      if (threads == 1) each = found.processor_s / count;
      fmt::print("{:<16} {:>6} sizes, threads: {}; {:7.3f} s, {:6.2f} us of processor time a size\n", name,
                 count, threads, found.clock_s, found.processor_s / count * 1e6);
    }
  }
  const double plain = planSeconds(p, plan);
  fmt::print("{:<16} a whole plan: {:.0f} us, {:.0f} times a size of the search\n", name, plain * 1e6,
             plain / each);
}

}  // namespace

int main() {
  fmt::print("{} weather years, medians of {} runs\n", kYears, kRuns);
  print("level", project());
  print("even slope", onSlope());
  print("survey of 121", onSurvey());
  return 0;
}
