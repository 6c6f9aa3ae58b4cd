#pragma once

#include "core/works/schedule.h"
#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/day_axis.h"

#include <QRectF>
#include <QStringList>
#include <vector>

namespace ui::drawings {

/// First day of the works.
core::works::Day firstDay(const core::works::Works& works);

/// Days that charts of the works show. All of them; where filling and what comes after it goes on for more
/// than half as long as building took, and for more than 14 days, only so many days of it, so that the weeks
/// of building stay wide. Building ends with the last day of curing, or the last coat.
int shownDays(const core::works::Works& works);

/// From the start of a task to its end, in days since the first day of the works.
struct TaskSpan {
  double from, to;
};
TaskSpan spanOf(const core::works::Works& works, const core::works::Task& task);
/// Where the task ends when it slips by all its float.
double latestEnd(const core::works::Works& works, const core::works::Task& task);

enum class BarKind { work, wetting, filling, mark };
BarKind kindOf(const core::works::Task& task);

/// Parts of the bar on days that are worked; whole where the task does not stop on rest days.
std::vector<TaskSpan> workedParts(const core::works::Works& works, const core::works::Task& task);

/// Columns of the days that are not worked [mm].
std::vector<QRectF> restColumns(const core::works::Works& works, const DayAxis& days, const QRectF& plot);

/// Where everything of the chart of bars stands.
struct WorkBarsLayout {
  QStringList names;
  Rows rows;
  DayAxis days;
  Legend legend;
  Style style;  ///< on a screen with smaller type where all names then find room

  WorkBarsLayout(const QRectF& box, const core::works::Works& works, const Formatter& format,
                 const Style& style);
  QRectF bar(int task, const TaskSpan& span) const;  ///< within the plot

private:
  void place(const QRectF& box, const core::works::Works& works, const Type& type);
};

/// What the signs of the chart stand for: those that occur.
Legend workBarsLegend(const core::works::Works& works);

/// A bar of its kind without its edge.
void addBarFill(Chart& chart, const QRectF& bar, BarKind kind, bool is_critical);
void addBarEdge(Chart& chart, const QRectF& bar, bool is_critical);
/// A thin line in the middle of a row, with an end where it ends there.
void addFloat(Chart& chart, const QRectF& room, bool ends);
QPainterPath lastDaySign(QPointF middle, double size_mm);

}  // namespace ui::drawings
