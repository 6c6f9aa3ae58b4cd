// Emptying times against the closed forms of falling head: the time through an orifice whose flow is c
// sqrt(h) is a sum of powers of the levels.
#include "core/hydraulics/emptying.h"
#include "core/hydraulics/gravity_line.h"

#include <cmath>

#include <catch2/catch.hpp>

using namespace core::hydraulics;
using core::water::TankCurve;

namespace {

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

/// Rectangle a x b at the floor, walls out by `batter` per metre.
TankCurve tank(double a, double b, double batter, double rim_m = 2) {
  TankCurve curve;
  curve.a0 = a * b;
  curve.a1 = 2 * (a + b) * batter;
  curve.a2 = 4 * batter * batter;
  curve.rim_level_m = curve.full_level_m = rim_m;
  return curve;
}

/// Antiderivative of surface(z) / (c sqrt(z)).
double closedForm(const TankCurve& t, double c, double z) {
  return (2 * t.a0 * std::sqrt(z) + 2.0 / 3 * t.a1 * std::pow(z, 1.5) + 2.0 / 5 * t.a2 * std::pow(z, 2.5)) /
         c;
}

OutflowAt orifice(double area_m2, double coefficient) {
  return [=](double level) { return *orificeFlow(area_m2, coefficient, level); };
}

}  // namespace

TEST_CASE("emptying: a prism through an orifice, t = 2A (sqrt h1 - sqrt h2) / (c a sqrt 2g)") {
  // hydraulics texts, tank with constant section
  const TankCurve prism = tank(6, 3.5, 0);
  const double c = 0.6 * 5e-4 * std::sqrt(2 * kGravity_m_s2);
  const Emptying part = *emptyingTime(prism, 1.35, 0.1, orifice(5e-4, 0.6));
  CHECK(part.seconds == within(2 * 21 * (std::sqrt(1.35) - std::sqrt(0.1)) / c, 1e-9));
  const Emptying whole = *emptyingTime(prism, 1.35, 0, orifice(5e-4, 0.6));
  CHECK(whole.seconds == within(2 * 21 * std::sqrt(1.35) / c, 1e-12));  // down to no head at all
}

TEST_CASE("emptying: a battered tank and a cone against their closed forms") {
  const double c = 0.62 * 8e-4 * std::sqrt(2 * kGravity_m_s2);
  const TankCurve battered = tank(5, 3, 0.25);
  const Emptying t = *emptyingTime(battered, 1.5, 0.2, orifice(8e-4, 0.62));
  CHECK(t.seconds == within(closedForm(battered, c, 1.5) - closedForm(battered, c, 0.2), 1e-10));
  TankCurve cone;  // round frustum, floor radius 1, batter 0.5: A = pi (1 + z/2)^2
  const double pi = 3.141592653589793;
  cone.a0 = pi, cone.a1 = pi, cone.a2 = pi / 4, cone.rim_level_m = 2;
  CHECK(emptyingTime(cone, 2, 0, orifice(8e-4, 0.62))->seconds == within(closedForm(cone, c, 2), 1e-12));
}

TEST_CASE("emptying: a pump takes volume over flow") {
  const TankCurve battered = tank(5, 3, 0.25);
  const double volume = battered.volume(1.5) - battered.volume(0.3);
  CHECK(emptyingTime(battered, 1.5, 0.3, [](double) { return 1e-3; })->seconds ==
        within(volume / 1e-3, 1e-12));
}

TEST_CASE("emptying: the error bound holds and shrinks with the tolerance") {
  // outflow h^(4/7), as in a long smooth pipe: the integrand is endless at the outlet, the time is not
  const TankCurve prism = tank(1, 1, 0);
  const OutflowAt outflow = [](double h) { return 1e-3 * std::pow(h, 4.0 / 7); };
  const double exact = 1e3 * 7 / 3.0 * std::pow(1.2, 3.0 / 7);
  for (const double tolerance : {1e-3, 1e-6, 1e-9}) {
    const Emptying t = *emptyingTime(prism, 1.2, 0, outflow, tolerance);
    CAPTURE(tolerance);
    CHECK(std::abs(t.seconds - exact) <= t.error_s);
    CHECK(t.error_s <= 100 * tolerance * exact);
  }
}

TEST_CASE("emptying: the curve runs from the first level to the last and adds up") {
  const TankCurve battered = tank(5, 3, 0.25);
  const double c = 0.6 * 5e-4 * std::sqrt(2 * kGravity_m_s2);
  const Emptying t = *emptyingTime(battered, 1.5, 0.1, orifice(5e-4, 0.6), 1e-9, 8);
  REQUIRE(t.curve.size() == 8);
  CHECK(t.curve.front().level_m == 1.5);
  CHECK(t.curve.front().seconds == 0);
  CHECK(t.curve.back().level_m == Approx(0.1));
  CHECK(t.curve.back().seconds == t.seconds);
  for (const LevelTime& p : t.curve) {
    CHECK(p.seconds ==
          Approx(closedForm(battered, c, 1.5) - closedForm(battered, c, p.level_m)).margin(1e-4));
  }
}

TEST_CASE("emptying: outflow that stops or only fades away is said") {
  const TankCurve prism = tank(1, 1, 0);
  CHECK(emptyingTime(prism, 1, 0, [](double h) { return 1e-3 * (h - 0.2); }).error() == "outflow_stops");
  CHECK(emptyingTime(prism, 1, 0, [](double h) { return 1e-3 * h; }).error() == "does_not_empty");
  // inflow as strong as the outflow at 0.25 m: it never falls lower
  const OutflowAt net = [](double h) { return 1e-3 * (std::sqrt(h) - 0.5); };
  CHECK_FALSE(emptyingTime(prism, 1, 0.25, net));
  CHECK(emptyingTime(prism, 1, 0.26, net));
  const OutflowAt one = [](double) { return 1.0; };
  CHECK(emptyingTime(prism, 2.1, 0, one).error() == "level_out_of_range");
  CHECK(emptyingTime(prism, 1, 1, one).error() == "level_out_of_range");
  CHECK(emptyingTime(prism, 1, -0.1, one).error() == "level_out_of_range");
  CHECK(emptyingTime(prism, 1, 0, one, 1e-8, 1).error() == "level_out_of_range");
  CHECK(orificeFlow(1, 0.6, -1).error() == "head_out_of_range");
  CHECK(orificeFlow(0, 0.6, 1).error() == "area_out_of_range");
  CHECK(orificeFlow(1, 1.1, 1).error() == "coefficient_out_of_range");
}

TEST_CASE("emptying: through a gravity line, against small steps of the falling head") {
  Line line;
  line.profile = {{0, 0.05}, {80, -4}};
  line.bore = {0.026, 1.5e-6};
  line.fittings = {{"minor.entrance_sharp", 0.5, 0}};
  const TankCurve battered = tank(5, 3, 0.1);
  const OutflowAt outflow = [&](double level) { return solveLine(line, {level, {}, 0}, {})->flow_m3_s; };
  const double fast = emptyingTime(battered, 1.2, 0.1, outflow)->seconds;
  double slow = 0;  // middle rule, 1.1 mm a step
  for (int i = 0; i < 1000; ++i) {
    const double z = 0.1 + 1.1 * (i + 0.5) / 1000;
    slow += battered.surface(z) / outflow(z) * 1.1 / 1000;
  }
  CHECK(fast == within(slow, 1e-6));
}
