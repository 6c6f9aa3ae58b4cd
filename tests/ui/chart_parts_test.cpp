#include "tests/ui/water_charts_support.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_colours.h"
#include "ui/drawings/contours.h"

#include <cmath>

#include <catch2/catch.hpp>

using support::contrast;
using support::luminance;
using support::readers;
using ui::Formatter;
namespace drawings = ui::drawings;

TEST_CASE("contours of known fields lie where they must") {
  drawings::ValueGrid grid;
  for (int k = 0; k <= 80; ++k) grid.x_mm.push_back(k * 0.5);
  grid.y_mm = grid.x_mm;
  for (const double y : grid.y_mm) {
    for (const double x : grid.x_mm)
      grid.values.push_back(static_cast<float>(12 - std::hypot(x - 20, y - 20)));
  }
  const auto round = drawings::contoursAt(grid, 0);
  double area = 0;
  for (const QPolygonF& loop : round.region.toSubpathPolygons()) {
    for (qsizetype k = 1; k < loop.size(); ++k)
      area += (loop[k - 1].x() * loop[k].y() - loop[k].x() * loop[k - 1].y()) / 2;
  }
  CHECK(std::abs(area) == Approx(M_PI * 12 * 12).epsilon(0.002));
  for (int k = 0; k < round.lines.elementCount(); ++k) {
    const QPointF at = round.lines.elementAt(k);
    CHECK(std::hypot(at.x() - 20, at.y() - 20) == Approx(12).epsilon(0.002));
  }
  for (std::size_t k = 0; k < grid.values.size(); ++k)
    grid.values[k] = static_cast<float>(grid.x_mm[k % 81] + 2 * grid.y_mm[k / 81]);
  const auto slanted = drawings::contoursAt(grid, 60.3);
  REQUIRE(slanted.lines.elementCount() > 20);
  for (int k = 0; k < slanted.lines.elementCount(); ++k) {
    const QPointF at = slanted.lines.elementAt(k);
    CHECK(at.x() + 2 * at.y() == Approx(60.3).epsilon(1e-6));
  }
  CHECK(slanted.lines.boundingRect() == QRectF(QPointF(0, 10.15), QPointF(40, 30.15)));
  CHECK(drawings::contoursAt(grid, 1000).region.isEmpty());
  CHECK(drawings::contoursAt(grid, -1).region.boundingRect() == QRectF(0, 0, 40, 40));
  CHECK(drawings::contoursAt(grid, -1).lines.isEmpty());
}

TEST_CASE("the ramp goes in even steps of lightness that grey keeps apart") {
  // sRGB primaries in L*a*b* under D65 (IEC 61966-2-1 with CIE 15), values from memory
  const auto near = [](const QColor& a, const QColor& b) {
    return std::abs(a.red() - b.red()) <= 1 && std::abs(a.green() - b.green()) <= 1 &&
           std::abs(a.blue() - b.blue()) <= 1;
  };
  CHECK(near(drawings::fromLab(53.24, 80.09, 67.20), QColor(255, 0, 0)));
  CHECK(near(drawings::fromLab(87.73, -86.18, 83.18), QColor(0, 255, 0)));
  CHECK(near(drawings::fromLab(32.30, 79.19, -107.86), QColor(0, 0, 255)));
  CHECK(near(drawings::fromLab(100, 0, 0), QColor(255, 255, 255)));
  for (const bool dark : {false, true}) {
    const std::vector<QColor> colours = drawings::ramp(6, dark);
    for (std::size_t k = 1; k < colours.size(); ++k) {
      CHECK(contrast(colours[k - 1], colours[k]) > 1.25);
      CHECK((luminance(colours[k]) > luminance(colours[k - 1])) == dark);
    }
  }
}

TEST_CASE("axes count in ones, twos and fives of the reader's unit") {
  for (const double most : {0.37, 1., 4.2, 22.5, 63., 99., 640., 2400.}) {
    for (const Formatter& format : readers()) {
      const drawings::AxisUnit unit = drawings::volumeUnit(most);
      const auto ticks = drawings::plainTicks(0, most, 6, unit, format);
      REQUIRE(ticks.size() >= 2);
      CHECK(ticks.size() <= 7);
      CHECK(ticks.back().value <= most * (1 + 1e-9));
      const double step = (ticks[1].value - ticks[0].value) * unit.shownPerValue(format);
      const double digit = step / std::pow(10, std::floor(std::log10(step) + 1e-9));
      INFO(most << " " << step);
      CHECK((digit == Approx(1) || digit == Approx(2) || digit == Approx(5)));
      const auto read = format.parse(ticks[1].text, unit.unit);
      REQUIRE(read);
      CHECK(*read == Approx(ticks[1].value * unit.per_value).epsilon(1e-9));
    }
  }
}
