#include "core/works/day_loads.h"

#include <algorithm>
#include <optional>
#include <string>

#include <fmt/format.h>

namespace core::works {
namespace {

/// People at work in one quarter of a day.
Crew atWork(const Laid& laid, Instant quarter, bool is_worked) {
  Crew crew;
  for (std::size_t k = 0; k < laid.times.size(); ++k) {
    const ActivityTimes& t = laid.times[k];
    const bool counts = is_worked || laid.tasks.activities[k].clock == Clock::calendar;
    if (!counts || quarter < t.early_start || quarter >= t.early_finish) continue;
    crew.labourers += laid.tasks.crews[k].labourers;
    crew.masons += laid.tasks.crews[k].masons;
    crew.wetters = std::max(crew.wetters, laid.tasks.crews[k].wetters);  // they see to all sacks
  }
  return crew;
}

/// Water for the sacks on coats that cure on a day, or wait for the next coat after it.
double curingWater(const std::vector<Task>& schedule, const LabourInput& input, Day date) {
  const auto dayOf = [&](const std::string& id) -> std::optional<Day> {
    for (const Task& task : schedule) {
      if (task.id == id) return task.start;
    }
    return std::nullopt;
  };
  double litres = 0;
  for (const lining::CoatQuantities& q : input.quantities.coats) {
    const std::string id = fmt::format("cure_{}", q.coat);
    const auto cures = [&](const Task& t) { return t.id == id && t.start <= date && date <= t.finish; };
    const std::optional<Day> coat = dayOf(fmt::format("coat_{}", q.coat));
    const std::optional<Day> next = dayOf(fmt::format("coat_{}", q.coat + 1));
    const bool waits = coat && next && *coat < date && date < *next;
    if (waits || std::any_of(schedule.begin(), schedule.end(), cures))
      litres += q.face_m2 * input.project.lining.curing_water_l_per_m2_day;
  }
  return litres;
}

/// Water for the sacks on the wall above the water; nothing before filling and the days it waits for.
std::optional<double> wallWater(const Filling& filling, Day last_cure, Day date, double l_per_m2_day) {
  for (const FillDay& day : filling.days) {
    if (day.date == date) return day.wetting_l;
  }
  if (date <= last_cure || date >= filling.start) return std::nullopt;
  double litres = 0;
  for (const WallBand& band : filling.bands) {
    if (band.wet_from <= date && date <= band.wet_until) litres += band.area_m2 * l_per_m2_day;
  }
  return litres;
}

DayLoad people(const Laid& laid, Day date, bool is_worked) {
  DayLoad load{.date = date, .is_worked = is_worked};
  for (Instant k = 0; k < kQuarters; ++k) {
    const Crew crew = atWork(laid, Calendar::startOf(date) + k, is_worked);
    load.labourers = std::max(load.labourers, crew.labourers);
    load.masons = std::max(load.masons, crew.masons);
    load.people = std::max(load.people, crew.people());
    load.wetters = std::max(load.wetters, crew.wetters);
  }
  return load;
}

double water(const LabourInput& input, const Works& works, Day last_cure, Day date) {
  const double l_per_m2_day = input.project.lining.curing_water_l_per_m2_day;
  std::optional<double> wall;
  if (works.filling) wall = wallWater(*works.filling, last_cure, date, l_per_m2_day);
  return wall ? *wall : curingWater(works.schedule, input, date);
}

}  // namespace

std::vector<DayLoad> dayLoads(const Laid& laid, const Calendar& calendar, const LabourInput& input,
                              const Works& works, Day last_cure) {
  Day first = works.schedule.front().start, last = first;
  for (const Task& task : works.schedule) last = task.is_mark ? last : std::max(last, task.finish);
  std::vector<DayLoad> loads;
  for (Day date = first; date <= last; date = addDays(date, 1)) {
    DayLoad load = people(laid, date, calendar.isWorked(date));
    load.wetting_l = water(input, works, last_cure, date);
    if (load.wetting_l > 0) load.wetters = std::max(load.wetters, input.project.works->wetting_people);
    loads.push_back(load);
  }
  return loads;
}

}  // namespace core::works
