#pragma once

#include "core/water/water_plan.h"
#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"

#include <vector>

namespace ui::drawings {

/// How a part is told from its neighbours: solid, hatched at up to two angles, or empty.
struct FlowPart {
  double core::water::MonthFlows::*water;
  QColor ChartColours::*colour;
  bool solid;
  std::vector<double> angles;
  double spacing_mm;
  const char* name;
};

/// What comes in, and what is needed, from the bottom of a bar up.
const std::vector<FlowPart>& supplyParts();
const std::vector<FlowPart>& needParts();

void addFlowPart(Chart& chart, const QRectF& bar, const FlowPart& part);
/// A bold frame with bold strokes across.
void addUnmet(Chart& chart, const QRectF& bar);

/// The parts that occur in the plan.
Legend flowLegend(const core::water::WaterPlan& plan);

}  // namespace ui::drawings
