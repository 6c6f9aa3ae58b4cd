#include "core/exchange/project_file.h"
#include "core/geometry/scene.h"
#include "core/plan.h"
#include "core/project/fields.h"

#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

#include <benchmark/benchmark.h>
#include <fmt/format.h>

// How long a change of one field takes until the whole plan and its picture are there, beside the least that
// has to be reckoned: the prismoidal formula for each solid.

namespace {

constexpr const char* kDemo = "terrace";

core::Project demo(const std::string& name) {
  const auto read =
      core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/" + name + ".tankwright");
  if (!read) {
    fmt::print(stderr, "cannot read the demo project {}\n", name);
    std::exit(1);
  }
  return read->project;
}

// Another depth at every turn, as from a slider.
void turn(core::Project& project, int step) {
  core::field("tank.depth_m").set(project, 0, core::FieldValue(1.2 + 0.01 * (step % 50)));
}

core::geometry::SceneOptions options(const core::Plan& plan) {
  core::geometry::SceneOptions result;
  result.water_level_m = plan.tank.full_level_m;
  return result;
}

core::geometry::SceneOptions cutOptions(const core::Plan& plan) {
  core::geometry::SceneOptions result = options(plan);
  result.cut = core::geometry::CutPlane{Eigen::Vector2d::Zero(), -Eigen::Vector2d::UnitY()};
  return result;
}

void changeToPicture(benchmark::State& state, const std::string& name) {
  core::Project project = demo(name);
  int step = 0;
  for (auto _ : state) {
    turn(project, step++);
    const auto plan = core::plan(project);
    if (!plan) return state.SkipWithError("no plan");
    benchmark::DoNotOptimize(core::geometry::scene(plan->geometry, cutOptions(*plan)));
  }
}

void changeToPlan(benchmark::State& state, const std::string& name) {
  core::Project project = demo(name);
  int step = 0;
  for (auto _ : state) {
    turn(project, step++);
    benchmark::DoNotOptimize(core::plan(project));
  }
}

void wholeScene(benchmark::State& state, const std::string& name) {
  const core::Plan plan = core::plan(demo(name)).value();
  for (auto _ : state) benchmark::DoNotOptimize(core::geometry::scene(plan.geometry, options(plan)));
}

void cutScene(benchmark::State& state, const std::string& name) {
  const core::Plan plan = core::plan(demo(name)).value();
  for (auto _ : state) benchmark::DoNotOptimize(core::geometry::scene(plan.geometry, cutOptions(plan)));
}

// h / 6 (A + 4 B + C) of a battered rectangle whose floor is moved out by `out` and stands `down` below the
// finished floor.
double prismoid(const core::Tank& tank, double out, double down) {
  const double h = tank.depth_m + down;
  const auto area = [&](double z) {
    const double grow = 2 * (out + tank.batter * z);
    return (tank.length_m + grow) * (tank.width_m + grow);
  };
  return h / 6 * (area(-down) + 4 * area(h / 2 - down) + area(tank.depth_m));
}

void prismoidalFormula(benchmark::State& state, const std::string& name) {
  core::Project project = demo(name);
  int step = 0;
  for (auto _ : state) {
    turn(project, step++);
    const double slant = std::hypot(1.0, project.tank.batter);
    double thickness = 0;
    benchmark::DoNotOptimize(prismoid(project.tank, 0, 0));
    for (auto coat = project.lining.coats.rbegin(); coat != project.lining.coats.rend(); ++coat) {
      thickness += coat->thickness_m;
      benchmark::DoNotOptimize(prismoid(project.tank, thickness * slant, thickness));
    }
    benchmark::DoNotOptimize(
        prismoid(project.tank, thickness * slant, thickness + project.lining.stone_bed_m));
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
  using Benchmark = void (*)(benchmark::State&, const std::string&);
  const std::array<std::pair<const char*, Benchmark>, 5> kinds{{{"change_to_picture", changeToPicture},
                                                                {"change_to_plan", changeToPlan},
                                                                {"scene_whole", wholeScene},
                                                                {"scene_cut", cutScene},
                                                                {"prismoidal_formula", prismoidalFormula}}};
  for (const char* name : {kDemo, "round", "five_sided"}) {
    for (const auto& [kind, function] : kinds) {
      if (function == prismoidalFormula && std::string(name) != kDemo) continue;  // a rectangle's
      const std::string project = name;
      benchmark::RegisterBenchmark(
          (std::string(kind) + ":" + name).c_str(),
          [run = function, project](benchmark::State& state) { run(state, project); })
          ->Repetitions(9)
          ->MinTime(0.1)
          ->ReportAggregatesOnly();
    }
  }
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  Medians medians;
  benchmark::RunSpecifiedBenchmarks(&medians);
  const std::string demo_name = std::string(":") + kDemo;
  const double picture = medians.median_ns["change_to_picture" + demo_name];
  const double formula = medians.median_ns["prismoidal_formula" + demo_name];
  if (picture > 0 && formula > 0) {
    fmt::print(
        "field change to plan and cut picture: median {:.3f} ms, {:.3g} times the bare prismoidal formula "
        "({:.1f} ns)\n",
        picture / 1e6, picture / formula, formula);
  }
  return 0;
}
