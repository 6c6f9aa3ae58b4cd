#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/delivery_charts.h"
#include "ui/drawings/ground_shapes.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/wrap_lines.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::hydraulics::OverflowPipe;
using core::hydraulics::OverflowPlan;

constexpr Stroke kCutEdge{0.7};
constexpr Stroke kRim{0.5};
constexpr Stroke kThin{0.35};
constexpr Stroke kStorm{0.5};
constexpr Stroke kBlocked{0.5, 2.5, 1.2};
constexpr Stroke kLip{0.5, 0.7, 0.9};
constexpr double kLeader_mm = 6;

const AxisUnit kMetres{core::Unit::metre, 1};

/// Levels from the rim, above it positive; absent where they are not known [m].
struct Levels {
  double sill, lowest_rim, bottom, top;
  std::optional<double> storm, blocked, lip;
  const OverflowPipe* pipe;

  explicit Levels(const OverflowPlan& plan)
      : sill(plan.overflow.sill_level_m - plan.rim_level_m),
        lowest_rim(plan.overflow.rim_level_m - plan.rim_level_m),
        bottom(1.6 * sill),
        top(-0.25 * sill),
        pipe(std::get_if<OverflowPipe>(&plan.overflow.way)) {
    const double rim = plan.rim_level_m;
    if (plan.state) storm = plan.state->water_level_m - rim;
    if (plan.blocked) {
      blocked = plan.blocked->water_level_m - rim;
      lip = *blocked - plan.blocked->deepest_m;
    }
    if (pipe) bottom = std::min(bottom, sill - pipe->fall_m + 0.3 * sill);
    if (pipe) top = std::max(top, sill + pipe->diameter_m - 0.1 * sill);
    for (const auto& level : {storm, blocked}) top = std::max(top, level.value_or(0) - 0.15 * sill);
  }
};

QString fromRim(double level_m, const Formatter& format) {
  const QString far = format.quantity(std::abs(level_m), core::Unit::metre, 3);
  if (std::abs(level_m) < 0.0005) return Text::tr("level with the rim");
  return level_m > 0 ? Text::tr("%1 over the rim").arg(far) : Text::tr("%1 down").arg(far);
}

struct Name {
  double level_m;
  QString text;
  double text_y = 0;
};

/// Names of all levels, the highest first.
std::vector<Name> namesOf(const Levels& levels, const Formatter& format) {
  std::vector<Name> names{{0, Text::tr("rim: 0")},
                          {levels.sill, Text::tr("sill: %1").arg(fromRim(levels.sill, format))}};
  if (levels.lip && *levels.lip < -0.0005)
    names.push_back({*levels.lip, Text::tr("lip: %1").arg(fromRim(*levels.lip, format))});
  if (levels.storm)
    names.push_back({*levels.storm, Text::tr("in a storm: %1").arg(fromRim(*levels.storm, format))});
  if (levels.blocked)
    names.push_back({*levels.blocked, Text::tr("when blocked: %1").arg(fromRim(*levels.blocked, format))});
  std::ranges::stable_sort(names, std::greater{}, &Name::level_m);
  return names;
}

QString whyMissing(const OverflowPlan& plan) {
  QStringList parts;
  if (!plan.state)
    parts << Text::tr("The water level in a storm is not known: %1.")
                 .arg(words::hydraulicsFault(plan.state.error()));
  if (!plan.blocked)
    parts << Text::tr("The water level when the overflow is blocked is not known: %1.")
                 .arg(words::hydraulicsFault(plan.blocked.error()));
  return parts.join(QLatin1Char('\n'));
}

/// Where everything stands: levels are true to the axis, lengths along the section are not.
struct Layout {
  Levels levels;
  std::vector<Name> names;
  QStringList why;
  QRectF plot;
  Axis level;
  std::vector<Tick> ticks;
  double wall = 0, outside = 0;  // the two faces of the rim

  Layout(const QRectF& box, const OverflowPlan& plan, const Formatter& format, const Type& type)
      : levels(plan), names(namesOf(levels, format)) {
    const QString missing = whyMissing(plan);
    if (!missing.isEmpty()) why = wrapLines(missing, type.lettering, box.width());
    const QRectF room = box.adjusted(0, static_cast<double>(why.size()) * type.line(), 0, 0);
    const double high = plotHeight(room, {}, false, type);
    if (high <= static_cast<double>(names.size()) * type.line()) return;
    ticks = ticksUp(levels.bottom, levels.top, high, kMetres, format, type);
    double right = 0;
    for (const Name& name : names) right = std::max(right, width_mm(name.text, type.lettering));
    plot = plotRoom(room, {}, {leftMargin(ticks, type.lettering), right + kLeader_mm + kGap_mm, false}, type);
    level = Axis(levels.bottom, levels.top, plot.bottom(), plot.top());
    wall = plot.left() + 0.52 * plot.width();
    outside = plot.left() + 0.76 * plot.width();
    spread(type.line());
  }

  QPointF at(double x, double level_m) const { return {x, level.at(level_m)}; }

private:
  /// Puts the names one below the other, as near to their levels as their height allows.
  void spread(double pitch) {
    for (std::size_t k = 0; k < names.size(); ++k) {
      const double y = level.at(names[k].level_m);
      names[k].text_y = k == 0 ? y : std::max(y, names[k - 1].text_y + pitch);
    }
    double most = plot.bottom();
    for (auto name = names.rbegin(); name != names.rend(); ++name, most -= pitch)
      name->text_y = std::min(name->text_y, most);
  }
};

/// The outside bottom of the spill: ground that falls away from the overflow.
double groundOutside(const Levels& levels) {
  return levels.pipe ? levels.sill - levels.pipe->fall_m + 0.12 * levels.sill : levels.sill;
}

QPainterPath blockFace(const Layout& layout) {
  const Levels& levels = layout.levels;
  const double top = levels.pipe ? 0 : levels.sill, ground = groundOutside(levels);
  QPainterPath face(layout.at(layout.wall, levels.bottom));
  face.lineTo(layout.at(layout.wall, top));
  face.lineTo(layout.at(layout.outside, top));
  face.lineTo(layout.at(layout.outside, ground));
  face.lineTo(layout.at(layout.plot.right(), ground + 0.5 * (levels.bottom - ground)));
  face.lineTo(layout.at(layout.plot.right(), levels.bottom));
  face.closeSubpath();
  return face;
}

QPainterPath pipeRoom(const Layout& layout) {
  const OverflowPipe& pipe = *layout.levels.pipe;
  const double sill = layout.levels.sill, end = layout.outside + 3;
  QPainterPath room(layout.at(layout.wall, sill));
  room.lineTo(layout.at(layout.wall, sill + pipe.diameter_m));
  room.lineTo(layout.at(end, sill + pipe.diameter_m - pipe.fall_m));
  room.lineTo(layout.at(end, sill - pipe.fall_m));
  room.closeSubpath();
  return room;
}

void addWater(Chart& chart, const Layout& layout) {
  const Levels& levels = layout.levels;
  const double surface = levels.storm.value_or(levels.sill), left = layout.plot.left();
  QPainterPath water(layout.at(left, levels.bottom));
  water.lineTo(layout.at(left, surface));
  water.lineTo(layout.at(layout.wall, surface));
  if (!levels.pipe && surface > levels.sill) {  // draws down over the sill
    water.quadTo(layout.at(layout.outside - 2, surface),
                 layout.at(layout.outside, std::lerp(levels.sill, surface, 0.6)));
    water.lineTo(layout.at(layout.outside, levels.sill));
    water.lineTo(layout.at(layout.wall, levels.sill));
  }
  water.lineTo(layout.at(layout.wall, levels.bottom));
  water.closeSubpath();
  chart.fill(water, chart.colours().band);
  const double x = std::lerp(left, layout.wall, 0.15);
  QPainterPath sign(layout.at(x, surface));
  sign.lineTo(layout.at(x, surface) + QPointF(-1.5, -2.6));
  sign.lineTo(layout.at(x, surface) + QPointF(1.5, -2.6));
  sign.closeSubpath();
  chart.dataLine(sign, kThin, chart.colours().ink);
  for (int k = 1; k <= 3; ++k) {
    const double half = 2.4 - 0.6 * k;
    const QPointF on = layout.at(x, surface) + QPointF(0, 0.9 * k);
    if (on.y() < layout.plot.bottom())
      chart.line(on - QPointF(half, 0), on + QPointF(half, 0), kHatchLine, chart.colours().ink);
  }
}

void addBlock(Chart& chart, const Layout& layout, bool dark) {
  const Levels& levels = layout.levels;
  QPainterPath face = blockFace(layout);
  if (levels.pipe) face = face.subtracted(pipeRoom(layout));
  chart.fill(face, groundColours(dark).fill);
  chart.line(earthHatch(face), kHatchLine, chart.colours().ink);
  chart.dataLine(face, kCutEdge, chart.colours().ink);
  if (!levels.pipe)  // the rim seen beyond the notch
    chart.dataLine(rectangle(QRectF(layout.at(layout.wall, 0), layout.at(layout.outside, levels.sill))), kRim,
                   chart.colours().ink);
  if (levels.pipe) chart.line(pipeRoom(layout), kRim, chart.colours().ink);
}

void addLines(Chart& chart, const Layout& layout) {
  const Levels& levels = layout.levels;
  const double left = layout.plot.left(), right = layout.plot.right();
  const auto across = [&](double level_m, double from, double to, const Stroke& stroke,
                          const QColor& colour) {
    chart.dataLine(straight(layout.at(from, level_m), layout.at(to, level_m)), stroke, colour);
  };
  across(0, layout.outside, right, kThin, chart.colours().ink);
  if (levels.lip && *levels.lip < -0.0005) across(*levels.lip, layout.wall, right, kLip, chart.colours().ink);
  across(levels.sill, layout.outside, right, kThin, chart.colours().ink);
  if (levels.storm) {
    across(*levels.storm, left, layout.wall, kStorm, chart.colours().middle);
    across(*levels.storm, layout.wall, right, kThin, chart.colours().middle);
  }
  if (levels.blocked) across(*levels.blocked, left, right, kBlocked, chart.colours().marked);
}

void addFreeboard(Chart& chart, const Layout& layout, const OverflowPlan& plan, const Formatter& format) {
  if (!plan.state) return;
  const double left_m = plan.state->freeboard_left_m;
  const double x = std::lerp(layout.plot.left(), layout.wall, 0.8);
  const QPointF rim = layout.at(x, layout.levels.lowest_rim), water = layout.at(x, *layout.levels.storm);
  chart.dataLine(straight({x - 3, rim.y()}, {layout.wall, rim.y()}), kThin, chart.colours().ink);
  QPainterPath measure = straight(rim, water);
  for (const QPointF end : {rim, water})
    measure.addPath(straight(end + QPointF(-1, 1), end + QPointF(1, -1)));
  chart.dataLine(measure, kThin, chart.colours().ink);
  const QString number = format.quantity(std::abs(left_m), core::Unit::metre, 3);
  const QString text =
      left_m >= 0 ? Text::tr("freeboard left %1").arg(number) : Text::tr("over the rim by %1").arg(number);
  const double half = width_mm(text, chart.lettering()) / 2 + 2, y = (rim.y() + water.y()) / 2;
  const double step = chart.type().line();
  std::vector<QPointF> places;
  for (const double row : {0., -1., 1., 1.6, -1.6, 2.4, -2.4}) places.emplace_back(x - half, y + row * step);
  for (const double row : {1.6, 2.4, 3.2})
    places.emplace_back(layout.plot.left() + half, std::max(rim.y(), water.y()) + row * step);
  chart.label(text, places, layout.plot);
}

void addNames(Chart& chart, const Layout& layout) {
  const double x = layout.plot.right();
  for (const Name& name : layout.names) {
    QPainterPath leader(layout.at(x, name.level_m));
    leader.lineTo(x + kLeader_mm - 1, name.text_y);
    chart.line(leader, kThin, chart.colours().ink);
    chart.text(name.text, {x + kLeader_mm, name.text_y + chart.lettering().cap_mm / 2});
  }
}

}  // namespace

void drawOverflow(QPainter& painter, const QRectF& box_mm, const OverflowPlan& overflow,
                  const Formatter& format, const Style& style) {
  if (!(overflow.overflow.rim_level_m > overflow.overflow.sill_level_m))
    return drawSentence(painter, box_mm,
                        Text::tr("There is no room between the overflow and the rim to draw."), style);
  Chart chart(style, format);
  const Type& type = chart.type();
  const Layout layout(box_mm, overflow, format, type);
  if (layout.plot.isEmpty()) return;
  for (qsizetype k = 0; k < layout.why.size(); ++k)
    chart.text(layout.why[k],
               box_mm.topLeft() + QPointF(0, static_cast<double>(k) * type.line() + type.ascent));
  addGround(chart, layout.plot);
  addWater(chart, layout);
  addBlock(chart, layout, style.dark);
  addLines(chart, layout);
  addFreeboard(chart, layout, overflow, format);
  addNames(chart, layout);
  addUprightAxis(chart, layout.plot, layout.level, layout.ticks,
                 axisTitle(Text::tr("Level from the rim"), kMetres, format));
  chart.text(Text::tr("heights to scale, lengths not"),
             {layout.plot.left(), layout.plot.bottom() + kTick_mm + type.ascent});
  chart.paint(painter);
}

}  // namespace ui::drawings
