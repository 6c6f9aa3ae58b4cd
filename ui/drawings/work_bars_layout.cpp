#include "ui/drawings/work_bars_layout.h"

#include "ui/text/words.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::works::Clock;
using core::works::DayLoad;
using core::works::Task;
using core::works::Works;

constexpr double kShownBeyond = 1.5;  // of the days of building
constexpr int kLeastBeyond_days = 14;
constexpr double kNearlyAll = 1.1;
constexpr double kLeastBar_mm = 0.8;
constexpr double kRight_mm = 0.6;
constexpr double kLeastType_mm = 2;  // height of a capital on a screen
constexpr double kTypeStep_mm = 0.1;

bool isWorked(const Works& works, int day) {
  return day < 0 || day >= static_cast<int>(works.days.size()) ||
         works.days[static_cast<std::size_t>(day)].is_worked;
}

int allDays(const Works& works) {
  int last = static_cast<int>(works.days.size()) - 1;
  for (const Task& task : works.schedule)
    last = std::max(last, core::works::daysBetween(firstDay(works), task.finish));
  return last + 1;
}

/// Days to the end of the last coat's curing, or of the last coat; 0 without a coat.
int buildingDays(const Works& works) {
  int days = 0;
  for (const Task& task : works.schedule) {
    if (task.id.starts_with("cure_") || task.id.starts_with("coat_"))
      days = std::max(days, core::works::daysBetween(firstDay(works), task.finish) + 1);
  }
  return days;
}

QStringList namesOf(const Works& works) {
  QStringList names;
  for (const Task& task : works.schedule) names << words::taskName(task.id);
  return names;
}

}  // namespace

core::works::Day firstDay(const Works& works) {
  if (!works.days.empty()) return works.days.front().date;
  return std::ranges::min_element(works.schedule, {}, &Task::start)->start;
}

int shownDays(const Works& works) {
  const int all = allDays(works), building = buildingDays(works);
  if (building == 0) return all;
  const int most = std::max(building + kLeastBeyond_days, static_cast<int>(kShownBeyond * building));
  return all <= kNearlyAll * most ? all : most;
}

TaskSpan spanOf(const Works& works, const Task& task) {
  const int first = core::works::daysBetween(firstDay(works), task.start);
  const int last = core::works::daysBetween(firstDay(works), task.finish);
  if (task.is_mark) return {first + 0., first + 1.};
  const double used = task.start_in_day + task.work_days, of_last_day = used - std::floor(used);
  const double to = last + (of_last_day > 0 ? of_last_day : 1);
  return {first + task.start_in_day, std::max(to, first + task.start_in_day)};
}

double latestEnd(const Works& works, const Task& task) {
  double end = spanOf(works, task).to, left = task.float_days;
  while (left > 0) {
    const double step = std::min(left, std::floor(end) + 1 - end);
    if (task.clock == Clock::calendar || isWorked(works, static_cast<int>(std::floor(end)))) left -= step;
    end += step;
  }
  return end;
}

BarKind kindOf(const Task& task) {
  if (task.is_mark) return BarKind::mark;
  if (task.id.starts_with("cure_")) return BarKind::wetting;
  return task.id == "fill" ? BarKind::filling : BarKind::work;
}

std::vector<TaskSpan> workedParts(const Works& works, const Task& task) {
  const TaskSpan all = spanOf(works, task);
  if (task.clock == Clock::calendar) return {all};
  std::vector<TaskSpan> parts;
  for (int day = static_cast<int>(std::floor(all.from)); day < all.to; ++day) {
    if (!isWorked(works, day)) continue;
    const double from = std::max<double>(all.from, day), to = std::min<double>(all.to, day + 1);
    if (!parts.empty() && parts.back().to == from) {
      parts.back().to = to;
    } else {
      parts.push_back({from, to});
    }
  }
  return parts;
}

std::vector<QRectF> restColumns(const Works& works, const DayAxis& days, const QRectF& plot) {
  std::vector<QRectF> columns;
  for (int k = 0; k < days.count(); ++k) {
    if (isWorked(works, k)) continue;
    const QRectF column(days.at(k), plot.top(), days.width(), plot.height());
    if (!columns.empty() && std::abs(columns.back().right() - column.left()) < 1e-6) {
      columns.back().setRight(column.right());
    } else {
      columns.push_back(column);
    }
  }
  return columns;
}

WorkBarsLayout::WorkBarsLayout(const QRectF& box, const Works& works, const Formatter& format,
                               const Style& wanted)
    : legend(workBarsLegend(works)), style(wanted) {
  if (works.schedule.empty()) return;
  names = namesOf(works);
  place(box, works, Type(style, format));
  while (!style.fixed_scale && !rows.isEmpty() && !rows.holdsText(Type(style, format)) &&
         style.text_mm - kTypeStep_mm >= kLeastType_mm) {
    style.text_mm -= kTypeStep_mm;
    place(box, works, Type(style, format));
  }
  if (rows.isEmpty() || rows.holdsText(Type(style, format))) return;
  style = wanted;
  place(box, works, Type(style, format));
}

void WorkBarsLayout::place(const QRectF& box, const Works& works, const Type& type) {
  const double top = legendHeight(legend, box.width(), type) + kGap_mm + dayRowsHeight(type);
  rows = rowsIn(box.adjusted(0, top, 0, -kRight_mm), names, kRight_mm, type);
  if (!rows.isEmpty()) days = DayAxis(firstDay(works), shownDays(works), rows.plot.left(), rows.plot.right());
}

QRectF WorkBarsLayout::bar(int task, const TaskSpan& span) const {
  const double left = std::clamp(days.at(span.from), rows.plot.left(), rows.plot.right());
  const double right = std::max(days.at(span.to), left + kLeastBar_mm);
  return rows.bar(task, left, std::min(right, rows.plot.right()));
}

}  // namespace ui::drawings
