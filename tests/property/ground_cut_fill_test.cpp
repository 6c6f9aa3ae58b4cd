// Cut and fill of a bench: closed form against triangles, triangles against CGAL's exact solids, balance.
#include "core/site/bench.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // false, inside CGAL's intersection of triangles
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Polygon_mesh_processing/orientation.h>
#include <CGAL/Polygon_mesh_processing/triangulate_faces.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/convex_hull_3.h>
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

/// Convex polygon with its corners on an ellipse turned by chance.
std::vector<Vector2d> randomOutline(Dice& dice, int corners) {
  const double a = dice.between(2, 6), b = dice.between(2, 6), turn = dice.between(0, 6);
  const Vector2d at(dice.between(-2, 2), dice.between(-2, 2));
  std::vector<Vector2d> outline;
  for (int k = 0; k < corners; ++k) {
    const double t = 2 * std::numbers::pi * (k + dice.between(-0.3, 0.3)) / corners;
    const Vector2d p(a * std::cos(t), b * std::sin(t));
    outline.emplace_back(at.x() + std::cos(turn) * p.x() - std::sin(turn) * p.y(),
                         at.y() + std::sin(turn) * p.x() + std::cos(turn) * p.y());
  }
  return outline;
}

BenchShape randomShape(Dice& dice, int corners) {
  return {randomOutline(dice, corners), dice.between(0.3, 1.5), dice.between(1, 2), dice.between(0, 0.3)};
}

constexpr double kHalf = 40;  // half the side of the surveyed square

/// Spot heights over a square: its corners and points by chance, heights from a function.
template <typename Height>
std::vector<Vector3d> survey(Dice& dice, int points, Height height) {
  std::vector<Vector3d> all;
  for (const double x : {-kHalf, kHalf}) {
    for (const double y : {-kHalf, kHalf}) all.emplace_back(x, y, height(Vector2d(x, y)));
  }
  for (int k = 0; k < points; ++k) {
    // closer together in the middle, where the platform is
    const Vector2d p = std::pow(dice.between(0, 1), 1.5) *
                       Vector2d(dice.between(-kHalf, kHalf), dice.between(-kHalf, kHalf));
    all.emplace_back(p.x(), p.y(), height(p));
  }
  return all;
}

std::vector<Vector3d> roughSurvey(Dice& dice, int points, double rough_m) {
  const Vector2d gradient(dice.between(-0.2, 0.2), dice.between(-0.2, 0.2));
  return survey(dice, points,
                [&](const Vector2d& p) { return gradient.dot(p) + dice.between(-rough_m, rough_m) + 100; });
}

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;
namespace processing = CGAL::Polygon_mesh_processing;

/// Everything under the ground down to a flat bottom.
Surface groundSolid(const Tin& tin, double bottom_m) {
  Surface solid;
  std::vector<Surface::Vertex_index> top, bottom;
  for (const Vector3d& p : tin.points_m) {
    top.push_back(solid.add_vertex({p.x(), p.y(), p.z()}));
    bottom.push_back(solid.add_vertex({p.x(), p.y(), bottom_m}));
  }
  for (const auto& t : tin.triangles) {
    solid.add_face(top[t[0]], top[t[1]], top[t[2]]);
    solid.add_face(bottom[t[2]], bottom[t[1]], bottom[t[0]]);
  }
  std::vector<std::array<Surface::Vertex_index, 2>> rim;
  for (const auto h : solid.halfedges()) {
    if (solid.is_border(h)) rim.push_back({solid.source(h), solid.target(h)});
  }
  const auto isTop = [&](Surface::Vertex_index v) { return v.idx() % 2 == 0; };
  for (const auto& [from, to] : rim) {
    if (!isTop(from)) continue;  // border of the top runs with the sides' upper edge
    const Surface::Vertex_index under_from(from.idx() + 1), under_to(to.idx() + 1);
    solid.add_face(from, to, under_to);
    solid.add_face(from, under_to, under_from);
  }
  REQUIRE(CGAL::is_closed(solid));
  REQUIRE(processing::is_outward_oriented(solid));
  return solid;
}

/// Convex solid over (or under) the platform between its batters: the hull of the platform and of the outline
/// that the batters reach at a far level. The far outline comes from CGAL's exact meeting of moved lines.
Surface batterSolid(const BenchShape& shape, double level_m, double far_m, double batter) {
  const std::size_t n = shape.outline_m.size();
  std::vector<Kernel::Point_3> points;
  std::vector<Kernel::Line_2> lines;
  const double offset = std::abs(far_m - level_m) * batter;
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d a = shape.outline_m[k], along = shape.outline_m[(k + 1) % n] - a;
    const Vector2d out = Vector2d(along.y(), -along.x()).normalized() * offset;
    lines.emplace_back(Kernel::Point_2(a.x() + out.x(), a.y() + out.y()),
                       Kernel::Vector_2(along.x(), along.y()));
    points.emplace_back(a.x(), a.y(), level_m);
  }
  for (std::size_t k = 0; k < n; ++k) {
    const auto meet = CGAL::intersection(lines[k], lines[(k + 1) % n]);
    const auto& at = boost::get<Kernel::Point_2>(meet.value());
    points.emplace_back(at.x(), at.y(), far_m);
  }
  Surface hull;
  CGAL::convex_hull_3(points.begin(), points.end(), hull);
  processing::triangulate_faces(hull);
  return hull;
}

double volume(const Surface& solid) {
  return solid.is_empty() ? 0 : CGAL::to_double(processing::volume(solid));
}

/// What two solids have in common.
Surface common(Surface a, Surface b) {
  Surface out;
  REQUIRE(processing::corefine_and_compute_intersection(a, b, out));
  return out;
}

/// Everything over and under the surveyed square.
Surface columnSolid(double bottom_m, double top_m) {
  std::vector<Kernel::Point_3> points;
  for (const double x : {-kHalf, kHalf}) {
    for (const double y : {-kHalf, kHalf}) {
      points.emplace_back(x, y, bottom_m);
      points.emplace_back(x, y, top_m);
    }
  }
  Surface hull;
  CGAL::convex_hull_3(points.begin(), points.end(), hull);
  return hull;
}

}  // namespace

TEST_CASE("bench on an even slope: the closed form agrees with triangles of the same plane") {
  Dice dice(11);
  int compared = 0;
  for (int i = 0; i < 60; ++i) {
    const Plane plane{{dice.between(-0.3, 0.3), dice.between(-0.3, 0.3)}, dice.between(-1, 1)};
    const BenchShape shape = randomShape(dice, 3 + i % 9);
    const auto points = survey(dice, 80, [&](const Vector2d& p) { return plane.at(p); });
    const auto tin = GroundSurface::spotHeights(points);
    REQUIRE(tin);
    const double level = plane.level_m + dice.between(-1, 1);
    const auto closed = benchAt(GroundSurface::plane(plane), shape, level);
    const auto cut = benchAt(*tin, shape, level);
    CAPTURE(i);
    if (!closed) {  // the ground rises along a sharp corner as steeply as the mitre
      CHECK(closed.error() == BenchFault::never_daylights);
      CHECK_FALSE(cut);
      continue;
    }
    ++compared;
    REQUIRE(cut);
    CHECK(closed->cut_m3 == Approx(cut->cut_m3).epsilon(1e-9).margin(1e-9));
    CHECK(closed->fill_m3 == Approx(cut->fill_m3).epsilon(1e-9).margin(1e-9));
    CHECK(closed->strip_m3 == Approx(cut->strip_m3).epsilon(1e-9).margin(1e-9));
    CHECK(closed->cut_face_m2 == Approx(cut->cut_face_m2).epsilon(1e-9).margin(1e-9));
    CHECK(closed->fill_face_m2 == Approx(cut->fill_face_m2).epsilon(1e-9).margin(1e-9));
    CHECK(closed->platform_m2 == Approx(cut->platform_m2).epsilon(1e-9));
    CHECK(closed->disturbed_m2() > closed->platform_m2);
  }
  CHECK(compared > 50);
}

TEST_CASE("bench on level ground: prism and frustum with mitred corners, by hand") {
  // 10 m x 6 m, 1 m below level ground, cut batter 1:1. Volume of a frustum with vertical-edge mitres:
  // A0 h + P0 h^2 / 2 + 4 h^3 / 3 = 60 + 16 + 4/3 (prismoidal formula); likewise 1:2 fill 1 m high.
  const BenchShape shape{{{-5, -3}, {5, -3}, {5, 3}, {-5, 3}}, 1, 2, 0};
  const auto cut = benchAt(GroundSurface::level(), shape, -1);
  REQUIRE(cut);
  CHECK(cut->cut_m3 == Approx(60 + 16 + 4.0 / 3).epsilon(1e-12));
  CHECK(cut->fill_m3 == 0);
  CHECK(cut->disturbed_m2() == Approx(12 * 8).epsilon(1e-12));
  const auto fill = benchAt(GroundSurface::level(), shape, 1);
  REQUIRE(fill);
  CHECK(fill->fill_m3 == Approx(60 + 32 + 16.0 / 3).epsilon(1e-12));
  CHECK(fill->cut_m3 == 0);
  CHECK(fill->disturbed_m2() == Approx(14 * 10).epsilon(1e-12));
}

TEST_CASE("bench on a rough survey: volumes agree with CGAL's exact solids") {
  Dice dice(23);
  int compared = 0;
  for (int i = 0; i < 12; ++i) {
    const auto points = roughSurvey(dice, 60, 0.8);
    const auto ground = GroundSurface::spotHeights(points);
    REQUIRE(ground);
    BenchShape shape = randomShape(dice, 3 + i % 6);
    shape.topsoil_m = 0;
    const double level = 100 + dice.between(-0.7, 0.7);
    const auto bench = benchAt(*ground, shape, level);
    CAPTURE(i);
    if (!bench) {
      CHECK(bench.error() == BenchFault::leaves_survey);
      continue;
    }
    const Surface solid = groundSolid(*ground->tin(), 0);
    const double cut = volume(common(solid, batterSolid(shape, level, level + 40, shape.cut_batter)));
    const Surface mound =
        common(columnSolid(-1, 200), batterSolid(shape, level, level - 40, shape.fill_batter));
    const double fill = volume(mound) - volume(common(solid, mound));
    CHECK(bench->cut_m3 == Approx(cut).epsilon(1e-9).margin(1e-9));
    CHECK(bench->fill_m3 == Approx(fill).epsilon(1e-9).margin(1e-9 + 1e-12 * volume(mound)));
    compared += bench->cut_m3 > 0.01 && bench->fill_m3 > 0.01;
  }
  CHECK(compared > 6);
}

TEST_CASE("bench on a rough survey: with topsoil stripped the ground taken and added still adds up") {
  // taken away less added = volume between natural ground and finished surface, whatever is stripped first
  Dice dice(37);
  int seen = 0;
  for (int i = 0; i < 30; ++i) {
    const auto ground = GroundSurface::spotHeights(roughSurvey(dice, 150, 0.5));
    REQUIRE(ground);
    BenchShape shape = randomShape(dice, 3 + i % 10);
    const double level = 100 + dice.between(-1, 1);
    const auto stripped = benchAt(*ground, shape, level);
    shape.topsoil_m = 0;
    const auto plain = benchAt(*ground, shape, level);
    REQUIRE(stripped.has_value() == plain.has_value());
    if (!plain) continue;
    ++seen;
    CHECK(stripped->strip_m3 + stripped->cut_m3 - stripped->fill_m3 ==
          Approx(plain->cut_m3 - plain->fill_m3).epsilon(1e-9).margin(1e-9));
    CHECK(stripped->disturbed_m2() == Approx(plain->disturbed_m2()));
  }
  CHECK(seen > 20);
}

TEST_CASE("bench: the finished surface and the ground meet along closed daylight lines") {
  Dice dice(41);
  for (int i = 0; i < 10; ++i) {
    const auto ground = GroundSurface::spotHeights(roughSurvey(dice, 120, 0.2));
    REQUIRE(ground);
    const BenchShape shape = randomShape(dice, 4 + i % 5);
    const auto bench = benchAt(*ground, shape, 100);
    if (!bench) continue;
    for (const DaylightLine& line : bench->daylight) {
      for (const Vector3d& p : line.line) {
        const auto height = ground->heightAt(p.head<2>());
        REQUIRE(height);
        CHECK(p.z() == Approx(*height).margin(1e-6));
      }
    }
    double facing_up = 0;
    for (const auto* mesh : {&bench->platform, &bench->cut_face, &bench->fill_face}) {
      for (const auto& t : mesh->triangles) {
        const Vector2d a = (mesh->points[t[1]] - mesh->points[t[0]]).head<2>();
        const Vector2d b = (mesh->points[t[2]] - mesh->points[t[0]]).head<2>();
        facing_up += (a.x() * b.y() - a.y() * b.x()) / 2;
      }
    }
    CHECK(facing_up == Approx(bench->disturbed_m2()).epsilon(1e-6));
  }
}

TEST_CASE("balanced bench: what is cut, compacted, is what is filled") {
  Dice dice(53);
  int balanced = 0;
  for (int i = 0; i < 40; ++i) {
    const BenchShape shape = randomShape(dice, 3 + i % 9);
    const Balance balance{dice.between(0.7, 1.1), i % 3 == 0 ? dice.between(-5, 20) : 0};
    const Plane plane{{dice.between(-0.3, 0.3), dice.between(-0.3, 0.3)}, dice.between(-1, 1)};
    const auto even = balancedBench(GroundSurface::plane(plane), shape, balance);
    CAPTURE(i);
    if (even) {
      ++balanced;
      CHECK((even->cut_m3 + balance.more_bank_m3) * balance.compacted_per_bank ==
            Approx(even->fill_m3).epsilon(1e-8).margin(1e-8));
    } else {
      CHECK(even.error() == BenchFault::never_daylights);
    }

    const auto ground = GroundSurface::spotHeights(roughSurvey(dice, 100, 0.3));
    REQUIRE(ground);
    const auto rough = balancedBench(*ground, shape, balance);
    if (!rough) continue;
    ++balanced;
    CHECK((rough->cut_m3 + balance.more_bank_m3) * balance.compacted_per_bank ==
          Approx(rough->fill_m3).epsilon(1e-8).margin(1e-8));
  }
  CHECK(balanced > 60);
}

TEST_CASE("bench: lower platforms cut more and fill less") {
  Dice dice(61);
  const auto ground = GroundSurface::spotHeights(roughSurvey(dice, 200, 0.2));
  REQUIRE(ground);
  const BenchShape shape = randomShape(dice, 6);
  double cut = -1, fill = 1e9;
  for (const double level : {101.0, 100.5, 100.0, 99.5, 99.0}) {
    const auto bench = benchAt(*ground, shape, level);
    REQUIRE(bench);
    CHECK(bench->cut_m3 >= cut);
    CHECK(bench->fill_m3 <= fill);
    cut = bench->cut_m3;
    fill = bench->fill_m3;
  }
}
