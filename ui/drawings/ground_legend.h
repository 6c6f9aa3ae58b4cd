#pragma once

#include "core/plan.h"
#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"

#include <QPainterPath>

namespace ui::drawings {

/// Lines of the plan of the ground.
inline constexpr Stroke kEdge{0.5};
inline constexpr Stroke kPitEdge{0.7};
inline constexpr Stroke kContour{0.35};
inline constexpr Stroke kCutDaylight{0.5, 2.5, 1.2};  ///< that of a fill is dash-dotted

/// Faces of cut and of fill, told apart by hatch and on a screen by lightness.
void addCut(Chart& chart, const QPainterPath& region, bool dark);
void addFill(Chart& chart, const QPainterPath& region, bool dark);

/// Pegs of many corners crowd; there the name of the peg farther out does for both.
bool pegNamesCrowd(const core::Plan& plan);

/// What the signs of the plan of the ground stand for.
Legend groundLegend(const core::Plan& plan, const Formatter& format, const Style& style);

}  // namespace ui::drawings
