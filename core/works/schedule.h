#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"
#include "core/water/water_plan.h"
#include "core/works/calendar.h"
#include "core/works/filling.h"
#include "core/works/labour.h"
#include "core/works/network.h"
#include "core/works/one_go.h"
#include "core/works/weather_window.h"

#include <optional>
#include <string>
#include <vector>

namespace core::works {

/// People on a task.
struct Crew {
  int labourers = 0;  ///< diggers, mixers, carriers, helpers
  int masons = 0;
  int wetters = 0;  ///< who keep sacks wet and watch the water
  int people() const { return labourers + masons; }
};

/// One bar of the schedule; start and finish are the first and the last day on which anything is done.
struct Task {
  std::string id;  ///< clear, set_out, strip_topsoil, platform_cut, platform_fill, excavate, excavate_deep,
                   ///< carry_spoil, trim, pipes, stone_bed, coat_1, cure_1, ..., fill, leak_test, silt_trap,
                   ///< overflow, fence, planting, and the mark fill_by
  Day start, finish;
  int days;  ///< days with work on them; calendar days for curing and filling
  int crew;  ///< people; 0 where hands are needed for wetting only
  Crew by_skill = {};
  double work_days = 0;  ///< duration in days of its clock, in quarters
  Clock clock = Clock::working;
  double start_in_day = 0;  ///< share of the first day gone when it starts, 0 to 0.75
  double float_days = 0;    ///< total, on its clock
  double free_float_days = 0;
  bool is_critical = false;            ///< a whole day later would put off the end of the works
  bool is_mark = false;                ///< a last day, not work
  std::optional<Day> not_before = {};  ///< as wished
};

/// An arrow between two tasks.
struct TaskLink {
  std::string from, to;
  LinkKind kind;
  double lag_days;
  Clock lag_clock;
};

/// People and water on one day.
struct DayLoad {
  Day date;
  int labourers = 0, masons = 0, wetters = 0;
  double wetting_l = 0;   ///< for sacks: curing coats, and walls above the water while the tank fills
  bool is_worked = true;  ///< neither rest day nor closed
  int people = 0;         ///< labourers and masons who are there at one time, at most
};

struct Works {
  std::vector<Labour> labour;
  double person_days = 0;      ///< all of labour together
  double mason_days = 0;       ///< skilled ones among them
  std::vector<Task> schedule;  ///< by start, the mark last
  std::vector<TaskLink> links;
  std::vector<DayLoad> days;  ///< every day from the first to the last
  std::vector<CoatCheck> coat_checks;
  std::optional<Filling> filling;       ///< absent: there is no lining day to fill after
  std::optional<WeatherWindow> window;  ///< absent: no weather years
  std::optional<double> digging_days_by_norm, digging_days_by_practice;  ///< two rules of thumb side by side
  std::vector<std::string> wishes_unused;  ///< tasks wished for that the plan does not have
};

struct WorksInput {
  LabourInput labour;
  const water::WaterPlan* water = nullptr;  ///< may be absent
};

/// Problems of the works across fields: a calendar without a working day.
Problems check(const core::Works& works);

/// Labour, dates, people and checks. A coat takes one day however many people it needs; the check of the crew
/// stands beside it. @pre input.labour.project.works is there, check(works) is empty
Works worksPlan(const WorksInput& input);

/// True for what belongs to the works: the planting follows them, a mark is no work.
bool isWork(const Task& task);

/// The task with `id`; null when there is none.
const Task* findTask(const Works& works, std::string_view id);

}  // namespace core::works
