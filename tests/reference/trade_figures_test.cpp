// Worked quantities published for lean mortars, and other trade figures.
#include "core/lining/quantities.h"
#include "core/works/earthwork.h"

#include <catch2/catch.hpp>

namespace {

core::Lining mortar(double dry_to_wet) {
  core::Lining l;
  l.dry_to_wet = dry_to_wet;
  l.cement_loose_kg_m3 = 1440;
  return l;
}

core::Coat parts(double sand, double cement) {
  core::Coat c;
  c.soil = 0;
  c.sand = sand;
  c.cement = cement;
  return c;
}

}  // namespace

TEST_CASE("published plaster quantities: cement for an area of cement-sand plaster") {
  // Worked rate analyses for building plaster (second-hand); printed values
  // 1:6, 12 mm, 1 m2, loose-to-placed 1.33: 0.01596 m3 loose, 3.28 kg
  CHECK(core::lining::mixFor(0.012, parts(6, 1), mortar(1.33)).cement_kg == Approx(3.28).margin(0.005));
  // 1:5, 12 mm, 100 m2, 20 % waste, plus a third: 1.92 m3 loose, cement 0.32 m3, sand 1.60 m3
  const auto m = core::lining::mixFor(1.2 * 1.2, parts(5, 1), mortar(4.0 / 3));
  CHECK(m.cement_m3 == Approx(0.32).margin(0.005));
  CHECK(m.sand_m3 == Approx(1.60).margin(0.005));
  CHECK(m.cement_kg / 50 == Approx(9.22).margin(0.005));  // bags
  // 1:4, 12 mm, 1 m2, 20 % waste, factor 1.35: 5.6 kg
  CHECK(core::lining::mixFor(0.012 * 1.2, parts(4, 1), mortar(1.35)).cement_kg == Approx(5.6).margin(0.05));
}

TEST_CASE("a 50 kg bag of loose cement is 33 to 35 L") {
  // Central Public Works Department practice, 1440 kg/m3 (second-hand); trade handbooks 33-35 L
  CHECK(50.0 / core::Lining{}.cement_loose_kg_m3 * 1000 == Approx(34.7).margin(0.05));
}

TEST_CASE("swell of dug soil") {
  // Merritt, Standard Handbook for Civil Engineers (second-hand): clay 40, earth and loam 25, sand 12 %
  CHECK(core::works::swellPercent(core::Soil::stiff_clay) == 40);
  CHECK(core::works::swellPercent(core::Soil::firm_loam) == 25);
  CHECK(core::works::swellPercent(core::Soil::sandy) == 12);
  // Worked example: 8,000 m3 bank at 40 % makes 11,200 m3 loose
  CHECK(8000 * (1 + core::works::swellPercent(core::Soil::stiff_clay) / 100) == Approx(11200));
}
