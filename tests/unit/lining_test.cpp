#include "core/plan.h"

#include <algorithm>
#include <cmath>
#include <string>

#include <catch2/catch.hpp>

namespace {

const core::lining::Material& material(const core::lining::Quantities& q, const std::string& id) {
  const auto it =
      std::find_if(q.materials.begin(), q.materials.end(), [&](const auto& m) { return m.id == id; });
  REQUIRE(it != q.materials.end());
  return *it;
}

core::lining::Quantities quantities(const core::Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return plan->quantities;
}

}  // namespace

TEST_CASE("a mix shares the loose volume out by parts") {
  const core::Lining lining;
  core::Coat coat;
  coat.soil = 3;
  coat.sand = 2;
  coat.cement = 1;
  const auto m = core::lining::mixFor(2, coat, lining);
  CHECK(m.soil_m3 + m.sand_m3 + m.cement_m3 == Approx(2 * lining.dry_to_wet));
  CHECK(m.soil_m3 / m.cement_m3 == Approx(3));
  CHECK(m.sand_m3 / m.cement_m3 == Approx(2));
  CHECK(m.cement_kg == Approx(m.cement_m3 * 1440));
}

TEST_CASE("what is ordered covers what is needed, in whole bags and tenths of a cubic metre") {
  const core::Project p;
  const auto q = quantities(p);
  for (const auto& m : q.materials) CHECK(m.order >= m.net);
  const double bags = material(q, "cement_bags").order;
  CHECK(bags == std::floor(bags));
  CHECK(material(q, "cement").order == bags * p.lining.cement_bag_kg);
  for (const char* id : {"soil", "sand", "stone"}) {
    const double tenths = material(q, id).order * 10;
    CHECK(tenths == Approx(std::round(tenths)).margin(1e-9));
  }
}

TEST_CASE("unevenness is added to coat 1 and the stone bed only, waste to everything") {
  core::Project p;
  p.lining.unevenness_percent = 20;
  p.lining.waste_percent = 10;
  const auto q = quantities(p);
  CHECK(q.coats[0].placed_m3 == Approx(q.coats[0].shell_m3 * 1.2 * 1.1));
  CHECK(q.coats[1].placed_m3 == Approx(q.coats[1].shell_m3 * 1.1));
  const double stone = q.stone_net_m3 * 1.2 * 1.1 * p.lining.stone_loose_factor;
  CHECK(material(q, "stone").order >= stone - 1e-9);
  CHECK(material(q, "stone").order < stone + 0.1);
}

TEST_CASE("batch cards: the batches of a coat make its plaster, with less than one batch over") {
  const core::Project p;
  const auto q = quantities(p);
  REQUIRE(q.batches.size() == 4);
  for (const auto& b : q.batches) {
    const auto& coat = q.coats[static_cast<std::size_t>(b.coat) - 1];
    CHECK(b.count * b.yield_m3 >= coat.placed_m3 - 1e-9);
    CHECK((b.count - 1) * b.yield_m3 < coat.placed_m3);
    CHECK(b.covers_m2 * coat.thickness_m == Approx(b.yield_m3));
    CHECK(b.soil_boxes * p.lining.gauge_box_l / 1000 == Approx(b.soil_m3));
    CHECK(b.sand_pans * p.lining.pan_l / 1000 == Approx(b.sand_m3));
    CHECK(b.sand_buckets * p.lining.bucket_l / 1000 == Approx(b.sand_m3));
    CHECK(b.cement_kg == b.bags * p.lining.cement_bag_kg);
  }
}

TEST_CASE("sieving and bulking raise the order of soil and sand, not the need") {
  core::Project p;
  const auto before = quantities(p);
  p.lining.sieving_loss_percent = 30;
  p.lining.sand_bulking_percent = 40;
  const auto after = quantities(p);
  CHECK(material(after, "soil").net == material(before, "soil").net);
  CHECK(material(after, "soil").order > material(before, "soil").order);
  CHECK(material(after, "sand").order > material(before, "sand").order);
  CHECK(material(after, "cement").order == material(before, "cement").order);
}

TEST_CASE("cove and rim are plastered with the last coat's mix and counted once") {
  core::Project p;
  p.lining.cove_radius_m = 0.15;
  p.lining.rim_width_m = 0.3;
  p.lining.rim_thickness_m = 0.06;
  auto plan = core::plan(p);
  REQUIRE(plan);
  double plaster = 0;
  for (const auto& layer : plan->layers) {
    if (layer.id != "stone_bed") plaster += layer.volume_m3;
  }
  CHECK(plan->quantities.coats[0].shell_m3 + plan->quantities.coats[1].shell_m3 == Approx(plaster));
}

TEST_CASE("a customary bill with no answer says so instead of making one up") {
  core::Project p;
  p.lining.customary.cement_kg = 100000;  // more than pure cement of any buildable thickness could take
  const auto bill = *quantities(p).customary;
  REQUIRE(bill.cement);
  CHECK_FALSE(bill.cement->filler_factor);
  CHECK(bill.cement->mix.empty());
  p.lining.customary.cement_kg.reset();
  p.lining.customary.stone_m3 = 2;
  CHECK_FALSE(quantities(p).customary->cement);
  p.lining.customary = {};
  CHECK_FALSE(quantities(p).customary);
}
