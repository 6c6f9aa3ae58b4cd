#include "ui/drawings/pipe_wall.h"

#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::ProfilePoint;
using core::geometry::TankGeometry;

constexpr double kWallShown_m = 0.15;  // along the slope, below the rim and above the mouth
constexpr double kGapShown_m = 0.04;   // between the two pieces
constexpr double kOutside_m = 0.1, kInside_m = 0.05;
constexpr double kOff_m = 0.02;       // between wall and mouth
constexpr double kMostCrest_m = 0.3;  // a higher crest is drawn at this
constexpr double kClampIn_m = 0.07;   // from the clear edge, at least
constexpr double kEarth_mm = 6;

void addGround(Figure& figure, const WallPiece& piece) {
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

void addLayers(Figure& figure, const WallPiece& piece) {
  QPainterPath frame;
  frame.addRect(
      QRectF(QPointF(piece.left(), piece.y(piece.to_m)), QPointF(piece.right(), piece.y(piece.from_m))));
  int coat = 0;
  for (const auto& layer : piece.way.tank.layers()) {
    if (core::geometry::isCoat(layer)) ++coat;
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
void addFace(Figure& figure, const WallPiece& piece, double behind_m, Line line) {
  const double foot = std::max(piece.from_m, -behind_m);
  QPainterPath path(piece.cut.behind(behind_m, piece.to_m));
  path.lineTo(piece.cut.behind(behind_m, foot));
  if (foot > piece.from_m) path.lineTo(piece.left(), piece.y(foot));
  figure.add(path, line);
}

}  // namespace

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

PipeWay::PipeWay(const TankGeometry& of, const DrawnPipe& pipe)
    : tank(of),
      half_m(pipe.outside_m / 2),
      axis_m(of.depth() + std::clamp(pipe.crest_m, half_m, std::max(half_m, kMostCrest_m))),
      lip_m(of.deadLevel() + half_m),
      off_m(pipe.outside_m + kOff_m + coveAt(of, lip_m)),
      upper_from(of.depth() - kWallShown_m / of.slant()),
      lower_to(lip_m + kWallShown_m / of.slant()),
      is_broken(upper_from - kGapShown_m / of.slant() > lower_to) {}

double PipeWay::clamp_m() const {
  const double rim = tank.clearOffset(tank.depth()) + kClampIn_m;
  return std::max(rim, (tank.pitOffset(tank.depth()) + edge_m()) / 2);
}

double PipeWay::drawnUp_m() const {
  return is_broken ? upper_from - kGapShown_m / tank.slant() - lower_to : 0;
}

double WallPiece::left() const {
  return cut.at(way.axisAt(std::max(from_m, 0.)) - 3 * way.half_m - kInside_m, 0).x();
}

double WallPiece::right() const {
  if (hasRim()) return cut.at(std::max(way.edge_m(), way.clamp_m()) + kOutside_m, 0).x();
  return cut.at(way.tank.pitOffset(to_m), 0).x() + kEarth_mm;
}

QPolygonF WallPiece::edge() const {
  QPolygonF line;
  line << (hasFloor() ? QPointF(left(), y(from_m)) : pit(from_m));
  for (const ProfilePoint& p : way.tank.pitProfile().points) {
    if (p.z_m > from_m - 1e-9 && p.z_m < to_m + 1e-9) line << cut.at(p.offset_m, p.z_m);
  }
  line << (hasRim() ? QPointF(right(), y(to_m)) : pit(to_m));
  return line;
}

void addWallPiece(Figure& figure, const WallPiece& piece) {
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

}  // namespace ui::drawings
