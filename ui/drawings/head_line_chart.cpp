#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/delivery_charts.h"
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

using core::hydraulics::Hump;
using core::hydraulics::LineFlow;
using core::hydraulics::LinePlan;
using core::hydraulics::LinePoint;
using core::hydraulics::Stretch;

constexpr Stroke kPipe{0.9};
constexpr Stroke kFull{0.5};
constexpr Stroke kLow{0.5, 2.5, 1.2};
constexpr Stroke kStill{0.35, 0.8, 1};
constexpr double kSuctionHatch_mm = 1.3;
constexpr double kAlike_m = 0.005;  // head lines nearer than this are one
constexpr double kOverTop = 0.08;   // room over the highest and under the lowest line, share of the range

const AxisUnit kMetres{core::Unit::metre, 1};

double worstOf(const core::hydraulics::Result<LineFlow>& flow) {
  double worst = 0;
  if (flow) {
    for (const Stretch& stretch : flow->above_head_line) worst = std::min(worst, stretch.worst_m);
  }
  return worst;
}

/// The state with the stronger suction; null when nothing sucks.
const LineFlow* suckingFlow(const LinePlan& line) {
  const double full = worstOf(line.full), low = worstOf(line.low);
  if (std::min(full, low) >= 0) return nullptr;
  return full <= low ? &*line.full : &*line.low;
}

/// True when the head line nearly empty can be told from the one with the tank full.
bool showsLow(const LinePlan& line) {
  if (!line.low) return false;
  if (!line.full || line.full->points.size() != line.low->points.size()) return true;
  for (std::size_t k = 0; k < line.low->points.size(); ++k) {
    if (std::abs(line.full->points[k].head_line_m - line.low->points[k].head_line_m) > kAlike_m) return true;
  }
  return false;
}

const std::vector<Hump>& humpsOf(const LinePlan& line) {
  static const std::vector<Hump> none;
  return line.full ? line.full->humps : line.low ? line.low->humps : none;
}

/// Why a head line is missing; empty when both are there.
QString whyMissing(const LinePlan& line) {
  const auto why = [](std::string_view code) { return words::hydraulicsFault(code); };
  if (!line.full && !line.low && line.full.error() == line.low.error())
    return Text::tr("No flow: %1.").arg(why(line.full.error()));
  QStringList parts;
  if (!line.full) parts << Text::tr("Tank full, no flow: %1.").arg(why(line.full.error()));
  if (!line.low) parts << Text::tr("Tank nearly empty, no flow: %1.").arg(why(line.low.error()));
  return parts.join(QLatin1Char('\n'));
}

LegendEntry lineEntry(const QString& text, const Stroke& stroke, QColor ChartColours::*colour) {
  return {text, [stroke, colour](Chart& chart, const QRectF& room) {
            chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()}, stroke,
                       chart.colours().*colour);
          }};
}

void addSuction(Chart& chart, const QPainterPath& region) {
  const bool dark = chart.colours().ground.lightness() < 128;
  chart.fill(region, dark ? fromLab(36, 26, 18) : fromLab(84, 20, 14));
  chart.hatch(region, 45, kSuctionHatch_mm);
}

QPainterPath humpSign(QPointF at) {
  QPainterPath sign(at + QPointF(0, -0.8));
  sign.lineTo(at + QPointF(1.7, -3.8));
  sign.lineTo(at + QPointF(-1.7, -3.8));
  sign.closeSubpath();
  return sign;
}

Legend legendOf(const LinePlan& line) {
  const bool low = showsLow(line);
  Legend legend{lineEntry(Text::tr("pipe"), kPipe, &ChartColours::ink),
                lineEntry(Text::tr("still water"), kStill, &ChartColours::ink)};
  if (line.full)
    legend.push_back(lineEntry(low || !line.low ? Text::tr("head, tank full") : Text::tr("head"), kFull,
                               &ChartColours::middle));
  if (low) legend.push_back(lineEntry(Text::tr("head, nearly empty"), kLow, &ChartColours::middle));
  if (suckingFlow(line))
    legend.push_back(
        {Text::tr("suction"), [](Chart& chart, const QRectF& room) { addSuction(chart, rectangle(room)); }});
  if (!humpsOf(line).empty())
    legend.push_back({Text::tr("high point"), [](Chart& chart, const QRectF& room) {
                        chart.solid(humpSign({room.center().x(), room.bottom() + 0.6}), chart.colours().ink);
                      }});
  return legend;
}

/// Least and greatest of what is drawn, from the rim.
struct Range {
  double least = 0, most = 0;
  void add(double level_m) {
    least = std::min(least, level_m);
    most = std::max(most, level_m);
  }
};

Range rangeOf(const LinePlan& line, double rim_level_m) {
  Range range;
  for (const auto& p : line.line.profile) range.add(p.level_m - rim_level_m);
  for (const auto* flow : {&line.full, &line.low}) {
    if (!*flow) continue;
    for (const LinePoint& p : (*flow)->points) range.add(p.head_line_m - rim_level_m);
  }
  range.add(line.full_heads.upper_level_m - rim_level_m);
  const double spare = std::max(0.1, kOverTop * (range.most - range.least));
  return {range.least - spare, range.most + spare};
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  QStringList why;
  QRectF box, plot;  // the box without the sentence
  Axis along, level;
  std::vector<Tick> along_ticks, level_ticks;

  Layout(const QRectF& all, const LinePlan& line, double rim_level_m, const Formatter& format,
         const Type& type)
      : legend(legendOf(line)), box(all) {
    if (line.line.profile.size() < 2) return;
    const QString missing = whyMissing(line);
    if (!missing.isEmpty()) why = wrapLines(missing, type.lettering, all.width());
    box.setTop(all.top() + static_cast<double>(why.size()) * type.line());
    const double high = plotHeight(box, legend, true, type);
    if (high <= 2 * type.line()) return;
    const double from = line.line.profile.front().station_m, to = line.line.profile.back().station_m;
    const Range range = rangeOf(line, rim_level_m);
    level_ticks = ticksUp(range.least, range.most, high, kMetres, format, type);
    const double left = leftMargin(level_ticks, type.lettering);
    along_ticks = ticksAlong(from, to, box.width() - 1.5 * left, kMetres, format, type.lettering);
    plot = plotRoom(box, legend, {left, widest(along_ticks, type.lettering) / 2 + 0.5, true}, type);
    along = Axis(from, to, plot.left(), plot.right());
    level = Axis(range.least, range.most, plot.bottom(), plot.top());
  }
};

/// Puts places of the line on paper.
class Placer {
public:
  Placer(const Layout& layout, double rim_level_m) : layout_(layout), rim_level_m_(rim_level_m) {}

  QPointF at(double station_m, double level_m) const {
    return {layout_.along.at(station_m), layout_.level.at(level_m - rim_level_m_)};
  }
  QPainterPath headLine(const LineFlow& flow) const {
    QPainterPath path;
    for (const LinePoint& p : flow.points) add(path, at(p.station_m, p.head_line_m));
    return path;
  }
  QPainterPath pipe(const LinePlan& line) const {
    QPainterPath path;
    for (const auto& p : line.line.profile) add(path, at(p.station_m, p.level_m));
    return path;
  }

private:
  const Layout& layout_;
  double rim_level_m_;

  static void add(QPainterPath& path, QPointF p) {
    if (path.elementCount() == 0) return path.moveTo(p);
    path.lineTo(p);
  }
};

struct PipeAndHead {
  double level_m, head_m;
};

/// Pipe and head line at a station, straight between points.
PipeAndHead heightsAt(const LineFlow& flow, double station_m) {
  const auto next = std::ranges::lower_bound(flow.points, station_m, {}, &LinePoint::station_m);
  if (next == flow.points.begin()) return {next->level_m, next->head_line_m};
  if (next == flow.points.end()) return {flow.points.back().level_m, flow.points.back().head_line_m};
  const LinePoint& a = *(next - 1);
  const double step = next->station_m - a.station_m, t = step > 0 ? (station_m - a.station_m) / step : 1;
  return {std::lerp(a.level_m, next->level_m, t), std::lerp(a.head_line_m, next->head_line_m, t)};
}

/// Between pipe and head line along a stretch.
QPainterPath suctionRegion(const Placer& place, const LineFlow& flow, const Stretch& stretch) {
  QPolygonF over, under;
  const auto add = [&](double station_m, const PipeAndHead& p) {
    over << place.at(station_m, p.level_m);
    under << place.at(station_m, p.head_m);
  };
  add(stretch.from_m, heightsAt(flow, stretch.from_m));
  for (const LinePoint& p : flow.points) {
    if (stretch.from_m < p.station_m && p.station_m < stretch.to_m)
      add(p.station_m, {p.level_m, p.head_line_m});
  }
  add(stretch.to_m, heightsAt(flow, stretch.to_m));
  std::reverse(under.begin(), under.end());
  QPainterPath region;
  region.addPolygon(over + under);
  region.closeSubpath();
  return region;
}

void addLines(Chart& chart, const Placer& place, const LinePlan& line) {
  if (const LineFlow* flow = suckingFlow(line)) {
    for (const Stretch& stretch : flow->above_head_line)
      addSuction(chart, suctionRegion(place, *flow, stretch));
  }
  const auto& profile = line.line.profile;
  const double still = line.full_heads.upper_level_m;
  chart.line(place.at(profile.front().station_m, still), place.at(profile.back().station_m, still), kStill,
             chart.colours().ink);
  if (showsLow(line)) chart.dataLine(place.headLine(*line.low), kLow, chart.colours().middle);
  if (line.full) chart.dataLine(place.headLine(*line.full), kFull, chart.colours().middle);
  chart.dataLine(place.pipe(line), kPipe, chart.colours().ink);
  for (const Hump& hump : humpsOf(line))
    chart.solid(humpSign(place.at(hump.station_m, hump.level_m)), chart.colours().ink);
}

void addLevels(Chart& chart, const Layout& layout) {
  for (const Tick& tick : layout.level_ticks) {
    const double y = layout.level.at(tick.value);
    const bool rim = std::abs(tick.value) < 1e-9;
    chart.line({layout.plot.left(), y}, {layout.plot.right(), y}, rim ? kAxisLine : kGridLine,
               rim ? chart.colours().ink : chart.colours().grid);
  }
}

const LinePoint* pointOf(const LinePlan& line, int point) {
  if (!line.full || point < 0 || point >= static_cast<int>(line.full->points.size())) return nullptr;
  return &line.full->points[static_cast<std::size_t>(point)];
}

void addMarked(Chart& chart, const Layout& layout, const Placer& place, const LinePlan& line,
               double rim_level_m, int point, const Formatter& format) {
  const LinePoint* marked = pointOf(line, point);
  if (!marked) return;
  const QPointF at = place.at(marked->station_m, marked->level_m);
  chart.line({at.x(), layout.plot.top()}, {at.x(), layout.plot.bottom()}, kMarkLine, chart.colours().marked);
  chart.reading(headReading(line, rim_level_m, point, format), QRectF(at, at), layout.plot);
}

}  // namespace

void drawHeadLine(QPainter& painter, const QRectF& box_mm, const LinePlan& line, double rim_level_m,
                  const Formatter& format, const Style& style, std::optional<int> marked_point) {
  if (line.line.profile.size() < 2)
    return drawSentence(painter, box_mm,
                        Text::tr("Enter the way of the pipe to see the head of the water along it."), style);
  Chart chart(style, format);
  const Layout layout(box_mm, line, rim_level_m, format, chart.type());
  if (layout.plot.isEmpty()) return;
  const Placer place(layout, rim_level_m);
  for (qsizetype k = 0; k < layout.why.size(); ++k)
    chart.text(layout.why[k], box_mm.topLeft() + QPointF(0, static_cast<double>(k) * chart.type().line() +
                                                                chart.type().ascent));
  addLegend(chart, layout.legend, layout.box);
  addGround(chart, layout.plot);
  addLevels(chart, layout);
  addLines(chart, place, line);
  addUprightAxis(chart, layout.plot, layout.level, layout.level_ticks,
                 axisTitle(Text::tr("Level from the rim"), kMetres, format));
  addLevelAxis(chart, layout.plot, layout.along, layout.along_ticks,
               axisTitle(Text::tr("Distance along the line"), kMetres, format));
  if (marked_point) addMarked(chart, layout, place, line, rim_level_m, *marked_point, format);
  chart.paint(painter);
}

std::optional<int> headPointAt(const QRectF& box_mm, QPointF at, const LinePlan& line, double rim_level_m,
                               const Formatter& format, const Style& style) {
  const Layout layout(box_mm, line, rim_level_m, format, Type(style, format));
  if (!line.full || line.full->points.empty() || !layout.plot.contains(at)) return std::nullopt;
  const double station_m = layout.along.value(at.x());
  const auto away = [&](const LinePoint& p) { return std::abs(p.station_m - station_m); };
  return static_cast<int>(std::ranges::min_element(line.full->points, {}, away) - line.full->points.begin());
}

}  // namespace ui::drawings
