#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/pipe_sections.h"
#include "ui/drawings/wall_cut.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::ProfilePoint;
using core::geometry::TankGeometry;

constexpr double kWallShown_m = 0.15;  // along the slope, below the rim and above the mouth
constexpr double kGapShown_m = 0.04;   // between the two pieces
constexpr double kOutside_m = 0.1, kInside_m = 0.05;
constexpr double kOff_m = 0.02;  // between wall and mouth
constexpr double kBend_m = 0.1;  // radius of the pipe's axis
constexpr int kBendSteps = 12;
constexpr double kMostCrest_m = 0.3;
constexpr double kStrapHalf_m = 0.025, kStrapOver_m = 0.012, kBlockHalf_m = 0.07, kLeastBlock_m = 0.005;
constexpr double kEarth_mm = 6;

/// How far the cove stands before the clear wall at a level [m].
double coveAt(const TankGeometry& tank, double z_m) {
  const auto points = tank.waterProfile(tank.depth(), 16).points;
  for (std::size_t k = 1; k < points.size(); ++k) {
    const ProfilePoint &low = points[k - 1], &high = points[k];
    if (z_m > high.z_m) continue;
    const double share = (z_m - low.z_m) / (high.z_m - low.z_m);
    return std::max(0., tank.clearOffset(z_m) - std::lerp(low.offset_m, high.offset_m, share));
  }
  return 0;
}

/// Where the pipe runs and what of the wall is shown: all of it, or a piece at the rim and one at the floor.
struct Way {
  const TankGeometry& tank;
  double half_m;                // half the pipe
  double axis_m, lip_m;         // levels of its axis over the rim and of the mouth
  double off_m;                 // its axis before the clear face, square to it
  double upper_from, lower_to;  // levels where the pieces leave off
  bool is_broken;

  Way(const TankGeometry& of, const DrawnPipe& pipe)
      : tank(of),
        half_m(pipe.outside_m / 2),
        axis_m(of.depth() + std::clamp(pipe.crest_m, half_m, std::max(half_m, kMostCrest_m))),
        lip_m(of.deadLevel() + half_m),
        off_m(pipe.outside_m + kOff_m + coveAt(of, lip_m)),
        upper_from(of.depth() - kWallShown_m / of.slant()),
        lower_to(lip_m + kWallShown_m / of.slant()),
        is_broken(upper_from - kGapShown_m / of.slant() > lower_to) {}

  double axisAt(double z_m) const { return tank.clearOffset(z_m) - off_m * tank.slant(); }
  double edge_m() const { return tank.pitProfile().points.back().offset_m; }
  double clamp_m() const {
    const double rim = tank.clearOffset(tank.depth()) + kBlockHalf_m;
    return std::max(rim, (tank.pitOffset(tank.depth()) + edge_m()) / 2);
  }
};

/// A piece of the wall between two levels.
struct Piece {
  const Way& way;
  WallCut cut;
  double from_m, to_m;

  bool hasFloor() const { return from_m <= cut.bottom_m() + 1e-9; }
  bool hasRim() const { return to_m >= way.tank.depth() - 1e-9; }
  double left() const { return cut.at(way.axisAt(std::max(from_m, 0.)) - 3 * way.half_m - kInside_m, 0).x(); }
  double right() const {
    if (hasRim()) return cut.at(std::max(way.edge_m(), way.clamp_m()) + kOutside_m, 0).x();
    return cut.at(way.tank.pitOffset(to_m), 0).x() + kEarth_mm;
  }
  double y(double z_m) const { return cut.at(0, z_m).y(); }
  QPointF pit(double z_m) const { return cut.at(way.tank.pitOffset(z_m), z_m); }

  /// Edge of what is dug, from below up, with the ground beside the rim.
  QPolygonF edge() const {
    QPolygonF line;
    line << (hasFloor() ? QPointF(left(), y(from_m)) : pit(from_m));
    for (const ProfilePoint& p : way.tank.pitProfile().points) {
      if (p.z_m > from_m - 1e-9 && p.z_m < to_m + 1e-9) line << cut.at(p.offset_m, p.z_m);
    }
    line << (hasRim() ? QPointF(right(), y(to_m)) : pit(to_m));
    return line;
  }
};

void addGround(Figure& figure, const Piece& piece) {
  const QPolygonF edge = piece.edge();
  const double foot = piece.y(piece.from_m) + (piece.hasFloor() ? kEarth_mm : 0);
  QPolygonF area = edge;
  area << QPointF(piece.right(), edge.back().y()) << QPointF(piece.right(), foot)
       << QPointF(edge.front().x(), foot);
  figure.add(earthHatch(polygonPath(area)), Line::hatch);
  QPainterPath line;
  line.addPolygon(edge);
  figure.add(line, Line::outline);
}

void addLayers(Figure& figure, const Piece& piece) {
  QPainterPath frame;
  frame.addRect(
      QRectF(QPointF(piece.left(), piece.y(piece.to_m)), QPointF(piece.right(), piece.y(piece.from_m))));
  int coat = 0;
  for (const auto& layer : piece.way.tank.layers()) {
    if (layer.id.starts_with("coat_")) ++coat;
    const QPainterPath face = piece.cut.face(layer.id).intersected(frame);
    if (layer.id == "stone_bed" && !face.isEmpty()) {
      QRectF bed = face.boundingRect();
      bed.setRight(piece.pit(piece.cut.bottom_m()).x());
      figure.add(stones(bed), Line::thin);
    } else {
      const CoatHatch hatch = coatHatch(face, std::max(1, coat));
      figure.addSolid(hatch.dots);
      figure.add(hatch.lines, Line::hatch);
    }
    if (layer.id == "cove") figure.add(face, Line::thin);
    if (layer.id == "rim" && piece.hasRim()) {  // joint between the coats and the collar
      const double rim = piece.way.tank.depth();
      figure.add(piece.pit(std::max(piece.from_m, rim - layer.thickness_m)), piece.pit(rim), Line::thin);
    }
  }
}

/// A face of the wall, and of the floor where the piece has it.
void addFace(Figure& figure, const Piece& piece, double behind_m, Line line) {
  const double foot = std::max(piece.from_m, -behind_m);
  QPainterPath path(piece.cut.behind(behind_m, piece.to_m));
  path.lineTo(piece.cut.behind(behind_m, foot));
  if (foot > piece.from_m) path.lineTo(piece.left(), piece.y(foot));
  figure.add(path, line);
}

void addPiece(Figure& figure, const Piece& piece) {
  const TankGeometry& tank = piece.way.tank;
  addGround(figure, piece);
  addLayers(figure, piece);
  addFace(figure, piece, 0, Line::edge);
  for (const CoatBehind& coat : coatsBehind(tank)) {
    if (coat.number > 1) addFace(figure, piece, coat.to_m, Line::thin);
  }
  if (piece.hasFloor() && tank.stoneBed() > 0)
    figure.add({piece.left(), piece.y(-tank.liningThickness())}, piece.pit(-tank.liningThickness()),
               Line::thin);
  if (piece.hasRim())
    figure.add(piece.cut.behind(0, tank.depth()), piece.cut.at(piece.way.edge_m(), tank.depth()), Line::edge);
  if (piece.hasFloor()) addBreak(figure, {piece.left(), piece.y(0)}, {piece.left(), piece.y(piece.from_m)});
  for (const double z : {piece.from_m, piece.to_m}) {
    const bool is_end = z == piece.from_m ? piece.hasFloor() : piece.hasRim();
    if (!is_end) addBreak(figure, piece.cut.behind(0, z), piece.pit(z));
  }
}

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
QPolygonF axis(const Piece& piece, double to_m) {
  const Way& way = piece.way;
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

void addMouth(Figure& figure, const Piece& piece, const QPolygonF& line) {
  const double half = piece.cut.mm(piece.way.half_m);
  const QPointF end = line.back(), before = line[line.size() - 2];
  const QPointF down = (end - before) / std::hypot(end.x() - before.x(), end.y() - before.y());
  const QPointF aside(-down.y() * half, down.x() * half), neck = end - down * 2 * half;
  QPolygonF shaft = line;
  shaft.back() = neck;
  figure.add(polygonPath(band(shaft, half)), Line::edge);
  figure.add(polygonPath({neck + aside, end + 2 * aside, end - 2 * aside, neck - aside}), Line::edge);
}

void addClamp(Figure& figure, const Piece& piece) {
  const Way& way = piece.way;
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
  const Way way(tank, pipe);
  const WallCut high(tank, n, origin_mm);
  const double up = way.is_broken ? way.upper_from - kGapShown_m / tank.slant() - way.lower_to : 0;
  const WallCut low(tank, n, high.at(tank.batter() * up, up));
  const Piece upper{way, high, way.is_broken ? way.upper_from : high.bottom_m(), tank.depth()};
  const Piece lower{way, low, low.bottom_m(), way.is_broken ? way.lower_to : tank.depth()};
  addPiece(figure, upper);
  if (way.is_broken) {
    addPiece(figure, lower);
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
