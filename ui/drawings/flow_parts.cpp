#include "ui/drawings/flow_parts.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::water::MonthFlows;
using core::water::WaterPlan;

constexpr double kLeastHatched_mm = 0.4;  // lower parts take no hatch
constexpr Stroke kPartLine{0.25};
constexpr Stroke kUnmetLine{0.6};

bool occurs(const FlowPart& part, const WaterPlan& plan) {
  return std::ranges::any_of(plan.months, [&](const MonthFlows& flows) { return flows.*part.water > 0; });
}

void addEntries(Legend& legend, const QString& caption, const std::vector<FlowPart>& parts,
                const WaterPlan& plan) {
  const auto has = [&](const FlowPart& part) { return occurs(part, plan); };
  if (std::ranges::none_of(parts, has)) return;
  legend.push_back({caption});
  for (const FlowPart& part : parts) {
    if (!has(part)) continue;
    legend.push_back(
        {Text::tr(part.name), [&part](Chart& chart, const QRectF& room) { addFlowPart(chart, room, part); }});
  }
}

}  // namespace

const std::vector<FlowPart>& supplyParts() {
  static const std::vector<FlowPart> parts{
      {&MonthFlows::source, &ChartColours::source, true, {}, 0, QT_TRANSLATE_NOOP("Drawings", "source")},
      {&MonthFlows::roof, &ChartColours::roof, false, {45}, 1.2, QT_TRANSLATE_NOOP("Drawings", "roof")},
      {&MonthFlows::ground,
       &ChartColours::runoff,
       false,
       {45, -45},
       1.5,
       QT_TRANSLATE_NOOP("Drawings", "ground")},
      {&MonthFlows::rain,
       &ChartColours::rain,
       false,
       {},
       0,
       QT_TRANSLATE_NOOP("Drawings", "rain on the tank")}};
  return parts;
}

const std::vector<FlowPart>& needParts() {
  static const std::vector<FlowPart> parts{
      {&MonthFlows::people, &ChartColours::people, false, {}, 0, QT_TRANSLATE_NOOP("Drawings", "people")},
      {&MonthFlows::animals,
       &ChartColours::animals,
       false,
       {0},
       0.9,
       QT_TRANSLATE_NOOP("Drawings", "animals")},
      {&MonthFlows::beds, &ChartColours::beds, false, {-45}, 1.6, QT_TRANSLATE_NOOP("Drawings", "beds")}};
  return parts;
}

void addFlowPart(Chart& chart, const QRectF& bar, const FlowPart& part) {
  const QPainterPath path = rectangle(bar);
  const QColor& colour = chart.colours().*part.colour;
  if (part.solid) {
    chart.solid(path, colour);
  } else {
    chart.fill(path, colour);
  }
  if (bar.height() >= kLeastHatched_mm) {
    for (const double angle : part.angles) chart.hatch(path, angle, part.spacing_mm);
  }
  chart.line(path, kPartLine, chart.colours().ink);
}

void addUnmet(Chart& chart, const QRectF& bar) {
  const double inset = kUnmetLine.width_mm / 2;
  const QRectF frame = bar.adjusted(inset, std::min(inset, bar.height() / 2), -inset, 0);
  QPainterPath path = rectangle(frame);
  for (double y = frame.top(); y + frame.width() <= frame.bottom() + 1e-9; y += frame.width()) {
    path.moveTo(frame.left(), y);
    path.lineTo(frame.right(), y + frame.width());
    path.moveTo(frame.right(), y);
    path.lineTo(frame.left(), y + frame.width());
  }
  chart.line(path, kUnmetLine, chart.colours().unmet);
}

Legend flowLegend(const WaterPlan& plan) {
  Legend legend;
  addEntries(legend, Text::tr("Left bar, comes in:"), supplyParts(), plan);
  addEntries(legend, Text::tr("Right bar, needed:"), needParts(), plan);
  const auto unmet = [](const MonthFlows& flows) { return flows.unmet > 0; };
  if (std::ranges::any_of(plan.months, unmet))
    legend.push_back({Text::tr("missing"), [](Chart& chart, const QRectF& room) { addUnmet(chart, room); }});
  return legend;
}

}  // namespace ui::drawings
