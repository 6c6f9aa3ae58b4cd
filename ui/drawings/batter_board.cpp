#include "ui/drawings/dimensions.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::BatterMark;

constexpr double kMostUp_m = 1;                  // height of the board
constexpr double kBatten_m = 0.07;               // width of its wood
constexpr double kAbove_mm = 4, kBelow_mm = 12;  // wall shown beyond the board
constexpr double kEarth_mm = 8;                  // ground shown behind the wall
constexpr double kPlumbOut_mm = 3.5;             // string beside the board's plumb side
constexpr double kBobWide_mm = 2.6, kBobHigh_mm = 5;
constexpr double kLevelHigh_mm = 3, kLevelLong_mm = 22, kLeastLevel_mm = 8;
constexpr double kTextOff_mm = 8;

/// The mark of the batter that the board is cut to: 1 m down, or the pit's floor where that is less deep.
const BatterMark& boardMark(const core::Plan& plan) {
  const auto& marks = plan.setting_out.batter;
  const auto deeper = std::ranges::find_if(
      marks, [](const BatterMark& mark) { return mark.below_ground_m > kMostUp_m + 1e-9; });
  return deeper == marks.begin() ? *deeper : *(deeper - 1);
}

/// The board at a scale, its upper end of the plumb side at the origin.
struct Board {
  double up, out, wood;  // [mm]
  bool leans;

  Board(const BatterMark& mark, double n)
      : up(mark.below_ground_m * 1000 / n),
        out(mark.in_from_edge_m * 1000 / n),
        wood(kBatten_m * 1000 / n),
        leans(mark.in_from_edge_m > 0) {}

  double left() const { return leans ? 0 : -wood; }
  /// The wall where it is `y` below the board's top.
  QPointF wall(double y) const { return {out * (1 - y / up), y}; }
};

QPainterPath boardPath(const Board& board) {
  if (!board.leans) return polygonPath({{-board.wood, 0}, {0, 0}, {0, board.up}, {-board.wood, board.up}});
  return polygonPath({{0, 0}, {board.out, 0}, {0, board.up}});
}

/// The hole between three battens; none where the board is cut from one piece.
QPainterPath holePath(const Board& board) {
  const double radius = (board.up + board.out - std::hypot(board.up, board.out)) / 2;
  if (!board.leans || radius < 1.6 * board.wood) return {};
  const double share = 1 - board.wood / radius;
  const QPointF centre(radius, radius);
  QPolygonF hole;
  for (const QPointF corner : {QPointF(0, 0), QPointF(board.out, 0), QPointF(0, board.up)})
    hole << centre + (corner - centre) * share;
  return polygonPath(hole);
}

void addWall(Figure& figure, const Board& board) {
  const QPointF top = board.wall(-kAbove_mm), foot = board.wall(board.up + kBelow_mm), deep(kEarth_mm, 0);
  figure.add(earthHatch(polygonPath({top, top + deep, foot + deep, foot})), Line::hatch);
  figure.add(top, foot, Line::outline);
}

void addPlumbLine(Figure& figure, const Board& board) {
  const double x = board.left() - kPlumbOut_mm, foot = board.up - kBobHigh_mm - 1;
  figure.add({board.left(), 0.5}, {x - 1, 0.5}, Line::edge);
  figure.add({x, 0.5}, {x, foot}, Line::thin);
  figure.addSolid(
      polygonPath({{x - kBobWide_mm / 2, foot}, {x + kBobWide_mm / 2, foot}, {x, foot + kBobHigh_mm}}));
}

void addLevel(Figure& figure, const Board& board) {
  const double length = std::clamp(board.out - 1, kLeastLevel_mm, kLevelLong_mm);
  const double left = std::min(board.out / 2 - length / 2, board.out - 1.5 - length);
  const QRectF level(left, -kLevelHigh_mm - 0.3, length, kLevelHigh_mm);
  QPainterPath body, bubble;
  body.addRect(level);
  bubble.addEllipse(level.center(), 1.4, 0.7);
  figure.add(body, Line::thin);
  figure.addSolid(bubble);
}

std::vector<Leader> leaders(const Board& board) {
  const QPointF plumb(board.left() - kPlumbOut_mm, board.up * 0.72);
  std::vector<Leader> all{
      {plumb, Text::tr("plumb line and bob")},
      {board.wall(board.up + kBelow_mm * 0.6) + QPointF(kEarth_mm / 2, 0), Text::tr("ground")}};
  if (board.leans) {
    all.push_back({{std::min(board.out / 2, board.out - 1.5 - kLeastLevel_mm / 2), -kLevelHigh_mm / 2 - 0.3},
                   Text::tr("level side: spirit level or hose")});
    all.push_back({board.wall(board.up * 0.35), Text::tr("slanting side lies on the pit wall")});
  } else {
    all.push_back({board.wall(board.up * 0.35), Text::tr("straight staff stands on the pit wall")});
  }
  return all;
}

void addLengths(Figure& figure, const Board& board, const BatterMark& mark, const Formatter& format,
                const Lettering& lettering) {
  const auto length = [&](double m) { return format.quantity(m, core::Unit::metre, 2); };
  addRows(figure, Side::left, board.left() - kPlumbOut_mm - kBobWide_mm,
          {{0, board.up, board.left() - kPlumbOut_mm - 1, board.left(),
            Text::tr("%1 up").arg(length(mark.below_ground_m))}},
          lettering, LongText::one_line);
  if (!board.leans) return;
  addRows(figure, Side::above, -kLevelHigh_mm - 2,
          {{0, board.out, -kLevelHigh_mm - 0.5, -kLevelHigh_mm - 0.5,
            Text::tr("%1 out").arg(length(mark.in_from_edge_m))}},
          lettering, LongText::one_line);
}

void addNotes(Figure& figure, const Board& board, const Lettering& lettering) {
  const QRectF all = figure.bounds();
  double y = all.bottom() + 2 + ascent_mm(lettering);
  const QString lean = board.leans ? Text::tr("The board gives the lean of the pit wall, as it is dug.")
                                   : Text::tr("The pit wall is dug upright.");
  for (const QString& note : {lean, Text::tr("Plaster follows it: the clear wall leans the same.")}) {
    figure.addText(note, {all.left(), y}, lettering);
    y += height_mm(lettering) + 0.6;
  }
}

Figure boardFigure(const core::Plan& plan, const Formatter& format, const Style& style, double n) {
  const Lettering lettering{style.text_mm};
  const BatterMark& mark = boardMark(plan);
  const Board board(mark, n);
  Figure figure;
  addWall(figure, board);
  figure.add(boardPath(board), Line::edge);
  figure.add(holePath(board), Line::thin);
  addPlumbLine(figure, board);
  if (board.leans) addLevel(figure, board);
  const double text_x = board.wall(-kAbove_mm).x() + kEarth_mm + kTextOff_mm;
  addLengths(figure, board, mark, format, lettering);
  addLeaders(figure, leaders(board), text_x, lettering);
  addNotes(figure, board, lettering);
  addScaleBar(figure, {figure.bounds().left() + 2, figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawBatterBoard(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                    const Style& style) {
  return paintFitted(painter, box_mm, style, [&](double n) { return boardFigure(plan, format, style, n); });
}

}  // namespace ui::drawings
