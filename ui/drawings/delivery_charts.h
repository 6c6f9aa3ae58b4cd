#pragma once

#include "core/hydraulics/delivery_plan.h"
#include "core/plan.h"
#include "ui/drawings/drawings.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <optional>

namespace ui::drawings {

/// Charts of pipes and tank. On paper (`style.fixed_scale`) lines, hatches and solids in black; on a screen
/// the same in colours that also tell apart by lightness. Where there is nothing to draw, a sentence says
/// why.

/// Head diagram of a line along its length: pipe, still water level, head line with the tank full and nearly
/// empty, stretches under suction and high points marked. Levels are read from the rim: above it positive.
/// Places are indices of LinePlan::full->points.
void drawHeadLine(QPainter& painter, const QRectF& box_mm, const core::hydraulics::LinePlan& line,
                  double rim_level_m, const Formatter& format, const Style& style,
                  std::optional<int> marked_point = {});
std::optional<int> headPointAt(const QRectF& box_mm, QPointF at, const core::hydraulics::LinePlan& line,
                               double rim_level_m, const Formatter& format, const Style& style);
/// "120 m along: pipe 3.2 m under the rim, head 4.1 m": one or two lines.
QString headReading(const core::hydraulics::LinePlan& line, double rim_level_m, int point,
                    const Formatter& format);

/// Water level while the field line runs wide open, from full down. Places are indices of Emptying::curve.
void drawEmptying(QPainter& painter, const QRectF& box_mm, const core::hydraulics::FieldPlan& field,
                  const Formatter& format, const Style& style, std::optional<int> marked_point = {});
std::optional<int> emptyingPointAt(const QRectF& box_mm, QPointF at, const core::hydraulics::FieldPlan& field,
                                   const Formatter& format, const Style& style);
QString emptyingReading(const core::hydraulics::FieldPlan& field, int point, const Formatter& format);

/// The rim in section across the overflow: sill, water in the storm, freeboard left, lip and rim, and the
/// water level when the overflow is blocked.
void drawOverflow(QPainter& painter, const QRectF& box_mm, const core::hydraulics::OverflowPlan& overflow,
                  const Formatter& format, const Style& style);

}  // namespace ui::drawings
