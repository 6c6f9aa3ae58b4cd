#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/flow_parts.h"
#include "ui/drawings/water_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::water::MonthFlows;
using core::water::WaterPlan;

constexpr int kMonthCount = 12;
constexpr double kBarShare = 0.38;  // of a month's width

int firstMonth(const WaterPlan& plan) {
  if (!plan.band.empty()) return plan.band.front().month;
  return plan.weather ? plan.weather->first_month : 0;
}

double mostOf(const WaterPlan& plan) {
  double most = 0;
  for (const MonthFlows& flows : plan.months) most = std::max({most, flows.supply(), flows.need()});
  return most;
}

struct Layout {
  Legend legend;
  AxisUnit unit;
  QRectF plot;
  Axis months, water;
  std::vector<Tick> ticks;
  int first;

  Layout(const QRectF& box, const WaterPlan& plan, const Formatter& format, const Type& type)
      : legend(flowLegend(plan)), unit(volumeUnit(mostOf(plan))), first(firstMonth(plan)) {
    const double to = mostOf(plan) * 1.05, high = plotHeight(box, legend, false, type);
    if (to <= 0 || high <= 0) return;
    ticks = ticksUp(0, to, high, unit, format, type);
    plot = plotRoom(box, legend, {leftMargin(ticks, type.lettering), 1, false}, type);
    months = Axis(0, kMonthCount, plot.left(), plot.right());
    water = Axis(0, to, plot.bottom(), plot.top());
  }

  /// A part of the left (-1) or right (1) bar of the month in place `k` of the chart.
  QRectF bar(int k, int side, double from_m3, double to_m3) const {
    const double wide = kBarShare * (months.at(1) - months.at(0)), middle = months.at(k + 0.5);
    const double left = side < 0 ? middle - wide : middle;
    return {QPointF(left, water.at(to_m3)), QPointF(left + wide, water.at(from_m3))};
  }
};

void addBar(Chart& chart, const Layout& layout, int k, int side, const std::vector<FlowPart>& parts,
            const MonthFlows& flows) {
  double sum = 0;
  for (const FlowPart& part : parts) {
    const double water = flows.*part.water;
    if (water <= 0) continue;
    addFlowPart(chart, layout.bar(k, side, sum, sum + water), part);
    sum += water;
  }
  if (sum > 0) chart.keepClear(rectangle(layout.bar(k, side, 0, sum)));
}

void addMonth(Chart& chart, const Layout& layout, int k, const MonthFlows& flows) {
  addBar(chart, layout, k, -1, supplyParts(), flows);
  addBar(chart, layout, k, 1, needParts(), flows);
  if (flows.unmet > 0) addUnmet(chart, layout.bar(k, 1, flows.need() - flows.unmet, flows.need()));
}

/// The reading without its parts, which the bars show.
QString shortReading(const MonthFlows& flows, const Formatter& format) {
  const QString sums = Text::tr("in %1, needed %2", "amounts of water in a month")
                           .arg(format.litres(flows.supply()), format.litres(flows.need()));
  return flows.unmet > 0 ? sums + QLatin1Char('\n') + Text::tr("missing %1").arg(format.litres(flows.unmet))
                         : sums;
}

void addMarked(Chart& chart, const Layout& layout, const WaterPlan& plan, int month,
               const Formatter& format) {
  if (month < 0 || month >= kMonthCount) return;
  const int k = (month - layout.first + kMonthCount) % kMonthCount;
  const QRectF column(QPointF(layout.months.at(k), layout.plot.top()),
                      QPointF(layout.months.at(k + 1), layout.plot.bottom()));
  chart.line(rectangle(column), kMarkLine, chart.colours().marked);
  chart.reading(shortReading(plan.months[static_cast<std::size_t>(month)], format), column, layout.plot);
}

std::vector<double> monthStarts(const Layout& layout) {
  std::vector<double> starts;
  for (int k = 0; k <= kMonthCount; ++k) starts.push_back(layout.months.at(k));
  return starts;
}

}  // namespace

void drawFlowsChart(QPainter& painter, const QRectF& box_mm, const WaterPlan& plan, const Formatter& format,
                    const Style& style, std::optional<int> marked_month) {
  if (mostOf(plan) <= 0)
    return drawSentence(painter, box_mm,
                        Text::tr("Enter the weather, what brings water and what needs it, to see them month "
                                 "by month."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, plan, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.water, layout.ticks);
  for (int k = 0; k < kMonthCount; ++k)
    addMonth(chart, layout, k, plan.months[static_cast<std::size_t>((layout.first + k) % kMonthCount)]);
  addUprightAxis(chart, layout.plot, layout.water, layout.ticks,
                 axisTitle(Text::tr("Water in a month"), layout.unit, format));
  addMonths(chart, layout.plot, monthStarts(layout), layout.first, format);
  if (marked_month) addMarked(chart, layout, plan, *marked_month, format);
  chart.paint(painter);
}

std::optional<int> monthAt(const QRectF& box_mm, QPointF at, const WaterPlan& plan, const Formatter& format,
                           const Style& style) {
  const Layout layout(box_mm, plan, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  const int k = std::clamp(static_cast<int>(layout.months.value(at.x())), 0, kMonthCount - 1);
  return (layout.first + k) % kMonthCount;
}

}  // namespace ui::drawings
