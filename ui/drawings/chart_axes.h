#pragma once

#include "core/base/unit.h"
#include "ui/drawings/chart.h"
#include "ui/text/formatter.h"

#include <QRectF>
#include <QString>
#include <functional>
#include <vector>

namespace ui::drawings {

/// Where values fall along a line on paper.
class Axis {
public:
  Axis() = default;
  Axis(double from, double to, double from_mm, double to_mm)
      : from_(from), to_(to), from_mm_(from_mm), to_mm_(to_mm) {}

  double to() const { return to_; }
  double at(double value) const { return from_mm_ + (value - from_) / (to_ - from_) * (to_mm_ - from_mm_); }
  double value(double mm) const { return from_ + (mm - from_mm_) / (to_mm_ - from_mm_) * (to_ - from_); }
  bool holds(double value) const { return from_ <= value && value <= to_; }

private:
  double from_ = 0, to_ = 1, from_mm_ = 0, to_mm_ = 1;
};

/// Unit in which an axis shows values of core.
struct AxisUnit {
  core::Unit unit = core::Unit::none;
  double per_value = 1;  ///< numbers in core's `unit` for one of the value

  double shownPerValue(const Formatter& format) const;
  QString name(const Formatter& format) const { return format.unit(unit); }
};

/// For volumes in m3: litres up to 100 m3, above it cubic metres or feet.
AxisUnit volumeUnit(double most_m3);
AxisUnit areaUnit();
AxisUnit yearsUnit();

/// 1, 2 or 5 times a power of ten, at least `least`.
double plainStep(double least);

struct Tick {
  double value;
  QString text;
};

/// Multiples of a plain step of the shown number from `from` to `to`, about `at_most` of them.
std::vector<Tick> plainTicks(double from, double to, int at_most, const AxisUnit& unit,
                             const Formatter& format);
/// As many ticks as stand side by side, and one above the other.
std::vector<Tick> ticksAlong(double from, double to, double length_mm, const AxisUnit& unit,
                             const Formatter& format, const Lettering& lettering);
std::vector<Tick> ticksUp(double from, double to, double length_mm, const AxisUnit& unit,
                          const Formatter& format, const Type& type);
double widest(const std::vector<Tick>& ticks, const Lettering& lettering);  ///< [mm]

/// "Water in the tank (L)"
QString axisTitle(const QString& what, const AxisUnit& unit, const Formatter& format);

/// What a sign in the chart stands for; one without a sign is a caption that begins a row.
struct LegendEntry {
  QString text;
  std::function<void(Chart&, const QRectF&)> draw = nullptr;
};
using Legend = std::vector<LegendEntry>;

/// Height of the legend in rows as wide as the box [mm].
double legendHeight(const Legend& legend, double width_mm, const Type& type);
void addLegend(Chart& chart, const Legend& legend, const QRectF& box_mm);

/// Room that stands round the plot of a chart.
struct Margins {
  double left, right;
  bool title_below;
};
inline constexpr double kTick_mm = 1.2;
inline constexpr double kGap_mm = 1;

/// The plot within the box, under the legend and the title of the upright axis; empty when too little is
/// left.
QRectF plotRoom(const QRectF& box_mm, const Legend& legend, const Margins& margins, const Type& type);
/// Height that plotRoom() will leave [mm].
double plotHeight(const QRectF& box_mm, const Legend& legend, bool title_below, const Type& type);

/// Left margin for numbers up the side.
double leftMargin(const std::vector<Tick>& ticks, const Lettering& lettering);

void addGround(Chart& chart, const QRectF& plot);
/// Lines across the plot at the ticks.
void addGrid(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks);
/// A text in the row above the plot.
void addTitle(Chart& chart, const QString& title, QPointF plot_top, Align align);
void addUprightAxis(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks,
                    const QString& title);
void addLevelAxis(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks,
                  const QString& title);
/// Month names under the plot, each in the middle of its span; where they are too wide only every second,
/// third, fourth or sixth. `starts` holds where the months begin and the end, `first` the first month, 0 to
/// 11.
void addMonths(Chart& chart, const QRectF& plot, const std::vector<double>& starts_mm, int first,
               const Formatter& format);

}  // namespace ui::drawings
