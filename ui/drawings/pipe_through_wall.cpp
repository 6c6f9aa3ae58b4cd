#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/pipe_sections.h"
#include "ui/drawings/wall_cut.h"

#include <algorithm>

namespace ui::drawings {
namespace {

using core::geometry::TankGeometry;

constexpr double kMortar_m = 0.08;  // about the pipe, and beyond the pit wall
constexpr double kWall_m = 0.1;     // wall shown above and below the mortar, along its slope
constexpr double kInside_m = 0.1, kOutside_m = 0.15;

/// A piece of wall about the pipe's axis, which is at level 0.
struct Piece {
  WallCut cut;
  double pipe_m, collar_m, wall_m;  // half heights

  Piece(const TankGeometry& tank, const DrawnPipe& pipe, double n, QPointF origin)
      : cut(tank, n, origin),
        pipe_m(pipe.outside_m / 2),
        collar_m(pipe_m + kMortar_m),
        wall_m(collar_m + kWall_m / tank.slant()) {}

  double pit() const { return cut.tank().liningThickness(); }
  QPointF beyondPit(double z_m) const { return cut.behind(pit(), z_m) + QPointF(cut.mm(kMortar_m), 0); }
  double right() const { return cut.behind(pit(), wall_m).x() + cut.mm(kOutside_m); }
  double left() const { return cut.behind(0, -pipe_m).x() - cut.mm(kInside_m); }
  double y(double z_m) const { return cut.at(0, z_m).y(); }
};

void addCoats(Figure& figure, const Piece& piece, double from_m, double to_m) {
  for (const CoatBehind& coat : coatsBehind(piece.cut.tank())) {
    const auto at = [&](double behind_m, double z_m) { return piece.cut.behind(behind_m, z_m); };
    const CoatHatch hatch = coatHatch(polygonPath({at(coat.from_m, from_m), at(coat.to_m, from_m),
                                                   at(coat.to_m, to_m), at(coat.from_m, to_m)}),
                                      coat.number);
    figure.addSolid(hatch.dots);
    figure.add(hatch.lines, Line::hatch);
    if (coat.number > 1) figure.add(at(coat.to_m, from_m), at(coat.to_m, to_m), Line::thin);
  }
  figure.add(piece.cut.behind(0, from_m), piece.cut.behind(0, to_m), Line::edge);
  figure.add(piece.cut.behind(piece.pit(), from_m), piece.cut.behind(piece.pit(), to_m), Line::outline);
}

/// Collar and ground on one side of the pipe: above (1) or below (-1).
void addSide(Figure& figure, const Piece& piece, double side) {
  const double axis = side * piece.pipe_m, edge = side * piece.collar_m, end = side * piece.wall_m;
  const double right = piece.right();
  const QPainterPath collar = polygonPath(
      {piece.cut.behind(0, axis), piece.beyondPit(axis), piece.beyondPit(edge), piece.cut.behind(0, edge)});
  const QPainterPath ground = polygonPath({piece.cut.behind(piece.pit(), edge),
                                           piece.beyondPit(edge),
                                           piece.beyondPit(axis),
                                           {right, piece.y(axis)},
                                           {right, piece.y(end)},
                                           piece.cut.behind(piece.pit(), end)});
  figure.add(earthHatch(ground), Line::hatch);
  addCoats(figure, piece, edge, end);
  figure.addSolid(dotHatch(collar, 1.2, 0.55));
  figure.add(collar, Line::edge);
}

void addPipe(Figure& figure, const Piece& piece) {
  const double left = piece.left(), right = piece.right() + 3;
  for (const double z : {piece.pipe_m, -piece.pipe_m})
    figure.add({left, piece.y(z)}, {right, piece.y(z)}, Line::edge);
  figure.add({left, piece.y(piece.pipe_m)}, {left, piece.y(-piece.pipe_m)}, Line::edge);
  figure.add({left - 3, piece.y(0)}, {right + 2, piece.y(0)}, Line::centre);
}

}  // namespace

std::vector<CoatBehind> coatsBehind(const TankGeometry& tank) {
  std::vector<CoatBehind> coats;
  double behind = 0;
  for (auto layer = tank.layers().rbegin(); layer != tank.layers().rend(); ++layer) {
    if (!core::geometry::isCoat(*layer)) continue;
    coats.push_back({std::stoi(layer->id.substr(5)), behind, behind + layer->thickness_m});
    behind += layer->thickness_m;
  }
  return coats;
}

PipeMarks addPipeThroughWall(Figure& figure, const TankGeometry& tank, const DrawnPipe& pipe, double n,
                             QPointF origin_mm) {
  const Piece piece(tank, pipe, n, origin_mm);
  addSide(figure, piece, 1);
  addSide(figure, piece, -1);
  addPipe(figure, piece);
  for (const double z : {piece.wall_m, -piece.wall_m})
    addBreak(figure, piece.cut.behind(0, z), piece.cut.behind(piece.pit(), z));
  const double upper = (piece.collar_m + piece.wall_m) / 2, in_pipe = piece.y(-piece.pipe_m / 2);
  return {{{PipePart::clear_face, piece.cut.behind(0, upper)},
           {PipePart::pipe, {piece.left() + 2, in_pipe}},
           {PipePart::coats, piece.cut.behind(piece.pit() / 2, -upper)}},
          {{PipePart::pit_wall, piece.cut.behind(piece.pit(), upper)},
           {PipePart::collar,
            piece.beyondPit((piece.pipe_m + piece.collar_m) / 2) - QPointF(piece.cut.mm(kMortar_m) / 2, 0)},
           {PipePart::goes_on, {piece.right() + 1, in_pipe}}}};
}

}  // namespace ui::drawings
