#include "ui/drawings/chart_axes.h"

#include <algorithm>

namespace ui::drawings {
namespace {

constexpr double kSign_mm = 7;
constexpr double kSignGap_mm = 1.2;
constexpr double kBetween_mm = 4;
constexpr double kCross_mm = 2.2;  // half its size
constexpr double kPatch_mm = 2.8;

/// Where an entry stands, from the top left of the legend.
struct Place {
  double x, y;
  bool fits;
};

double signWidth(const LegendEntry& entry) {
  return entry.draw ? kSign_mm + kSignGap_mm : 0;
}

std::vector<Place> places(const Legend& legend, double width, const Type& type) {
  std::vector<Place> all;
  const double row = type.line();
  double x = 0, y = 0;
  for (const LegendEntry& entry : legend) {
    const double wide = signWidth(entry) + width_mm(entry.text, type.lettering);
    if (x > 0 && (!entry.draw || x + wide > width)) {
      x = 0;
      y += row;
    }
    all.push_back({x, y, wide <= width});
    x += wide + kBetween_mm;
  }
  return all;
}

}  // namespace

double legendHeight(const Legend& legend, double width_mm, const Type& type) {
  return legend.empty() ? 0 : places(legend, width_mm, type).back().y + type.line();
}

void addLegend(Chart& chart, const Legend& legend, const QRectF& box_mm) {
  const Lettering& lettering = chart.lettering();
  const std::vector<Place> all = places(legend, box_mm.width(), chart.type());
  for (std::size_t k = 0; k < legend.size(); ++k) {
    if (!all[k].fits) continue;
    const QPointF at = box_mm.topLeft() + QPointF(all[k].x, all[k].y);
    const double baseline = at.y() + chart.type().ascent;
    const double high = lettering.cap_mm * 1.15;
    if (legend[k].draw)
      legend[k].draw(chart, {at.x(), baseline - lettering.cap_mm / 2 - high / 2, kSign_mm, high});
    chart.text(legend[k].text, {at.x() + signWidth(legend[k]), baseline});
  }
}

QPainterPath presentCross(QPointF at, const QRectF& within) {
  const QRectF reach =
      QRectF(at.x() - kCross_mm, at.y() - kCross_mm, 2 * kCross_mm, 2 * kCross_mm).intersected(within);
  QPainterPath path = straight({reach.left(), at.y()}, {reach.right(), at.y()});
  path.addPath(straight({at.x(), reach.top()}, {at.x(), reach.bottom()}));
  return path;
}

void addPresentSign(Chart& chart, QPointF at, const QRectF& plot) {
  const QRectF patch(at.x() - kPatch_mm, at.y() - kPatch_mm, 2 * kPatch_mm, 2 * kPatch_mm);
  chart.sign(presentCross(at, plot), kSignLine, patch.intersected(plot));
}

}  // namespace ui::drawings
