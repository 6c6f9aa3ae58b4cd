#pragma once

#include "ui/drawings/chart.h"

#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <vector>

#include <Eigen/Core>
#include <Eigen/Geometry>

namespace ui::drawings {

/// A window of a drawing in which lengths are true to one scale both ways. Its plane is a plan (x east, y
/// north) or a section (x along it, y up) [m].
class ScaledView {
public:
  /// Shows `extent` in the middle of the room, on paper at the largest round scale that fits, on a screen as
  /// large as it goes. @param spare_mm kept free inside the room on every side, for names
  ScaledView(const QRectF& room_mm, const Eigen::AlignedBox2d& extent_m, double spare_mm, const Style& style);

  double n() const { return n_; }  ///< of the scale 1:n
  double mm(double length_m) const { return length_m * 1000 / n_; }
  QPointF at(const Eigen::Vector2d& p_m) const;
  QPointF at(const Eigen::Vector3d& p_m) const { return at(Eigen::Vector2d(p_m.head<2>())); }
  QPainterPath path(const std::vector<Eigen::Vector2d>& points_m) const;
  QPainterPath path(const std::vector<Eigen::Vector3d>& points_m) const;
  QPainterPath closed(const std::vector<Eigen::Vector2d>& points_m) const;

  const QRectF& room() const { return room_; }  ///< [mm]
  Eigen::AlignedBox2d shown() const;            ///< what of the plane lies in the room [m]

private:
  QRectF room_;
  Eigen::Vector2d middle_m_;
  double n_;
};

/// Part of the lines inside the room.
QPainterPath inside(const QPainterPath& lines, const QRectF& room);

/// Part of the lines outside a closed area, to about half a millimetre.
QPainterPath beside(const QPainterPath& lines, const QPainterPath& area);

/// The line in long strokes with a dot between two of them.
QPainterPath dashDotted(const QPainterPath& line);

/// Height of the row with the scale bar [mm].
double scaleRowHeight(const Type& type);
/// A scale bar with its top left at `at`; on paper with the ratio beside it.
void addScaleRow(Chart& chart, QPointF at, double n, const Formatter& format);

/// Places beside a sign for a name of a size, nearest first and first away from `from`.
std::vector<QPointF> placesBeside(QPointF sign, QPointF from, QSizeF name);
/// Places for a text in a line, first in its middle.
std::vector<QPointF> placesAlong(const QPainterPath& line);

}  // namespace ui::drawings
