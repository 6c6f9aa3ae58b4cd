#pragma once

#include "core/geometry/built.h"
#include "core/plan.h"
#include "core/project/project.h"
#include "ui/text/formatter.h"

#include <QPainter>
#include <QRectF>
#include <optional>

namespace ui::drawings {

/// How a drawing is made. Lengths on paper in millimetres; the painter's transform maps 1 unit to 1 mm.
struct Style {
  bool dark = false;        ///< light lines for a dark screen; paper is never dark
  double text_mm = 3.1;     ///< height of a capital letter; 3.1 is a 12.3 point type
  bool fixed_scale = true;  ///< round scale 1:n (paper) or fit the box (screen)
};

/// Draws the plan (seen from above) into `box_mm`: clear floor and rim, coats, pit edge, clear and pit
/// dimensions named.
/// @return n of the scale 1:n used
int drawPlan(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
             const Style& style);

/// Where the tank is cut upright through its middle.
enum class SectionCut {
  across,  ///< A-A: across the width
  along    ///< B-B: along the length
};

/// Draws a section, hatched by material, with levels and the water.
int drawSection(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                const Style& style, SectionCut cut = SectionCut::across);

/// Draws the section without dimensions, as large as the box allows, finished or as far as it is built.
int drawSectionPicture(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Style& style,
                       SectionCut cut = SectionCut::across,
                       const std::optional<core::geometry::Built>& built = {});

/// Draws the foot of the wall enlarged, so that bed and coats can be told apart, each named with its
/// thickness.
int drawCornerDetail(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                     const Style& style);

/// Draws the setting-out: pit corners, pegs, sides and diagonals.
int drawSettingOut(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                   const Style& style);

/// Draws the tank as far as it is built in a block of level ground, in isometric projection (ISO 5456-3: the
/// three directions at 30 degrees and upright, all to one scale), seen from in front, right and above, with a
/// scale bar along the ground. Block and scale are the same for every stage of a tank.
int drawIsometric(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                  const Style& style, const core::geometry::Built& built);

/// Draws the board that gives the lean of the dug wall: plumb side, level side and slanting edge with their
/// lengths; a plumb staff where the wall is upright.
int drawBatterBoard(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                    const Style& style);

/// Draws the rod with the marks that are measured down from the string, to scale, each with name and
/// distance.
int drawDepthRod(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                 const Style& style);

/// Draws a pipe through the wall and a pipe over the rim, cut upright, with the plan's wall and coats. The
/// pipe is that of the field line; where none is entered one of 32 mm stands as an example and is called so.
int drawPipeDetails(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                    const core::Plan& plan, const Formatter& format, const Style& style);

/// Thickness as a mason reads it: whole or half millimetres, or inches.
QString thicknessText(double thickness_m, const Formatter& format);

}  // namespace ui::drawings
