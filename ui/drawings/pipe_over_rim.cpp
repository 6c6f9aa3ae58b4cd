#include "ui/drawings/paper.h"
#include "ui/drawings/pipe_sections.h"
#include "ui/drawings/pipe_wall.h"
#include "ui/drawings/wall_cut.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::TankGeometry;

constexpr double kBend_m = 0.1;  // radius of the pipe's axis
constexpr int kBendSteps = 12;
constexpr double kStrapHalf_m = 0.025, kStrapOver_m = 0.012, kBlockHalf_m = 0.07, kLeastBlock_m = 0.005;

/// A band of even width about a line.
QPolygonF band(const QPolygonF& line, double half) {
  QPolygonF one, other;
  for (qsizetype k = 0; k < line.size(); ++k) {
    const QPointF along = line[std::min(k + 1, line.size() - 1)] - line[std::max<qsizetype>(k - 1, 0)];
    const QPointF aside = QPointF(-along.y(), along.x()) * (half / std::hypot(along.x(), along.y()));
    one << line[k] + aside;
    other.prepend(line[k] - aside);
  }
  return one + other;
}

/// Axis of the pipe from outside over the rim down to a level.
QPolygonF axis(const WallPiece& piece, double to_m) {
  const PipeWay& way = piece.way;
  const QPointF corner = piece.cut.at(way.axisAt(way.axis_m), way.axis_m);
  const QPointF end = piece.cut.at(way.axisAt(to_m), to_m);
  const QPointF down = (end - corner) / std::hypot(end.x() - corner.x(), end.y() - corner.y());
  const double turn = std::acos(-down.x()), back = piece.cut.mm(kBend_m) * std::tan(turn / 2);
  const QPointF from = corner + QPointF(back, 0), to = corner + down * back;
  QPolygonF line{{piece.right() + 3, corner.y()}};
  for (int k = 0; k <= kBendSteps; ++k) {  // a quadratic curve is near enough to the arc
    const double t = static_cast<double>(k) / kBendSteps;
    line << from * ((1 - t) * (1 - t)) + corner * (2 * t * (1 - t)) + to * (t * t);
  }
  return line << end;
}

void addMouth(Figure& figure, const WallPiece& piece, const QPolygonF& line) {
  const double half = piece.cut.mm(piece.way.half_m);
  const QPointF end = line.back(), before = line[line.size() - 2];
  const QPointF down = (end - before) / std::hypot(end.x() - before.x(), end.y() - before.y());
  const QPointF aside(-down.y() * half, down.x() * half), neck = end - down * 2 * half;
  QPolygonF shaft = line;
  shaft.back() = neck;
  figure.add(polygonPath(band(shaft, half)), Line::edge);
  figure.add(polygonPath({neck + aside, end + 2 * aside, end - 2 * aside, neck - aside}), Line::edge);
}

void addClamp(Figure& figure, const WallPiece& piece) {
  const PipeWay& way = piece.way;
  const double rim = way.tank.depth(), under = way.axis_m - way.half_m, x = way.clamp_m();
  const auto box = [&](double half, double low, double high) {
    return polygonPath({piece.cut.at(x - half, low), piece.cut.at(x + half, low),
                        piece.cut.at(x + half, high), piece.cut.at(x - half, high)});
  };
  if (under - rim > kLeastBlock_m) figure.add(box(kBlockHalf_m, rim, under), Line::edge);
  figure.addSolid(box(kStrapHalf_m, under, way.axis_m + way.half_m + kStrapOver_m));
}

}  // namespace

PipeMarks addPipeOverRim(Figure& figure, const TankGeometry& tank, const DrawnPipe& pipe, double n,
                         QPointF origin_mm) {
  const PipeWay way(tank, pipe);
  const WallCut high(tank, n, origin_mm);
  const double up = way.drawnUp_m();
  const WallCut low(tank, n, high.at(tank.batter() * up, up));
  const WallPiece upper{way, high, way.is_broken ? way.upper_from : high.bottom_m(), tank.depth()};
  const WallPiece lower{way, low, low.bottom_m(), way.is_broken ? way.lower_to : tank.depth()};
  addWallPiece(figure, upper);
  if (way.is_broken) {
    addWallPiece(figure, lower);
    figure.add(polygonPath(band(axis(upper, way.upper_from), upper.cut.mm(way.half_m))), Line::edge);
    addMouth(figure, lower,
             {low.at(way.axisAt(way.lower_to), way.lower_to), low.at(way.axisAt(way.lip_m), way.lip_m)});
  } else {
    addMouth(figure, upper, axis(upper, way.lip_m));
  }
  addClamp(figure, upper);
  const double dead = tank.deadLevel();
  PipeMarks marks{{{PipePart::mouth, low.at(way.axisAt(way.lip_m), way.lip_m + way.half_m)}},
                  {{PipePart::clamp, high.at(way.clamp_m(), way.axis_m)},
                   {PipePart::pipe, {upper.right() + 1, upper.y(way.axis_m)}},
                   {PipePart::clear_face, high.behind(0, std::lerp(way.upper_from, tank.depth(), 0.3))},
                   {PipePart::pit_wall, lower.pit(std::min(way.lower_to, tank.depth()) / 2)}}};
  if (dead > 0) {
    figure.add({lower.left() - 2, lower.y(dead)},
               low.behind(0, dead) - QPointF(low.mm(coveAt(tank, dead)), 0), Line::hidden);
    marks.left.push_back({PipePart::dead_level, {lower.left() + 2, lower.y(dead)}});
  }
  return marks;
}

}  // namespace ui::drawings
