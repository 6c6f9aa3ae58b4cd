#pragma once

#include "core/geometry/tank_geometry.h"
#include "ui/drawings/pipe_sections.h"
#include "ui/drawings/wall_cut.h"

#include <QPolygonF>

namespace ui::drawings {

/// How far the cove stands before the clear wall at a level [m].
double coveAt(const core::geometry::TankGeometry& tank, double z_m);

/// Where a pipe over the rim runs and what of the wall is shown: all of it, or a piece at the rim and one at
/// the floor. Levels are above the finished floor [m].
struct PipeWay {
  const core::geometry::TankGeometry& tank;
  double half_m;                // half the pipe
  double axis_m, lip_m;         // of its axis over the rim and of the mouth
  double off_m;                 // its axis before the clear face, square to it
  double upper_from, lower_to;  // where the pieces leave off
  bool is_broken;

  PipeWay(const core::geometry::TankGeometry& of, const DrawnPipe& pipe);

  double axisAt(double z_m) const { return tank.clearOffset(z_m) - off_m * tank.slant(); }
  double edge_m() const { return tank.pitProfile().points.back().offset_m; }
  double clamp_m() const;
  /// How far the lower piece is drawn up [m].
  double drawnUp_m() const;
};

/// A piece of the wall between two levels, on paper.
struct WallPiece {
  const PipeWay& way;
  WallCut cut;
  double from_m, to_m;

  bool hasFloor() const { return from_m <= cut.bottom_m() + 1e-9; }
  bool hasRim() const { return to_m >= way.tank.depth() - 1e-9; }
  double left() const;
  double right() const;
  double y(double z_m) const { return cut.at(0, z_m).y(); }
  QPointF pit(double z_m) const { return cut.at(way.tank.pitOffset(z_m), z_m); }
  /// Edge of what is dug, from below up, with the ground beside the rim.
  QPolygonF edge() const;
};

/// Adds ground, layers and lines of a piece, with break lines where it leaves off.
void addWallPiece(Figure& figure, const WallPiece& piece);

}  // namespace ui::drawings
