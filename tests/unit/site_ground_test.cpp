// Natural ground, the pit in it, the bench under it and the heap beside it.
#include "core/site/bench_pegs.h"
#include "core/site/delaunay.h"
#include "core/site/ground.h"
#include "core/site/pit.h"
#include "core/site/spoil.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <random>
#include <vector>

#include <Eigen/Dense>
#include <catch2/catch.hpp>

namespace {

using namespace core::site;
using Eigen::Vector2d;
using Eigen::Vector3d;

class Dice {
public:
  explicit Dice(unsigned seed) : generator_(seed) {}
  double between(double least, double most) {
    return least + (most - least) * static_cast<double>(generator_()) / 4294967296.0;
  }

private:
  std::mt19937 generator_;
};

std::vector<Vector3d> randomPoints(Dice& dice, int count) {
  std::vector<Vector3d> points;
  for (int k = 0; k < count; ++k)
    points.emplace_back(dice.between(-20, 20), dice.between(-20, 20), dice.between(0, 3));
  return points;
}

std::vector<Vector3d> grid(int side, double step_m) {
  std::vector<Vector3d> points;
  for (int i = 0; i < side; ++i) {
    for (int k = 0; k < side; ++k) points.emplace_back(i * step_m, k * step_m, 0.01 * i * k);
  }
  return points;
}

double planArea(const Tin& tin) {
  double sum = 0;
  for (const auto& t : tin.triangles) {
    const auto c = tin.corners(t);
    const Vector2d a = (c[1] - c[0]).head<2>(), b = (c[2] - c[0]).head<2>();
    const double area = (a.x() * b.y() - a.y() * b.x()) / 2;
    CHECK(area > 0);
    sum += area;
  }
  return sum;
}

/// Whether point d lies inside the circle through the corners of an anticlockwise triangle.
bool isInCircle(const std::array<Vector3d, 3>& c, const Vector3d& d, double tolerance) {
  Eigen::Matrix3d m;
  for (int k = 0; k < 3; ++k) {
    const Vector2d v = (c[static_cast<std::size_t>(k)] - d).head<2>();
    m.row(k) << v.x(), v.y(), v.squaredNorm();
  }
  return m.determinant() > tolerance;
}

core::geometry::TankGeometry tankOf(core::Tank tank = {}) {
  return {tank, core::Lining{}};
}

BenchShape shapeOf(const PitShape& pit, const Placement& placement = {}) {
  return {platformOutline(pit, 0.6, placement).points_m, 1, 1.5, 0};
}

}  // namespace

TEST_CASE("ground: an even slope falls the way it is said to") {
  // 12 % to the south: a metre north is 12 cm higher
  const GroundSurface south = GroundSurface::slope(12, 180);
  CHECK(*south.heightAt({0, 0}) == 0);
  CHECK(*south.heightAt({0, 1}) == Approx(0.12));
  CHECK(*south.heightAt({5, 1}) == Approx(0.12));
  CHECK(*GroundSurface::slope(12, 90).heightAt({10, 3}) == Approx(-1.2));  // falls to the east
  for (const double azimuth : {0.0, 37.0, 90.0, 180.0, 271.5}) {
    const Fall fall = fallOf(*GroundSurface::slope(50, azimuth).plane());
    CHECK(fall.percent == Approx(50));
    CHECK(fall.degree == Approx(26.565).margin(5e-4));
    CHECK(*fall.azimuth_deg == Approx(azimuth).margin(1e-9));
  }
  CHECK_FALSE(fallOf(*GroundSurface::level().plane()).azimuth_deg);
}

TEST_CASE("ground: spot heights are joined by Delaunay's rule") {
  Dice dice(3);
  const auto points = randomPoints(dice, 150);
  const auto tin = triangulated(points);
  REQUIRE(tin);
  CHECK(tin->unused.empty());
  // Euler: 2 n - 2 - h triangles for n points with h on the hull
  std::map<std::array<std::uint32_t, 2>, int> sides;
  for (const auto& t : tin->triangles) {
    for (std::size_t k = 0; k < 3; ++k)
      ++sides[{std::min(t[k], t[(k + 1) % 3]), std::max(t[k], t[(k + 1) % 3])}];
    for (const Vector3d& p : points) CHECK_FALSE(isInCircle(tin->corners(t), p, 1e-6));
  }
  const auto hull = std::count_if(sides.begin(), sides.end(), [](const auto& s) { return s.second == 1; });
  CHECK(tin->triangles.size() == 2 * points.size() - 2 - static_cast<std::size_t>(hull));
}

TEST_CASE("ground: regular and awkward surveys triangulate soundly") {
  const auto square = triangulated(grid(30, 0.7));
  REQUIRE(square);
  CHECK(planArea(*square) == Approx(std::pow(29 * 0.7, 2)));
  CHECK(square->triangles.size() == 2 * 29 * 29);

  std::vector<Vector3d> ring;  // all on one circle, more than 255 of them
  for (int k = 0; k < 400; ++k)
    ring.emplace_back(10 * std::cos(k * std::numbers::pi / 200), 10 * std::sin(k * std::numbers::pi / 200),
                      1);
  const auto round = triangulated(ring);
  REQUIRE(round);
  CHECK(round->triangles.size() == 398);
  CHECK(planArea(*round) == Approx(200 * 100 * std::sin(std::numbers::pi / 200)));

  CHECK(triangulated(std::vector<Vector3d>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}})->triangles.size() == 1);
  CHECK(triangulated(std::vector<Vector3d>{{0, 0, 0}, {1, 0, 0}}).error() == TinFault::too_few);
  CHECK(triangulated(std::vector<Vector3d>{{0, 0, 0}, {1, 0, 0}, {1, 0, 3}}).error() == TinFault::too_few);
  CHECK(triangulated(std::vector<Vector3d>{{0, 0, 0}, {1, 1, 0}, {2, 2, 5}, {-1, -1, 0}}).error() ==
        TinFault::collinear);

  std::vector<Vector3d> repeated = grid(4, 1);
  repeated.push_back(repeated[5]);
  const auto with = triangulated(repeated);
  REQUIRE(with);
  CHECK(with->unused == std::vector<std::uint32_t>{16});

  // almost on a grid, almost at one place
  Dice dice(4);
  for (int i = 0; i < 60; ++i) {
    std::vector<Vector3d> awkward = grid(8, 5);
    for (Vector3d& p : awkward) p += Vector3d(dice.between(0, 1e-9), dice.between(0, 1e-9), 0);
    for (std::size_t k = 0; k < 20; ++k)
      awkward.push_back(awkward[k] + Vector3d(std::pow(10, -dice.between(2, 9)), 0, 0));
    const auto sound = triangulated(awkward);
    REQUIRE(sound);
    CHECK(planArea(*sound) == Approx(35 * 35).epsilon(1e-3));
    for (std::size_t k = 0; k < awkward.size(); ++k) CHECK((sound->points_m[k] - awkward[k]).norm() <= 5e-5);
  }

  std::vector<Vector3d> far = grid(12, 1);  // grid coordinates in millions
  for (Vector3d& p : far) p += Vector3d(512340, 3041200, 1400);
  CHECK(planArea(*triangulated(far)) == Approx(121));
}

TEST_CASE("ground: a fault inside the triangulation is told and does not end the program") {
  std::vector<double> line{0, 0, 1, 1, 2, 2, 3, 3};
  DelaunayFaces faces;
  CHECK(delaunay(line, "qhull d Qbb Qz Q12 Q5", nullptr, faces) == DelaunayResult::failed);
  std::vector<double> square{0, 0, 1, 0, 1, 1, 0, 1};
  CHECK(delaunay(square, "qhull d no_such_option", nullptr, faces) == DelaunayResult::failed);
  CHECK(delaunay(square, "qhull d Qbb Qz Q12 Q5", nullptr, faces) == DelaunayResult::done);
}

TEST_CASE("ground: 100,000 points, and a cancelled triangulation ends") {
  Dice dice(8);
  const auto points = randomPoints(dice, 100000);
  const auto tin = triangulated(points);
  REQUIRE(tin);
  CHECK(tin->triangles.size() > 199000);
  const std::atomic<bool> cancel = true;
  CHECK(triangulated(points, &cancel).error() == TinFault::cancelled);
}

TEST_CASE("ground: heights on a survey, nothing outside it") {
  Dice dice(9);
  const auto points = randomPoints(dice, 400);
  const auto ground = GroundSurface::spotHeights(points);
  REQUIRE(ground);
  for (const Vector3d& p : points) CHECK(*ground->heightAt(p.head<2>()) == Approx(p.z()).margin(1e-9));
  for (const auto& t : ground->tin()->triangles) {
    const auto c = ground->tin()->corners(t);
    const Vector3d inside = 0.2 * c[0] + 0.3 * c[1] + 0.5 * c[2];
    CHECK(*ground->heightAt(inside.head<2>()) == Approx(inside.z()).margin(1e-9));
  }
  CHECK_FALSE(ground->heightAt({30, 0}));
  CHECK_FALSE(ground->heightAt({0, -21}));
}

TEST_CASE("ground: least-squares plane over an area") {
  // a survey of a plane gives that plane back; a ridge z = 1 - |x| over -1 <= x <= 1 is level at its mean,
  // 1/2
  Dice dice(10);
  std::vector<Vector3d> points;
  for (const Vector3d& p : randomPoints(dice, 200))
    points.emplace_back(p.x(), p.y(), 3 + 0.1 * p.x() - 0.2 * p.y());
  const auto even = GroundSurface::spotHeights(points);
  REQUIRE(even);
  const auto fit = even->planeOver({{-5, -4}, {6, -3}, {2, 7}});
  REQUIRE(fit);
  CHECK(fit->level_m == Approx(3));
  CHECK(fit->gradient.x() == Approx(0.1));
  CHECK(fit->gradient.y() == Approx(-0.2));
  CHECK_FALSE(even->planeOver({{-50, -4}, {6, -3}, {2, 7}}));

  const auto ridge = GroundSurface::spotHeights(
      std::vector<Vector3d>{{-1, -1, 0}, {-1, 1, 0}, {1, -1, 0}, {1, 1, 0}, {0, -1, 1}, {0, 1, 1}});
  REQUIRE(ridge);
  const auto level = ridge->planeOver({{-1, -1}, {1, -1}, {1, 1}, {-1, 1}});
  REQUIRE(level);
  CHECK(level->level_m == Approx(0.5));
  CHECK(level->gradient.norm() < 1e-12);
  // its eastern half alone: z = 1 - x exactly
  CHECK(ridge->planeOver({{0, -1}, {1, -1}, {1, 1}, {0, 1}})->gradient.x() == Approx(-1));
}

TEST_CASE("ground: contour lines lie at their level and close around a hill") {
  std::vector<Vector3d> points;
  for (int i = -10; i <= 10; ++i) {
    for (int k = -10; k <= 10; ++k) points.emplace_back(i, k, 10 - std::hypot(i, k));
  }
  const auto hill = GroundSurface::spotHeights(points);
  REQUIRE(hill);
  const auto lines = contours(*hill, 1, {}, {});
  int closed = 0;
  for (const Contour& contour : lines) {
    for (const Vector3d& p : contour.line) {
      CHECK(p.z() == contour.level_m);
      CHECK(*hill->heightAt(p.head<2>()) == Approx(contour.level_m).margin(1e-9));
    }
    closed += contour.line.front() == contour.line.back();
  }
  CHECK(closed == 9);  // levels 1 to 9; no line at the summit, lines from level 0 down end at the sides
  const auto straight = contours(GroundSurface::slope(10, 180), 0.5, {-10, -10}, {10, 10});
  REQUIRE(straight.size() == 5);  // -1, -0.5, 0, 0.5, 1
  for (const Contour& contour : straight)
    CHECK(contour.line[0].y() == Approx(10 * contour.level_m).margin(1e-9));
  CHECK(contourStep(2.3, 10) == Approx(0.5));
  CHECK(contourStep(2.0, 10) == Approx(0.2));
  CHECK(contourStep(70, 10) == Approx(10));
}

TEST_CASE("pit: outlines on the site") {
  core::Tank tank;
  const PitShape pit = pitShape(tankOf(tank), {});
  const auto rim = siteOutline(pit.outline, pit.rim_offset_m, {{10, 5}, 90});
  // turned a quarter left, the tank's length runs north
  const auto [low, high] =
      std::minmax_element(rim.points_m.begin(), rim.points_m.end(),
                          [](const Vector2d& a, const Vector2d& b) { return a.y() < b.y(); });
  CHECK((low->y() + high->y()) / 2 == Approx(5));
  CHECK(high->y() - low->y() == Approx(6 + 2 * pit.rim_offset_m));
  CHECK(rim.area_error == 0);
  tank.shape = core::Shape::round;
  const auto circle = siteOutline(pitShape(tankOf(tank), {}).outline, 1, {});
  CHECK(circle.points_m.size() == 128);
  CHECK(circle.area_error == Approx(4.0e-4).margin(1e-5));  // (2 pi / 128)^2 / 6
}

TEST_CASE("pit: least cover of a pit on sloping ground") {
  core::Tank tank;
  tank.batter = 0.2;
  const auto geometry = tankOf(tank);
  const PitShape pit = pitShape(geometry, {});
  CHECK(leastCover(GroundSurface::level(), pit, {}, 0, 0)->least_m == Approx(0).margin(1e-12));
  CHECK(leastCover(GroundSurface::level(), pit, {}, 0, 0)->isInNaturalGround());
  CHECK_FALSE(leastCover(GroundSurface::level(), pit, {}, 0, 0.15)->isInNaturalGround());
  // 10 % to the east, platform level with the ground at the origin: the eastern rim stands out
  const auto east = leastCover(GroundSurface::slope(10, 90), pit, {}, 0, 0);
  REQUIRE(east);
  CHECK(east->least_m == Approx(-0.1 * (3 + pit.rim_offset_m)));
  CHECK(east->at_m.x() == Approx(3 + pit.rim_offset_m));
  CHECK(east->at_m.z() == Approx(0).margin(1e-12));
  CHECK_FALSE(east->isInNaturalGround());
  const auto lower = leastCover(GroundSurface::slope(10, 90), pit, {}, east->natural_level_m, 0);
  CHECK(lower->least_m == Approx(0).margin(1e-12));
  // a hole in the ground over the pit floor: least over the hole, not at the rim
  std::vector<Vector3d> points = grid(21, 1);
  for (Vector3d& p : points) p = Vector3d(p.x() - 10, p.y() - 10, 0);
  for (Vector3d& p : points) {
    if (p.head<2>().norm() < 0.5) p.z() = -2;
  }
  const auto hole = GroundSurface::spotHeights(points);
  REQUIRE(hole);
  const auto over = leastCover(*hole, pit, {}, 0, 0);
  CHECK(over->least_m == Approx(-2 + geometry.pitDepth()));
  CHECK(over->at_m.head<2>().norm() < 1e-9);
  CHECK_FALSE(leastCover(*hole, pit, {{9, 0}, 0}, 0, 0));  // outside the survey
}

TEST_CASE("bench: pegs at the corners and where the faces come to daylight") {
  const PitShape pit = pitShape(tankOf(), {});
  const BenchShape shape = shapeOf(pit);
  const GroundSurface ground = GroundSurface::slope(20, 180);
  const auto bench = balancedBench(ground, shape, {1, 0});
  REQUIRE(bench);
  CHECK(bench->cut_m3 == Approx(bench->fill_m3));
  const auto pegs = benchPegs(ground, shape, *bench);
  REQUIRE(pegs.size() == 8);
  int cuts = 0;
  for (const BenchPeg& peg : pegs) {
    CHECK(peg.ground_m == Approx(*ground.heightAt(peg.at_m.head<2>())));
    if (peg.kind == "platform_corner") {
      CHECK(peg.at_m.z() == bench->level_m);
      CHECK(peg.dig_m == Approx(peg.ground_m - bench->level_m));
      continue;
    }
    // the face rises or falls by its batter along both edges of the corner
    const bool is_cut = peg.kind == "daylight_cut";
    cuts += is_cut;
    const double offset = peg.from_corner_m / std::sqrt(2);
    CHECK(peg.at_m.z() ==
          Approx(bench->level_m + (is_cut ? offset / shape.cut_batter : -offset / shape.fill_batter)));
  }
  CHECK(cuts == 2);
}

TEST_CASE("bench: faults are told, not numbers") {
  const BenchShape shape = shapeOf(pitShape(tankOf(), {}));
  CHECK(benchAt(GroundSurface::slope(120, 180), shape, 0).error() == BenchFault::never_daylights);
  std::vector<Vector3d> points = grid(11, 1);  // 10 m square about the origin
  for (Vector3d& p : points) p = Vector3d(p.x() - 5, p.y() - 5, 0.2 * p.y());
  const auto small = GroundSurface::spotHeights(points);
  REQUIRE(small);
  CHECK(benchAt(*small, shape, 3).error() == BenchFault::leaves_survey);
  CHECK(benchAt(*small, shape, 1).has_value());
  BenchShape moved = shape;
  for (Vector2d& p : moved.outline_m) p.x() += 4;
  CHECK(benchAt(*small, moved, 1).error() == BenchFault::outside_survey);
  const std::atomic<bool> cancel = true;
  CHECK(balancedBench(*small, shape, {}, &cancel).error() == BenchFault::cancelled);
}

TEST_CASE("spoil: the heap holds the spoil and keeps its distance") {
  // cone: 10 m3 in place, 25 % swell, repose 45 degrees: r = h, pi r^3 / 3 = 12.5
  const SpoilHeap cone = spoilHeap({10, 25, 45, 5, 0.6});
  CHECK(cone.loose_m3 == Approx(12.5));
  CHECK(cone.height_m == Approx(std::cbrt(12.5 * 3 / std::numbers::pi)));
  CHECK(cone.top_radius_m == 0);
  const SpoilHeap flat = spoilHeap({40, 25, 35, 1.2, 0.6});
  CHECK(flat.height_m == 1.2);
  CHECK(flat.base_radius_m - flat.top_radius_m == Approx(1.2 / std::tan(35 * std::numbers::pi / 180)));
  CHECK(std::numbers::pi * 1.2 / 3 *
            (flat.base_radius_m * flat.base_radius_m + flat.base_radius_m * flat.top_radius_m +
             flat.top_radius_m * flat.top_radius_m) ==
        Approx(50));
  // where cone and frustum meet they agree
  const double just = spoilHeap({10, 25, 45, 5, 0.6}).height_m;
  CHECK(spoilHeap({10, 25, 45, just * (1 - 1e-9), 0.6}).base_radius_m == Approx(cone.base_radius_m));
  CHECK(spoilHeap({0, 25, 45, 5, 0.6}).base_radius_m == 0);

  const std::vector<Vector2d> edge{{-3, -2}, {3, -2}, {3, 2}, {-3, 2}};
  const HeapPlace east = heapPlace(edge, {}, flat, 0.6, 90);
  CHECK(east.centre_m.x() == Approx(3 + 0.6 + flat.base_radius_m));
  CHECK(east.toe_to_edge_m == Approx(0.6));
  CHECK(heapPlace(edge, {{8, 0}}, flat, 0.6, 90).toe_to_edge_m == Approx(5));
  for (const double azimuth : {17.0, 133.0, 290.0})
    CHECK(heapPlace(edge, {}, flat, 0.6, azimuth).toe_to_edge_m >= 0.6 - 1e-9);
  CHECK(heapAzimuth(300) == Approx(30));
  CHECK(heapAzimuth(std::nullopt) == 90);
}
