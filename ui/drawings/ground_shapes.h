#pragma once

#include "core/plan.h"
#include "ui/drawings/scaled_view.h"

#include <QColor>
#include <QPainterPath>
#include <optional>
#include <vector>

#include <Eigen/Core>
#include <Eigen/Geometry>

namespace ui::drawings {

/// Everything the plan of the ground shows, in the site's frame [m].
struct GroundShapes {
  std::vector<Eigen::Vector2d> pit, rim;  ///< pit edge at the rim; clear rim
  std::vector<Eigen::Vector2d> platform;  ///< empty: none
  Eigen::AlignedBox2d extent;

  explicit GroundShapes(const core::Plan& plan);
};

/// Outline of an open surface seen from above: what its triangles do not share. Even-odd.
QPainterPath outlineOf(const core::geometry::Mesh& mesh, const ScaledView& view);

/// A contour line as drawn, in pieces inside the view.
struct DrawnContour {
  double level_m;
  QPainterPath line;
};
struct DrawnContours {
  double step_m = 0;
  std::vector<DrawnContour> lines;
};
/// Contour lines of the natural ground in a view, at most about `most` levels; none where it is level or not
/// known.
DrawnContours contoursIn(const core::Plan& plan, const ScaledView& view, int most);

/// Colours of ground that was cut and filled; they differ in lightness.
struct GroundColours {
  QColor cut, fill;
};
GroundColours groundColours(bool dark);

}  // namespace ui::drawings
