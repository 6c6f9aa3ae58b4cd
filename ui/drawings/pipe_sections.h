#pragma once

#include "core/geometry/tank_geometry.h"
#include "ui/drawings/figure.h"

#include <QPainterPath>
#include <QPointF>
#include <vector>

namespace ui::drawings {

/// What the numbers beside the two sections stand for, in the order of their key.
enum class PipePart { clear_face, coats, pit_wall, pipe, collar, goes_on, clamp, mouth, dead_level };

/// A number to be written beside a section, with the place it names.
struct PipeMark {
  PipePart part;
  QPointF tip;
};

/// Places of a section to be numbered, in the column on either side.
struct PipeMarks {
  std::vector<PipeMark> left, right;
};

struct DrawnPipe {
  double outside_m;
  double crest_m;  ///< axis over the rim
};

/// Adds the sections, each with its origin (of the pipe's axis in the clear face; of the edge of the clear
/// floor) at a place.
PipeMarks addPipeThroughWall(Figure& figure, const core::geometry::TankGeometry& tank, const DrawnPipe& pipe,
                             double n, QPointF origin_mm);
PipeMarks addPipeOverRim(Figure& figure, const core::geometry::TankGeometry& tank, const DrawnPipe& pipe,
                         double n, QPointF origin_mm);

/// Layers that are coats, from the clear face outward, with what lies before each [m].
struct CoatBehind {
  int number;
  double from_m, to_m;
};
std::vector<CoatBehind> coatsBehind(const core::geometry::TankGeometry& tank);

}  // namespace ui::drawings
