#include "tests/ui/works_charts_support.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <string>
#include <vector>

using core::works::addDays;
using core::works::Clock;
using core::works::Crew;
using core::works::Day;
using core::works::Task;
using core::works::Works;
using std::chrono::February;
using std::chrono::March;
using std::chrono::year;

namespace support {
namespace {

const Day kStart = year{2027} / February / 15;

struct Row {
  std::string id;
  int from, to;  // days since the start
  double work_days;
  Crew crew;
  double float_days;
  double start_in_day = 0;
};

Task taskOf(const Row& row) {
  Task task;
  task.id = row.id;
  task.start = addDays(kStart, row.from);
  task.finish = addDays(kStart, row.to);
  task.days = row.to - row.from + 1;
  task.by_skill = row.crew;
  task.crew = row.crew.people();
  task.work_days = row.work_days;
  task.start_in_day = row.start_in_day;
  task.float_days = row.float_days;
  task.is_critical = row.float_days == 0;
  const bool runs_on = row.id.starts_with("cure_") || row.id == "fill";
  task.clock = runs_on ? Clock::calendar : Clock::working;
  return task;
}

std::vector<Row> rowsOf(int fill_days) {
  return {{"clear", 0, 0, 0.5, {4, 0, 0}, 0},
          {"set_out", 0, 0, 0.5, {2, 1, 0}, 0, 0.5},
          {"strip_topsoil", 1, 1, 1, {4, 0, 0}, 0},
          {"excavate", 2, 7, 5, {4, 0, 0}, 0},
          {"carry_spoil", 2, 8, 5.75, {2, 0, 0}, 6.25},
          {"trim", 8, 8, 0.75, {3, 1, 0}, 0},
          {"stone_bed", 9, 10, 2, {4, 1, 0}, 0},
          {"coat_1", 11, 11, 1, {11, 3, 0}, 0},
          {"cure_1", 12, 14, 3, {0, 0, 1}, 0},
          {"coat_2", 15, 15, 1, {11, 3, 0}, 0},
          {"cure_2", 16, 19, 4, {0, 0, 1}, 0},
          {"fence", 16, 18, 2.5, {3, 0, 0}, 9.5},
          {"fill", 20, 19 + fill_days, double(fill_days), {0, 0, 1}, 0},
          {"leak_test", 20 + fill_days, 20 + fill_days, 1, {1, 0, 0}, 0}};
}

void addLoad(Works& works, const Task& task) {
  for (Day day = task.start; day <= task.finish; day = addDays(day, 1)) {
    auto& load = works.days[static_cast<std::size_t>(core::works::daysBetween(kStart, day))];
    if (task.clock == Clock::working && !load.is_worked) continue;
    load.labourers += task.by_skill.labourers;
    load.masons += task.by_skill.masons;
    load.wetters += task.by_skill.wetters;
    load.wetting_l += task.by_skill.wetters > 0 ? 340 : 0;
  }
}

}  // namespace

Works sampleWorks(int fill_days) {
  Works works;
  for (const Row& row : rowsOf(fill_days)) works.schedule.push_back(taskOf(row));
  for (int k = 0; k < 21 + fill_days; ++k) {
    core::works::DayLoad load;
    load.date = addDays(kStart, k);
    load.is_worked = k % 7 != 5 && k != 17;  // Saturdays, and a feast
    works.days.push_back(load);
  }
  for (const Task& task : works.schedule) addLoad(works, task);
  Task mark = taskOf({"fill_by", 23, 23, 0, {}, 0});
  mark.is_mark = true;
  works.schedule.push_back(mark);
  return works;
}

core::works::Filling sampleFilling(int days) {
  core::works::Filling filling;
  filling.inflow_from = "source";
  filling.start = year{2027} / March / 20;
  filling.latest_start = addDays(filling.start, 2);
  for (int k = 0; k < days; ++k) {
    const double level = 1.35 * std::pow((k + 1.) / days, 0.9);
    filling.days.push_back({addDays(filling.start, k), 2.5, 0.1, 18 * level, level, 25 * (1.5 - level) + 4,
                            8 * (25 * (1.5 - level) + 4)});
  }
  filling.full_on = filling.days.back().date;
  for (int k = 0; k < 6; ++k) {
    core::works::WallBand band{};
    band.from_m = 0.25 * k;
    band.to_m = 0.25 * (k + 1);
    band.area_m2 = 4;
    band.wet_from = addDays(filling.start, -4);
    const auto covered =
        std::ranges::find_if(filling.days, [&](const auto& d) { return d.level_m >= band.to_m; });
    if (covered != filling.days.end()) band.covered_on = covered->date;
    band.wet_until = band.covered_on ? std::max(addDays(*band.covered_on, -1), addDays(filling.start, 1))
                                     : filling.days.back().date;
    band.days = core::works::daysBetween(band.wet_from, band.wet_until) + 1;
    filling.bands.push_back(band);
  }
  return filling;
}

core::works::WeatherWindow sampleWindow() {
  core::works::WeatherWindow window;
  window.years = 30;
  for (int week = 0; week < core::works::kWeeks; ++week) {
    const Day day = addDays(year{2026} / std::chrono::January / 1, 7 * week);
    const double rain = std::clamp(1.1 * std::exp(-std::pow((week - 29) / 8., 2)), 0., 1.);
    const double frost = week < 6 || week > 48 ? 0.3 : 0;
    window.weeks.push_back({static_cast<int>(unsigned(day.month())), static_cast<int>(unsigned(day.day())),
                            (1 - rain) * (1 - frost), rain, frost, 0.08});
  }
  window.chosen = 24;
  window.best = 47;
  window.best_coat = year{2027} / std::chrono::October / 22;
  window.best_start = year{2027} / std::chrono::October / 8;
  return window;
}

QString Wordy::translate(const char*, const char* source, const char*, int) const {
  QString text = QString::fromUtf8(source);
  if (!right_to_left_) return text + QStringLiteral(" de las obras de la comunidad");
  for (qsizetype k = 0; k < text.size(); ++k) {
    if (text[k].isLetter()) text[k] = QChar(0x5d0 + text[k].unicode() % 22);
  }
  return text;
}

}  // namespace support
