#include "core/geometry/pegs.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/isometric_patterns.h"
#include "ui/drawings/isometric_picture.h"
#include "ui/drawings/isometric_view.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"

#include <QTransform>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::Built;
using core::geometry::TankGeometry;
using Eigen::Vector2d;

constexpr double kEarth_mm = 5;  // depth of the hatched ground
constexpr double kLeastPeg_mm = 3.2, kPegWide_mm = 1;
constexpr double kLeastBar_mm = 8, kBarHigh_mm = 1.6, kBarGap_mm = 1.6;
constexpr double kLeastDotted_mm = 4;  // narrower faces have no dots
constexpr double kLargestScale = 10, kSmallestScale = 5000;
constexpr double kFoot_m = 0.3048;

double pegUp(const IsometricView& view) {
  return std::max(kLeastPeg_mm, view.mm(core::geometry::kPegUp_m));
}

/// A line with round ends, so that lines that meet leave no notch.
void addStroke(Figure& figure, const QPolygonF& points, Line line) {
  QPainterPath path;
  path.addPolygon(points);
  figure.add(path, line);
  QPainterPath ends;
  for (const QPointF end : {points.front(), points.back()})
    ends.addEllipse(end, width_mm(line) / 2, width_mm(line) / 2);
  figure.addSolid(ends);
}

/// Plaster: sparse dots, closer with each coat.
void addPlaster(Figure& figure, const QPainterPath& face, int coat) {
  if (face.boundingRect().height() < kLeastDotted_mm) return;
  figure.addSolid(dotHatch(face, std::max(2.6, 6 - 1.1 * coat), 0.5));
}

void addFace(Figure& figure, const Picture& picture, const Chain& chain, const Strip& strip) {
  const QPainterPath face = picture.ring.face(picture.view, chain, strip);
  figure.addBlank(face);
  if (picture.hasSacks(strip)) {
    figure.add(cloth(face), Line::hatch);
  } else if (picture.isPlaster(strip) && !strip.isLevel()) {
    addPlaster(figure, face, picture.coats());
  }
  for (std::size_t k = 0; k < chain.size(); ++k) {
    const bool is_end = k == 0 || k + 1 == chain.size();
    if (strip.isLevel() || !(picture.ring.hasCorners() || (is_end && strip.goesDown()))) continue;
    addStroke(figure,
              {picture.ring.at(picture.view, chain[k], strip.inner),
               picture.ring.at(picture.view, chain[k], strip.outer)},
              Line::edge);
  }
}

void addStrip(Figure& figure, const Picture& picture, const Chain& half, std::size_t k) {
  const Strip strip = picture.strip(k);
  for (const Chain& chain : picture.ring.seen(half, strip)) addFace(figure, picture, chain, strip);
}

void addRing(Figure& figure, const Picture& picture, const Chain& half, std::size_t k) {
  if (const auto line = picture.lines[k])
    addStroke(figure, picture.ring.line(picture.view, half, picture.points[k]), *line);
}

void addFloor(Figure& figure, const Picture& picture) {
  const QPainterPath seen = picture.seenFloor();
  figure.addBlank(polygonPath(picture.ring.outline(picture.view, picture.points.front())));
  if (picture.hasWater()) {
    figure.add(stillWater(seen), Line::thin);
  } else if (picture.coats() > 0) {
    addPlaster(figure, seen, picture.coats());
  } else if (picture.hasBed()) {
    figure.add(stonesOnFloor(seen), Line::thin);
  }
  addRing(figure, picture, picture.ring.farSides(), 0);
}

/// From what lies behind to what lies before: the far sides from the edge down to the floor, then the near
/// ones from the floor up.
void addPit(Figure& figure, const Picture& picture) {
  const SeenRing& ring = picture.ring;
  const std::size_t steps = picture.points.size() - 1;
  for (std::size_t k = steps; k-- > 0;) {
    addStrip(figure, picture, ring.farSides(), k);
    if (k + 1 < steps && !picture.strip(k).goesDown()) addRing(figure, picture, ring.farSides(), k + 1);
  }
  addFloor(figure, picture);
  for (std::size_t k = 0; k < steps; ++k) {
    addStrip(figure, picture, ring.nearSides(), k);
    if (!ring.seen(ring.nearSides(), picture.strip(k)).empty()) addRing(figure, picture, ring.nearSides(), k);
  }
}

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

/// The two sides of the block that face the viewer.
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

/// Room of the block with its pegs.
QRectF roomOf(const Block& block, const IsometricView& view) {
  QPolygonF corners;
  for (int k = 0; k < 4; ++k) {
    corners << view.at(block.corner(k), block.top_m) << view.at(block.corner(k), block.bottom_m);
  }
  const double line = width_mm(Line::outline);
  return corners.boundingRect().adjusted(-line, -line - pegUp(view), line, line);
}

double barLength(const IsometricView& view, UnitSystem system) {
  const double unit_m = system == UnitSystem::metric ? 1 : kFoot_m;
  for (const double k : {1., 2., 5., 10., 20., 50.}) {
    if (view.mm(k * unit_m) >= kLeastBar_mm) return k * unit_m;
  }
  return 100 * unit_m;
}

/// A bar below the left edge in front, along it.
void addBar(Figure& figure, const Block& block, const IsometricView& view, const Formatter& format,
            const Style& style) {
  const Lettering lettering{style.text_mm};
  const double length_m = barLength(view, format.system());
  const Vector2d first = block.corner(0), along(length_m / 2, 0);
  const QPointF down(0, kBarGap_mm), high(0, kBarHigh_mm);
  for (int k = 0; k < 2; ++k) {
    const QPointF from = view.at(first + k * along, block.bottom_m) + down;
    const QPointF to = view.at(first + (k + 1) * along, block.bottom_m) + down;
    const QPainterPath field = polygonPath({from, to, to + high, from + high});
    figure.add(field, Line::thin);
    if (k == 0) figure.addSolid(field);
  }
  const QString text = format.quantity(length_m, core::Unit::metre, 0);
  const QPointF start = view.at(first, block.bottom_m);
  const double run =
      std::min(width_mm(text, lettering), view.at(first + 2 * along, 0).x() - view.at(first, 0).x());
  const double below = start.y() + kBarGap_mm + kBarHigh_mm + run / std::sqrt(3.) + 0.6;
  figure.addText(text, {start.x(), below + ascent_mm(lettering, text)}, lettering);
}

Figure isometricFigure(const core::Plan& plan, const Formatter& format, const Style& style,
                       const Built& built, double n) {
  const TankGeometry& tank = plan.geometry;
  const IsometricView view(n);
  const Block block(tank);
  Figure figure;
  figure.addLater(roomOf(block, view), [&tank, built, n](Figure& object) {
    const Picture picture(tank, built, n);
    if (picture.isDug()) addPit(object, picture);
    addGround(object, picture);
    addBlockSides(object, picture);
    if (built.has_pegs) addPegs(object, picture);
  });
  addBar(figure, block, view, format, style);
  return figure;
}

/// The next scale down, in about twentieths.
double nextScale(double n) {
  const double decade = std::pow(10, std::floor(std::log10(n)));
  return n + decade * (n < 2 * decade ? 0.1 : n < 5 * decade ? 0.2 : 0.5);
}

}  // namespace

int drawIsometric(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                  const Style& style, const Built& built) {
  double n = kLargestScale;
  Figure figure = isometricFigure(plan, format, style, built, n);
  const auto fits = [&] {
    return figure.bounds().width() <= box_mm.width() && figure.bounds().height() <= box_mm.height();
  };
  while (!fits() && n < kSmallestScale) {
    n = nextScale(n);
    figure = isometricFigure(plan, format, style, built, n);
  }
  paintFitted(painter, box_mm, style, [&](double) { return figure; });
  return static_cast<int>(std::lround(n));
}

}  // namespace ui::drawings
