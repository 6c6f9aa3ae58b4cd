#pragma once

#include "core/geometry/tank_geometry.h"

#include <QPainterPath>
#include <QPointF>
#include <QPolygonF>
#include <vector>

#include <Eigen/Core>

namespace ui::drawings {

/// Isometric projection at scale 1:n along the three directions: x to the right and down, y to the right and
/// up, z upright. The viewer stands in front (-y), at the right (+x) and above.
class IsometricView {
public:
  explicit IsometricView(double n) : mm_per_m_(1000 / n) {}

  double mm(double length_m) const { return length_m * mm_per_m_; }
  QPointF at(const Eigen::Vector2d& p_m, double z_m) const;

private:
  double mm_per_m_;
};

/// One step of a profile all round: from a ring to the next one outward.
struct Strip {
  core::geometry::ProfilePoint inner, outer;

  bool isLevel() const;
  bool goesDown() const { return outer.z_m < inner.z_m; }
};

/// Neighbouring sides of a ring that lie on one side of the tank; each two points are a side.
using Chain = std::vector<Eigen::Index>;

/// The outline of a tank as it is seen: its sides beyond the middle and before it.
class SeenRing {
public:
  explicit SeenRing(const core::geometry::Outline& outline);

  const Chain& farSides() const { return far_; }    ///< their walls inside the pit are seen
  const Chain& nearSides() const { return near_; }  ///< these hide what lies behind
  bool hasCorners() const { return has_corners_; }  ///< else no edge runs up the wall
  /// Parts of a chain whose faces in a strip are turned to the viewer.
  std::vector<Chain> seen(const Chain& chain, const Strip& strip) const;

  QPolygonF line(const IsometricView& view, const Chain& chain, core::geometry::ProfilePoint p) const;
  QPolygonF outline(const IsometricView& view, core::geometry::ProfilePoint p) const;
  QPainterPath face(const IsometricView& view, const Chain& chain, const Strip& strip) const;
  QPointF at(const IsometricView& view, Eigen::Index k, core::geometry::ProfilePoint p) const;

private:
  core::geometry::Ring ring_;
  bool has_corners_;
  Chain far_, near_;

  Eigen::Vector2d outward(Eigen::Index side) const;
};

/// What two convex polygons have in common; empty when nothing.
QPolygonF convexCut(const QPolygonF& one, const QPolygonF& other);

}  // namespace ui::drawings
