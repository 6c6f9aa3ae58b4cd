#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/ground_drawings.h"
#include "ui/drawings/ground_legend.h"
#include "ui/drawings/ground_shapes.h"
#include "ui/drawings/scaled_view.h"

#include <QCoreApplication>
#include <QLineF>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <string>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::site::BenchPeg;
using core::site::DaylightLine;

constexpr int kMostContours = 8;
constexpr double kSpare_mm = 2;        // about the works
constexpr double kNames_mm = 9;        // about them where pegs have names
constexpr double kArrow_mm = 14;       // north, and down the fall
constexpr double kLeastNamed_mm = 10;  // a shorter contour line takes no level
constexpr double kPegCross_mm = 1.5;   // half its size
constexpr Stroke kThin{0.35};

bool isCorner(const BenchPeg& peg) {
  return peg.kind == "platform_corner";
}

bool isNamed(const BenchPeg& peg, const core::Plan& plan) {
  if (!isCorner(peg) || !pegNamesCrowd(plan)) return true;
  std::string outer = peg.id;
  outer.front() = 'Q';
  return std::ranges::find(plan.site.pegs, outer, &BenchPeg::id) == plan.site.pegs.end();
}

QString fallText(const core::Plan& plan, const Formatter& format) {
  const double fall = plan.site.fall.percent;
  return Text::tr("fall %1").arg(format.quantity(fall, core::Unit::percent, fall < 10 ? 1 : 0));
}

bool hasFall(const core::Plan& plan) {
  return plan.site.has_relief && plan.site.fall.azimuth_deg.has_value();
}

double arrowsWidth(const core::Plan& plan, const Formatter& format, const Type& type) {
  const double text = hasFall(plan) ? width_mm(fallText(plan, format), type.lettering) : 0;
  return std::max(kArrow_mm, text) + 2 * kGap_mm;
}

/// Room of the picture between legend, arrows and scale bar; empty when too little is left.
QRectF pictureRoom(const QRectF& box, const Legend& legend, double arrows, const Type& type) {
  constexpr double kLeast_mm = 30;
  const QRectF room = box.adjusted(0, legendHeight(legend, box.width(), type) + kGap_mm, -arrows,
                                   -scaleRowHeight(type) - 2 * kGap_mm);
  return room.width() < kLeast_mm || room.height() < kLeast_mm ? QRectF() : room;
}

void addArrow(Chart& chart, QPointF middle, double azimuth_deg) {
  const QTransform turn = QTransform::fromTranslate(middle.x(), middle.y()).rotate(azimuth_deg);
  const double half = kArrow_mm / 2;
  chart.line(turn.map(straight({0, half}, {0, -half + 3})), kEdge, chart.colours().ink);
  QPainterPath head(QPointF(0, -half));
  head.lineTo(1.6, -half + 4.5);
  head.lineTo(-1.6, -half + 4.5);
  head.closeSubpath();
  chart.solid(turn.map(head), chart.colours().ink);
}

void addArrows(Chart& chart, const QRectF& strip, const core::Plan& plan, const Formatter& format) {
  const Type& type = chart.type();
  const double x = strip.center().x();
  chart.text(Text::tr("N", "north"), {x, strip.top() + type.ascent}, Align::centre);
  const double north = strip.top() + type.line() + kArrow_mm / 2;
  addArrow(chart, {x, north}, 0);
  if (!hasFall(plan)) return;
  const double text = north + kArrow_mm / 2 + 3 * kGap_mm;
  chart.text(fallText(plan, format), {x, text + type.ascent}, Align::centre);
  addArrow(chart, {x, text + type.line() + kGap_mm + kArrow_mm / 2}, *plan.site.fall.azimuth_deg);
}

void addFaces(Chart& chart, const ScaledView& view, const core::site::Bench& bench, bool dark) {
  addCut(chart, outlineOf(bench.cut_face, view), dark);
  addFill(chart, outlineOf(bench.fill_face, view), dark);
}

void addDaylight(Chart& chart, const ScaledView& view, const core::site::Bench& bench) {
  for (const DaylightLine& daylight : bench.daylight) {
    const QPainterPath line = view.path(daylight.line);
    const bool cut = daylight.of == DaylightLine::Of::cut;
    chart.line(cut ? line : dashDotted(line), cut ? kCutDaylight : kEdge, chart.colours().ink);
    chart.keepClear(line);
  }
}

void addPit(Chart& chart, const ScaledView& view, const GroundShapes& shapes) {
  chart.fill(view.closed(shapes.pit), chart.colours().wide_band);
  chart.dataLine(view.closed(shapes.rim), kThin, chart.colours().ink);
  chart.dataLine(view.closed(shapes.pit), kPitEdge, chart.colours().ink);
  if (!shapes.platform.empty()) chart.dataLine(view.closed(shapes.platform), kEdge, chart.colours().ink);
}

void addPegs(Chart& chart, const ScaledView& view, const core::Plan& plan) {
  for (const auto& peg : plan.site.pegs) {
    const QPointF at = view.at(peg.at_m);
    QPainterPath cross =
        straight(at - QPointF(kPegCross_mm, kPegCross_mm), at + QPointF(kPegCross_mm, kPegCross_mm));
    cross.addPath(
        straight(at + QPointF(-kPegCross_mm, kPegCross_mm), at + QPointF(kPegCross_mm, -kPegCross_mm)));
    chart.dataLine(cross, kEdge, chart.colours().ink);
  }
}

/// Labels that hide no peg.
class Namer {
public:
  Namer(Chart& chart, const ScaledView& view, const core::Plan& plan) : chart_(chart), within_(view.room()) {
    const QPointF half(kPegCross_mm, kPegCross_mm);
    for (const auto& peg : plan.site.pegs)
      pegs_.emplace_back(view.at(peg.at_m) - half, view.at(peg.at_m) + half);
  }

  QSizeF size(const QString& text) const { return Figure::roomAbout(text, {}, chart_.lettering()).size(); }
  void add(const QString& text, std::vector<QPointF> places) {
    std::erase_if(places, [&](QPointF place) {
      const QRectF room = Figure::roomAbout(text, place, chart_.lettering());
      return std::ranges::any_of(pegs_, [&](const QRectF& peg) { return peg.intersects(room); });
    });
    chart_.label(text, places, within_);
  }

private:
  Chart& chart_;
  QRectF within_;
  std::vector<QRectF> pegs_;
};

void addPegNames(Namer& namer, const ScaledView& view, const core::Plan& plan, const GroundShapes& shapes) {
  Eigen::AlignedBox2d pit;
  for (const Eigen::Vector2d& p : shapes.pit) pit.extend(p);
  const QPointF middle = view.at(Eigen::Vector2d(pit.center()));
  for (const bool corners : {false, true}) {  // those farther out first, away from the middle
    for (const auto& peg : plan.site.pegs) {
      if (isCorner(peg) != corners || !isNamed(peg, plan)) continue;
      const QString name = QString::fromStdString(peg.id);
      namer.add(name, placesBeside(view.at(peg.at_m), middle, namer.size(name)));
    }
  }
}

/// The shortest way from the heap's toe to the pit edge, on paper.
QLineF toPit(const ScaledView& view, const GroundShapes& shapes, QPointF centre, double radius) {
  QLineF shortest;
  for (std::size_t k = 0; k < shapes.pit.size(); ++k) {
    const QLineF side(view.at(shapes.pit[k]), view.at(shapes.pit[(k + 1) % shapes.pit.size()]));
    const QPointF way = side.p2() - side.p1();
    const double along =
        QPointF::dotProduct(centre - side.p1(), way) / std::max(1e-9, QPointF::dotProduct(way, way));
    const QLineF line(centre, side.pointAt(std::clamp(along, 0., 1.)));
    if (k == 0 || line.length() < shortest.length()) shortest = line;
  }
  if (shortest.length() <= radius) return {};
  return {shortest.pointAt(radius / shortest.length()), shortest.p2()};
}

/// A line with oblique strokes at its ends.
void addMeasure(Chart& chart, const QLineF& line) {
  QPainterPath path = straight(line.p1(), line.p2());
  for (const QPointF end : {line.p1(), line.p2()})
    path.addPath(straight(end + QPointF(-1, 1), end + QPointF(1, -1)));
  chart.line(path, kThin, chart.colours().ink);
}

struct Heap {
  QPointF centre;
  double base, top;  // radii on paper
  QLineF to_pit;
};

std::optional<Heap> heapOf(const ScaledView& view, const core::Plan& plan, const GroundShapes& shapes) {
  if (!plan.site.heap || !plan.site.heap_place) return std::nullopt;
  const QPointF centre = view.at(plan.site.heap_place->centre_m);
  const double base = view.mm(plan.site.heap->base_radius_m);
  return Heap{centre, base, view.mm(plan.site.heap->top_radius_m), toPit(view, shapes, centre, base)};
}

/// Where pit and heap hide the natural ground.
QPainterPath hidden(const ScaledView& view, const GroundShapes& shapes, const std::optional<Heap>& heap) {
  QPainterPath area = view.closed(shapes.pit);
  if (heap) area.addEllipse(heap->centre, heap->base, heap->base);
  return area;
}

void addHeap(Chart& chart, const Heap& heap) {
  QPainterPath base, top;
  base.addEllipse(heap.centre, heap.base, heap.base);
  chart.dataLine(base, kEdge, chart.colours().ink);
  if (heap.top > 0) top.addEllipse(heap.centre, heap.top, heap.top);
  chart.line(top, kThin, chart.colours().ink);
  if (!heap.to_pit.isNull()) addMeasure(chart, heap.to_pit);
}

/// Places for one of the two rows of text of a heap: in its middle, under it, over it, beside it.
/// @param row of the text from the middle of both rows
std::vector<QPointF> placesAboutHeap(const Heap& heap, QSizeF size, double row) {
  const double down = row * size.height(), out = heap.base + 1;
  return {heap.centre + QPointF(0, down), heap.centre + QPointF(0, out + size.height() + down),
          heap.centre + QPointF(0, down - out - size.height()),
          heap.centre + QPointF(out + size.width() / 2, down),
          heap.centre + QPointF(-out - size.width() / 2, down)};
}

void addHeapNames(Namer& namer, const Heap& heap, const core::Plan& plan, const Formatter& format) {
  const QString name = Text::tr("spoil heap");
  const QString distance =
      Text::tr("%1 to the pit")
          .arg(format.quantity(plan.site.heap_place->toe_to_edge_m, core::Unit::metre, 2));
  namer.add(name, placesAboutHeap(heap, namer.size(name), -0.5));
  namer.add(distance, placesAboutHeap(heap, namer.size(distance), 0.5));
}

int decimalsFor(double step) {
  return std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
}

void addLevels(Namer& namer, const DrawnContours& contours, const Formatter& format) {
  for (const DrawnContour& contour : contours.lines) {
    if (contour.line.length() < kLeastNamed_mm) continue;
    namer.add(format.number(contour.level_m + 0., core::Unit::metre, decimalsFor(contours.step_m)),
              placesAlong(contour.line));
  }
}

void addPicture(Chart& chart, const ScaledView& view, const core::Plan& plan, const GroundShapes& shapes,
                const Formatter& format, const Style& style) {
  const auto& site = plan.site;
  DrawnContours contours = contoursIn(plan, view, kMostContours);
  const std::optional<Heap> heap = heapOf(view, plan, shapes);
  for (DrawnContour& contour : contours.lines)
    contour.line = beside(contour.line, hidden(view, shapes, heap));
  addGround(chart, view.room());
  if (site.bench) addFaces(chart, view, *site.bench, style.dark);
  for (const DrawnContour& contour : contours.lines) chart.line(contour.line, kContour, chart.colours().ink);
  addPit(chart, view, shapes);
  if (site.bench) addDaylight(chart, view, *site.bench);
  if (heap) addHeap(chart, *heap);
  addPegs(chart, view, plan);
  Namer namer(chart, view, plan);
  addPegNames(namer, view, plan, shapes);
  if (heap) addHeapNames(namer, *heap, plan, format);
  addLevels(namer, contours, format);
}

}  // namespace

int drawGroundPlan(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                   const Style& style) {
  Chart chart(style, format);
  const Type& type = chart.type();
  const Legend legend = groundLegend(plan, format, style);
  const double arrows = arrowsWidth(plan, format, type);
  const QRectF room = pictureRoom(box_mm, legend, arrows, type);
  if (room.isEmpty()) return 0;
  const GroundShapes shapes(plan);
  const ScaledView view(room, shapes.extent, plan.site.pegs.empty() ? kSpare_mm : kNames_mm, style);
  addPicture(chart, view, plan, shapes, format, style);
  addLegend(chart, legend, box_mm);
  addArrows(chart, {room.right(), room.top(), arrows, room.height()}, plan, format);
  addScaleRow(chart, {box_mm.left(), room.bottom() + 2 * kGap_mm}, view.n(), format);
  chart.paint(painter);
  return static_cast<int>(std::lround(view.n()));
}

}  // namespace ui::drawings
