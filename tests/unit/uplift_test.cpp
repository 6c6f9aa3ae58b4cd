// Thresholds of site and safety, groundwater under an empty tank, frost and swelling ground.
#include "core/site/uplift.h"

#include "core/site/thresholds.h"

#include <cmath>
#include <numbers>
#include <set>
#include <string_view>

#include <catch2/catch.hpp>

namespace {

using namespace core::site;
using core::Soil;

core::geometry::TankGeometry box(double batter = 0) {
  core::Tank tank;  // 6 m x 3.5 m x 1.5 m, measured at the floor
  tank.batter = batter;
  core::Lining lining;  // two coats of 6 cm
  return {tank, lining};
}

}  // namespace

TEST_CASE("thresholds: each key once, values as published") {
  std::set<std::string_view> keys;
  for (const Threshold& t : thresholds()) {
    CAPTURE(std::string(t.key));
    CHECK(keys.insert(t.key).second);
    CHECK(std::isfinite(t.value));
    CHECK_FALSE(t.source.empty());
  }
  CHECK_THROWS_AS(threshold("no.such_key"), std::logic_error);
  // 29 CFR 1926.651(c)(2), 652(a)(1), 651(j)(2), appendix B: 4, 5, 2, 20 ft, and 25 ft to a ladder
  for (const auto& [key, feet] : {std::pair{"pit.ladder_from", 4.0},
                                  {"pit.cave_in_from", 5.0},
                                  {"spoil.setback", 2.0},
                                  {"pit.batter_table_to", 20.0},
                                  {"pit.ladder_travel", 25.0}}) {
    CAPTURE(key);
    CHECK(threshold(key).value == Approx(feet * 0.3048).margin(0.05));
    CHECK(threshold(key).value <= feet * 0.3048 + 0.005);  // never less strict than the rule
  }
}

TEST_CASE("steepest sides of an excavation: table B-1") {
  // 29 CFR 1926 Subpart P, appendix B, table B-1: vertical; 3/4:1 (53 degrees), 1:1 (45), 1 1/2:1 (34)
  const auto degrees = [](ExcavationSoil soil) {
    return std::atan2(1, steepestBatter(soil)) * 180 / std::numbers::pi;
  };
  CHECK(degrees(ExcavationSoil::stable_rock) == Approx(90));
  CHECK(degrees(ExcavationSoil::type_a) == Approx(53).margin(0.5));
  CHECK(degrees(ExcavationSoil::type_b) == Approx(45).margin(0.5));
  CHECK(degrees(ExcavationSoil::type_c) == Approx(34).margin(0.5));
  // short-term type A: 1/2:1 (63 degrees)
  CHECK(std::atan2(1, kShortTermTypeABatter) * 180 / std::numbers::pi == Approx(63).margin(0.5));
}

TEST_CASE("soils are sorted on the safe side") {
  // own mapping: appendix A allows A only after a test, and never for cracked or seeping clay
  for (const Soil soil :
       {Soil::stiff_clay, Soil::firm_loam, Soil::sandy, Soil::loose_fill, Soil::soft_wet, Soil::rock})
    CHECK(steepestBatter(excavationSoil(soil)) >= 1);
  CHECK(excavationSoil(Soil::sandy) == ExcavationSoil::type_c);
  CHECK(excavationSoil(Soil::soft_wet) == ExcavationSoil::type_c);
  CHECK(excavationSoil(std::nullopt) == ExcavationSoil::type_c);  // not known never counts as safe
}

TEST_CASE("distance from a downhill edge: two rules") {
  const EdgeDistance near = edgeDistance(3, 1.7);
  CHECK(near.own_m == Approx(4.7));
  CHECK(near.code_m == Approx(1));  // a third of the height
  CHECK(near.disagree(2));
  CHECK_FALSE(near.disagree(5));
  CHECK_FALSE(near.disagree(0.5));
  CHECK(near.largest() == near.own_m);
  CHECK(edgeDistance(60, 1.7).code_m == Approx(12.2));  // 40 ft at most
}

TEST_CASE("uplift: Archimedes on a box") {
  // Outside 6.24 m x 3.74 m, floor underside 0.12 m below the finished floor. Water table 0.62 m below the
  // rim: head 1.5 - 0.62 + 0.12 = 1 m, so 6.24 x 3.74 x 1 m3 of water are displaced.
  UpliftInput input;
  input.water_table_m = 0.62;
  input.plaster_kg_m3 = 2000;
  const auto tank = box();
  const Uplift u = uplift(tank, input);
  const double lining_m3 = 6.24 * 3.74 * 1.62 - 6 * 3.5 * 1.5;
  CHECK(u.head_m == Approx(1));
  CHECK(u.displaced_kg == Approx(6.24 * 3.74 * 1000));
  CHECK(u.weight_kg == Approx(lining_m3 * 2000));
  CHECK(*u.factor == Approx(lining_m3 * 2 / (6.24 * 3.74)));
  CHECK(*u.floor_factor == Approx(0.12 * 2000 / 1000));
  // water to keep: the floor needs 1.2 x 1 - 0.24 m, the whole tank 1.2 x 23.3376 - 12.61 = 15.395 m3 on 21
  // m2
  const double whole = (1.2 * 6.24 * 3.74 - lining_m3 * 2) / 21;
  CHECK(*u.keep_water_m == Approx(std::max(0.96, whole)));
}

TEST_CASE("uplift: border cases") {
  const auto tank = box(0.2);
  UpliftInput input;
  input.water_table_m = 1.62;  // just at the underside of the floor
  CHECK_FALSE(uplift(tank, input).factor);
  CHECK(uplift(tank, input).keep_water_m == 0.0);
  input.water_table_m = 1.61;
  CHECK(uplift(tank, input).factor);
  CHECK(*uplift(tank, input).factor > 10);
  input.water_table_m = -0.5;  // flooded: no more is displaced than the tank's own envelope
  const double flooded = uplift(tank, input).displaced_kg;
  input.water_table_m = 0;
  CHECK(uplift(tank, input).displaced_kg == Approx(flooded));
  // water over the rim would have to be kept inside: not possible
  CHECK_FALSE(uplift(tank, input).keep_water_m);
  double before = 1e9;
  for (const double depth : {1.5, 1.2, 0.9, 0.6, 0.3, 0.0}) {
    input.water_table_m = depth;
    CHECK(*uplift(tank, input).factor < before);
    before = *uplift(tank, input).factor;
  }
  // with the water that is to be kept the factor is what was wanted
  input.water_table_m = 0.9;
  const Uplift u = uplift(tank, input);
  REQUIRE(u.keep_water_m);
  const double held = u.weight_kg + 1000 * tank.volumeToLevel(*u.keep_water_m);
  const double floor = 0.12 * input.plaster_kg_m3 + 1000 * *u.keep_water_m;
  CHECK(std::min(held / u.displaced_kg, floor / (1000 * u.head_m)) == Approx(1.2).epsilon(1e-9));
}

TEST_CASE("frost: depth by Stefan's formula, heave by soil and water") {
  // by hand: k 2 W/(m K), 100 C days, 1600 kg/m3 with 20 % water: L = 334e3 x 320 J/m3,
  // X = sqrt(2 x 2 x 86400 x 100 / 1.0688e8) = 0.5686 m
  CHECK(frostDepth({100, 2, 1600, 20}) == Approx(0.5686).margin(5e-5));
  CHECK(frostDepth({0, 2, 1600, 20}) == 0);
  CHECK(frostDepth({400, 2, 1600, 20}) == Approx(2 * frostDepth({100, 2, 1600, 20})));
  CHECK(frostHeave(0, Soil::firm_loam, 0.1) == Frost::none);
  CHECK(frostHeave(0.5, Soil::sandy, 0.1) == Frost::none);
  CHECK(frostHeave(0.5, Soil::firm_loam, 0.1) == Frost::likely);
  CHECK(frostHeave(0.5, Soil::firm_loam, 1.5) == Frost::possible);
  CHECK(frostHeave(0.5, Soil::firm_loam, 1.49) == Frost::likely);
  CHECK(frostHeave(0.5, std::nullopt, std::nullopt) == Frost::likely);  // not known never counts as safe
}

TEST_CASE("swelling ground: classes of linear extensibility") {
  // USDA NRCS, National Soil Survey Handbook, shrink-swell classes: low under 3 %, moderate 3 to 6, high 6 to
  // 9, very high from 9 %
  CHECK(swellingByExtensibility(2.99) == Swelling::low);
  CHECK(swellingByExtensibility(3) == Swelling::moderate);
  CHECK(swellingByExtensibility(5.99) == Swelling::moderate);
  CHECK(swellingByExtensibility(6) == Swelling::high);
  CHECK(swellingByExtensibility(9) == Swelling::very_high);
  CHECK(swellingByClay(34.9) == Swelling::low);
  CHECK(swellingByClay(35) == Swelling::moderate);
}
