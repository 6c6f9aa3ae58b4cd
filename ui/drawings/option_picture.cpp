#include "ui/drawings/option_picture.h"

#include "ui/drawings/hatch.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scaled_view.h"
#include "ui/drawings/section_shape.h"

#include <QTransform>
#include <algorithm>

namespace ui::drawings {
namespace {

using core::geometry::TankGeometry;

constexpr Stroke kOutline{0.7};
constexpr Stroke kEdge{0.5};
constexpr Stroke kThin{0.35};
constexpr double kLeastLining_mm = 1.4;    // a thinner lining is drawn solid on paper
constexpr double kLeastColoured_mm = 0.9;  // and on a screen
constexpr double kLeastHatched_mm = 1;     // thinner layers take no hatch
constexpr double kLeastGap_mm = 0.9;       // lines nearer than this run together
constexpr double kWaterSign_mm = 2.6, kSign_m = 0.6;
constexpr int kArcSteps = 12;

/// Offset of the outermost edge at the ground: rim collar, or pit [m].
double reach(const TankGeometry& tank) {
  return std::max(collarReach(tank).value_or(0), tank.pitOffset(tank.depth()));
}

void addGroundBeside(Chart& chart, const SectionShape& shape, QPointF rim) {
  const double beside = shape.mm(kBeside_m), y = rim.y();
  const double left = shape.left(reach(shape.tank())), right = shape.right(reach(shape.tank()));
  const double pit_left = shape.left(shape.tank().pitOffset(shape.tank().depth()));
  const double pit_right = shape.right(shape.tank().pitOffset(shape.tank().depth()));
  const double ends[][2] = {{left - beside, pit_left}, {pit_right, right + beside}};
  for (const auto& [from, to] : ends) {
    const QPointF a(rim.x() + from, y), b(rim.x() + to, y);
    chart.line(a, b, kOutline, chart.colours().ink);
    chart.line(earthHatch(rectangle(QRectF(a, b + QPointF(0, kUnder_mm)))), kHatchLine, chart.colours().ink);
  }
}

void addWater(Chart& chart, const SectionShape& shape, QPointF rim) {
  const TankGeometry& tank = shape.tank();
  const double full = tank.fullLevel(), y = rim.y() + shape.level(full);
  const double left = rim.x() + shape.left(tank.clearOffset(full));
  const double right = rim.x() + shape.right(tank.clearOffset(full));
  chart.fill(shape.face(tank.waterProfile(full, kArcSteps)).translated(rim), chart.colours().band);
  chart.line({left, y}, {right, y}, kThin, chart.colours().ink);
  const double size = std::min({kWaterSign_mm, (right - left) / 4, shape.mm(kSign_m)});
  QPainterPath sign(QPointF((left + right) / 2, y));
  sign.lineTo((left + right) / 2 - size / 2, y - size);
  sign.lineTo((left + right) / 2 + size / 2, y - size);
  sign.closeSubpath();
  chart.line(sign, kThin, chart.colours().ink);
}

void addCoat(Chart& chart, const QPainterPath& face, int coat, double thickness_mm) {
  chart.fill(face, coat % 2 == 1 ? chart.colours().runoff : chart.colours().animals);
  if (thickness_mm >= kLeastHatched_mm) {
    const CoatHatch hatch = coatHatch(face, coat);
    chart.solid(hatch.dots, chart.colours().ink);
    chart.line(hatch.lines, kHatchLine, chart.colours().ink);
  }
  chart.line(face, kHatchLine, chart.colours().ink);
}

/// Layers where they can be told apart; else all of them as one solid.
void addLining(Chart& chart, const SectionShape& shape, QPointF rim) {
  const double least = chart.onPaper() ? kLeastLining_mm : kLeastColoured_mm;
  const bool solid = shape.mm(shape.tank().liningThickness()) < least;
  int coat = 0;
  for (const auto& layer : shape.tank().layers()) {
    const QPainterPath face = shape.layer(layer.id).translated(rim);
    if (layer.id == "stone_bed") {
      const QRectF box = face.boundingRect();
      if (!solid && box.height() >= kLeastHatched_mm)
        chart.line(stones(box.adjusted(0.3, 0, -0.3, 0)), kHatchLine, chart.colours().ink);
      chart.line(face, kHatchLine, chart.colours().ink);
      continue;
    }
    if (core::geometry::isCoat(layer)) ++coat;
    if (solid) chart.solid(face, chart.colours().ink);
    if (!solid) addCoat(chart, face, coat, shape.mm(layer.thickness_m));
  }
}

QPainterPath placed(const TankGeometry& tank, const Paper& paper, double offset_m, QPointF middle,
                    PlanLies lies) {
  const QTransform turn = lies == PlanLies::as_cut ? QTransform().rotate(90) : QTransform();
  return turn.map(paper.outline(tank.outline(), offset_m)).translated(middle);
}

/// Where the section is cut, a little beyond the plan.
QPainterPath cutLine(QPointF middle, const QSizeF& size, PlanLies lies) {
  constexpr double kBeyond_mm = 2;
  const QPointF half = lies == PlanLies::as_cut ? QPointF(size.width() / 2 + kBeyond_mm, 0)
                                                : QPointF(0, size.height() / 2 + kBeyond_mm);
  return dashDotted(straight(middle - half, middle + half));
}

QPainterPath figureOf(double height_mm) {
  const double h = height_mm;
  QPainterPath body;
  body.setFillRule(Qt::WindingFill);
  body.addEllipse(QPointF(0, -0.93 * h), 0.065 * h, 0.07 * h);
  body.addRoundedRect(QRectF(-0.12 * h, -0.84 * h, 0.24 * h, 0.4 * h), 0.06 * h, 0.06 * h);
  body.addRoundedRect(QRectF(-0.105 * h, -0.5 * h, 0.09 * h, 0.5 * h), 0.02 * h, 0.02 * h);
  body.addRoundedRect(QRectF(0.015 * h, -0.5 * h, 0.09 * h, 0.5 * h), 0.02 * h, 0.02 * h);
  return body;
}

}  // namespace

double sectionWidth(const TankGeometry& tank) {
  const SectionShape shape(tank, 1000, SectionCut::across);  // a millimetre to the metre
  const double edge = reach(tank);
  return 2 * (std::max(-shape.left(edge), shape.right(edge)) + kBeside_m);
}

Eigen::Vector2d planSize(const TankGeometry& tank, PlanLies lies) {
  const Eigen::Vector2d size = tank.outline().size(reach(tank));
  return lies == PlanLies::as_cut ? Eigen::Vector2d(size.y(), size.x()) : size;
}

void addOptionSection(Chart& chart, const TankGeometry& tank, double n, QPointF rim) {
  const SectionShape shape(tank, n, SectionCut::across);
  addGroundBeside(chart, shape, rim);
  addWater(chart, shape, rim);
  addLining(chart, shape, rim);
  chart.line(shape.pitEdge().translated(rim), kEdge, chart.colours().ink);
}

void addOptionPlan(Chart& chart, const TankGeometry& tank, double n, QPointF top, PlanLies lies) {
  const Paper paper(tank.outline().centre(), n);
  const Eigen::Vector2d size_m = planSize(tank, lies);
  const QSizeF size(paper.mm(size_m.x()), paper.mm(size_m.y()));
  const QPointF middle = top + QPointF(0, size.height() / 2);
  const double rim = tank.clearOffset(tank.depth());
  const auto outline = [&](double offset_m) { return placed(tank, paper, offset_m, middle, lies); };
  chart.fill(outline(tank.clearOffset(tank.fullLevel())), chart.colours().band);
  chart.line(outline(rim), kOutline, chart.colours().ink);
  if (paper.mm(reach(tank) - rim) >= kLeastGap_mm)
    chart.line(outline(reach(tank)), kThin, chart.colours().ink);
  if (paper.mm(rim) >= kLeastGap_mm) chart.line(outline(0), kThin, chart.colours().ink);
  chart.line(cutLine(middle, size, lies), kThin, chart.colours().ink);
}

void addPerson(Chart& chart, QPointF feet, double n) {
  const QPainterPath person = figureOf(kPerson_m * 1000 / n).translated(feet);
  chart.solid(person, chart.colours().ink);
}

}  // namespace ui::drawings
