#pragma once

#include "core/geometry/tank_geometry.h"
#include "ui/drawings/drawings.h"

#include <QPainterPath>
#include <limits>
#include <string>

namespace ui::drawings {

/// The tank cut upright through its middle; paper x runs along the cut, y downward, 0 at the middle and at
/// the rim.
class SectionShape {
public:
  SectionShape(const core::geometry::TankGeometry& tank, double n, SectionCut cut);

  SectionCut cut() const { return cut_; }

  const core::geometry::TankGeometry& tank() const { return tank_; }
  double mm(double length_m) const { return length_m * mm_per_m_; }
  /// Paper place of level z above the finished floor.
  double level(double z_m) const { return mm(tank_.depth() - z_m); }
  double left(double offset_m) const { return mm(span(offset_m).first); }
  double right(double offset_m) const { return mm(span(offset_m).second); }

  /// The cut face of a solid.
  QPainterPath face(const core::geometry::Profile& profile) const;
  QPainterPath layer(const std::string& id) const { return face(tank_.layerProfile(id, kArcSteps)); }
  /// The edge of what is dug so far, from the ground on the left round to the ground on the right.
  QPainterPath pitEdge(double dug_m = std::numeric_limits<double>::infinity()) const;

private:
  static constexpr int kArcSteps = 12;
  const core::geometry::TankGeometry& tank_;
  core::geometry::Ring ring_;
  double mm_per_m_;
  SectionCut cut_;

  std::pair<double, double> span(double offset_m) const;
  QPointF leftPoint(const core::geometry::ProfilePoint& p) const { return {left(p.offset_m), level(p.z_m)}; }
  QPointF rightPoint(const core::geometry::ProfilePoint& p) const {
    return {right(p.offset_m), level(p.z_m)};
  }
};

}  // namespace ui::drawings
