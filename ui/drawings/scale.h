#pragma once

#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"

#include <QPainter>
#include <QRectF>
#include <functional>
#include <vector>

namespace ui::drawings {

/// Makes a drawing at scale 1:n.
using Draw = std::function<Figure(double n)>;

/// Paints the drawing into the box at the largest round scale that fits (paper) or as large as the box allows
/// (screen), in the middle. Where no round scale fits, the drawing that shows best is reduced as a whole.
/// @param ways to lay the drawing out, the first that fits is taken; at least one
/// @return n of the scale 1:n used
int paintFitted(QPainter& painter, const QRectF& box_mm, const Style& style, const std::vector<Draw>& ways);
int paintFitted(QPainter& painter, const QRectF& box_mm, const Style& style, const Draw& draw);

/// Adds a scale bar , its top left at `at`; on paper with the ratio written beside it.
void addScaleBar(Figure& figure, QPointF at, double n, const Formatter& format, const Style& style);

}  // namespace ui::drawings
