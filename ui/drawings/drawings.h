#pragma once

#include <QPainter>
#include <QRectF>

#include "core/plan.h"
#include "core/project/project.h"
#include "ui/text/formatter.h"

namespace ui::drawings {

/// How a drawing is made. Lengths on paper in millimetres; the painter's transform maps 1 unit to 1 mm.
struct Style {
  bool dark = false;       ///< light lines for a dark screen; paper is never dark
  double text_mm = 3.5;    ///< height of capitals' line
  bool fixed_scale = true; ///< round scale 1:n (paper) or fit the box (screen)
};

/// Draws the plan (seen from above) into `box_mm`: clear floor and rim, coats, pit edge, offset pegs, clear and pit dimensions named.
/// @return n of the scale 1:n used
int drawPlan(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format, const Style& style);

/// Draws the section across the width, hatched by material, with levels and the water.
int drawSection(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format, const Style& style);

/// Draws the setting-out: pit corners, pegs, sides and diagonals.
int drawSettingOut(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format, const Style& style);

}  // namespace ui::drawings
