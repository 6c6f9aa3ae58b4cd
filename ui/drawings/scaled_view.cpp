#include "ui/drawings/scaled_view.h"

#include "ui/drawings/chart_axes.h"
#include "ui/drawings/line_cuts.h"

#include <QCoreApplication>
#include <QLineF>
#include <QPolygonF>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

// ISO 5455; 25, 75 and 250 common practice, no source
constexpr std::array kRoundScales{2.,   5.,   10.,  20.,  25.,   50.,   75.,
                                  100., 200., 250., 500., 1000., 2000., 5000.};
constexpr double kLeastExtent_m = 0.1;
constexpr double kField_mm = 9;  // least length of a field of the scale bar
constexpr double kBar_mm = 2;
constexpr double kInset_mm = 0.1;  // so that rounding puts nothing outside
constexpr double kFoot_m = 0.3048;
constexpr double kLeastInFeet = 40;  // larger scales have their bar in inches
constexpr double kCutStep_mm = 0.4;  // how finely a line is cut at an area
constexpr double kDash_mm = 4, kGapToDot_mm = 0.9, kDot_mm = 0.5;

double roundScale(double least) {
  const auto found = std::ranges::find_if(kRoundScales, [&](double n) { return n >= least; });
  return found == kRoundScales.end() ? plainStep(least) : *found;
}

template <typename Points>
QPainterPath pathOf(const ScaledView& view, const Points& points) {
  QPainterPath path;
  for (const auto& p : points) {
    if (path.elementCount() == 0) path.moveTo(view.at(p));
    path.lineTo(view.at(p));
  }
  return path;
}

double lengthOf(const QPolygonF& line) {
  double length = 0;
  for (qsizetype k = 1; k < line.size(); ++k) length += QLineF(line[k - 1], line[k]).length();
  return length;
}

QPointF pointAt(const QPolygonF& line, double along) {
  for (qsizetype k = 1; k < line.size(); ++k) {
    const QLineF step(line[k - 1], line[k]);
    if (along <= step.length() && step.length() > 0) return step.pointAt(along / step.length());
    along -= step.length();
  }
  return line.back();
}

/// Part of a line between two lengths along it.
void addPart(QPainterPath& path, const QPolygonF& line, double from, double to) {
  path.moveTo(pointAt(line, from));
  double done = 0;
  for (qsizetype k = 1; k < line.size(); ++k) {
    done += QLineF(line[k - 1], line[k]).length();
    if (from < done && done < to) path.lineTo(line[k]);
  }
  path.lineTo(pointAt(line, to));
}

}  // namespace

ScaledView::ScaledView(const QRectF& room_mm, const Eigen::AlignedBox2d& extent_m, double spare_mm,
                       const Style& style)
    : room_(room_mm), middle_m_(extent_m.center()) {
  const QRectF inner = room_mm.adjusted(spare_mm, spare_mm, -spare_mm, -spare_mm);
  const Eigen::Vector2d size = extent_m.sizes().cwiseMax(kLeastExtent_m);
  const double least = 1000 * std::max(size.x() / inner.width(), size.y() / inner.height());
  n_ = style.fixed_scale ? roundScale(least) : least;
}

QPointF ScaledView::at(const Eigen::Vector2d& p_m) const {
  return room_.center() + QPointF(mm(p_m.x() - middle_m_.x()), -mm(p_m.y() - middle_m_.y()));
}

QPainterPath ScaledView::path(const std::vector<Eigen::Vector2d>& points_m) const {
  return pathOf(*this, points_m);
}

QPainterPath ScaledView::path(const std::vector<Eigen::Vector3d>& points_m) const {
  return pathOf(*this, points_m);
}

QPainterPath ScaledView::closed(const std::vector<Eigen::Vector2d>& points_m) const {
  QPainterPath path = pathOf(*this, points_m);
  path.closeSubpath();
  return path;
}

Eigen::AlignedBox2d ScaledView::shown() const {
  const Eigen::Vector2d half = Eigen::Vector2d(room_.width(), room_.height()) / 2 * n_ / 1000;
  return {Eigen::Vector2d(middle_m_ - half), Eigen::Vector2d(middle_m_ + half)};
}

QPainterPath inside(const QPainterPath& lines, const QRectF& room) {
  const QRectF all = lines.boundingRect().united(room).adjusted(-1, -1, 1, 1);
  return outside(lines, {QRectF(all.topLeft(), QPointF(room.left(), all.bottom())),
                         QRectF(QPointF(room.right(), all.top()), all.bottomRight()),
                         QRectF(all.topLeft(), QPointF(all.right(), room.top())),
                         QRectF(QPointF(all.left(), room.bottom()), all.bottomRight())});
}

QPainterPath beside(const QPainterPath& lines, const QPainterPath& area) {
  if (!lines.boundingRect().intersects(area.boundingRect())) return lines;
  QPainterPath out;
  for (const QPolygonF& polygon : lines.toSubpathPolygons()) {
    bool drawing = false;
    for (qsizetype k = 1; k < polygon.size(); ++k) {
      const QLineF step(polygon[k - 1], polygon[k]);
      const int cuts = std::max(1, static_cast<int>(std::ceil(step.length() / kCutStep_mm)));
      for (int i = 0; i < cuts; ++i) {
        const QPointF from = step.pointAt(static_cast<double>(i) / cuts);
        const QPointF to = step.pointAt((i + 1.) / cuts);
        const bool in = area.contains((from + to) / 2);
        if (!in && !drawing) out.moveTo(from);
        if (!in) out.lineTo(to);
        drawing = !in;
      }
    }
  }
  return out;
}

QPainterPath dashDotted(const QPainterPath& line) {
  QPainterPath out;
  for (const QPolygonF& polygon : line.toSubpathPolygons()) {
    const double length = lengthOf(polygon);
    for (double from = 0; from < length;) {
      addPart(out, polygon, from, std::min(length, from + kDash_mm));
      from += kDash_mm + kGapToDot_mm;
      if (from + kDot_mm < length) addPart(out, polygon, from, from + kDot_mm);
      from += kDot_mm + kGapToDot_mm;
    }
  }
  return out;
}

double scaleRowHeight(const Type& type) {
  return kBar_mm + kGap_mm + type.line();
}

void addScaleRow(Chart& chart, QPointF at, double n, const Formatter& format) {
  const double unit_m = format.system() == UnitSystem::metric ? 1 : n < kLeastInFeet ? kFoot_m / 12 : kFoot_m;
  const double step_m = plainStep(kField_mm * n / 1000 / unit_m) * unit_m, step = step_m * 1000 / n;
  const double below = at.y() + kBar_mm + 0.8 + chart.type().ascent;
  const QString end = format.quantity(4 * step_m, core::Unit::metre, 4 * step_m < 1 ? 2 : 0);
  const double zero = width_mm(format.integer(0), chart.lettering()) / 2 + kInset_mm;
  for (int k = 0; k < 4; ++k) {
    const QPainterPath field = rectangle(QRectF(at.x() + zero + k * step, at.y(), step, kBar_mm));
    chart.line(field, kAxisLine, chart.colours().ink);
    if (k % 2 == 0) chart.solid(field, chart.colours().ink);
  }
  chart.text(format.integer(0), {at.x() + zero, below}, Align::centre);
  chart.text(end, {at.x() + zero + 4 * step, below}, Align::centre);
  if (!chart.onPaper()) return;
  const QString ratio = Text::tr("Scale 1 : %1").arg(format.integer(static_cast<int>(std::lround(n))));
  chart.text(ratio, {at.x() + zero + 4 * step + width_mm(end, chart.lettering()) / 2 + 6, below});
}

std::vector<QPointF> placesBeside(QPointF sign, QPointF from, QSizeF name) {
  const double away = std::atan2(sign.y() - from.y(), sign.x() - from.x());
  std::vector<QPointF> places;
  for (const double reach : {1.2, 2., 3., 4.5, 6., 8.}) {
    for (const double turn : {0., 0.5, -0.5, 1., -1., 1.6, -1.6, 2.3, -2.3, std::numbers::pi}) {
      const double c = std::cos(away + turn), s = std::sin(away + turn);
      places.push_back(sign + QPointF(c * (name.width() / 2 + reach), s * (name.height() / 2 + reach)));
    }
  }
  return places;
}

std::vector<QPointF> placesAlong(const QPainterPath& line) {
  std::vector<QPointF> places;
  for (const QPolygonF& polygon : line.toSubpathPolygons()) {
    for (const double share : {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.08, 0.92, 0.22, 0.78})
      places.push_back(pointAt(polygon, share * lengthOf(polygon)));
  }
  return places;
}

}  // namespace ui::drawings
