#include "core/works/schedule.h"

#include "core/works/day_loads.h"
#include "core/works/rates.h"
#include "core/works/task_list.h"

#include <algorithm>
#include <stdexcept>

#include <fmt/format.h>

namespace core::works {
namespace {

constexpr int kMostDaysClosed = 366;  // own: longer than any feast

std::vector<ActivityTimes> times(const TaskList& tasks, const Calendar& calendar, Day start) {
  auto solved = solve(tasks.activities, tasks.links, calendar, start);
  if (!solved) throw std::logic_error("the tasks of the works do not follow one another");
  return *std::move(solved);
}

/// A coat whose day a task would run into.
std::optional<std::size_t> coatInTheWay(const Laid& laid, std::size_t task) {
  const ActivityTimes& t = laid.times[task];
  for (std::size_t k = 0; k < laid.times.size(); ++k) {
    const ActivityTimes& coat = laid.times[k];
    const bool meet = t.early_start < coat.early_finish && coat.early_start < t.early_finish;
    if (meet && laid.tasks.activities[k].id.starts_with("coat_")) return k;
  }
  return std::nullopt;
}

/// Hands are needed on a coat: what is done beside it goes on after the coat, unless its start was wished.
bool makeWay(Laid& laid) {
  for (const std::size_t task : laid.tasks.beside) {
    if (laid.tasks.activities[task].not_before) continue;
    const std::optional<std::size_t> coat = coatInTheWay(laid, task);
    if (!coat) continue;
    laid.tasks.links.push_back({*coat, task, LinkKind::finish_start, 0, Clock::working});
    return true;
  }
  return false;
}

Laid lay(TaskList tasks, const Calendar& calendar, Day start) {
  Laid laid{std::move(tasks), {}};
  do laid.times = times(laid.tasks, calendar, start);
  while (makeWay(laid));
  return laid;
}

double inDays(std::int64_t quarters) {
  return static_cast<double>(quarters) / kQuarters;
}

int daysWith(Day first, Day last, Clock clock, const Calendar& calendar) {
  int count = 0;
  for (Day day = first; day <= last; day = addDays(day, 1))
    count += clock == Clock::calendar || calendar.isWorked(day) ? 1 : 0;
  return count;
}

Task bar(const Activity& activity, const ActivityTimes& t, const Crew& crew, const Calendar& calendar) {
  const Day start = Calendar::dayOf(t.early_start);
  const Day finish = Calendar::dayOf(t.early_finish - 1);
  return {.id = activity.id,
          .start = start,
          .finish = finish,
          .days = daysWith(start, finish, activity.clock, calendar),
          .crew = crew.people(),
          .by_skill = crew,
          .work_days = inDays(activity.quarters),
          .clock = activity.clock,
          .start_in_day = inDays(t.early_start - Calendar::startOf(start)),
          .float_days = inDays(t.total_float_quarters),
          .free_float_days = inDays(t.free_float_quarters),
          .is_critical = t.total_float_quarters < kQuarters,
          .not_before = activity.not_before};
}

/// Curing begins when its coat is on: it has no room of its own.
void tieCuring(std::vector<Task>& bars) {
  for (Task& cure : bars) {
    if (!cure.id.starts_with("cure_")) continue;
    cure.float_days = cure.free_float_days = 0;
    const std::string coat = "coat_" + cure.id.substr(cure.id.find('_') + 1);
    for (const Task& task : bars) cure.is_critical = task.id == coat ? task.is_critical : cure.is_critical;
  }
}

/// Bars by start.
std::vector<Task> bars(const Laid& laid, const Calendar& calendar) {
  std::vector<Task> all;
  for (std::size_t k = 0; k < laid.times.size(); ++k)
    all.push_back(bar(laid.tasks.activities[k], laid.times[k], laid.tasks.crews[k], calendar));
  std::stable_sort(all.begin(), all.end(), [](const Task& a, const Task& b) {
    return a.start != b.start ? a.start < b.start : a.start_in_day < b.start_in_day;
  });
  tieCuring(all);
  return all;
}

Task mark(const std::string& id, Day day) {
  return {
      .id = id, .start = day, .finish = day, .days = 0, .crew = 0, .clock = Clock::calendar, .is_mark = true};
}

std::vector<TaskLink> arrows(const TaskList& tasks) {
  std::vector<TaskLink> all;
  for (const Link& link : tasks.links)
    all.push_back({tasks.activities[link.from].id, tasks.activities[link.to].id, link.kind,
                   inDays(link.lag_quarters), link.lag_clock});
  return all;
}

void setQuantity(std::vector<Labour>& labour, std::string_view task, double quantity) {
  const auto line =
      std::find_if(labour.begin(), labour.end(), [task](const Labour& l) { return l.task == task; });
  if (line == labour.end()) return;
  const double factor = quantity / line->quantity;
  for (double* part : {&line->days, &line->low_days, &line->high_days, &line->mason_days, &line->quantity})
    *part *= factor;
}

double quantityOf(const std::vector<Labour>& labour, std::string_view task) {
  const auto line =
      std::find_if(labour.begin(), labour.end(), [task](const Labour& l) { return l.task == task; });
  return line == labour.end() ? 0 : line->quantity;
}

/// Days outside the curing of any coat on which sacks stay wet: while a coat waits for the next one, while
/// water rises or is waited for.
int wettingDays(const Works& works) {
  const auto cures = [&](Day date) {
    return std::any_of(works.schedule.begin(), works.schedule.end(), [date](const Task& task) {
      return task.id.starts_with("cure_") && task.start <= date && date <= task.finish;
    });
  };
  const auto counts = [&](const DayLoad& d) { return d.wetting_l > 0 && !cures(d.date); };
  return static_cast<int>(std::count_if(works.days.begin(), works.days.end(), counts));
}

Day lastCure(const Laid& laid, std::size_t coats) {
  const std::optional<std::size_t> cure = laid.tasks.find(fmt::format("cure_{}", coats));
  const ActivityTimes& last = cure ? laid.times[*cure] : laid.at(fmt::format("coat_{}", coats));
  return Calendar::dayOf(last.early_finish - 1);
}

std::vector<Day> coatDays(const Laid& laid, std::size_t coats) {
  std::vector<Day> days;
  for (std::size_t k = 1; k <= coats; ++k)
    days.push_back(Calendar::dayOf(laid.at(fmt::format("coat_{}", k)).early_start));
  return days;
}

/// Laid out with one day of filling to learn when it starts, then with as many as it takes from then on.
Laid layWithFilling(const WorksInput& input, const std::vector<Labour>& labour, const Calendar& calendar,
                    Day start) {
  Laid laid = lay(taskList(input.labour, labour, {}), calendar, start);
  if (!laid.tasks.find("fill")) return laid;
  const FillTime fill = fillTime(input.labour.geometry, input.labour.project, input.water,
                                 Calendar::dayOf(laid.at("fill").early_start));
  return fill.days > 1 || fill.ends_full ? lay(taskList(input.labour, labour, fill), calendar, start) : laid;
}

/// Day of the first coat when the works start on a day and no task is asked to wait.
Day firstCoat(const WorksInput& input, const std::vector<Labour>& labour, const Calendar& calendar,
              Day start) {
  TaskList tasks = taskList(input.labour, labour, {});
  for (Activity& activity : tasks.activities) activity.not_before.reset();
  return Calendar::dayOf(lay(std::move(tasks), calendar, start).at("coat_1").early_start);
}

/// Moves the best start until the first coat, with rest days and closed days as they then fall, lies in the
/// best week, or as near to it as may be; best_coat is the day on which it then falls.
void settleBestStart(const WorksInput& input, const std::vector<Labour>& labour, const Calendar& calendar,
                     WeatherWindow& window) {
  constexpr int kTries = 8;
  constexpr int kWeekDays = 7;
  const Day wanted = window.best_coat;
  for (int k = 0; k < kTries; ++k) {
    window.best_coat = firstCoat(input, labour, calendar, window.best_start);
    const int late = daysBetween(wanted, window.best_coat);
    if (late >= 0 && late < kWeekDays) return;
    window.best_start = addDays(window.best_start, -late);
  }
  window.best_coat = firstCoat(input, labour, calendar, window.best_start);
}

/// Everything that hangs on the days of the coats.
void addCoats(const WorksInput& input, const Laid& laid, const Calendar& calendar,
              const std::vector<Day>& coats, Works& result) {
  const core::Works& works = *input.labour.project.works;
  result.schedule.push_back(mark("fill_by", addDays(coats.back(), works.fill_within_days)));
  result.coat_checks = coatChecks(input.labour, result.labour);
  result.filling = filling(input.labour.geometry, input.labour.project, input.water,
                           {.last_coat = coats.back(),
                            .last_cure = lastCure(laid, coats.size()),
                            .start = Calendar::dayOf(laid.at("fill").early_start)});
  if (!input.water || !input.water->weather || input.water->weather->years() == 0) return;
  result.window = weatherWindow(*input.water->weather, works, coats, &input.water->made_from);
  if (result.window->best_start != works.start_date)
    settleBestStart(input, result.labour, calendar, *result.window);
}

}  // namespace

Problems check(const core::Works& works) {
  Problems problems;
  const Calendar calendar(works.rest_day, works.closed);
  if (daysWith(works.start_date, addDays(works.start_date, kMostDaysClosed), Clock::working, calendar) == 0)
    problems.push_back(
        {"no_working_day", "works.closed", std::to_string(kMostDaysClosed), {}, {}, Unit::day, {}});
  for (std::size_t k = 0; k < works.rates.size(); ++k) {
    const OwnRate& own = works.rates[k];
    const std::string path = fmt::format("works.rates[{}].", k);
    const auto has_key = [&](const Figure& figure) { return figure.key == own.work; };
    if (std::none_of(rates().begin(), rates().end(), has_key))
      problems.push_back({"unknown_work", path + "work", "\"" + own.work + "\"", {}, {}, Unit::none, {}});
    if (own.low > own.typical || own.typical > own.high)
      problems.push_back({"range_crossed", path + "typical", fmt::format("{}", own.typical), own.low,
                          own.high, Unit::none, "number"});
  }
  return problems;
}

Works worksPlan(const WorksInput& input) {
  const core::Works& works = *input.labour.project.works;
  const Calendar calendar(works.rest_day, works.closed);
  Works result;
  result.labour = labour(input.labour);
  const Laid laid = layWithFilling(input, result.labour, calendar, works.start_date);
  result.schedule = bars(laid, calendar);
  result.links = arrows(laid.tasks);
  result.wishes_unused = laid.tasks.wishes_unused;
  const std::vector<Day> coats = coatDays(laid, input.labour.quantities.coats.size());
  const Day last_cure = coats.empty() ? works.start_date : lastCure(laid, coats.size());
  if (!coats.empty()) addCoats(input, laid, calendar, coats, result);
  result.days = dayLoads(laid, calendar, input.labour, result, last_cure);

  setQuantity(result.labour, "curing", quantityOf(result.labour, "curing") + wettingDays(result));
  if (const Task* fill = findTask(result, "fill")) setQuantity(result.labour, "fill", fill->days);
  for (const Labour& line : result.labour) {
    result.person_days += line.days;
    result.mason_days += line.mason_days;
  }
  const double pit_m3 = input.labour.geometry.pitVolume();
  result.digging_days_by_norm = pit_m3 * rate("digging.norm").typical;
  result.digging_days_by_practice = pit_m3 * rate("digging.practice").typical;
  return result;
}

bool isWork(const Task& task) {
  return !task.is_mark && task.id != "planting";
}

const Task* findTask(const Works& works, std::string_view id) {
  const auto found = std::find_if(works.schedule.begin(), works.schedule.end(),
                                  [id](const Task& task) { return task.id == id; });
  return found == works.schedule.end() ? nullptr : &*found;
}

}  // namespace core::works
