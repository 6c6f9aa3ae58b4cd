#pragma once

#include "ui/view3d/pit_view.h"

#include <QFont>
#include <QPainter>
#include <vector>

#include <Eigen/Core>

namespace ui::view3d {

/// A dimension as it lies in the picture, in logical pixels from the top left.
struct PlacedDimension {
  const core::geometry::Dimension* dimension;
  QPointF from, to, from_foot, to_foot;
  QString text;
  QRectF label;  ///< empty when there is no room for the text
};

/// Where dimension lines and their labels lie. Lines seen end on and lines behind the eye are left out;
/// labels do not overlap.
/// @param clip_from_world view, then projection
std::vector<PlacedDimension> placeDimensions(const std::vector<core::geometry::Dimension>& dimensions,
                                             const DimensionText& text,
                                             const Eigen::Matrix4d& clip_from_world, const QSizeF& picture);

QFont labelFont();
void paintLabel(QPainter& painter, const QRectF& label, const QString& text, bool dark);
/// Lines, ticks and labels.
void paintDimensions(QPainter& painter, const std::vector<PlacedDimension>& placed, bool dark);

}  // namespace ui::view3d
