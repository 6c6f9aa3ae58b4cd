#pragma once

#include <QPainterPath>

namespace ui::drawings {

/// Patterns of faces that are seen slantwise; all stay inside the region, which is one outline [mm].

/// A few stones lying on a level floor.
QPainterPath stonesOnFloor(const QPainterPath& floor);

/// Short level strokes of still water.
QPainterPath stillWater(const QPainterPath& surface);

/// Both ways of a coarse cloth.
QPainterPath cloth(const QPainterPath& face);

}  // namespace ui::drawings
