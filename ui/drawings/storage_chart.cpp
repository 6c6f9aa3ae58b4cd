#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/map_classes.h"
#include "ui/drawings/water_charts.h"
#include "ui/text/water_sizes.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::water::StoragePoint;
using core::water::WaterPlan;

constexpr double kMostYears = 10;
constexpr Stroke kCurve{0.9};
constexpr Stroke kTarget{0.5, 3, 1.2};
constexpr Stroke kPresent{0.5, 0.7, 0.9};

struct Layout {
  AxisUnit volume;
  QRectF plot;
  Axis sizes, years;
  std::vector<Tick> size_ticks, year_ticks;

  Layout(const QRectF& box, const WaterPlan& plan, const Formatter& format, const Type& type) {
    if (plan.storage.size() < 2) return;
    const double high = plotHeight(box, {}, true, type), line = type.line() + kGap_mm;
    if (high <= 2 * line) return;
    const double top = kMostYears * high / (high - line);  // room for the name of a target of ten
    const double most = std::max(plan.storage.back().full_m3, plan.curve.full_m3);
    volume = volumeUnit(most);
    year_ticks = ticksUp(0, kMostYears, high - line, yearsUnit(), format, type);
    const double left = leftMargin(year_ticks, type.lettering);
    size_ticks = ticksAlong(0, most, box.width() - 1.5 * left, volume, format, type.lettering);
    plot = plotRoom(box, {}, {left, widest(size_ticks, type.lettering) / 2 + 0.5, true}, type);
    sizes = Axis(0, most, plot.left(), plot.right());
    years = Axis(0, top, plot.bottom(), plot.top());
  }

  QPointF at(double full_m3, double years_in_ten) const {
    return {sizes.at(full_m3), years.at(years_in_ten)};
  }
};

QPainterPath curveOf(const Layout& layout, const WaterPlan& plan) {
  const StoragePoint& first = plan.storage.front();
  QPainterPath path(layout.at(first.full_m3, first.years_in_ten));
  for (const StoragePoint& point : plan.storage) path.lineTo(layout.at(point.full_m3, point.years_in_ten));
  return path;
}

void addTarget(Chart& chart, const Layout& layout, double target) {
  const double y = layout.years.at(target);
  chart.dataLine(straight({layout.plot.left(), y}, {layout.plot.right(), y}), kTarget, chart.colours().ink);
}

void addTargetName(Chart& chart, const Layout& layout, double target, const Formatter& format) {
  const double y = layout.years.at(target);
  const QString name = Text::tr("target %1").arg(words::yearsInTenText(target, format));
  const double half = width_mm(name, chart.lettering()) / 2 + kGap_mm, up = chart.type().line() / 2 + 0.3;
  const double left = layout.plot.left() + half, right = layout.plot.right() - half;
  chart.label(name, {{left, y - up}, {left, y + up}, {right, y + up}, {right, y - up}}, layout.plot);
}

void addPresent(Chart& chart, const Layout& layout, const WaterPlan& plan, const Formatter& format) {
  const QPointF at = layout.at(plan.curve.full_m3, plan.years_in_ten);
  chart.dataLine(straight({at.x(), layout.plot.bottom()}, at), kPresent, chart.colours().ink);
  addPresentSign(chart, at, layout.plot);
  const QString name = Text::tr("this tank: %1").arg(format.litres(plan.curve.full_m3));
  const double aside = width_mm(name, chart.lettering()) / 2 + kGap_mm;
  std::vector<QPointF> places;
  for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9}) {
    const double y = layout.plot.bottom() + share * (at.y() - layout.plot.bottom());
    places.emplace_back(at.x() + aside, y);
    places.emplace_back(at.x() - aside, y);
  }
  chart.label(name, places, layout.plot);
}

/// A ring where the curve meets the target, with the size of the tank; none where almost any tank is enough.
void addSmallest(Chart& chart, const Layout& layout, const WaterPlan& plan, double target,
                 const Formatter& format) {
  const words::MetSize smallest = words::smallestTank(plan, format);
  if (smallest.kind != words::MetSize::Kind::size || !layout.sizes.holds(*plan.smallest_full_m3)) return;
  const QPointF at = layout.at(*plan.smallest_full_m3, target);
  QPainterPath ring;
  ring.addEllipse(at, 1.2, 1.2);
  chart.sign(ring, kSignLine, QRectF(at.x() - 1.5, at.y() - 1.5, 3, 3));
  const QString name = Text::tr("enough: %1").arg(smallest.text);
  const double aside = width_mm(name, chart.lettering()) / 2 + 2.5, up = chart.type().line() / 2 + 1.2;
  chart.label(name,
              {at + QPointF(aside, up), at + QPointF(-aside, -up), at + QPointF(aside, -up),
               at + QPointF(-aside, up), at + QPointF(aside, 2 * up)},
              layout.plot);
}

void addMarked(Chart& chart, const Layout& layout, const WaterPlan& plan, int point,
               const Formatter& format) {
  if (point < 0 || point >= static_cast<int>(plan.storage.size())) return;
  const StoragePoint& marked = plan.storage[static_cast<std::size_t>(point)];
  const QPointF at = layout.at(marked.full_m3, marked.years_in_ten);
  chart.line({at.x(), layout.plot.top()}, {at.x(), layout.plot.bottom()}, kMarkLine, chart.colours().marked);
  chart.reading(storageReading(plan, point, format), QRectF(at, at), layout.plot);
}

}  // namespace

void drawStorageChart(QPainter& painter, const QRectF& box_mm, const WaterPlan& plan, const Formatter& format,
                      const Style& style, double target_years_in_ten, std::optional<int> marked_point) {
  if (plan.storage.size() < 2)
    return drawSentence(painter, box_mm,
                        Text::tr("Enter the weather and what needs water to see how large a tank is enough."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, plan, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.years, layout.year_ticks);
  chart.dataLine(curveOf(layout, plan), kCurve, chart.colours().middle);
  addUprightAxis(chart, layout.plot, layout.years, layout.year_ticks,
                 Text::tr("Years in ten in which the water lasts"));
  addLevelAxis(chart, layout.plot, layout.sizes, layout.size_ticks,
               axisTitle(Text::tr("Water when the tank is full"), layout.volume, format));
  addTarget(chart, layout, target_years_in_ten);
  addPresent(chart, layout, plan, format);
  addSmallest(chart, layout, plan, target_years_in_ten, format);
  addTargetName(chart, layout, target_years_in_ten, format);  // beside all signs
  if (marked_point) addMarked(chart, layout, plan, *marked_point, format);
  chart.paint(painter);
}

std::optional<int> storagePointAt(const QRectF& box_mm, QPointF at, const WaterPlan& plan,
                                  const Formatter& format, const Style& style) {
  const Layout layout(box_mm, plan, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  const double full_m3 = layout.sizes.value(at.x());
  const auto away = [full_m3](const StoragePoint& point) { return std::abs(point.full_m3 - full_m3); };
  return static_cast<int>(std::ranges::min_element(plan.storage, {}, away) - plan.storage.begin());
}

}  // namespace ui::drawings
