#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/water_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::water::BandDay;
using core::water::WaterPlan;

constexpr Stroke kMiddleLine{0.9};
constexpr Stroke kEdgeLine{0.25};
constexpr Stroke kFullLine{0.5, 3, 1.2};
constexpr Stroke kDeadLine{0.5, 0.7, 0.9};
constexpr double kBandHatch_mm = 1.3;
constexpr double kWideHatch_mm = 4;

QString drawnShare() {
  return Text::tr("8 years in ten");
}

void signMiddle(Chart& chart, const QRectF& room) {
  chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()}, kMiddleLine,
             chart.colours().middle);
}

void signDead(Chart& chart, const QRectF& room) {
  chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()}, kDeadLine,
             chart.colours().ink);
}

void addBand(Chart& chart, const QPainterPath& region) {
  chart.fill(region, chart.colours().band);
  chart.hatch(region, 45, kBandHatch_mm);
  chart.line(region, kEdgeLine, chart.colours().ink);
}

/// @param alone region without the band that lies in it
void addWideBand(Chart& chart, const QPainterPath& region, const QPainterPath& alone) {
  chart.fill(region, chart.colours().wide_band);
  if (chart.onPaper()) chart.hatch(alone, -45, kWideHatch_mm);
  chart.line(region, kEdgeLine, chart.colours().ink);
}

Legend legendOf(const WaterPlan& plan, const Formatter& format) {
  Legend legend{{Text::tr("middle year"), signMiddle},
                {drawnShare(), [](Chart& chart, const QRectF& room) { addBand(chart, rectangle(room)); }},
                {Text::tr("all years"), [](Chart& chart, const QRectF& room) {
                   addWideBand(chart, rectangle(room), rectangle(room));
                 }}};
  if (plan.curve.dead_m3 > 0)
    legend.push_back(
        {Text::tr("the last %1, not to be taken out").arg(format.litres(plan.curve.dead_m3)), signDead});
  return legend;
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  AxisUnit unit;
  QRectF plot;
  Axis days, water;
  std::vector<Tick> ticks;

  Layout(const QRectF& box, const WaterPlan& plan, const Formatter& format, const Type& type)
      : legend(legendOf(plan, format)) {
    double most = plan.curve.full_m3;
    for (const BandDay& day : plan.band) most = std::max(most, day.most);
    if (plan.band.empty() || most <= 0) return;
    const double high = plotHeight(box, legend, false, type), line = type.line() + kGap_mm;
    if (high <= 2 * line) return;
    const double to = most * high / (high - line);  // room for the name of the full level
    unit = volumeUnit(to);
    ticks = ticksUp(0, to, high, unit, format, type);
    plot = plotRoom(box, legend, {leftMargin(ticks, type.lettering), 1, false}, type);
    days = Axis(0, static_cast<double>(plan.band.size()), plot.left(), plot.right());
    water = Axis(0, to, plot.bottom(), plot.top());
  }

  QPointF at(std::size_t day, double water_m3) const {
    return {days.at(static_cast<double>(day) + 0.5), water.at(water_m3)};
  }
};

QPainterPath lineOf(const Layout& layout, const WaterPlan& plan, double BandDay::*value) {
  QPainterPath path;
  for (std::size_t k = 0; k < plan.band.size(); ++k) {
    const QPointF at = layout.at(k, plan.band[k].*value);
    if (k == 0) path.moveTo(at);
    path.lineTo(at);
  }
  return path;
}

QPainterPath regionOf(const Layout& layout, const WaterPlan& plan, double BandDay::*low,
                      double BandDay::*high) {
  QPainterPath path = lineOf(layout, plan, high);
  path.connectPath(lineOf(layout, plan, low).toReversed());
  path.closeSubpath();
  return path;
}

std::vector<double> monthStarts(const Layout& layout, const WaterPlan& plan) {
  std::vector<double> starts;
  for (std::size_t k = 0; k < plan.band.size(); ++k) {
    if (k == 0 || plan.band[k].month != plan.band[k - 1].month)
      starts.push_back(layout.days.at(static_cast<double>(k)));
  }
  starts.push_back(layout.plot.right());
  return starts;
}

void addWater(Chart& chart, const Layout& layout, const WaterPlan& plan) {
  const QPainterPath wide = regionOf(layout, plan, &BandDay::least, &BandDay::most);
  const QPainterPath band = regionOf(layout, plan, &BandDay::p10, &BandDay::p90);
  QPainterPath alone = wide;  // the band lies in it, so that even-odd leaves it out
  alone.addPath(band);
  addWideBand(chart, wide, alone);
  addBand(chart, band);
  chart.dataLine(lineOf(layout, plan, &BandDay::p50), kMiddleLine, chart.colours().middle);
}

void addTankLevel(Chart& chart, const Layout& layout, double water_m3, const Stroke& stroke) {
  if (water_m3 <= 0) return;
  const double y = layout.water.at(water_m3);
  chart.line({layout.plot.left(), y}, {layout.plot.right(), y}, stroke, chart.colours().ink);
}

void addFullName(Chart& chart, const Layout& layout, const WaterPlan& plan, const Formatter& format) {
  const QString name = Text::tr("full: %1").arg(format.litres(plan.curve.full_m3));
  const double y = layout.water.at(plan.curve.full_m3) - chart.type().line() / 2 - kFullLine.width_mm / 2;
  const double half = width_mm(name, chart.lettering()) / 2;
  chart.label(name, {{layout.plot.right() - half - 0.1, y}}, layout.plot);
}

void addMarked(Chart& chart, const Layout& layout, const WaterPlan& plan, int day, const Formatter& format) {
  if (day < 0 || day >= static_cast<int>(plan.band.size())) return;
  const QPointF at = layout.at(static_cast<std::size_t>(day), plan.band[static_cast<std::size_t>(day)].p50);
  chart.line({at.x(), layout.plot.top()}, {at.x(), layout.plot.bottom()}, kMarkLine, chart.colours().marked);
  chart.reading(levelReading(plan, day, format), QRectF(at, at), layout.plot);
}

}  // namespace

void drawLevelChart(QPainter& painter, const QRectF& box_mm, const WaterPlan& plan, const Formatter& format,
                    const Style& style, std::optional<int> marked_day) {
  if (plan.band.empty())
    return drawSentence(painter, box_mm,
                        Text::tr("Enter the weather to see how the water in the tank rises and falls."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, plan, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.water, layout.ticks);
  addWater(chart, layout, plan);
  addTankLevel(chart, layout, plan.curve.full_m3, kFullLine);
  addTankLevel(chart, layout, plan.curve.dead_m3, kDeadLine);
  addFullName(chart, layout, plan, format);
  addUprightAxis(chart, layout.plot, layout.water, layout.ticks,
                 axisTitle(Text::tr("Water in the tank"), layout.unit, format));
  addMonths(chart, layout.plot, monthStarts(layout, plan), plan.band.front().month, format);
  if (marked_day) addMarked(chart, layout, plan, *marked_day, format);
  chart.paint(painter);
}

std::optional<int> dayAt(const QRectF& box_mm, QPointF at, const WaterPlan& plan, const Formatter& format,
                         const Style& style) {
  const Layout layout(box_mm, plan, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  const int last = static_cast<int>(plan.band.size()) - 1;
  return std::clamp(static_cast<int>(std::floor(layout.days.value(at.x()))), 0, last);
}

}  // namespace ui::drawings
