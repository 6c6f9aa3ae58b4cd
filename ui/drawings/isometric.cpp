#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/isometric_parts.h"
#include "ui/drawings/isometric_picture.h"
#include "ui/drawings/isometric_view.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::Built;
using core::geometry::TankGeometry;
using Eigen::Vector2d;

constexpr double kLeastBar_mm = 8, kBarHigh_mm = 1.6, kBarGap_mm = 1.6;
constexpr double kLargestScale = 10, kSmallestScale = 5000;
constexpr double kFoot_m = 0.3048;

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
