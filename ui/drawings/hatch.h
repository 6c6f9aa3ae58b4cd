#pragma once

#include <QPainterPath>
#include <QPolygonF>
#include <vector>

namespace ui::drawings {

/// Hatches by drawing practice, made as plain lines and shapes that stay inside the region, so no clipping is
/// needed. All in mm.

/// Parallel lines at an angle, spaced by the pattern in turn.
QPainterPath lineHatch(const QPainterPath& region, double angle_deg, const std::vector<double>& spacing_mm);

/// Solid dots on a staggered grid, for plaster.
QPainterPath dotHatch(const QPainterPath& region, double spacing_mm, double diameter_mm);

/// Outlines of stones side by side in a flat layer, wholly inside it.
QPainterPath stones(const QRectF& layer);

/// Hatch of plaster coat `coat` (from 1): dots and slanting lines take turns. Dots are to be filled, lines to
/// be stroked.
struct CoatHatch {
  QPainterPath dots;
  QPainterPath lines;
};
CoatHatch coatHatch(const QPainterPath& region, int coat);

/// Hatch of cut ground: groups of three slanting strokes.
QPainterPath earthHatch(const QPainterPath& region);
/// The same in the band up to `deep_mm` below a surface that runs from left to right, pits and all.
QPainterPath earthHatch(const QPolygonF& surface, double deep_mm);

}  // namespace ui::drawings
