#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/contours.h"
#include "ui/drawings/map_classes.h"
#include "ui/drawings/water_charts.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::water::ReliabilityMap;
using core::water::WaterPlan;

constexpr double kRounding = 1e-4;  // of years in ten in single precision
constexpr double kHalo_mm = 0.4;

bool isDrawable(const ReliabilityMap& map) {
  return !map.empty() && map.full_m3.size() > 1 && map.bed_area_m2.size() > 1;
}

struct Layout {
  Legend legend;
  AxisUnit volume, area = areaUnit();
  QRectF plot;
  Axis sizes, areas;
  std::vector<Tick> size_ticks, area_ticks;

  Layout(const QRectF& box, const ReliabilityMap& map, const Formatter& format, const Style& style)
      : legend(mapLegend(format, style.dark)) {
    if (!isDrawable(map)) return;
    const Type type(style, format);
    const double small = map.full_m3.front(), large = map.full_m3.back();
    const double least = map.bed_area_m2.front(), most = map.bed_area_m2.back();
    volume = volumeUnit(large);
    area_ticks = ticksUp(least, most, plotHeight(box, legend, true, type), area, format, type);
    const double left = leftMargin(area_ticks, type.lettering);
    size_ticks = ticksAlong(small, large, box.width() - 1.5 * left, volume, format, type.lettering);
    plot = plotRoom(box, legend, {left, widest(size_ticks, type.lettering) / 2 + 0.5, true}, type);
    sizes = Axis(small, large, plot.left(), plot.right());
    areas = Axis(least, most, plot.bottom(), plot.top());
  }
};

ValueGrid gridOf(const Layout& layout, const ReliabilityMap& map) {
  ValueGrid grid{{}, {}, map.years_in_ten};
  for (const double size : map.full_m3) grid.x_mm.push_back(layout.sizes.at(size));
  for (const double area : map.bed_area_m2) grid.y_mm.push_back(layout.areas.at(area));
  return grid;
}

/// Places along the lines where a number may stand, the middle first.
std::vector<QPointF> placesAlong(const QPainterPath& lines) {
  std::vector<QPointF> places;
  for (const double t : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9})
    places.push_back(lines.pointAtPercent(t));
  return places;
}

void addContour(Chart& chart, const Layout& layout, const QPainterPath& lines, const Stroke& stroke,
                const QString& text) {
  if (lines.isEmpty()) return;
  if (stroke.width_mm > kContourLine.width_mm) chart.halo(lines, stroke.width_mm + 2 * kHalo_mm);
  chart.line(lines, stroke, chart.colours().ink);
  chart.label(text, placesAlong(lines), layout.plot);
}

void addClasses(Chart& chart, const Layout& layout, const std::vector<Contours>& contours, bool dark) {
  const std::vector<QColor> colours = ramp(kClasses, dark);
  chart.fill(rectangle(layout.plot), colours[0]);
  for (std::size_t k = 0; k < contours.size(); ++k) {
    chart.fill(contours[k].region, colours[k + 1]);
    QPainterPath only = contours[k].region;  // nested, so that even-odd leaves the class alone
    if (k + 1 < contours.size()) only.addPath(contours[k + 1].region);
    addTone(chart, only, static_cast<int>(k) + 1);
  }
}

void addPresent(Chart& chart, const Layout& layout, const WaterPlan& plan) {
  if (!layout.sizes.holds(plan.curve.full_m3) || !layout.areas.holds(plan.bed_area_m2)) return;
  const QPointF at(layout.sizes.at(plan.curve.full_m3), layout.areas.at(plan.bed_area_m2));
  addPresentSign(chart, at, layout.plot);
}

void addContours(Chart& chart, const Layout& layout, const ReliabilityMap& map,
                 const std::vector<Contours>& contours, double target, const Formatter& format) {
  const Contours at_target = contoursAt(gridOf(layout, map), target - kRounding);
  addContour(chart, layout, at_target.lines, kTargetLine,
             Text::tr("target %1").arg(words::yearsInTenText(target, format)));
  for (std::size_t k = 0; k < contours.size(); ++k) {
    if (std::abs(kLevels[k] - target) > kRounding)
      addContour(chart, layout, contours[k].lines, kContourLine, words::yearsInTenText(kLevels[k], format));
  }
}

/// From halfway to the neighbour before to halfway to the one after.
std::pair<double, double> reachOf(const std::vector<double>& values, int k) {
  const auto at = static_cast<std::size_t>(k);
  const double before = values[at == 0 ? 0 : at - 1], after = values[std::min(at + 1, values.size() - 1)];
  return {(before + values[at]) / 2, (values[at] + after) / 2};
}

void addMarked(Chart& chart, const Layout& layout, const ReliabilityMap& map, QPoint cell,
               const Formatter& format) {
  const QString text = mapReading(map, cell, format);
  if (text.isEmpty()) return;
  const auto [small, large] = reachOf(map.full_m3, cell.x());
  const auto [least, most] = reachOf(map.bed_area_m2, cell.y());
  const QRectF room(QPointF(layout.sizes.at(small), layout.areas.at(most)),
                    QPointF(layout.sizes.at(large), layout.areas.at(least)));
  chart.clear(room);
  QPainterPath guides =
      straight({room.center().x(), layout.plot.bottom()}, {room.center().x(), room.bottom()});
  guides.addPath(straight({layout.plot.left(), room.center().y()}, {room.left(), room.center().y()}));
  chart.halo(guides, kMarkLine.width_mm + 2 * kHalo_mm);
  chart.halo(rectangle(room), kSignLine.width_mm + 2 * kHalo_mm);
  chart.line(guides, kMarkLine, chart.colours().ink);
  chart.line(rectangle(room), kSignLine, chart.colours().ink);
  chart.reading(text, room, layout.plot);
}

QString missing(const ReliabilityMap& map, const MapView& view) {
  if (!map.empty()) return Text::tr("Enter the beds to see what size of tank waters how much of them.");
  if (view.refining == Refining::yes) return Text::tr("The map is being worked out.");
  return Text::tr("Enter the weather and the beds to see what size of tank waters how much of them.");
}

int nearest(const std::vector<double>& values, double value) {
  const auto away = [value](double v) { return std::abs(v - value); };
  return static_cast<int>(std::ranges::min_element(values, {}, away) - values.begin());
}

}  // namespace

void drawReliabilityMap(QPainter& painter, const QRectF& box_mm, const ReliabilityMap& map,
                        const WaterPlan& plan, const Formatter& format, const Style& style,
                        const MapView& view) {
  if (!isDrawable(map)) return drawSentence(painter, box_mm, missing(map, view), style);
  Chart chart(style, format);
  const Layout layout(box_mm, map, format, style);
  if (layout.plot.isEmpty()) return;
  std::vector<Contours> contours;
  for (const double level : kLevels) contours.push_back(contoursAt(gridOf(layout, map), level - kRounding));
  addLegend(chart, layout.legend, box_mm);
  addClasses(chart, layout, contours, style.dark);
  addPresent(chart, layout, plan);
  addContours(chart, layout, map, contours, view.target_years_in_ten, format);
  addUprightAxis(chart, layout.plot, layout.areas, layout.area_ticks,
                 axisTitle(Text::tr("Area of the beds"), layout.area, format));
  addLevelAxis(chart, layout.plot, layout.sizes, layout.size_ticks,
               axisTitle(Text::tr("Water when the tank is full"), layout.volume, format));
  if (view.refining == Refining::yes)
    addTitle(chart, Text::tr("being refined"), {box_mm.right(), layout.plot.top()}, Align::right);
  if (view.marked_cell) addMarked(chart, layout, map, *view.marked_cell, format);
  chart.paint(painter);
}

std::optional<QPoint> cellAt(const QRectF& box_mm, QPointF at, const ReliabilityMap& map,
                             const Formatter& format, const Style& style) {
  const Layout layout(box_mm, map, format, style);
  if (!layout.plot.contains(at)) return std::nullopt;
  return QPoint(nearest(map.full_m3, layout.sizes.value(at.x())),
                nearest(map.bed_area_m2, layout.areas.value(at.y())));
}

}  // namespace ui::drawings
