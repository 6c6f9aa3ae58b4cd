#pragma once

#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/text/formatter.h"

#include <QString>
#include <array>

namespace ui::drawings {

/// Years in ten at which the classes of the reliability map meet.
inline constexpr std::array kLevels{5., 7., 8., 9., 10.};
inline constexpr int kClasses = static_cast<int>(kLevels.size()) + 1;

inline constexpr Stroke kContourLine{0.35};
inline constexpr Stroke kTargetLine{1};

/// Hatch of a class, from 0; only on paper.
void addTone(Chart& chart, const QPainterPath& region, int reliability_class);

Legend mapLegend(const Formatter& format, bool dark);

}  // namespace ui::drawings
