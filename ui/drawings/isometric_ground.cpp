#include "core/geometry/pegs.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/isometric_parts.h"
#include "ui/drawings/paper.h"

#include <QTransform>
#include <algorithm>

namespace ui::drawings {
namespace {

using Eigen::Vector2d;

constexpr double kEarth_mm = 5;  // depth of the hatched ground
constexpr double kLeastPeg_mm = 3.2, kPegWide_mm = 1;

double pegUp(const IsometricView& view) {
  return std::max(kLeastPeg_mm, view.mm(core::geometry::kPegUp_m));
}

}  // namespace

void addGround(Figure& figure, const Picture& picture) {
  const Block& block = picture.block;
  QPolygonF square;
  for (int k = 0; k < 4; ++k) square << picture.view.at(block.corner(k), block.top_m);
  const QPainterPath edge = polygonPath(picture.ring.outline(picture.view, picture.points.back()));
  QPainterPath ground = polygonPath(square);
  if (picture.isDug()) ground.addPath(edge);
  figure.addBlank(ground);
  figure.add(polygonPath(square), Line::edge);
  if (picture.isDug()) figure.add(edge, Line::outline);
}

void addBlockSides(Figure& figure, const Picture& picture) {
  const Block& block = picture.block;
  const IsometricView& view = picture.view;
  for (int k = 0; k < 2; ++k) {
    const QPolygonF surface{view.at(block.corner(k), block.top_m), view.at(block.corner(k + 1), block.top_m)};
    const QPainterPath side = polygonPath(surface + QPolygonF{view.at(block.corner(k + 1), block.bottom_m),
                                                              view.at(block.corner(k), block.bottom_m)});
    const double deep = std::min(kEarth_mm, view.mm(block.top_m - block.bottom_m));
    QPainterPath band =
        polygonPath(surface + QPolygonF{surface[1] + QPointF(0, deep), surface[0] + QPointF(0, deep)});
    const QTransform turned =
        QTransform::fromScale(k == 0 ? 1 : -1, 1);  // square to the surface on both sides
    figure.addBlank(side);
    figure.add(turned.map(earthHatch(turned.map(band))), Line::hatch);
    figure.add(side, Line::edge);
  }
}

void addPegs(Figure& figure, const Picture& picture) {
  const IsometricView& view = picture.view;
  const double up = pegUp(view), string_up = up * core::geometry::kStringUp_m / core::geometry::kPegUp_m;
  const auto places = core::geometry::pegPlaces(picture.tank);
  const auto over = [&](const Vector2d& p, double mm) {
    return view.at(p, picture.block.top_m) - QPointF(0, mm);
  };
  for (const auto& [from, to] : places.strings)
    figure.add(over(from, string_up), over(to, string_up), Line::thin);
  QPainterPath pegs;
  for (const Vector2d& peg : places.pegs)
    pegs.addRect(QRectF(over(peg, up) - QPointF(kPegWide_mm / 2, 0), QSizeF(kPegWide_mm, up)));
  figure.addSolid(pegs);
}

QRectF roomOf(const Block& block, const IsometricView& view) {
  QPolygonF corners;
  for (int k = 0; k < 4; ++k) {
    corners << view.at(block.corner(k), block.top_m) << view.at(block.corner(k), block.bottom_m);
  }
  const double line = width_mm(Line::outline);
  return corners.boundingRect().adjusted(-line, -line - pegUp(view), line, line);
}

}  // namespace ui::drawings
