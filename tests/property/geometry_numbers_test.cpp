#include "core/geometry/tank_geometry.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/random_tank.h"

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/quadrature/tanh_sinh.hpp>
#include <catch2/catch.hpp>

namespace {

using namespace core::geometry;
using core::Shape;
using support::Corners;
using support::Cove;
using support::RandomTanks;
using support::TankAndLining;

const auto kShapes = {Shape::rectangle, Shape::round, Shape::polygon};

TankGeometry geometryOf(const TankAndLining& from) {
  return TankGeometry(from.tank, from.lining);
}

template <typename Check>
void forEachTank(std::uint64_t seed, int count, Check check) {
  RandomTanks tanks(seed);
  for (const Shape shape : kShapes) {
    for (int i = 0; i < count; ++i) {
      CAPTURE(static_cast<int>(shape), i);
      check(tanks.next(shape), tanks.dice());
    }
  }
}

void scaleTank(core::Tank& tank, double by) {
  for (double* length : {&tank.length_m, &tank.width_m, &tank.diameter_m, &tank.depth_m,
                         &tank.corner_radius_m, &tank.freeboard_m, &tank.dead_depth_m}) {
    *length *= by;
  }
  for (Eigen::Vector2d& corner : tank.outline_m) corner *= by;
}

TankAndLining scaled(TankAndLining from, double by) {
  scaleTank(from.tank, by);
  core::Lining& lining = from.lining;
  for (double* length :
       {&lining.stone_bed_m, &lining.cove_radius_m, &lining.rim_width_m, &lining.rim_thickness_m}) {
    *length *= by;
  }
  for (core::Coat& coat : lining.coats) coat.thickness_m *= by;
  return from;
}

// Top of the arc on the wall: the tangents from the corner of floor and wall, which meet at 90 degrees plus
// the batter's angle, are r / tan(half that angle) long.
double coveTop(const TankAndLining& from) {
  const double lean = std::atan(from.tank.batter);
  const double tangent = from.lining.cove_radius_m / std::tan((std::numbers::pi / 2 + lean) / 2);
  return tangent * std::cos(lean);
}

double integrate(const std::function<double(double)>& f, double from, double to) {
  return boost::math::quadrature::gauss_kronrod<double, 31>::integrate(f, from, to, 15, 1e-13);
}

double volumeByQuadrature(const TankAndLining& from, double level_m) {
  const TankGeometry tank = geometryOf(from);
  const auto surface = [&](double z) { return tank.surfaceAt(z); };
  const double knee = std::min(level_m, coveTop(from));
  double sum = level_m > knee ? integrate(surface, knee, level_m) : 0;
  // the arc starts level with the floor, where the surface grows as a square root: tanh-sinh bears that
  if (knee > 0) sum += boost::math::quadrature::tanh_sinh<double>().integrate(surface, 0.0, knee, 1e-12);
  return sum;
}

struct Change {
  const char* what;
  std::function<void(TankAndLining&)> grow;
};

void requireLarger(const TankAndLining& from, const Change& change, double (*figure)(const TankGeometry&)) {
  TankAndLining larger = from;
  change.grow(larger);
  if (!check(larger.tank, larger.lining).empty()) return;
  CAPTURE(change.what);
  REQUIRE(figure(geometryOf(larger)) > figure(geometryOf(from)));
}

support::cgal::Polygon aroundCircle(int corners, double radius_m) {
  support::cgal::Polygon result;
  for (int k = 0; k < corners; ++k) {
    const double turn = 2 * std::numbers::pi * k / corners;
    result.emplace_back(radius_m * Eigen::Vector2d(std::cos(turn), std::sin(turn)));
  }
  return result;
}

}  // namespace

TEST_CASE("layers and clear inside fill the pit") {
  forEachTank(101, 2000, [](const TankAndLining& from, support::Dice&) {
    const TankGeometry tank = geometryOf(from);
    double sum = tank.clearVolume();
    for (const Layer& layer : tank.layers()) {
      REQUIRE(layer.volume_m3 > 0);
      REQUIRE(layer.area_m2 > 0);
      sum += layer.volume_m3;
    }
    REQUIRE(sum == Approx(tank.pitVolume()).epsilon(1e-11));
  });
}

TEST_CASE("volumes grow with the cube and areas with the square of size") {
  forEachTank(102, 500, [](const TankAndLining& from, support::Dice& dice) {
    const double k = dice.between(1, 4), level = dice.between(0, 1) * from.tank.depth_m;
    const TankGeometry tank = geometryOf(from), larger = geometryOf(scaled(from, k));
    const auto cube = [&](double v) { return Approx(k * k * k * v).epsilon(1e-9); };
    const auto square = [&](double a) { return Approx(k * k * a).epsilon(1e-9); };
    REQUIRE(larger.pitVolume() == cube(tank.pitVolume()));
    REQUIRE(larger.clearVolume() == cube(tank.clearVolume()));
    REQUIRE(larger.volumeToLevel(k * level) == cube(tank.volumeToLevel(level)));
    REQUIRE(larger.surfaceAt(k * level) == square(tank.surfaceAt(level)));
    REQUIRE(larger.wettedArea(k * level) == square(tank.wettedArea(level)));
    REQUIRE(larger.rimLength() == Approx(k * tank.rimLength()).epsilon(1e-9));
    for (std::size_t i = 0; i < tank.layers().size(); ++i) {
      REQUIRE(larger.layers()[i].volume_m3 == cube(tank.layers()[i].volume_m3));
      REQUIRE(larger.layers()[i].area_m2 == square(tank.layers()[i].area_m2));
    }
  });
}

TEST_CASE("a longer side, a deeper floor or a flatter wall holds more") {
  const auto clear = [](const TankGeometry& tank) { return tank.clearVolume(); };
  forEachTank(103, 500, [&](const TankAndLining& from, support::Dice&) {
    // measured at the rim, a deeper floor is a smaller one: its corner radius and its cove then reach farther
    // in
    const bool at_floor = from.tank.measured_at == core::MeasuredAt::floor;
    if (at_floor || (from.tank.corner_radius_m <= 0 && from.lining.cove_radius_m <= 0)) {
      requireLarger(from, {"depth", [](TankAndLining& t) { t.tank.depth_m *= 1.01; }}, clear);
    }
    if (from.tank.shape == Shape::rectangle) {
      requireLarger(from, {"length", [](TankAndLining& t) { t.tank.length_m *= 1.01; }}, clear);
      requireLarger(from, {"width", [](TankAndLining& t) { t.tank.width_m *= 1.01; }}, clear);
    }
    if (from.tank.shape == Shape::round) {
      requireLarger(from, {"diameter", [](TankAndLining& t) { t.tank.diameter_m *= 1.01; }}, clear);
    }
    if (at_floor) {
      // the cove is kept out: its share of the inside grows as the wall leans back
      TankAndLining bare = from;
      bare.lining.cove_radius_m = 0;
      requireLarger(bare, {"batter", [](TankAndLining& t) { t.tank.batter += 0.01; }}, clear);
    }
    if (from.lining.cove_radius_m > 0) {
      requireLarger(from, {"smaller cove", [](TankAndLining& t) { t.lining.cove_radius_m *= 0.99; }}, clear);
    }
    if (from.tank.corner_radius_m > 0) {
      requireLarger(from, {"sharper corners", [](TankAndLining& t) { t.tank.corner_radius_m *= 0.99; }},
                    clear);
    }
  });
}

TEST_CASE("a thicker layer needs a larger pit") {
  const auto pit = [](const TankGeometry& tank) { return tank.pitVolume(); };
  forEachTank(104, 500, [&](const TankAndLining& from, support::Dice&) {
    for (std::size_t k = 0; k < from.lining.coats.size(); ++k) {
      requireLarger(from, {"coat", [k](TankAndLining& t) { t.lining.coats[k].thickness_m += 0.002; }}, pit);
    }
    requireLarger(from, {"bed", [](TankAndLining& t) { t.lining.stone_bed_m += 0.005; }}, pit);
    if (from.lining.rim_width_m > 0) {
      requireLarger(from, {"rim width", [](TankAndLining& t) { t.lining.rim_width_m += 0.01; }}, pit);
      requireLarger(from, {"rim thickness", [](TankAndLining& t) { t.lining.rim_thickness_m += 0.01; }}, pit);
    }
    REQUIRE(pit(geometryOf(from)) > geometryOf(from).clearVolume());
  });
}

TEST_CASE("the water to a level is the integral of its surface") {
  forEachTank(105, 300, [](const TankAndLining& from, support::Dice& dice) {
    const double level = dice.between(0.005, 1) * from.tank.depth_m;
    CAPTURE(level, from.lining.cove_radius_m, from.tank.batter);
    REQUIRE(geometryOf(from).volumeToLevel(level) == Approx(volumeByQuadrature(from, level)).epsilon(1e-9));
  });
}

TEST_CASE("the level for a volume is where the tank holds it") {
  forEachTank(106, 2000, [](const TankAndLining& from, support::Dice& dice) {
    const TankGeometry tank = geometryOf(from);
    const double level = dice.between(0, 1) * tank.depth();
    CAPTURE(level);
    REQUIRE(std::abs(tank.levelForVolume(tank.volumeToLevel(level)) - level) < 1e-9);
    REQUIRE(tank.levelForVolume(0) == 0);
    REQUIRE(tank.levelForVolume(tank.clearVolume()) == Approx(tank.depth()).epsilon(1e-12));
    REQUIRE(tank.levelForVolume(2 * tank.clearVolume()) == tank.depth());
  });
}

TEST_CASE("each centimetre on the dip-stick holds more than the one below") {
  forEachTank(107, 300, [](const TankAndLining& from, support::Dice&) {
    const TankGeometry tank = geometryOf(from);
    REQUIRE(tank.volumeToLevel(0) == 0);
    REQUIRE(tank.volumeToLevel(-1) == 0);
    for (double z = 0.01; z <= tank.depth(); z += 0.01) {
      REQUIRE(tank.volumeToLevel(z) > tank.volumeToLevel(z - 0.01));
      REQUIRE(tank.surfaceAt(z) >= tank.surfaceAt(z - 0.01));
    }
    REQUIRE(tank.volumeToLevel(tank.depth() + 1) == tank.volumeToLevel(tank.depth()));
  });
}

// Steiner 1840: area A0 + P0 d + C d^2 and perimeter P0 + 2 C d of a parallel outline.
TEST_CASE("parallel outlines of sharp polygons agree with lines moved and met exactly") {
  RandomTanks tanks(108);
  for (int i = 0; i < 1000; ++i) {
    CAPTURE(i);
    const TankGeometry tank =
        geometryOf(tanks.next(i % 2 ? Shape::polygon : Shape::rectangle, Corners::sharp));
    const Outline& outline = tank.outline();
    const double by = tanks.dice().between(0.99 * outline.leastOffset(), 5);
    const support::cgal::Polygon moved = support::cgal::offset(outline.corners(0), by);
    REQUIRE(outline.area(by) == Approx(support::cgal::area(moved)).epsilon(1e-9));
    REQUIRE(outline.perimeter(by) == Approx(support::cgal::perimeter(moved)).epsilon(1e-9));
    const std::vector<Eigen::Vector2d> ours = outline.corners(by);
    for (std::size_t k = 0; k < ours.size(); ++k) REQUIRE((ours[k] - moved[k]).norm() < 1e-9);
  }
}

TEST_CASE("a polygon with round corners lies between its sums with an inner and an outer circle polygon") {
  RandomTanks tanks(109);
  for (int i = 0; i < 200;) {
    const TankAndLining from = tanks.next(i % 2 ? Shape::polygon : Shape::rectangle);
    if (from.tank.corner_radius_m <= 0) continue;
    const Outline outline = floorOutline(from.tank);
    const double by = tanks.dice().between(-0.9 * from.tank.corner_radius_m, 3);
    const double radius = from.tank.corner_radius_m + by;
    const support::cgal::Polygon core = support::cgal::offset(outline.corners(0), -from.tank.corner_radius_m);
    const int n = 720;
    CAPTURE(i, radius);
    REQUIRE(outline.area(by) > support::cgal::sumArea(core, aroundCircle(n, radius)));
    const double outer = radius / std::cos(std::numbers::pi / n);
    REQUIRE(outline.area(by) < support::cgal::sumArea(core, aroundCircle(n, outer)));
    REQUIRE(outline.perimeter(by) ==
            Approx(support::cgal::perimeter(core) + 2 * std::numbers::pi * radius).epsilon(1e-9));
    ++i;
  }
}

// V = d (a b + (a + b) z d + 4/3 z^2 d^2) for a bottom a x b and side slope z: the integral of (a + 2 z h)(b
// + 2 z h).
TEST_CASE("a battered rectangle holds the textbook volume") {
  RandomTanks tanks(110);
  for (int i = 0; i < 500; ++i) {
    TankAndLining from = tanks.next(Shape::rectangle, Corners::sharp, Cove::none);
    from.tank.measured_at = core::MeasuredAt::floor;
    const double a = from.tank.length_m, b = from.tank.width_m, d = from.tank.depth_m, z = from.tank.batter;
    REQUIRE(geometryOf(from).clearVolume() ==
            Approx(d * (a * b + (a + b) * z * d + 4.0 / 3.0 * z * z * d * d)).epsilon(1e-12));
  }
}

// Frustum of a cone: volume pi h (R^2 + R r + r^2) / 3, side pi (R + r) s.
TEST_CASE("a battered round tank is a frustum of a cone") {
  RandomTanks tanks(111);
  for (int i = 0; i < 500; ++i) {
    TankAndLining from = tanks.next(Shape::round, Corners::any, Cove::none);
    from.tank.measured_at = core::MeasuredAt::floor;
    const double h = from.tank.depth_m, r = from.tank.diameter_m / 2, top = r + from.tank.batter * h;
    const TankGeometry tank = geometryOf(from);
    REQUIRE(tank.clearVolume() ==
            Approx(std::numbers::pi * h * (top * top + top * r + r * r) / 3).epsilon(1e-12));
    REQUIRE(tank.wallArea() == Approx(std::numbers::pi * (top + r) * std::hypot(h, top - r)).epsilon(1e-12));
  }
}

// Pappus and Guldin: section area times the path of its centroid. A square spandrel r^2 (1 - pi/4) has its
// centroid r (10 - 3 pi) / (12 - 3 pi) from both sides; its arc, a quarter circle, has it r (1 - 2/pi) from
// both sides.
TEST_CASE("the cove of a straight-walled round tank is a turned spandrel") {
  RandomTanks tanks(112);
  for (int i = 0; i < 300; ++i) {
    TankAndLining from = tanks.next(Shape::round, Corners::any, Cove::always);
    from.tank.measured_at = core::MeasuredAt::floor;
    from.tank.batter = 0;
    if (!check(from.tank, from.lining).empty()) continue;
    const double r = from.lining.cove_radius_m, wall = from.tank.diameter_m / 2, pi = std::numbers::pi;
    const double centroid = r * (10 - 3 * pi) / (12 - 3 * pi), arc_centroid = r * (1 - 2 / pi);
    const TankGeometry tank = geometryOf(from);
    for (const Layer& layer : tank.layers()) {
      if (layer.id != "cove") continue;
      REQUIRE(layer.volume_m3 == Approx(r * r * (1 - pi / 4) * 2 * pi * (wall - centroid)).epsilon(1e-9));
      REQUIRE(layer.area_m2 == Approx(pi / 2 * r * 2 * pi * (wall - arc_centroid)).epsilon(1e-9));
    }
  }
}
