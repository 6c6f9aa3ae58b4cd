#pragma once

#include "core/geometry/tank_geometry.h"

#include <QPainterPath>
#include <QPointF>
#include <QPolygonF>
#include <optional>
#include <utility>

#include <Eigen/Core>

namespace ui::drawings {

/// Where points of the site fall on paper at scale 1:n, seen from above, y of the site upward.
class Paper {
public:
  Paper(Eigen::Vector2d middle_m, double n) : middle_m_(std::move(middle_m)), mm_per_m_(1000 / n) {}

  double mm(double length_m) const { return length_m * mm_per_m_; }
  QPointF at(const Eigen::Vector2d& p_m) const {
    return {mm(p_m.x() - middle_m_.x()), -mm(p_m.y() - middle_m_.y())};
  }
  /// Outline at an offset as a closed polygon, first point repeated at the end.
  QPolygonF polygon(const core::geometry::Outline& outline, double offset_m) const;
  QPainterPath outline(const core::geometry::Outline& outline, double offset_m) const;

private:
  Eigen::Vector2d middle_m_;
  double mm_per_m_;
};

/// Facets to a full turn that look round on paper.
inline constexpr int kFacets = 144;

/// A closed path through points.
QPainterPath polygonPath(const QPolygonF& polygon);

/// Offset of the outer edge of the rim collar [m]; nothing when there is none.
std::optional<double> collarReach(const core::geometry::TankGeometry& tank);

/// True when the tank has the layer.
bool hasLayer(const core::geometry::TankGeometry& tank, const std::string& id);

}  // namespace ui::drawings
