#include "core/works/build_days.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/random_tank.h"
#include "tests/support/relief_site.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

// The tank half built. Closedness and volumes by CGAL 5.5, an independent general geometry library.

namespace {

using namespace core::geometry;
using core::Shape;

const auto kShapes = {Shape::rectangle, Shape::round, Shape::polygon};
constexpr int kFacets = 32;

Scene sceneOf(const TankGeometry& tank, const Built& built, const std::optional<Relief>& relief = {}) {
  SceneOptions options;
  options.facets_per_circle = kFacets;
  options.built = built;
  options.relief = relief;
  return scene(tank, options);
}

Built dug(double depth_m) {
  Built built;
  built.dug_m = depth_m;
  built.has_stone_bed = false;
  built.coats = 0;
  return built;
}

}  // namespace

TEST_CASE("earth that is dug so far is missing from the ground, on level ground and on slopes") {
  support::RandomTanks tanks(77);
  for (const Shape shape : kShapes) {
    for (int n = 0; n < 20; ++n) {
      const support::TankAndLining made = tanks.next(shape);
      const TankGeometry tank(made.tank, made.lining);
      const auto untouched = support::cgal::solid(support::wholeGround(sceneOf(tank, dug(0))));
      REQUIRE(untouched.sound());
      CHECK_FALSE(support::hasPart(sceneOf(tank, dug(0)), "excavation"));
      for (const double share : {0.02, 0.4, 0.8, 1.0}) {
        const double depth = share * tank.pitDepth();
        const auto left = support::cgal::solid(support::wholeGround(sceneOf(tank, dug(depth))));
        const auto hole = support::cgal::solid(solid(tank.outline().ring(kFacets), tank.pitProfile(depth)));
        INFO("share " << share);
        CHECK(left.sound());
        CHECK(untouched.volume_m3 - left.volume_m3 == Approx(hole.volume_m3).epsilon(1e-9));
      }
    }
  }
  for (const support::ReliefSite& site : support::reliefSites()) {
    const auto before = support::cgal::solid(support::wholeGround(sceneOf(site.tank, dug(0), site.relief)));
    const auto after = support::cgal::solid(support::wholeGround(sceneOf(site.tank, dug(99), site.relief)));
    const auto hole = support::cgal::solid(solid(site.tank.outline().ring(kFacets), site.tank.pitProfile()));
    CHECK(before.sound());
    CHECK(after.sound());
    CHECK(before.volume_m3 - after.volume_m3 == Approx(hole.volume_m3).epsilon(1e-6));
  }
}

TEST_CASE("before the platform is made the ground is the natural one") {
  for (const Shape shape : kShapes) {
    const support::ReliefSite site = support::evenSlope(shape, 20, 120);
    Built built = dug(0);
    built.is_platform_made = false;
    const Scene natural = sceneOf(site.tank, built, site.relief);
    CHECK_FALSE(support::hasPart(natural, "cut"));
    CHECK_FALSE(support::hasPart(natural, "fill"));
    const Mesh mesh = support::wholeGround(natural);
    CHECK(support::cgal::solid(mesh).sound());
    for (std::size_t k = 0; k < mesh.points.size(); ++k) {
      const Eigen::Vector3d& p = mesh.points[k];
      const double least =
          std::ranges::min_element(mesh.points, {}, [](const auto& q) { return q.z(); })->z();
      if (p.z() <= least + 1e-9) continue;
      CHECK(p.z() == Approx(site.relief.natural_m(p.head<2>())).margin(1e-9));
    }
  }
}

TEST_CASE("layers appear in the order of work, and what is measured with them") {
  support::RandomTanks tanks(78);
  for (const Shape shape : kShapes) {
    const support::TankAndLining made = tanks.next(shape);
    const TankGeometry tank(made.tank, made.lining);
    const auto stages = core::works::buildStages(tank, false);
    CHECK(stages.front().stage == "pegs");
    CHECK(stages.back().stage == "full");
    std::size_t layers = 0;
    for (const core::works::BuildDay& stage : stages) {
      const Scene s = sceneOf(tank, stage.built);
      INFO(stage.stage);
      CHECK(support::hasPart(s, "pegs") == stage.built.has_pegs);
      CHECK(support::hasPart(s, "sacks") == stage.built.has_sacks);
      for (const char* id : {"pegs", "sacks"}) {
        if (support::hasPart(s, id)) CHECK(support::cgal::solid(support::partOf(s, id).mesh).closed);
      }
      const auto now = static_cast<std::size_t>(std::ranges::count_if(
          tank.layers(), [&](const Layer& layer) { return support::hasPart(s, layer.id); }));
      CHECK(now >= layers);
      layers = now;
    }
    CHECK(layers == tank.layers().size());
    CHECK_FALSE(sceneOf(tank, stages.back().built).dimensions.empty());
    CHECK(sceneOf(tank, stages.front().built).dimensions.empty());
  }
}

TEST_CASE("the depth at which a share is dug takes that share of the volume") {
  support::RandomTanks tanks(79);
  for (const Shape shape : kShapes) {
    for (int n = 0; n < 50; ++n) {
      const support::TankAndLining made = tanks.next(shape);
      const TankGeometry tank(made.tank, made.lining);
      for (const double share : {0.1, 0.5, 0.9}) {
        const double depth = core::works::depthDug(tank, 0, tank.pitDepth(), share);
        const Ring ring = tank.outline().ring(720);
        const double volume_m3 = support::cgal::solid(solid(ring, tank.pitProfile(depth))).volume_m3;
        // 0.1 mm of depth over the widest floor, and the facets of 0.5 degrees
        CHECK(volume_m3 == Approx(share * tank.pitVolume())
                               .margin(1.1e-4 * tank.outline().area(tank.pitOffset(tank.depth())) +
                                       2e-4 * tank.pitVolume()));
      }
    }
  }
}
