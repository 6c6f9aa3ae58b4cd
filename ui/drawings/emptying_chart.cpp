#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/delivery_charts.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::hydraulics::FieldPlan;
using core::hydraulics::LevelTime;

constexpr Stroke kCurve{0.9};
constexpr Stroke kLowest{0.5, 0.7, 0.9};
constexpr double kOver = 1.08;  // room over the highest level, share of it

const AxisUnit kMetres{core::Unit::metre, 1};

/// Days from two days up, hours from two hours up, else minutes: numbers that stay small.
struct TimeUnit {
  AxisUnit axis;
  double seconds;
  QString title;
};

TimeUnit timeUnit(double most_s, const Formatter& format) {
  constexpr double kMinute = 60, kHour = 3600, kDay = 86400;
  if (most_s >= 2 * kDay) {
    const AxisUnit days{core::Unit::day, 1 / kDay};
    return {days, kDay, axisTitle(Text::tr("Time since it was full"), days, format)};
  }
  if (most_s >= 2 * kHour) {
    const AxisUnit hours{core::Unit::hour, 1 / kHour};
    return {hours, kHour, axisTitle(Text::tr("Time since it was full"), hours, format)};
  }
  return {{core::Unit::none, 1 / kMinute}, kMinute, Text::tr("Minutes since it was full")};
}

QString timeText(double seconds, const Formatter& format) {
  const TimeUnit unit = timeUnit(seconds, format);
  const double count = seconds / unit.seconds;
  if (unit.axis.unit == core::Unit::none)
    return Text::tr("%1 min", "minutes").arg(format.number(count, core::Unit::none, 0));
  return format.quantity(count, unit.axis.unit, 1);
}

bool hasCurve(const FieldPlan& field) {
  return field.emptying && field.emptying->curve.size() >= 2 && field.emptying->seconds > 0;
}

/// Where everything of the chart stands.
struct Layout {
  TimeUnit time;
  QRectF plot;
  Axis seconds, level;
  std::vector<Tick> time_ticks, level_ticks;

  Layout(const QRectF& box, const FieldPlan& field, const Formatter& format, const Type& type) {
    if (!hasCurve(field)) return;
    const double high = plotHeight(box, {}, true, type);
    if (high <= 2 * type.line()) return;
    const auto& curve = field.emptying->curve;
    const double to = kOver * std::max(0.01, std::ranges::max(curve, {}, &LevelTime::level_m).level_m);
    const double last = field.emptying->seconds;
    time = timeUnit(last, format);
    level_ticks = ticksUp(0, to, high, kMetres, format, type);
    const double left = leftMargin(level_ticks, type.lettering);
    time_ticks = ticksAlong(0, last, box.width() - 1.5 * left, time.axis, format, type.lettering);
    plot = plotRoom(box, {}, {left, widest(time_ticks, type.lettering) / 2 + 0.5, true}, type);
    seconds = Axis(0, last, plot.left(), plot.right());
    level = Axis(0, to, plot.bottom(), plot.top());
  }

  QPointF at(const LevelTime& p) const { return {seconds.at(p.seconds), level.at(p.level_m)}; }
};

void addCurve(Chart& chart, const Layout& layout, const FieldPlan& field) {
  const auto& curve = field.emptying->curve;
  QPainterPath line(layout.at(curve.front()));
  for (const LevelTime& p : curve) line.lineTo(layout.at(p));
  QPainterPath water = line;
  water.lineTo(layout.plot.bottomRight());
  water.lineTo(layout.plot.bottomLeft());
  water.closeSubpath();
  chart.fill(water, chart.colours().band);
  chart.dataLine(line, kCurve, chart.colours().middle);
}

void addLowest(Chart& chart, const Layout& layout, const FieldPlan& field, const Formatter& format) {
  const double y = layout.level.at(field.empty_to_level_m);
  chart.dataLine(straight({layout.plot.left(), y}, {layout.plot.right(), y}), kLowest, chart.colours().ink);
  const QString name = Text::tr("the line draws no lower than %1 over the floor")
                           .arg(format.quantity(field.empty_to_level_m, core::Unit::metre, 2));
  const double half = width_mm(name, chart.lettering()) / 2 + kGap_mm, up = chart.type().line() / 2 + 0.4;
  const double left = layout.plot.left() + half;
  chart.label(name, {{left, y - up}, {left, y + up}, {left, y - 2 * up}}, layout.plot);
}

void addTime(Chart& chart, const Layout& layout, const FieldPlan& field, const Formatter& format) {
  const QString text = Text::tr("drawn down after %1").arg(timeText(field.emptying->seconds, format));
  const double half = width_mm(text, chart.lettering()) / 2 + kGap_mm, step = chart.type().line();
  const double right = layout.plot.right() - half;
  std::vector<QPointF> places;
  for (const double row : {0.7, 1.7, 2.7, 3.7}) places.emplace_back(right, layout.plot.top() + row * step);
  chart.label(text, places, layout.plot);
}

void addMarked(Chart& chart, const Layout& layout, const FieldPlan& field, int point,
               const Formatter& format) {
  if (point < 0 || point >= static_cast<int>(field.emptying->curve.size())) return;
  const QPointF at = layout.at(field.emptying->curve[static_cast<std::size_t>(point)]);
  chart.line({at.x(), layout.plot.top()}, {at.x(), layout.plot.bottom()}, kMarkLine, chart.colours().marked);
  chart.reading(emptyingReading(field, point, format), QRectF(at, at), layout.plot);
}

QString whyNone(const FieldPlan& field) {
  if (field.emptying) return Text::tr("The tank is not emptied through this line.");
  return Text::tr("How the tank empties is not known: %1.")
      .arg(words::hydraulicsFault(field.emptying.error()));
}

}  // namespace

void drawEmptying(QPainter& painter, const QRectF& box_mm, const FieldPlan& field, const Formatter& format,
                  const Style& style, std::optional<int> marked_point) {
  if (!hasCurve(field)) return drawSentence(painter, box_mm, whyNone(field), style);
  Chart chart(style, format);
  const Layout layout(box_mm, field, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addGround(chart, layout.plot);
  addCurve(chart, layout, field);
  addGrid(chart, layout.plot, layout.level, layout.level_ticks);
  addLowest(chart, layout, field, format);
  addTime(chart, layout, field, format);
  addUprightAxis(chart, layout.plot, layout.level, layout.level_ticks,
                 axisTitle(Text::tr("Water over the floor"), kMetres, format));
  addLevelAxis(chart, layout.plot, layout.seconds, layout.time_ticks, layout.time.title);
  if (marked_point) addMarked(chart, layout, field, *marked_point, format);
  chart.paint(painter);
}

std::optional<int> emptyingPointAt(const QRectF& box_mm, QPointF at, const FieldPlan& field,
                                   const Formatter& format, const Style& style) {
  const Layout layout(box_mm, field, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  const double seconds = layout.seconds.value(at.x());
  const auto away = [&](const LevelTime& p) { return std::abs(p.seconds - seconds); };
  const auto& curve = field.emptying->curve;
  return static_cast<int>(std::ranges::min_element(curve, {}, away) - curve.begin());
}

QString emptyingReading(const FieldPlan& field, int point, const Formatter& format) {
  if (!field.emptying || point < 0 || point >= static_cast<int>(field.emptying->curve.size())) return {};
  const LevelTime& p = field.emptying->curve[static_cast<std::size_t>(point)];
  return Text::tr("After %1 the water stands %2 over the floor")
      .arg(timeText(p.seconds, format), format.quantity(p.level_m, core::Unit::metre, 2));
}

}  // namespace ui::drawings
