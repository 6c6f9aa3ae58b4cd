#include "core/geometry/relief.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/random_tank.h"
#include "tests/support/relief_site.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include <catch2/catch.hpp>

// Closedness and volumes by CGAL 5.5, an independent general geometry library; the finished ground and its
// integrals from the user's sizes alone.

namespace {

using namespace core::geometry;
using core::Shape;
using Eigen::Vector2d;
using Eigen::Vector3d;
using support::evenSlope;
using support::Height;
using support::heightOn;
using support::ReliefSite;
using support::reliefSites;
using support::wavyGround;
using support::wholeGround;
using support::cgal::Polygon;

const auto kShapes = {Shape::rectangle, Shape::round, Shape::polygon};

/// Integral over a convex polygon: fans of triangles from its middle, each in squares of its sides' parts.
double integral(const Polygon& polygon, const Height& f, int parts) {
  Vector2d middle = Vector2d::Zero();
  for (const Vector2d& p : polygon) middle += p / double(polygon.size());
  double sum = 0;
  for (std::size_t k = 0; k < polygon.size(); ++k) {
    const Vector2d a = (polygon[k] - middle) / parts,
                   b = (polygon[(k + 1) % polygon.size()] - middle) / parts;
    double values = 0;
    for (int i = 0; i < parts; ++i)
      for (int j = 0; i + j < parts; ++j) {
        values += f(middle + (i + 1.0 / 3) * a + (j + 1.0 / 3) * b);
        if (i + j + 1 < parts) values += f(middle + (i + 2.0 / 3) * a + (j + 2.0 / 3) * b);
      }
    sum += values * (a.x() * b.y() - a.y() * b.x()) / 2;
  }
  return sum;
}

double underside(const Mesh& mesh) {
  double least = std::numeric_limits<double>::infinity();
  for (const Vector3d& p : mesh.points) least = std::min(least, p.z());
  return least;
}

double pitVolume(const ReliefSite& site) {
  const double turn = 2 * std::numbers::pi / ReliefSite::kFacets;
  return site.tank.pitVolume() * (site.round() ? std::sin(turn) / turn : 1);
}

/// Cut less fill: the prism of the block under natural ground, less the block and its pit.
double cutLessFill(const ReliefSite& site, const Mesh& block, int parts) {
  const Polygon around = site.outline(ReliefSite::kPlatform_m + ReliefSite::kReach_m);
  return integral(around, site.relief.natural_m, parts) - underside(block) * support::cgal::area(around) -
         support::cgal::solid(block).volume_m3 - pitVolume(site);
}

double expectedCutLessFill(const ReliefSite& site, int parts) {
  return integral(
      site.outline(ReliefSite::kPlatform_m + ReliefSite::kReach_m),
      [&](const Vector2d& p) { return site.relief.natural_m(p) - site.finished(p); }, parts);
}

double cutAndFill(const ReliefSite& site) {
  return integral(
      site.outline(ReliefSite::kPlatform_m + ReliefSite::kReach_m),
      [&](const Vector2d& p) { return std::abs(site.relief.natural_m(p) - site.finished(p)); }, 200);
}

struct Found {
  Zone zone;
  double z_m;
};

std::vector<Found> under(const ZonedBlock& block, const Vector2d& p) {
  std::vector<Found> found;
  for (std::size_t k = 0; k < block.zone.size(); ++k) {
    if (const auto z = heightOn(block.mesh, k, p)) found.push_back({block.zone[k], *z});
  }
  return found;
}

}  // namespace

TEST_CASE("the block of ground is closed, faces outward and does not cut through itself") {
  int number = 0;
  for (const ReliefSite& site : reliefSites()) {
    CAPTURE(++number);
    const ZonedBlock block = reliefBlock(site.tank, site.ground());
    REQUIRE(block.zone.size() == block.mesh.triangles.size());
    REQUIRE(support::cgal::solid(block.mesh).sound());
    if (number % 5 == 0) REQUIRE_FALSE(support::cgal::selfIntersects(block.mesh));
  }
}

TEST_CASE("the block is closed for random tanks on random ground, whole and cut open") {
  support::RandomTanks tanks(1848);
  support::Dice& dice = tanks.dice();
  for (int i = 0; i < 150; ++i) {
    const auto from = tanks.next(i % 3 == 0 ? Shape::rectangle : i % 3 == 1 ? Shape::round : Shape::polygon);
    const TankGeometry tank(from.tank, from.lining);
    const Vector2d fall(dice.between(-0.3, 0.3), dice.between(-0.3, 0.3));
    const double over = dice.between(-0.5, 0.5), wave = dice.between(0, 0.4);
    SceneOptions options;
    options.facets_per_circle = dice.whole(8, 96);
    Relief relief;
    relief.natural_m = [&](const Vector2d& p) {
      return tank.depth() + over - fall.dot(p) + wave * std::sin(p.x()) * std::sin(1.3 * p.y());
    };
    relief.platform_offset_m = dice.between(0, 3);
    relief.cut_batter = dice.between(0.3, 3);
    relief.fill_batter = dice.between(1, 3);
    relief.reach_m = dice.between(0.3, 8);
    if (i % 4 != 0) relief.downhill = fall.normalized();
    options.relief = relief;
    if (i % 2 == 0)
      options.cut = CutPlane{tank.outline().centre(), {dice.between(-1, 1), dice.between(0.1, 1)}};
    CAPTURE(i);
    REQUIRE(support::cgal::solid(wholeGround(scene(tank, options))).sound());
  }
}

TEST_CASE("on an even slope the block lacks what an independent integration cuts less what it fills") {
  for (const Shape shape : kShapes) {
    for (const double azimuth : {0.0, 33.0, 250.0}) {
      const ReliefSite site = evenSlope(shape, 12, azimuth, 0.25);
      const ZonedBlock block = reliefBlock(site.tank, site.ground());
      CAPTURE(static_cast<int>(shape), azimuth, cutAndFill(site));
      // the mesh has every edge of these surfaces, so only the integration is inexact
      REQUIRE(std::abs(cutLessFill(site, block.mesh, 400) - expectedCutLessFill(site, 400)) <
              3e-4 * cutAndFill(site));
    }
  }
}

TEST_CASE("on wavy ground the block comes nearer to the integral as its steps get smaller") {
  for (const Shape shape : kShapes) {
    const ReliefSite site = wavyGround(shape, 63);
    const double exact = expectedCutLessFill(site, 900);
    std::vector<double> error;
    for (const double part : {1.0, 0.5, 0.25}) {
      const BlockSteps steps{0.5 * part, 0.8 * part};
      error.push_back(
          std::abs(cutLessFill(site, reliefBlock(site.tank, site.ground(), steps).mesh, 900) - exact));
    }
    CAPTURE(static_cast<int>(shape), cutAndFill(site), error);
    CHECK(error[1] < 0.01 * cutAndFill(site));  // as drawn
    CHECK(error[1] < error[0] / 2.5);
    CHECK(error[2] < error[1] / 2.5);
  }
}

TEST_CASE("at any place the finished ground lies where it should and is told to be cut, filled or neither") {
  support::Dice dice(5);
  constexpr double kNear_m = 0.02;  // of a border, where a wavy one may run otherwise
  int seen[3] = {0, 0, 0};
  for (const ReliefSite& site : reliefSites()) {
    const ZonedBlock block = reliefBlock(site.tank, site.ground());
    const Polygon inner = site.outline(site.tank.pitProfile().points.back().offset_m);
    for (int i = 0; i < 60; ++i) {
      const Vector2d p(dice.between(-8, 12), dice.between(-8, 10));
      const std::vector<Found> found = under(block, p);
      const double d = site.outside(p), rim = site.from.depth_m, natural = site.relief.natural_m(p);
      if (d > ReliefSite::kReach_m - 0.1 ||
          d < site.tank.pitProfile().points.back().offset_m - ReliefSite::kPlatform_m + 0.1)
        continue;
      CAPTURE(p.x(), p.y(), d, natural, static_cast<int>(site.from.shape));
      REQUIRE(found.size() >= 1);
      REQUIRE(std::abs(found[0].z_m - site.finished(p)) < kNear_m);
      const double cut = natural - rim - std::max(d, 0.0) / ReliefSite::kCutBatter;
      const double fill = rim - std::max(d, 0.0) / ReliefSite::kFillBatter - natural;
      if (std::min(std::abs(cut), std::abs(fill)) < kNear_m || std::abs(d) < kNear_m) continue;
      const Zone expected = cut > 0 ? Zone::cut : fill > 0 ? Zone::fill : Zone::ground;
      REQUIRE(found[0].zone == expected);
      ++seen[static_cast<int>(expected)];
    }
  }
  CHECK(*std::min_element(seen, seen + 3) > 200);
}

TEST_CASE("cut open, the ground is closed again and nothing lies in front of the section") {
  const std::vector<ReliefSite> all = reliefSites();
  for (std::size_t k = 0; k < all.size(); k += 2) {
    const double turn = 0.7 * double(k);
    const Vector2d middle = all[k].tank.outline().centre();
    const CutPlane plane{middle + Vector2d(0.1, -0.2), {std::cos(turn), std::sin(turn)}};
    ReliefSite site = all[k];
    site.relief.heap = Relief::Heap{middle + Vector2d(4.5, 4.5), 1.5, 0.3, 0.9};
    const Scene scene = site.drawn(plane);
    CAPTURE(k);
    REQUIRE(support::cgal::solid(wholeGround(scene)).sound());
    for (const Part& part : scene.parts) {
      CAPTURE(part.id);
      double most = -std::numeric_limits<double>::infinity();
      for (const auto& t : part.mesh.triangles)
        for (const auto v : t)
          most = std::max(most, plane.normal.dot(part.mesh.points[v].head<2>() - plane.point));
      REQUIRE(most < 1e-5);
    }
  }
}
