#pragma once

#include "core/works/calendar.h"
#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/text/formatter.h"

#include <optional>
#include <vector>

namespace ui::drawings {

/// Days side by side, each as wide as the next.
class DayAxis {
public:
  DayAxis() = default;
  DayAxis(core::works::Day first, int count, double from_mm, double to_mm)
      : first_(first), count_(count), axis_(0, count, from_mm, to_mm) {}

  core::works::Day first() const { return first_; }
  int count() const { return count_; }
  double at(double days) const { return axis_.at(days); }     ///< of the start of a day [mm]
  double width() const { return axis_.at(1) - axis_.at(0); }  ///< of a day [mm]
  int indexOf(core::works::Day day) const { return core::works::daysBetween(first_, day); }
  /// The day at a place, held to the first and the last.
  int dayAt(double mm) const;

private:
  core::works::Day first_{};
  int count_ = 1;
  Axis axis_;
};

enum class DayRows { above, below };

/// Height of the two rows of numbers and names [mm].
double dayRowsHeight(const Type& type);

/// Lines through the plot where weeks begin, or months where days are narrow.
void addDayGrid(Chart& chart, const QRectF& plot, const DayAxis& days, const Formatter& format);

/// Days over months, or months over years where days are narrow: every day's number, that of the first day of
/// every week, or none. No text touches another.
void addDayAxis(Chart& chart, const QRectF& plot, const DayAxis& days, DayRows rows, const Formatter& format);

/// Colour of rest and closed days; on paper their columns are hatched outside the rooms.
QColor restColour(const Chart& chart);
void addRestDays(Chart& chart, const std::vector<QRectF>& columns, const std::vector<QRectF>& rooms);

}  // namespace ui::drawings
