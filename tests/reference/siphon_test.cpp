// The siphon's lift limit against tables of air and vapour pressure, and its flow against the energy balance.
#include "core/hydraulics/siphon.h"

#include "core/hydraulics/water_properties.h"

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

using namespace core::hydraulics;

namespace {

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

/// 25 mm hose over a rim 0.3 m above the water, 2 m down outside.
Siphon hose() {
  Siphon s;
  s.water_level_m = 1.2;
  s.inlet_level_m = 0.1;
  s.crest_level_m = 1.5;
  s.outlet_level_m = -0.8;
  s.rising_length_m = 2;
  s.falling_length_m = 6;
  s.bore = {0.025, 1.5e-6};
  s.temperature_c = 20;
  return s;
}

/// A large, short pipe with a crest high above the water and a deep outlet.
Siphon tall(double lift_m) {
  Siphon s = hose();
  s.crest_level_m = s.water_level_m + lift_m;
  s.rising_length_m = lift_m + 1.2;
  s.outlet_level_m = -6;
  s.falling_length_m = lift_m + 8;
  return s;
}

}  // namespace

TEST_CASE("siphon: the air carries (p_air - p_vapour) / rho g") {
  struct Row {
    double altitude_m, air_kpa, temperature_c, vapour_pa, rho;
  };
  // air: FAO-56 annex 2 table 2.1 (eq. 7); vapour pressure and density: table of the R package hydraulics
  for (const Row& row :
       {Row{0, 101.3, 20, 2339, 998.2}, Row{500, 95.5, 25, 3170, 997.1}, Row{1000, 90.0, 15, 1706, 999.1},
        Row{1500, 84.8, 10, 1228, 999.7}, Row{2000, 79.8, 20, 2339, 998.2}, Row{3000, 70.5, 5, 872.6, 1000},
        Row{4000, 62.1, 0, 611.2, 999.9}}) {
    CAPTURE(row.altitude_m);
    const double expected = (row.air_kpa * 1000 - row.vapour_pa) / (row.rho * 9.80665);
    // half a unit of the last printed digit of the air pressure, 0.05 kPa, is 0.005 m
    CHECK(*barometricHeight(row.altitude_m, row.temperature_c) == Approx(expected).margin(0.006));
  }
}

TEST_CASE("siphon: about 10.1 m at sea level and 20 C, nothing near boiling") {
  // pump handbooks: 10.33 m of cold water at sea level less 0.24 m of vapour at 20 C; FAO's 101.3 kPa is 2 mm
  // less
  CHECK(*barometricHeight(0, 20) == Approx(10.33 * 1000 / 998.2 - 0.24).margin(0.01));
  CHECK(*barometricHeight(0, 50) < *barometricHeight(0, 20));
}

TEST_CASE("siphon: energy closes over the whole pipe and from either side of the crest") {
  const Siphon s = hose();
  const SiphonFlow f = *siphonFlow(s);
  REQUIRE(f.state == SiphonState::runs);
  const double nu = waterAt(20)->kinematicViscosity();
  const double head = velocityHead(f.velocity_m_s);
  const double down = *frictionHead(s.bore, 6, f.flow_m3_s, nu);
  const double up = *frictionHead(s.bore, 2, f.flow_m3_s, nu);
  CHECK(up + down + 1.5 * head == within(s.water_level_m - s.outlet_level_m, 1e-12));
  // from the crest down to the free outlet: p + z + V^2/2g = z_outlet + V^2/2g + losses
  CHECK(f.crest_pressure_m == within(s.outlet_level_m - s.crest_level_m + down, 1e-10));
  CHECK(f.lift_left_m == within(f.barometric_m - 2 + f.crest_pressure_m, 1e-10));
}

TEST_CASE("siphon: the limit is where lift and losses have used up all but the reserve") {
  const SiphonFlow at_rest = *siphonFlow(tall(9));
  CHECK(at_rest.most_lift_m == within(at_rest.barometric_m - 2, 1e-12));
  CHECK(at_rest.state == SiphonState::crest_too_high);
  CHECK_FALSE(at_rest.throttled_m3_s);
  CHECK(siphonFlow(tall(at_rest.most_lift_m - 0.01))->state == SiphonState::parts_when_open);
  CHECK(siphonFlow(tall(at_rest.most_lift_m + 0.01))->state == SiphonState::crest_too_high);
  CHECK(siphonFlow(tall(3))->state == SiphonState::runs);
}

TEST_CASE("siphon: a throttled siphon stands just at its limit") {
  Siphon s = tall(7);
  const SiphonFlow open = *siphonFlow(s);
  REQUIRE(open.state == SiphonState::parts_when_open);
  REQUIRE(open.throttled_m3_s);
  CHECK(*open.throttled_m3_s < open.flow_m3_s);
  // close the valve outside until it passes that flow: the crest has nothing left
  const double nu = waterAt(20)->kinematicViscosity();
  const double wall = *frictionHead(s.bore, s.rising_length_m + s.falling_length_m, *open.throttled_m3_s, nu);
  const double head = velocityHead(meanVelocity(*open.throttled_m3_s, s.bore.diameter_m));
  s.falling_k = (s.water_level_m - s.outlet_level_m - wall) / head - 1.5;
  const SiphonFlow closed = *siphonFlow(s);
  CHECK(closed.flow_m3_s == within(*open.throttled_m3_s, 1e-9));
  CHECK(closed.lift_left_m == Approx(0).margin(1e-9));
}

TEST_CASE("siphon: higher ground lifts less") {
  // 3000 m: 70.5 kPa carries 3.1 m less than 101.3 kPa (FAO-56 table 2.1)
  Siphon s = tall(6);
  const double low = siphonFlow(s)->most_lift_m;
  s.altitude_m = 3000;
  CHECK(low - siphonFlow(s)->most_lift_m == Approx((101.3 - 70.5) / (0.9982 * 9.80665)).margin(0.02));
  CHECK(siphonFlow(s)->state == SiphonState::crest_too_high);
}

TEST_CASE("siphon: how far it draws down and when it does not run") {
  Siphon s = hose();
  CHECK(siphonFlow(s)->lowest_level_m == 0.1);  // the inlet
  s.outlet_level_m = 0.5;
  CHECK(siphonFlow(s)->lowest_level_m == 0.5);
  s.water_level_m = 0.5;
  CHECK(siphonFlow(s)->state == SiphonState::no_fall);
  CHECK(siphonFlow(s)->flow_m3_s == 0);
  s.water_level_m = 0.1;
  CHECK(siphonFlow(s)->state == SiphonState::inlet_dry);
  const Siphon high = tall(7.6);
  const SiphonFlow f = *siphonFlow(high);
  CHECK(f.lowest_level_m == within(high.crest_level_m - f.most_lift_m, 1e-12));
}

TEST_CASE("siphon: air is carried down from sqrt(gD) (0.825 + 0.25 sqrt(sin a)) on") {
  // Sanks, Pumping Station Design, as quoted: level 0.825, straight down 1.075 of sqrt(gD)
  CHECK(clearingVelocity(0.1, 0) == within(0.825 * std::sqrt(0.980665), 1e-12));
  CHECK(clearingVelocity(0.1, 1) == within(1.075 * std::sqrt(0.980665), 1e-12));
  Siphon s = hose();
  CHECK(siphonFlow(s)->clears_air);
  s.outlet_level_m = 1.1;
  CHECK_FALSE(siphonFlow(s)->clears_air);
}

TEST_CASE("siphon: what cannot be is refused") {
  Siphon s = hose();
  s.crest_level_m = -1;
  CHECK(siphonFlow(s).error() == "crest_below_outlet");
  s = hose();
  s.rising_length_m = 1;  // shorter than it is high
  CHECK(siphonFlow(s).error() == "length_out_of_range");
  s = hose();
  s.bore.diameter_m = 0;
  CHECK(siphonFlow(s).error() == "bore_out_of_range");
  s = hose();
  s.bore.roughness_m = 0.01;
  CHECK(siphonFlow(s).error() == "roughness_out_of_range");
  s = hose();
  s.altitude_m = 9000;
  CHECK(siphonFlow(s).error() == "altitude_out_of_range");
  s = hose();
  s.temperature_c = 60;
  CHECK(siphonFlow(s).error() == "temperature_out_of_range");
  s = hose();
  s.reserve_m = -1;
  CHECK(siphonFlow(s).error() == "reserve_out_of_range");
  s = hose();
  s.water_level_m = std::numeric_limits<double>::quiet_NaN();
  CHECK(siphonFlow(s).error() == "level_out_of_range");
}
