#pragma once

#include "core/geometry/tank_geometry.h"

#include <QPainterPath>
#include <QPointF>
#include <string>

namespace ui::drawings {

/// The wall cut square to its line at scale 1:n: offset to the right, 0 at the clear floor's edge; y
/// downward, 0 at the finished floor.
class WallCut {
public:
  /// @param origin_mm where the edge of the clear floor falls
  WallCut(const core::geometry::TankGeometry& tank, double n, QPointF origin_mm = {})
      : tank_(tank), mm_per_m_(1000 / n), origin_(origin_mm) {}

  const core::geometry::TankGeometry& tank() const { return tank_; }

  double mm(double length_m) const { return length_m * mm_per_m_; }
  QPointF at(double offset_m, double z_m) const { return origin_ + QPointF(mm(offset_m), -mm(z_m)); }
  /// Place so far behind the clear face, square to it, at a level; the face goes on beyond floor and rim.
  QPointF behind(double behind_m, double z_m) const {
    return at(tank_.clearOffset(z_m) + behind_m * tank_.slant(), z_m);
  }
  double bottom_m() const { return tank_.depth() - tank_.pitDepth(); }

  /// Cut face of a layer, reaching far into the tank where the solid does.
  QPainterPath face(const std::string& id) const;
  /// Everything dug away, to tell the ground from it, a collar's ledge left out.
  QPainterPath dug() const;

private:
  const core::geometry::TankGeometry& tank_;
  double mm_per_m_;
  QPointF origin_;
};

}  // namespace ui::drawings
