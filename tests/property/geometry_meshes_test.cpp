#include "core/geometry/tank_geometry.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/hull_tank.h"
#include "tests/support/random_tank.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include <catch2/catch.hpp>

// Volumes, areas, orientation and closedness by CGAL 5.5, an independent general geometry library.

namespace {

using namespace core::geometry;
using core::Shape;
using support::Corners;
using support::Cove;
using support::HullTank;
using support::RandomTanks;
using support::TankAndLining;

constexpr int kTanksOfEachShape = 2000;
constexpr int kFacets = 12;
constexpr int kArcSteps = 3;
constexpr double kMargin = 1.5, kBelow = 0.5;

struct NamedProfile {
  std::string id;
  Profile profile;
};

std::vector<NamedProfile> profiles(const TankGeometry& tank, double level_m, int arc_steps) {
  std::vector<NamedProfile> all;
  for (const Layer& layer : tank.layers()) all.push_back({layer.id, tank.layerProfile(layer.id, arc_steps)});
  all.push_back({"pit", tank.pitProfile()});
  all.push_back({"water", tank.waterProfile(level_m, arc_steps)});
  all.push_back({"ground", tank.groundProfile(kMargin, kBelow)});
  return all;
}

HullTank::Part part(const HullTank& hulls, const std::string& id, double level_m) {
  if (id == "pit") return hulls.pit();
  if (id == "water") return hulls.water(level_m);
  if (id == "ground") return hulls.ground(kMargin, kBelow);
  return hulls.layer(id);
}

// What TankGeometry says of a solid, without any mesh.
double analyticVolume(const TankGeometry& tank, const std::string& id, double level_m) {
  if (id == "pit") return tank.pitVolume();
  if (id == "water") return tank.volumeToLevel(level_m);
  if (id == "ground") return volume(tank.outline(), tank.groundProfile(kMargin, kBelow));
  for (const Layer& layer : tank.layers()) {
    if (layer.id == id) return layer.volume_m3;
  }
  return -1;
}

double analyticFace(const TankGeometry& tank, const std::string& id) {
  for (const Layer& layer : tank.layers()) {
    if (layer.id == id) return layer.area_m2;
  }
  return -1;
}

// Area of a regular polygon with n corners on a circle over the circle's area.
double inscribed(int n) {
  const double turn = 2 * std::numbers::pi / n;
  return std::sin(turn) / turn;
}

bool hasArc(const TankAndLining& from, const std::string& id) {
  return id == "cove" || (id == "water" && from.lining.cove_radius_m > 0);
}

void requireSound(const TankAndLining& from, double level_m) {
  const TankGeometry tank(from.tank, from.lining);
  const Ring ring = tank.outline().ring(kFacets);
  for (const NamedProfile& named : profiles(tank, level_m, kArcSteps)) {
    CAPTURE(named.id);
    const Mesh mesh = solid(ring, named.profile);
    const support::cgal::Solid measured = support::cgal::solid(mesh);
    REQUIRE(measured.manifold);
    REQUIRE(measured.closed);
    REQUIRE(measured.outward);
    REQUIRE(measured.positive);
    REQUIRE(volume(mesh) == Approx(measured.volume_m3).epsilon(1e-9));
    REQUIRE(area(mesh) == Approx(measured.area_m2).epsilon(1e-9));
  }
}

// Every solid by three ways that share no code: CGAL on our mesh, hulls from the raw input, and the formulas.
// Each is compared at 1e-9 of the solid's own volume, thin shells too.
void requireExact(const TankAndLining& from, double level_m) {
  const TankGeometry tank(from.tank, from.lining);
  const HullTank hulls(from, kFacets);
  const bool round = from.tank.shape == Shape::round;
  const Ring ring = tank.outline().ring(kFacets);
  for (const NamedProfile& named : profiles(tank, level_m, kArcSteps)) {
    if (hasArc(from, named.id)) continue;
    CAPTURE(named.id);
    const support::cgal::Solid measured = support::cgal::solid(solid(ring, named.profile));
    const HullTank::Part built = part(hulls, named.id, level_m);
    REQUIRE(measured.volume_m3 == Approx(built.volume_m3).epsilon(1e-9));
    REQUIRE(measured.area_m2 == Approx(built.surface_m2).epsilon(1e-9));
    const double share = round ? inscribed(kFacets) : 1;
    REQUIRE(measured.volume_m3 == Approx(share * analyticVolume(tank, named.id, level_m)).epsilon(1e-9));
    const double face = analyticFace(tank, named.id);
    if (!round && face >= 0) REQUIRE(face == Approx(built.face_m2).epsilon(1e-9));
  }
}

template <typename Check>
void forEachTank(RandomTanks& tanks, Shape shape, int count, Corners corners, Check check) {
  for (int i = 0; i < count; ++i) {
    const TankAndLining from = tanks.next(shape, corners);
    const double level = tanks.dice().between(0.02, 1) * from.tank.depth_m;
    CAPTURE(static_cast<int>(shape), i);
    check(from, level);
  }
  INFO("share of random tanks rejected: " << tanks.rejectedShare());
  REQUIRE(tanks.rejectedShare() < 0.6);
}

const auto kShapes = {Shape::rectangle, Shape::round, Shape::polygon};

// Ratio of the errors of two drawings, the second with twice the facets.
double ratio(double exact, double coarse, double fine) {
  return (coarse - exact) / (fine - exact);
}

// All sides of the drawn cove less the floor strip under it and the wall strip behind it, both flat.
double drawnCoveFace(const TankGeometry& tank, int arc_steps) {
  using namespace support::cgal;
  const Profile profile = tank.layerProfile("cove", arc_steps);
  double toe = 0, top = 0;
  for (const ProfilePoint& point : profile.points) {
    toe = std::min(toe, point.offset_m);
    top = std::max(top, point.z_m);
  }
  const Polygon floor = tank.outline().corners(0);
  const double wall =
      tank.slant() * top * (perimeter(floor) + perimeter(offset(floor, tank.batter() * top))) / 2;
  const double strip = area(floor) - area(offset(floor, toe));
  return support::cgal::solid(core::geometry::solid(tank.outline().ring(kFacets), profile)).area_m2 - strip -
         wall;
}

}  // namespace

TEST_CASE("every solid of a random tank is closed and faces outward") {
  RandomTanks tanks(20270215);
  for (const Shape shape : kShapes) forEachTank(tanks, shape, kTanksOfEachShape, Corners::any, requireSound);
}

TEST_CASE("every solid of a sharp or round tank has the volume and area of hulls and of the formulas") {
  RandomTanks tanks(19970301);
  for (const Shape shape : kShapes)
    forEachTank(tanks, shape, kTanksOfEachShape, Corners::sharp, requireExact);
}

TEST_CASE("no solid of a random tank cuts through itself") {
  RandomTanks tanks(4711);
  for (const Shape shape : kShapes) {
    forEachTank(tanks, shape, 200, Corners::any, [](const TankAndLining& from, double level) {
      const TankGeometry tank(from.tank, from.lining);
      const Ring ring = tank.outline().ring(kFacets);
      for (const NamedProfile& named : profiles(tank, level, kArcSteps)) {
        CAPTURE(named.id);
        REQUIRE_FALSE(support::cgal::selfIntersects(solid(ring, named.profile)));
      }
    });
  }
}

TEST_CASE("facets on round corners converge at second order") {
  RandomTanks tanks(31415);
  int seen = 0;
  while (seen < 45) {
    const Shape shape = seen % 3 == 0 ? Shape::rectangle : seen % 3 == 1 ? Shape::polygon : Shape::round;
    const TankAndLining from = tanks.next(shape, Corners::any, Cove::none);
    if (shape != Shape::round && from.tank.corner_radius_m < 0.1) continue;
    const TankGeometry tank(from.tank, from.lining);
    const double level = tanks.dice().between(0.1, 1) * tank.depth();
    std::vector<Ring> rings;
    for (const int n : {240, 480, 960}) rings.push_back(tank.outline().ring(n));
    for (const NamedProfile& named : profiles(tank, level, 1)) {
      CAPTURE(seen, named.id);
      std::vector<double> drawn;
      for (const Ring& ring : rings)
        drawn.push_back(support::cgal::solid(solid(ring, named.profile)).volume_m3);
      const double exact = analyticVolume(tank, named.id, level);
      REQUIRE(drawn[0] != exact);
      REQUIRE(std::abs(ratio(exact, drawn[0], drawn[1]) - 4) < 0.4);
      REQUIRE(std::abs(ratio(exact, drawn[1], drawn[2]) - 4) < 0.4);
    }
    ++seen;
  }
}

TEST_CASE("chords on the cove converge at second order in volume and area") {
  RandomTanks tanks(27182);
  for (int i = 0; i < 90; ++i) {
    const Shape shape = i % 3 == 0 ? Shape::rectangle : i % 3 == 1 ? Shape::polygon : Shape::round;
    const TankAndLining from = tanks.next(shape, Corners::sharp, Cove::always);
    const TankGeometry tank(from.tank, from.lining);
    const double share = shape == Shape::round ? inscribed(kFacets) : 1;
    const Ring ring = tank.outline().ring(kFacets);
    const double level = tanks.dice().between(0.2, 1) * tank.depth();
    for (const char* id : {"cove", "water"}) {
      CAPTURE(i, id);
      std::vector<double> drawn;
      for (const int steps : {16, 32, 64}) {
        const Profile p =
            std::string(id) == "cove" ? tank.layerProfile(id, steps) : tank.waterProfile(level, steps);
        drawn.push_back(support::cgal::solid(solid(ring, p)).volume_m3 / share);
      }
      const double exact = analyticVolume(tank, id, level);
      REQUIRE(std::abs(ratio(exact, drawn[0], drawn[1]) - 4) < 0.4);
      REQUIRE(std::abs(ratio(exact, drawn[1], drawn[2]) - 4) < 0.4);
    }
  }
}

TEST_CASE("the finished face of a cove is the limit of its drawn arc") {
  RandomTanks tanks(16180);
  for (int i = 0; i < 60; ++i) {
    const Shape shape = i % 2 == 0 ? Shape::rectangle : Shape::polygon;
    const TankAndLining from = tanks.next(shape, Corners::sharp, Cove::always);
    const TankGeometry tank(from.tank, from.lining);
    std::vector<double> drawn;
    for (const int steps : {16, 32, 64}) drawn.push_back(drawnCoveFace(tank, steps));
    CAPTURE(i);
    const double exact = analyticFace(tank, "cove");
    REQUIRE(std::abs(ratio(exact, drawn[0], drawn[1]) - 4) < 0.4);
    REQUIRE(std::abs(ratio(exact, drawn[1], drawn[2]) - 4) < 0.4);
  }
}
