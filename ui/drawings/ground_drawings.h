#pragma once

#include "core/plan.h"
#include "ui/drawings/drawings.h"

#include <QPainter>
#include <QRectF>

namespace ui::drawings {

/// Draws the ground seen from above, north up: contour lines with their levels, platform, pit edge, cut and
/// fill hatched apart, the lines where their faces meet the ground, pegs by name, the heap of spoil, the
/// arrow down the fall and the north arrow.
/// @return n of the scale 1:n used
int drawGroundPlan(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                   const Style& style);

/// Draws one search for the circle with the lowest factor: ground, water in it, circle with its slices and
/// centre, the factor beside it. Where nothing was found, a sentence says why.
void drawSlip(QPainter& painter, const QRectF& box_mm, const core::site::EdgeSlip& slip,
              const Formatter& format, const Style& style);

}  // namespace ui::drawings
