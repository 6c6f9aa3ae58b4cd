#pragma once

#include "core/geometry/built.h"
#include "core/geometry/tank_geometry.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/isometric_view.h"

#include <QPainterPath>
#include <optional>
#include <vector>

#include <Eigen/Geometry>

namespace ui::drawings {

/// The block of level ground that is drawn about a tank: room for pit, collar and pegs, the same for every
/// stage.
struct Block {
  Eigen::AlignedBox2d plan;
  double top_m, bottom_m;

  explicit Block(const core::geometry::TankGeometry& tank);

  /// Corners 0 to 3, anticlockwise from the left one in front.
  Eigen::Vector2d corner(int k) const;
};

/// A tank as far as it is built, as the isometric drawing needs it.
struct Picture {
  const core::geometry::TankGeometry& tank;
  core::geometry::Built built;
  IsometricView view;
  SeenRing ring;
  Block block;
  std::vector<core::geometry::ProfilePoint> points;  ///< of what is seen from above, never inward on the way
  /// Line of each point's ring: lighter, or none, where rings are so near that they would run together; none
  /// along the rounding of a cove.
  std::vector<std::optional<Line>> lines;

  Picture(const core::geometry::TankGeometry& of, const core::geometry::Built& so_far, double n);

  bool isDug() const { return points.size() > 1; }
  bool hasWater() const { return built.water_level_m > 0; }
  bool hasBed() const;
  int coats() const;  ///< that are on
  Strip strip(std::size_t k) const { return {points[k], points[k + 1]}; }
  bool isPlaster(const Strip& strip) const;
  /// Whether wet sacks hang over a strip: the steep face of the last coat.
  bool hasSacks(const Strip& strip) const;
  /// What of the floor is not hidden by the near sides.
  QPainterPath seenFloor() const;

private:
  void fill(double level_m);
  void choose();
  double apart_mm(std::size_t one, std::size_t other) const;
  double turnAt(std::size_t k) const;
  bool goesOnSmoothly(std::size_t k) const;
  std::optional<Line> lineByShape(std::size_t k) const;
};

}  // namespace ui::drawings
