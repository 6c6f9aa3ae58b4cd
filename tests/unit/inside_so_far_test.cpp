#include "core/geometry/inside_so_far.h"

#include "core/geometry/pegs.h"
#include "core/geometry/scene.h"
#include "core/works/build_days.h"
#include "tests/support/random_tank.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

using namespace core::geometry;

namespace {

/// 4 m by 3 m at the floor, 2 m deep, walls of 3 up to 4 along (batter 0.75, slant 1.25), two coats of 0.04 m
/// and 0.06 m, stone bed of 0.1 m.
TankGeometry simple(double rim_width_m = 0, double rim_thickness_m = 0) {
  core::Tank tank;
  tank.shape = core::Shape::rectangle;
  tank.measured_at = core::MeasuredAt::floor;
  tank.length_m = 4;
  tank.width_m = 3;
  tank.depth_m = 2;
  tank.batter = 0.75;
  tank.corner_radius_m = 0;
  core::Lining lining;
  lining.stone_bed_m = 0.1;
  lining.coats.resize(2);
  lining.coats[0].thickness_m = 0.04;
  lining.coats[1].thickness_m = 0.06;
  lining.cove_radius_m = 0;
  lining.rim_width_m = rim_width_m;
  lining.rim_thickness_m = rim_thickness_m;
  return TankGeometry(tank, lining);
}

Built built(double dug_m, bool has_bed, int coats) {
  Built b;
  b.dug_m = dug_m;
  b.has_stone_bed = has_bed;
  b.coats = coats;
  return b;
}

void checkPoints(const TankGeometry& tank, const Built& so_far, const std::vector<ProfilePoint>& by_hand) {
  const auto points = insideSoFar(tank, so_far);
  REQUIRE(points.size() == by_hand.size());
  for (std::size_t k = 0; k < points.size(); ++k) {
    INFO("point " << k);
    CHECK(points[k].offset_m == Approx(by_hand[k].offset_m).margin(1e-12));
    CHECK(points[k].z_m == Approx(by_hand[k].z_m).margin(1e-12));
  }
}

/// Volume that chords of the cove cut off, from the area of a circle's segments, by the floor's length round.
double cutByChords(const TankGeometry& tank, int steps) {
  const auto cove = std::ranges::find(tank.layers(), "cove", &Layer::id);
  if (cove == tank.layers().end()) return 0;
  const double step = std::atan2(1, tank.batter()) / steps;
  return steps * cove->thickness_m * cove->thickness_m / 2 * (step - std::sin(step)) *
         tank.outline().perimeter(0);
}

}  // namespace

// All offsets by hand: at level z the clear wall stands at 0.75 z, a face t behind it at 0.75 z + 1.25 t.

TEST_CASE("what is open to the sky of a simple tank has the levels and offsets reckoned by hand") {
  const TankGeometry tank = simple();
  checkPoints(tank, built(0, false, 0), {{1.625, 2}});
  checkPoints(tank, built(1, false, 0), {{0.875, 1}, {1.625, 2}});
  checkPoints(tank, built(99, false, 0), {{-0.025, -0.2}, {1.625, 2}});
  checkPoints(tank, built(99, true, 0), {{0.05, -0.1}, {1.625, 2}});
  checkPoints(tank, built(99, true, 1), {{0.03, -0.06}, {1.575, 2}, {1.625, 2}});
  checkPoints(tank, built(99, true, 2), {{0, 0}, {1.5, 2}, {1.625, 2}});
}

TEST_CASE("the ledge of a collar is open until the collar comes with the last coat") {
  const TankGeometry tank = simple(0.5, 0.2);
  checkPoints(tank, built(0.1, false, 0), {{2.125, 1.9}, {2.125, 2}});
  checkPoints(tank, built(99, true, 0), {{0.05, -0.1}, {1.475, 1.8}, {2.125, 1.8}, {2.125, 2}});
  checkPoints(tank, built(99, true, 1),
              {{0.03, -0.06}, {1.575, 2}, {1.625, 2}, {1.475, 1.8}, {2.125, 1.8}, {2.125, 2}});
  checkPoints(tank, built(99, true, 2), {{0, 0}, {1.5, 2}, {1.625, 2}, {2.125, 2}});
}

TEST_CASE(
    "what is open to the sky is the pit as dug less the layers that are there, for every kind of tank") {
  constexpr int kSteps = 40;
  support::RandomTanks tanks(311);
  for (const core::Shape shape : {core::Shape::rectangle, core::Shape::round, core::Shape::polygon}) {
    for (int n = 0; n < 60; ++n) {
      const support::TankAndLining made = tanks.next(shape);
      const TankGeometry tank(made.tank, made.lining);
      for (const core::works::BuildDay& day : core::works::buildStages(tank, false)) {
        if (day.built.dug_m <= 0) continue;
        double expected = volume(tank.outline(), tank.pitProfile(day.built.dug_m));
        if (day.built.dug_m >= tank.pitDepth()) {
          for (const Layer& layer : tank.layers())
            expected -= stands(layer, tank, day.built) ? layer.volume_m3 : 0;
        }
        const double chords = isLined(tank, day.built) ? cutByChords(tank, kSteps) : 0;
        const double open = volume(tank.outline(), Profile{insideSoFar(tank, day.built, kSteps)});
        INFO(day.stage << " of tank " << n);
        CHECK(open == Approx(expected).margin(1e-9 + 1.05 * chords));
      }
    }
  }
}

TEST_CASE("pegs stand at the corners of the pit and 1 m clear on both sides' lines, strings between those") {
  const PegPlaces places = pegPlaces(simple());
  REQUIRE(places.pegs.size() == 12);
  REQUIRE(places.strings.size() == 4);
  for (const auto& [from, to] : places.strings) {
    const double length = (to - from).norm();
    // pit top 4 + 2 * 1.625 by 3 + 2 * 1.625, and 1 m at either end
    CHECK((std::abs(length - 9.25) < 1e-12 || std::abs(length - 8.25) < 1e-12));
    for (const auto& end : {from, to}) {
      CHECK(std::ranges::any_of(places.pegs, [&](const auto& peg) { return (peg - end).norm() < 1e-12; }));
    }
  }
}
