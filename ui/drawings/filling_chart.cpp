#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/day_axis.h"
#include "ui/drawings/works_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::Day;
using core::works::FillDay;
using core::works::Filling;
using core::works::WallBand;

constexpr Stroke kLevel{0.9};
constexpr Stroke kBandLine{0.25};
constexpr Stroke kStart{0.5, 3, 1.2};
constexpr Stroke kLatest{0.5, 0.7, 0.9};
constexpr double kSacksHatch_mm = 1.6;
constexpr double kLeastHigh_m = 0.1;

const AxisUnit kMetres{core::Unit::metre, 1};

void addSacks(Chart& chart, const QPainterPath& region) {
  chart.fill(region, chart.colours().runoff);
  chart.hatch(region, 45, kSacksHatch_mm);
  chart.line(region, kBandLine, chart.colours().ink);
}

LegendEntry lineEntry(const QString& text, const Stroke& stroke, QColor ChartColours::*colour) {
  return {text, [stroke, colour](Chart& chart, const QRectF& room) {
            chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()}, stroke,
                       chart.colours().*colour);
          }};
}

Legend legendOf(const Filling& filling) {
  Legend legend{lineEntry(Text::tr("water in the evening"), kLevel, &ChartColours::middle)};
  if (!filling.bands.empty()) {
    legend.push_back({Text::tr("wall under wet sacks"),
                      [](Chart& chart, const QRectF& room) { addSacks(chart, rectangle(room)); }});
  }
  legend.push_back(lineEntry(Text::tr("filling starts"), kStart, &ChartColours::ink));
  if (filling.latest_start != filling.start)
    legend.push_back(lineEntry(Text::tr("should start by"), kLatest, &ChartColours::ink));
  return legend;
}

/// First and last day that is drawn.
struct Reach {
  Day first, last;

  explicit Reach(const Filling& filling)
      : first(std::min(filling.start, filling.days.front().date)), last(filling.days.back().date) {
    for (const WallBand& band : filling.bands) {
      first = std::min(first, band.wet_from);
      last = std::max(last, band.wet_until);
    }
    last = std::max(last, filling.latest_start);
    first = std::min(first, filling.latest_start);
  }
  int days() const { return core::works::daysBetween(first, last) + 1; }
};

double highest(const Filling& filling) {
  double high = kLeastHigh_m;
  for (const FillDay& day : filling.days) high = std::max(high, day.level_m);
  for (const WallBand& band : filling.bands) high = std::max(high, band.to_m);
  return high;
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  QRectF plot;
  DayAxis days;
  Axis level;
  std::vector<Tick> ticks;

  Layout(const QRectF& box, const Filling& filling, const Formatter& format, const Type& type) {
    if (filling.days.empty()) return;
    legend = legendOf(filling);
    const double high = plotHeight(box, legend, true, type), line = type.line() + kGap_mm;
    if (high <= 2 * line) return;
    const double to = highest(filling) * high / (high - line);  // room for the name of the full level
    ticks = ticksUp(0, to, high, kMetres, format, type);
    plot = plotRoom(box, legend, {leftMargin(ticks, type.lettering), 1, true}, type);
    const Reach reach(filling);
    days = DayAxis(reach.first, reach.days(), plot.left(), plot.right());
    level = Axis(0, to, plot.bottom(), plot.top());
  }

  double startOf(Day day) const { return days.at(days.indexOf(day)); }
  double endOf(Day day) const { return days.at(days.indexOf(day) + 1); }
  QRectF band(const WallBand& wall) const {
    return {QPointF(startOf(wall.wet_from), level.at(wall.to_m)),
            QPointF(endOf(wall.wet_until), level.at(wall.from_m))};
  }
};

/// Level at the end of every day, from the empty tank at the start of filling.
QPainterPath levelLine(const Layout& layout, const Filling& filling) {
  QPainterPath path(QPointF(layout.startOf(filling.days.front().date), layout.plot.bottom()));
  for (const FillDay& day : filling.days) path.lineTo(layout.endOf(day.date), layout.level.at(day.level_m));
  return path;
}

/// The water, and the sacks on the wall above it.
void addWater(Chart& chart, const Layout& layout, const Filling& filling) {
  const QPainterPath line = levelLine(layout, filling);
  QPainterPath water = line;
  water.lineTo(line.currentPosition().x(), layout.plot.bottom());
  water.closeSubpath();
  chart.fill(water, chart.colours().band);
  for (const WallBand& band : filling.bands) {
    if (band.wet_until >= band.wet_from) addSacks(chart, rectangle(layout.band(band)).subtracted(water));
  }
  chart.halo(line, kLevel.width_mm + 0.6);
  chart.dataLine(line, kLevel, chart.colours().middle);
}

void addUpright(Chart& chart, const Layout& layout, Day day, const Stroke& stroke) {
  const double x = layout.startOf(day);
  chart.dataLine(straight({x, layout.plot.top()}, {x, layout.plot.bottom()}), stroke, chart.colours().ink);
}

void addFullName(Chart& chart, const Layout& layout, const Filling& filling, const Formatter& format) {
  const QString name = filling.full_on ? Text::tr("full on %1").arg(format.date(*filling.full_on))
                                       : Text::tr("not full within a year");
  const double half = width_mm(name, chart.lettering()) / 2 + kGap_mm;
  const double y = layout.plot.top() + chart.type().line() / 2 + 0.2;
  const double x = layout.endOf(filling.full_on.value_or(filling.days.back().date));
  chart.label(name,
              {{x + half, y}, {x - half, y}, {layout.plot.right() - half, y}, {layout.plot.left() + half, y}},
              layout.plot);
}

void addMarked(Chart& chart, const Layout& layout, const Filling& filling, int day, const Formatter& format) {
  if (day < 0 || day >= static_cast<int>(filling.days.size())) return;
  const FillDay& at = filling.days[static_cast<std::size_t>(day)];
  const QPointF place(layout.endOf(at.date), layout.level.at(at.level_m));
  chart.line({place.x(), layout.plot.top()}, {place.x(), layout.plot.bottom()}, kMarkLine,
             chart.colours().marked);
  chart.reading(fillingReading(filling, day, format), QRectF(place, place), layout.plot);
}

}  // namespace

void drawFilling(QPainter& painter, const QRectF& box_mm, const Filling& filling, const Formatter& format,
                 const Style& style, std::optional<int> marked_day) {
  if (filling.days.empty())
    return drawSentence(painter, box_mm,
                        Text::tr("Enter what flows into the tank to see how it fills for the first time."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, filling, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.level, layout.ticks);
  addWater(chart, layout, filling);
  addUpright(chart, layout, filling.start, kStart);
  if (filling.latest_start != filling.start) addUpright(chart, layout, filling.latest_start, kLatest);
  addFullName(chart, layout, filling, format);
  addUprightAxis(
      chart, layout.plot, layout.level, layout.ticks,
      fittedTitle(axisTitle(Text::tr("Height over the floor"), kMetres, format), box_mm, chart.type()));
  addDayAxis(chart, layout.plot, layout.days, DayRows::below, format);
  if (marked_day) addMarked(chart, layout, filling, *marked_day, format);
  chart.paint(painter);
}

std::optional<int> fillingDayAt(const QRectF& box_mm, QPointF at, const Filling& filling,
                                const Formatter& format, const Style& style) {
  const Layout layout(box_mm, filling, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  const int day = layout.days.dayAt(at.x()) - layout.days.indexOf(filling.days.front().date);
  if (day < 0 || day >= static_cast<int>(filling.days.size())) return std::nullopt;
  return day;
}

}  // namespace ui::drawings
