#include "ui/drawings/scale.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <ranges>
#include <utility>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

constexpr std::array kRoundScales{2., 5., 10., 20., 25., 50., 75., 100., 200., 500., 1000., 2000., 5000.};
constexpr double kNearlyFits = 0.95;
constexpr double kFoot_m = 0.3048;
constexpr double kLeastInFeet = 40;  // larger scales have their bar in inches

/// How much a drawing must shrink to fit the box, at most 1.
double reduction(const Figure& figure, const QRectF& box) {
  const QRectF bounds = figure.bounds();
  return std::min({1., box.width() / bounds.width(), box.height() / bounds.height()});
}

struct Fitted {
  Figure figure;
  double n;
};

/// How well a drawing shows: large things count, and large lettering counts twice as much.
double showing(const Figure& figure, double n, const QRectF& box) {
  const double reduce = reduction(figure, box);
  return reduce * reduce * reduce / n;
}

Fitted atRoundScale(const QRectF& box, const std::vector<Draw>& ways) {
  Fitted best{ways.front()(kRoundScales.back()), kRoundScales.back()};
  for (const double n : kRoundScales) {
    for (const Draw& draw : ways) {
      Fitted made{draw(n), n};
      if (reduction(made.figure, box) == 1) return made;
      if (showing(made.figure, n, box) > showing(best.figure, best.n, box)) best = std::move(made);
    }
  }
  return best;
}

Fitted asLargeAsFits(const QRectF& box, const Draw& draw) {
  Fitted best{draw(kRoundScales.back()), kRoundScales.back()};
  const auto tryScales = [&](double from, double to, double step) {
    double n = from;
    while (n <= to) {
      Figure figure = draw(n);
      if (showing(figure, n, box) > showing(best.figure, best.n, box)) best = {std::move(figure), n};
      n *= step;
    }
  };
  tryScales(kRoundScales.front(), kRoundScales.back(), 1.6);
  tryScales(best.n / 1.5, best.n * 1.5, 1.1);
  tryScales(best.n / 1.08, best.n * 1.08, 1.02);
  while (reduction(best.figure, box) < 1 && reduction(best.figure, box) > kNearlyFits) {
    best = {draw(best.n * 1.01), best.n * 1.01};
  }
  return best;
}

Fitted bestOf(const QRectF& box, const std::vector<Draw>& ways) {
  Fitted best = asLargeAsFits(box, ways.front());
  for (const Draw& draw : ways | std::views::drop(1)) {
    Fitted other = asLargeAsFits(box, draw);
    if (showing(other.figure, other.n, box) > showing(best.figure, best.n, box)) best = std::move(other);
  }
  return best;
}

/// Length of one field of the scale bar in the reader's unit, at least `least`.
double niceStep(double least) {
  const double decade = std::pow(10, std::floor(std::log10(least)));
  for (const double k : {1., 2., 5.}) {
    if (k * decade >= least * 0.999) return k * decade;
  }
  return 10 * decade;
}

}  // namespace

int paintFitted(QPainter& painter, const QRectF& box_mm, const Style& style, const std::vector<Draw>& ways) {
  const Fitted fitted = style.fixed_scale ? atRoundScale(box_mm, ways) : bestOf(box_mm, ways);
  const QRectF bounds = fitted.figure.bounds();
  const double reduce = reduction(fitted.figure, box_mm);
  painter.save();
  painter.translate(box_mm.center());
  painter.scale(reduce, reduce);
  painter.translate(-bounds.center());
  fitted.figure.paint(painter, style.dark ? QColor(0xf0, 0xf0, 0xf0) : QColor(Qt::black), 1 / reduce);
  painter.restore();
  return static_cast<int>(std::lround(fitted.n / reduce));
}

int paintFitted(QPainter& painter, const QRectF& box_mm, const Style& style, const Draw& draw) {
  return paintFitted(painter, box_mm, style, std::vector{draw});
}

void addScaleBar(Figure& figure, QPointF at, double n, const Formatter& format, const Style& style) {
  const Lettering lettering{style.text_mm};
  const double unit_m = format.system() == UnitSystem::metric ? 1 : n < kLeastInFeet ? kFoot_m / 12 : kFoot_m;
  const double step_m = niceStep(9 * n / 1000 / unit_m) * unit_m;
  const double step = step_m * 1000 / n, high = 2;
  for (int k = 0; k < 4; ++k) {
    QPainterPath field;
    field.addRect(at.x() + k * step, at.y(), step, high);
    figure.add(field, Line::thin);
    if (k % 2 == 0) figure.addSolid(field);
  }
  const double below = at.y() + high + 0.8 + ascent_mm(lettering);
  const QString end = format.quantity(4 * step_m, core::Unit::metre, 4 * step_m < 1 ? 2 : 0);
  figure.addText(format.integer(0), {at.x(), below}, lettering, Align::left);
  figure.addText(end, {at.x() + 4 * step, below}, lettering, Align::centre);
  if (!style.fixed_scale) return;
  const QString ratio = Text::tr("Scale 1 : %1").arg(format.integer(static_cast<int>(std::lround(n))));
  figure.addText(ratio, {at.x() + 4 * step + width_mm(end, lettering) / 2 + 6, at.y() + ascent_mm(lettering)},
                 lettering);
}

}  // namespace ui::drawings
