#include "core/works/build_days.h"

#include "core/geometry/mesh.h"
#include "core/works/labour.h"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

namespace core::works {
namespace {

using geometry::Built;
using geometry::TankGeometry;

Built untouched() {
  Built built;
  built.is_platform_made = false;
  built.dug_m = 0;
  built.has_stone_bed = false;
  built.coats = 0;
  return built;
}

double volumeDug(const TankGeometry& geometry, double depth_m) {
  if (depth_m <= 0) return 0;
  return geometry::volume(geometry.outline(), geometry.pitProfile(depth_m));
}

/// Worked days of a task up to and with a day, and all of them.
struct Progress {
  int done = 0, all = 0;
  double share() const { return all == 0 ? 0 : static_cast<double>(done) / all; }
};

Progress progress(const Works& works, const Task& task, Day day) {
  Progress p;
  for (const DayLoad& load : works.days) {
    if (!load.is_worked || load.date < task.start || load.date > task.finish) continue;
    ++p.all;
    if (load.date <= day) ++p.done;
  }
  if (p.all == 0 && task.finish <= day) p = {1, 1};  // a wish may put a task on a closed day
  return p;
}

class Days {
public:
  Days(const TankGeometry& geometry, const Works& works)
      : geometry_(geometry),
        works_(works),
        coats_(geometry.coatCount()),
        deep_m_(findTask(works, "excavate_deep") != nullptr ? kDeepDigging_m : geometry.pitDepth()) {}

  BuildDay on(Day day) const {
    BuildDay d{"natural", day, untouched()};
    if (isBegun("set_out", day)) take(d, "pegs");
    d.built.has_pegs = isDone("set_out", day);
    d.built.is_platform_made = isDone("platform_cut", day) && isDone("platform_fill", day);
    if (isBegun("platform_cut", day) || isBegun("platform_fill", day)) take(d, "platform");
    dig(d, day);
    if (findTask(works_, "stone_bed") != nullptr) {
      d.built.has_stone_bed = isDone("stone_bed", day);
      if (isBegun("stone_bed", day)) take(d, "stone_bed");
    }
    for (int k = 1; k <= coats_; ++k) line(d, k, day);
    fill(d, day);
    return d;
  }

private:
  const TankGeometry& geometry_;
  const Works& works_;
  int coats_;
  double deep_m_;

  bool isBegun(std::string_view id, Day day) const {
    const Task* task = findTask(works_, id);
    return task != nullptr && task->start <= day;
  }
  /// What is not among the tasks needs no doing.
  bool isDone(std::string_view id, Day day) const {
    const Task* task = findTask(works_, id);
    return task == nullptr || task->finish <= day;
  }
  double share(std::string_view id, Day day) const {
    const Task* task = findTask(works_, id);
    return task == nullptr ? 0 : progress(works_, *task, day).share();
  }
  static void take(BuildDay& d, std::string stage) { d.stage = std::move(stage); }

  void dig(BuildDay& d, Day day) const {
    if (!isBegun("excavate", day) && !isBegun("excavate_deep", day)) return;
    const double pit_m = geometry_.pitDepth();
    d.built.dug_m = depthDug(geometry_, 0, deep_m_, share("excavate", day));
    if (isBegun("excavate_deep", day) && d.built.dug_m >= deep_m_)
      d.built.dug_m = depthDug(geometry_, deep_m_, pit_m, share("excavate_deep", day));
    d.built.has_pegs = d.built.has_pegs && d.built.dug_m < pit_m;
    take(d, isDone("excavate", day) && isDone("excavate_deep", day) ? "dug" : "dig");
  }

  void line(BuildDay& d, int coat, Day day) const {
    const std::string place = fmt::format("coat_{}", coat), cure = fmt::format("cure_{}", coat);
    if (isDone(place, day)) d.built.coats = coat;
    if (isBegun(place, day)) take(d, place);
    if (!isBegun(cure, day)) return;
    d.built.has_sacks = !isDone(cure, day);
    take(d, cure);
  }

  void fill(BuildDay& d, Day day) const {
    if (!works_.filling || !isBegun("fill", day)) return;
    take(d, "fill");
    const std::vector<FillDay>& days = works_.filling->days;
    for (const FillDay& f : days) {
      if (f.date <= day) d.built.water_level_m = f.level_m;
    }
    if (!works_.filling->full_on || day < *works_.filling->full_on) return;
    d.built.has_sacks = false;
    take(d, "full");
  }
};

}  // namespace

double depthDug(const TankGeometry& geometry, double from_m, double to_m, double share) {
  if (share <= 0) return from_m;
  if (share >= 1) return to_m;
  const double before = volumeDug(geometry, from_m);
  const double wanted = before + share * (volumeDug(geometry, to_m) - before);
  double low = from_m, high = to_m;
  while (high - low > 1e-4) {
    const double middle = (low + high) / 2;
    (volumeDug(geometry, middle) < wanted ? low : high) = middle;
  }
  return (low + high) / 2;
}

std::vector<BuildDay> buildStages(const TankGeometry& geometry, bool has_platform) {
  std::vector<BuildDay> stages;
  Built built = untouched();
  built.is_platform_made = !has_platform;
  const auto add = [&](std::string stage) { stages.push_back({std::move(stage), {}, built}); };
  built.has_pegs = true;
  add("pegs");
  if (has_platform) {
    built.is_platform_made = true;
    add("platform");
  }
  built.dug_m = depthDug(geometry, 0, geometry.pitDepth(), 0.5);
  add("dig");
  built.has_pegs = false;
  built.dug_m = geometry.pitDepth();
  add("dug");
  if (geometry.stoneBed() > 0) {
    built.has_stone_bed = true;
    add("stone_bed");
  }
  for (int k = 1; k <= geometry.coatCount(); ++k) {
    built.coats = k;
    built.has_sacks = false;
    add(fmt::format("coat_{}", k));
    built.has_sacks = true;
    add(fmt::format("cure_{}", k));
  }
  built.has_sacks = false;
  built.water_level_m = geometry.levelForVolume(geometry.volumeToLevel(geometry.fullLevel()) / 2);
  add("fill");
  built.water_level_m = geometry.fullLevel();
  add("full");
  return stages;
}

std::vector<BuildDay> buildDays(const TankGeometry& geometry, const Works& works) {
  std::vector<BuildDay> result;
  if (works.schedule.empty()) return result;
  Day last = works.schedule.front().finish;
  for (const Task& task : works.schedule) {
    if (isWork(task)) last = std::max(last, task.finish);
  }
  if (works.filling && works.filling->full_on) last = std::max(last, *works.filling->full_on);
  const Days days(geometry, works);
  for (Day day = addDays(works.schedule.front().start, -1); day <= last; day = addDays(day, 1))
    result.push_back(days.on(day));
  return result;
}

}  // namespace core::works
