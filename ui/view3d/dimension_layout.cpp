#include "ui/view3d/dimension_layout.h"

#include "ui/view3d/palette.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QLineF>
#include <algorithm>
#include <array>
#include <optional>

#include <Eigen/Geometry>

namespace ui::view3d {
namespace {

using core::geometry::Dimension;

constexpr double kShortestLine_px = 14;
constexpr int kText_px = 13;

std::optional<QPointF> inPicture(const Eigen::Matrix4d& clip_from_world, const Eigen::Vector3d& point,
                                 const QSizeF& picture) {
  const Eigen::Vector4d clip = clip_from_world * point.homogeneous();
  if (clip.w() < 1e-6) return std::nullopt;
  return QPointF((clip.x() / clip.w() + 1) / 2 * picture.width(),
                 (1 - clip.y() / clip.w()) / 2 * picture.height());
}

std::optional<PlacedDimension> linesOf(const Dimension& dimension, const Eigen::Matrix4d& clip_from_world,
                                       const QSizeF& picture) {
  const auto from = inPicture(clip_from_world, dimension.from, picture);
  const auto to = inPicture(clip_from_world, dimension.to, picture);
  const auto from_foot = inPicture(clip_from_world, dimension.from_foot, picture);
  const auto to_foot = inPicture(clip_from_world, dimension.to_foot, picture);
  if (!from || !to || !from_foot || !to_foot) return std::nullopt;
  if (QLineF(*from, *to).length() < kShortestLine_px) return std::nullopt;
  return PlacedDimension{&dimension, *from, *to, *from_foot, *to_foot, {}, {}};
}

QSizeF labelSize(const QString& text) {
  const QFontMetricsF metrics(labelFont());
  return {std::ceil(metrics.horizontalAdvance(text)) + 12, std::ceil(metrics.height()) + 2};
}

/// First place along the line where the label is whole and overlaps no other.
QRectF freePlace(const PlacedDimension& placed, const QSizeF& size, const QSizeF& picture,
                 const std::vector<PlacedDimension>& others) {
  const QLineF line(placed.from, placed.to);
  for (const double part : {0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86}) {
    QRectF label(QPointF(), size);
    label.moveCenter(line.pointAt(part));
    label.moveTopLeft(label.topLeft().toPoint());
    if (!QRectF(QPointF(), picture).contains(label)) continue;
    const auto overlaps = [&](const PlacedDimension& other) { return other.label.intersects(label); };
    if (std::none_of(others.begin(), others.end(), overlaps)) return label;
  }
  return {};
}

void paintLines(QPainter& painter, const PlacedDimension& placed) {
  const QLineF line(placed.from, placed.to);
  painter.drawLine(line);
  painter.drawLine(placed.from_foot, placed.from);
  painter.drawLine(placed.to_foot, placed.to);
  const QPointF along = (line.p2() - line.p1()) / line.length();
  const QPointF slant = QPointF(along.x() + along.y(), along.y() - along.x()) * kTick_px / std::sqrt(2.0);
  for (const QPointF& end : {line.p1(), line.p2()}) painter.drawLine(end - slant, end + slant);
}

}  // namespace

QFont labelFont() {
  QFont font = QGuiApplication::font();
  font.setPixelSize(kText_px);
  font.setWeight(QFont::Medium);
  return font;
}

std::vector<PlacedDimension> placeDimensions(const std::vector<Dimension>& dimensions,
                                             const DimensionText& text,
                                             const Eigen::Matrix4d& clip_from_world, const QSizeF& picture) {
  std::vector<PlacedDimension> all;
  for (const Dimension& dimension : dimensions) {
    auto placed = linesOf(dimension, clip_from_world, picture);
    if (!placed) continue;
    if (text) placed->text = text(dimension);
    if (!placed->text.isEmpty()) placed->label = freePlace(*placed, labelSize(placed->text), picture, all);
    all.push_back(std::move(*placed));
  }
  return all;
}

void paintLabel(QPainter& painter, const QRectF& label, const QString& text, bool dark) {
  const Surroundings colours = surroundings(dark);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colours.label);
  painter.drawRoundedRect(label, 4, 4);
  painter.setPen(colours.line);
  painter.setFont(labelFont());
  painter.drawText(label, Qt::AlignCenter, text);
}

void paintDimensions(QPainter& painter, const std::vector<PlacedDimension>& placed, bool dark) {
  const Surroundings colours = surroundings(dark);
  painter.setRenderHint(QPainter::Antialiasing);
  for (const QPen& pen : {QPen(colours.halo, kHaloWidth_px, Qt::SolidLine, Qt::FlatCap),
                          QPen(colours.line, kDimensionWidth_px, Qt::SolidLine, Qt::FlatCap)}) {
    painter.setPen(pen);
    for (const PlacedDimension& one : placed) paintLines(painter, one);
  }
  for (const PlacedDimension& one : placed)
    if (!one.label.isEmpty()) paintLabel(painter, one.label, one.text, dark);
}

}  // namespace ui::view3d
