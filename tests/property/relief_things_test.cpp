#include "core/geometry/relief.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/relief_site.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include <catch2/catch.hpp>

using namespace core::geometry;
using core::Shape;
using Eigen::Vector2d;
using Eigen::Vector3d;
using support::evenSlope;
using support::hasPart;
using support::heightOn;
using support::partOf;
using support::ReliefSite;
using support::reliefSites;
using support::wavyGround;
using support::wholeGround;

TEST_CASE("stripes lie 8 mm over the ground they are on and cover their share of it") {
  for (const Shape shape : {Shape::rectangle, Shape::round, Shape::polygon}) {
    const ReliefSite site = evenSlope(shape, 14, 118);
    const Scene scene = site.drawn();
    const auto share = [&](const char* id, const char* of, double expected) {
      const Part &stripes = partOf(scene, id), &zone = partOf(scene, of);
      CAPTURE(id, static_cast<int>(shape));
      CHECK(area(stripes.mesh) / area(zone.mesh) == Approx(expected).epsilon(0.12));  // edges cut stripes off
      for (std::size_t k = 0; k < stripes.mesh.points.size(); k += 7) {
        const Vector3d& p = stripes.mesh.points[k];
        double nearest = 1;
        for (std::size_t t = 0; t < zone.mesh.triangles.size(); ++t) {
          if (const auto z = heightOn(zone.mesh, t, p.head<2>()))
            nearest = std::min(nearest, std::abs(p.z() - 0.008 - *z));
        }
        REQUIRE(nearest < 1e-6);
      }
    };
    share("cut_pattern", "cut", 0.12 / 0.5);
    share("fill_pattern", "fill", 0.12 / 0.35 * 0.4 / 0.7);
  }
}

TEST_CASE("ground that is level with the rim has neither cut nor fill, and may carry a heap") {
  ReliefSite site = evenSlope(Shape::rectangle, 0, 0, 0);
  site.relief.downhill.reset();
  site.relief.heap = Relief::Heap{{7, 1}, 2, 0.5, 1.2};
  const Scene scene = site.drawn();
  for (const char* id : {"cut", "fill", "cut_pattern", "fill_pattern", "fall_arrow", "marker"})
    CHECK_FALSE(hasPart(scene, id));
  CHECK(support::cgal::solid(wholeGround(scene)).sound());
  CHECK(hasPart(scene, "heap"));
}

TEST_CASE("a heap is closed, holds a cone's or frustum's volume and stands on the natural ground") {
  for (ReliefSite site :
       {evenSlope(Shape::rectangle, 0, 0), evenSlope(Shape::round, 25, 70), wavyGround(Shape::polygon, 20)}) {
    for (const double top : {0.0, 0.8}) {
      const double base = 2.5, height = 1.4;
      site.relief.heap = Relief::Heap{{6, -2}, base, top, height};
      const Mesh mesh = partOf(site.drawn(), "heap").mesh;
      const support::cgal::Solid measured = support::cgal::solid(mesh);
      REQUIRE(measured.sound());
      // closed form of a frustum; drawn with 48 sides it is a little smaller
      const double exact = std::numbers::pi * height / 3 * (base * base + base * top + top * top);
      CHECK(measured.volume_m3 < exact);
      CHECK(measured.volume_m3 == Approx(exact).epsilon(0.01));
      for (const Vector3d& p : mesh.points) {
        if ((p.head<2>() - Vector2d(6, -2)).norm() < base - 1e-9) continue;
        CHECK(p.z() == Approx(site.relief.natural_m(p.head<2>())).margin(1e-9));
      }
    }
  }
}

TEST_CASE("the arrow is closed, points down the fall and lies on undisturbed ground") {
  for (const ReliefSite& site : reliefSites()) {
    const Mesh mesh = partOf(site.drawn(), "fall_arrow").mesh;
    REQUIRE(support::cgal::solid(mesh).sound());
    const Vector2d down = *site.relief.downhill;
    const auto further = [&](const Vector3d& a, const Vector3d& b) {
      return down.dot(a.head<2>()) < down.dot(b.head<2>());
    };
    const auto [tail, tip] = std::minmax_element(mesh.points.begin(), mesh.points.end(), further);
    CHECK(down.dot((*tip - *tail).head<2>()) == Approx(1.2));
    // the tip is one place, the tail as wide as the shaft
    const auto at_end = [&](const Vector3d& end) {
      return std::count_if(mesh.points.begin(), mesh.points.end(),
                           [&](const Vector3d& p) { return std::abs(down.dot((p - end).head<2>())) < 1e-9; });
    };
    CHECK(at_end(*tip) == 2);
    CHECK(at_end(*tail) == 4);
    for (const Vector3d& p : mesh.points) {
      const double natural = site.relief.natural_m(p.head<2>());
      CHECK(site.finished(p.head<2>()) == Approx(natural).margin(1e-9));
      CHECK(p.z() > natural);
      CHECK(p.z() < natural + 0.35);
    }
  }
}

TEST_CASE("the person stands on the finished ground, the marker on its tip") {
  for (ReliefSite site : reliefSites()) {
    site.setPlatform(0.5);  // the person stands on the face of cut or fill
    SceneOptions options;
    options.relief = site.relief;
    options.facets_per_circle = ReliefSite::kFacets;
    options.marker = Vector3d(3, -4, 0.5);
    const Scene scene = core::geometry::scene(site.tank, options);
    const auto lower = [](const Vector3d& a, const Vector3d& b) { return a.z() < b.z(); };
    const std::vector<Vector3d>& body = partOf(scene, "person").mesh.points;
    Vector2d least = body.front().head<2>(), most = least;
    for (const Vector3d& p : body) {
      least = least.cwiseMin(p.head<2>());
      most = most.cwiseMax(p.head<2>());
    }
    const double foot = std::min_element(body.begin(), body.end(), lower)->z();
    CHECK(foot == Approx(site.finished((least + most) / 2)).margin(1e-6));
    const Mesh& cone = partOf(scene, "marker").mesh;
    CHECK(support::cgal::solid(cone).sound());
    CHECK((*std::min_element(cone.points.begin(), cone.points.end(), lower) - *options.marker).norm() <
          1e-12);
  }
}

TEST_CASE("a marker may be asked for on level ground, too, and changes nothing else") {
  const ReliefSite site = evenSlope(Shape::rectangle, 0, 0);
  SceneOptions options;
  const Scene plain = scene(site.tank, options);
  options.marker = Vector3d(3, -4, 1.6);
  const Scene marked = scene(site.tank, options);
  CHECK(partOf(marked, "marker").role == Role::marker);
  REQUIRE(marked.parts.size() == plain.parts.size() + 1);
  for (const Part& part : plain.parts) CHECK(partOf(marked, part.id).mesh.points == part.mesh.points);
}

TEST_CASE("a view shows the worked ground with 1.5 m about it, not all that is drawn") {
  ReliefSite site = evenSlope(Shape::round, 8, 300);
  site.relief.reach_m = 20;
  site.relief.heap = Relief::Heap{{30, 0}, 2, 0, 1};
  const Scene drawn = site.drawn();
  double worked = 0;
  for (const Part& part : drawn.parts) {
    if (part.role != Role::cut && part.role != Role::fill && part.role != Role::excavation) continue;
    for (const auto& t : part.mesh.triangles) {
      for (const auto k : t) worked = std::max(worked, part.mesh.points[k].x());
    }
  }
  double farthest = 0;
  for (const Vector3d& p : framePoints(drawn)) farthest = std::max(farthest, p.x());
  CHECK(farthest == Approx(worked + 1.5));
}
