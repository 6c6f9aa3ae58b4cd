// Gravity lines: flow against a published worked pipe and an independent iteration, head line by hand on
// small profiles, choice of pipe, outlets.
#include "core/base/source.h"
#include "core/hydraulics/figures.h"
#include "core/hydraulics/gravity_line.h"
#include "core/hydraulics/outlets.h"

#include <cmath>
#include <limits>
#include <set>

#include <catch2/catch.hpp>

using namespace core::hydraulics;

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

/// 32 mm pipe of PE 100, PN 16, falling 6 m over 200 m from an inlet 0.5 m under water at level 10.
Line falling() {
  Line line;
  line.profile = {{0, 9.5}, {200, 4}};
  line.bore = {0.026, 1.5e-6};
  line.fittings = {{"minor.entrance_sharp", 0.5, 0}, {"minor.ball_valve", 0.05, 200}};
  line.pressure_class_bar = 16;
  return line;
}

LineFlow solved(const Line& line, const LineHeads& heads, const LineClimate& climate = {}) {
  const auto flow = solveLine(line, heads, climate);
  REQUIRE(flow);
  return *flow;
}

std::string_view faultOf(const Line& line, const LineHeads& heads, const LineClimate& climate = {}) {
  const auto flow = solveLine(line, heads, climate);
  return flow ? "" : flow.error();
}

/// Pipe velocity by plain repetition: f from V, V from f.
double velocityByRepetition(const Line& line, double length_m, double head_m, double k, double nu) {
  double v = 1;
  for (int i = 0; i < 200; ++i) {
    const double f =
        *frictionFactor(reynolds(v, line.bore.diameter_m, nu), line.bore.roughness_m / line.bore.diameter_m);
    v = std::sqrt(2 * kGravity_m_s2 * head_m / (1 + k + f * length_m / line.bore.diameter_m));
  }
  return v;
}

}  // namespace

TEST_CASE("line: a published pipe problem solved for its flow") {
  // R package hydraulics, vignette: 4 cfs through 10,560 ft of 20 in pipe, ks 0.0005 ft, at 60 F lose 5.72 ft
  // (with g 32.2 ft/s2); the printed head gives the flow back
  constexpr double foot = 0.3048;
  Line line;
  line.profile = {{0, 0}, {10560 * foot, 0}};
  line.bore = {20 * foot / 12, 0.0005 * foot};
  const double velocity_head = velocityHead(meanVelocity(4 * foot * foot * foot, line.bore.diameter_m));
  const LineFlow flow = solved(line, {5.72 * foot + velocity_head, {}, 0}, {15.56, 0, 2});
  CHECK(flow.flow_m3_s / (foot * foot * foot) == within(4, 0.002));
  CHECK(flow.friction_factor == Approx(0.0173).margin(5e-5));
}

TEST_CASE("line: flow equals a plain repetition and the head is spent to the last bit") {
  const Line line = falling();
  const LineFlow flow = solved(line, {10, {}, 0});
  const double nu = waterAt(15)->kinematicViscosity();
  const double length = std::hypot(200, 5.5);
  CHECK(flow.length_m == within(length, 1e-14));
  CHECK(flow.head_m == within(6, 1e-14));
  CHECK(flow.velocity_m_s == within(velocityByRepetition(line, length, 6, 0.55, nu), 1e-12));
  CHECK(flow.friction_head_m + flow.minor_head_m + flow.velocity_head_m == within(6, 1e-12));
  CHECK(flow.regime == Regime::turbulent);
  // common practice, no source: Hazen-Williams within 15 % of the flow in plastic pipe
  CHECK(flow.hazen_williams_m3_s == within(flow.flow_m3_s, 0.15));
  CHECK(flow.hazen_williams_m3_s != flow.flow_m3_s);
}

TEST_CASE("line: laminar flow in a thin long tube follows Hagen-Poiseuille") {
  // Q = pi g H D^4 / (128 nu L), velocity head and entrance negligible
  Line line;
  line.profile = {{0, 0}, {100, 0}};
  line.bore = {0.004, 0};
  const LineFlow flow = solved(line, {0.5, {}, 0});
  const double nu = waterAt(15)->kinematicViscosity();
  CHECK(flow.regime == Regime::laminar);
  const double pure = 3.141592653589793 * kGravity_m_s2 * (0.5 - flow.velocity_head_m) * std::pow(0.004, 4) /
                      (128 * nu * 100);
  CHECK(flow.flow_m3_s == within(pure, 1e-12));
}

TEST_CASE("line: flow grows with head through the unsteady region") {
  Line line;
  line.profile = {{0, 0}, {50, 0}};
  line.bore = {0.02, 1.5e-6};
  double before = 0;
  std::set<Regime> seen;
  for (double head = 0.005; head < 2; head *= 1.05) {
    const LineFlow flow = solved(line, {head, {}, 0});
    CHECK(flow.flow_m3_s > before);
    before = flow.flow_m3_s;
    seen.insert(flow.regime);
  }
  CHECK(seen.size() == 3);
}

TEST_CASE("line: what is drawn at the solved flow leaves the required head, less leaves more") {
  const Line line = falling();
  const LineFlow flow = solved(line, {10, {}, 1.5});
  CHECK(*residualHead(line, 10, flow.flow_m3_s, {}) == Approx(1.5).margin(1e-10));
  CHECK(flow.residual_head_m == within(1.5, 1e-12));
  CHECK(flow.points.back().pressure_m == Approx(1.5).margin(1e-10));
  CHECK(*residualHead(line, 10, 0, {}) == within(6, 1e-14));
  CHECK(*residualHead(line, 10, flow.flow_m3_s / 2, {}) > 1.5);
  CHECK(*residualHead(line, 9.6, flow.flow_m3_s, {}) == Approx(1.1).margin(1e-10));  // nearly empty
  CHECK(*residualHead(line, 10, flow.flow_m3_s * 2, {}) < 0);
}

TEST_CASE("line: an outlet under water works against that water, not against its own level") {
  const LineFlow free = solved(falling(), {10, {}, 0});
  CHECK(solved(falling(), {10, 4.0, 0}).flow_m3_s == within(free.flow_m3_s, 1e-14));
  CHECK(solved(falling(), {10, 2.0, 0}).flow_m3_s == within(free.flow_m3_s, 1e-14));
  const LineFlow dipped = solved(falling(), {10, 7.0, 0});
  CHECK(dipped.head_m == within(3, 1e-14));
  CHECK(dipped.flow_m3_s < free.flow_m3_s);
  CHECK(dipped.points.back().head_line_m == Approx(7).margin(1e-10));
}

TEST_CASE("line: head line by hand") {
  const LineFlow flow = solved(falling(), {10, {}, 0});
  REQUIRE(flow.points.size() == 4);  // each fitting gives a point before and after
  const double vh = flow.velocity_head_m;
  CHECK(flow.points[0].energy_m == 10);
  CHECK(flow.points[0].pressure_m == Approx(0.5 - vh));
  CHECK(flow.points[1].energy_m == Approx(10 - 0.5 * vh));
  CHECK(flow.points[2].energy_m == Approx(10 - 0.5 * vh - flow.friction_head_m));
  CHECK(flow.points[3].pressure_m == Approx(0).margin(1e-12));  // free outlet
  CHECK(flow.points[3].static_pressure_m == Approx(6));
}

TEST_CASE("line: static pressure at the lowest point against the class") {
  Line line = falling();
  line.profile = {{0, 9.5}, {100, -20}, {200, 4}};
  line.pressure_class_bar = 2.5;
  const LineFlow flow = solved(line, {10, {}, 0});
  CHECK(flow.static_head_m == Approx(30));
  CHECK(flow.static_bar == within(30 * 9.80665 * 999.1 / 1e5, 1e-4));  // 999.1 kg/m3 at 15 C, table values
  REQUIRE(flow.class_left_bar);
  CHECK(*flow.class_left_bar == Approx(2.5 - flow.static_bar));
  CHECK(*flow.class_left_bar < 0);
  line.pressure_class_bar = {};
  CHECK_FALSE(solved(line, {10, {}, 0}).class_left_bar);
}

TEST_CASE("line: a hump through the head line is named with its stretch") {
  // straight level pipe at 0 but for a point; 10 m of head over 100 m: the head line falls nearly evenly
  Line line;
  line.profile = {{0, 0}, {50, 8}, {100, 0}};
  line.bore = {0.02, 1.5e-6};
  const LineFlow flow = solved(line, {10, {}, 0});
  REQUIRE(flow.above_head_line.size() == 1);
  const Stretch& s = flow.above_head_line.front();
  CHECK(s.worst_station_m == 50);
  // by hand: half of the friction is spent at the middle of the length
  const double vh = flow.velocity_head_m;
  CHECK(s.worst_m == Approx(10 - vh - flow.friction_head_m / 2 - 8));
  // rising leg: 10 - vh - hf x/100 = 8 x/50; falling leg: pressure is zero again at the outlet only
  CHECK(s.from_m == Approx((10 - vh) / (0.16 + flow.friction_head_m / 100)));
  CHECK(s.to_m == Approx(100).margin(1e-6));
  CHECK(flow.near_vapour.empty());
  REQUIRE(flow.humps.size() == 1);
  CHECK(flow.humps[0].pressure_m == Approx(s.worst_m));
  CHECK(flow.air_lock_head_m == 8);
}

TEST_CASE("line: a stretch above the head line ends where the pipe dives under it again") {
  Line line;
  line.profile = {{0, 0}, {50, 9.9}, {60, 0}, {200, -20}};
  line.bore = {0.02, 1.5e-6};
  const LineFlow flow = solved(line, {10, {}, 0});
  REQUIRE_FALSE(flow.above_head_line.empty());
  // by hand: on the falling leg from 9.9 to 0 the head line falls by its share of the friction
  const double gradient = flow.friction_head_m / flow.length_m;
  const double leg = std::hypot(10, 9.9), to_top = std::hypot(50, 9.9);
  const double at_top = 10 - flow.velocity_head_m - gradient * to_top;
  const double share = (9.9 - at_top) / (9.9 - gradient * leg);  // 9.9 (1 - s) = at_top - gradient leg s
  CHECK(flow.above_head_line[0].to_m == Approx(50 + 10 * share));
}

TEST_CASE("line: a crest that air pressure cannot bear is near vapour") {
  Line line;
  line.profile = {{0, 0}, {50, 9.5}, {100, -30}};
  line.bore = {0.05, 1.5e-6};
  const LineFlow flow = solved(line, {10, {}, 0});
  REQUIRE(flow.near_vapour.size() == 1);
  CHECK(flow.near_vapour[0].worst_m < flow.lowest_allowed_m);
  CHECK(flow.near_vapour[0].from_m > flow.above_head_line[0].from_m);
  // air at sea level carries 10.2 m at 15 C (see the siphon's reference test); 2 m are kept
  CHECK(flow.lowest_allowed_m == Approx(-8.17).margin(0.02));
  CHECK(solved(line, {10, {}, 0}, {15, 3000, 2}).lowest_allowed_m == Approx(-5.02).margin(0.03));
}

TEST_CASE("line: high points with their height") {
  const std::vector<PipePoint> profile{{0, 10}, {20, 4}, {30, 6}, {40, 3}, {55, 5}, {60, 5}, {80, 0}};
  const std::vector<Hump> humps = humpsOf(profile);
  REQUIRE(humps.size() == 2);
  CHECK(humps[0].station_m == 30);
  CHECK(humps[0].rise_m == 2);
  CHECK(humps[0].fall_m == 3);
  CHECK(humps[0].over_straight_m == Approx(6 - (10 - 30.0 / 8)));
  CHECK(humps[1].station_m == 55);  // a level stretch counts once, at its start
  CHECK(humps[1].rise_m == 2);
  CHECK(humps[1].fall_m == 5);
  CHECK(humpsOf({{0, 10}, {20, 8}, {30, 8}, {40, 1}}).empty());
  CHECK(humpsOf({{0, 0}, {20, 8}}).empty());
  CHECK(humpsOf({{0, 0}, {20, 8}, {40, 8}}).empty());  // rises to its end: no hump
}

TEST_CASE("line: the loss of a fitting counts where it sits") {
  Line early = falling(), late = falling();
  early.fittings.push_back({"minor.globe_valve", 10, 0});
  late.fittings.push_back({"minor.globe_valve", 10, 200});
  const LineFlow first = solved(early, {10, {}, 0}), last = solved(late, {10, {}, 0});
  CHECK(first.flow_m3_s == within(last.flow_m3_s, 1e-13));
  CHECK(first.points[1].pressure_m < last.points[1].pressure_m);
  CHECK(last.points[2].pressure_m == Approx(10.05 * last.velocity_head_m));  // before the valves at the end
}

TEST_CASE("line: the smallest pipe that brings the wanted flow") {
  const auto sizes = pipeSizes(PipeGrade::pe100);
  const double wanted = 0.5e-3;
  const auto choice = smallestPipe(falling(), {10, {}, 0}, {}, wanted, sizes);
  REQUIRE(choice);
  CHECK(choice->flow.flow_m3_s >= wanted);
  CHECK(choice->flow.flow_m3_s == within(
                                      [&] {
                                        Line line = falling();
                                        line.bore.diameter_m = choice->size.insideMm() / 1000;
                                        return solved(line, {10, {}, 0}).flow_m3_s;
                                      }(),
                                      1e-13));
  for (const PipeSize& smaller : sizes) {
    if (smaller.outside_mm >= choice->size.outside_mm) continue;
    Line line = falling();
    line.bore.diameter_m = smaller.insideMm() / 1000;
    CHECK(solved(line, {10, {}, 0}).flow_m3_s < wanted);
  }
  CHECK(smallestPipe(falling(), {10, {}, 0}, {}, 1, sizes).error() == "no_pipe_large_enough");
}

TEST_CASE("line: a deep dip asks for a stronger class, heat for more") {
  Line line = falling();
  line.profile = {{0, 9.5}, {100, -85}, {200, 4}};  // 95 m of water: 9.3 bar
  const auto sizes = pipeSizes(PipeGrade::pe100);
  const auto cold = smallestPipe(line, {10, {}, 0}, {}, 0.2e-3, sizes);
  REQUIRE(cold);
  CHECK(cold->size.pressure_bar >= 9.3);
  const auto hot = smallestPipe(line, {10, {}, 0}, {}, 0.2e-3, sizes, *pressureShare(40));
  REQUIRE(hot);
  CHECK(hot->size.pressure_bar * 0.74 >= 9.3);
  CHECK(*hot->flow.class_left_bar == Approx(hot->size.pressure_bar * 0.74 - hot->flow.static_bar));
  line.profile[1].level_m = -300;
  CHECK(smallestPipe(line, {10, {}, 0}, {}, 0.2e-3, sizes).error() == "no_pipe_strong_enough");
}

TEST_CASE("pipe: strength in heat, ISO 4427-1 annex A (from memory)") {
  CHECK(*pressureShare(20) == 1);
  CHECK(*pressureShare(30) == Approx(0.87));
  CHECK(*pressureShare(40) == Approx(0.74));
  CHECK(pressureShare(41).error() == "temperature_out_of_range");
}

TEST_CASE("line: what cannot be is refused, nothing is bent") {
  const LineHeads heads{10, {}, 0};
  Line line = falling();
  line.profile = {{0, 9.5}};
  CHECK(faultOf(line, heads) == "profile_too_short");
  line.profile = {{0, 9.5}, {0, 4}};
  CHECK(faultOf(line, heads) == "profile_not_onward");
  line.profile = {{0, 9.5}, {200, kNan}};
  CHECK(faultOf(line, heads) == "level_out_of_range");
  line = falling();
  line.fittings[0].station_m = 300;
  CHECK(faultOf(line, heads) == "fitting_off_the_line");
  line.fittings[0] = {"", -1, 0};
  CHECK(faultOf(line, heads) == "loss_out_of_range");
  line = falling();
  line.bore.diameter_m = 0;
  CHECK(faultOf(line, heads) == "bore_out_of_range");
  line.bore = {0.026, 0.01};
  CHECK(faultOf(line, heads) == "roughness_out_of_range");
  line = falling();
  line.hazen_williams_c = 20;
  CHECK(faultOf(line, heads) == "coefficient_out_of_range");
  CHECK(faultOf(falling(), {9.5, {}, 0}) == "inlet_dry");
  CHECK(faultOf(falling(), {10, {}, 6}) == "no_head");
  CHECK(faultOf(falling(), {10, {}, -1}) == "head_out_of_range");
  CHECK(faultOf(falling(), {kNan, {}, 0}) == "level_out_of_range");
  CHECK(faultOf(falling(), heads, {-5, 0, 2}) == "temperature_out_of_range");
  CHECK(faultOf(falling(), heads, {15, 9000, 2}) == "altitude_out_of_range");
  CHECK(faultOf(falling(), heads, {15, 0, -1}) == "reserve_out_of_range");
  CHECK(residualHead(falling(), 10, -1, {}).error() == "flow_out_of_range");
  CHECK(residualHead(falling(), 9, 0, {}).error() == "inlet_dry");
}

TEST_CASE("friction: ranges are kept") {
  CHECK(colebrookWhite(3000, 0).error() == "reynolds_out_of_range");
  CHECK(colebrookWhite(1e5, 0.06).error() == "roughness_out_of_range");
  CHECK(frictionFactor(0, 0).error() == "reynolds_out_of_range");
  CHECK(*frictionFactor(2000, 1e-4) == Approx(64.0 / 2000));
  CHECK(*frictionFactor(4000, 1e-4) == Approx(*colebrookWhite(4000, 1e-4)));
  CHECK(*frictionFactor(3000, 1e-4) == Approx((64.0 / 2000 + *colebrookWhite(4000, 1e-4)) / 2));
  CHECK(*frictionHead({0.02, 0}, 10, 0, 1e-6) == 0);
  CHECK(hazenWilliamsFlow(0.02, 0, 1, 140).error() == "length_out_of_range");
  CHECK(*hazenWilliamsHead(0.02, 10, *hazenWilliamsFlow(0.02, 10, 1, 140), 140) == Approx(1));
}

TEST_CASE("friction: Colebrook-White is solved to machine precision everywhere") {
  for (double re = 4000; re <= 1e8; re *= 3.1) {
    for (const double k : {0.0, 1e-6, 1e-4, 1e-2, 0.05}) {
      CAPTURE(re, k);
      const double x = 1 / std::sqrt(*colebrookWhite(re, k));
      CHECK(x + 2 * std::log10(k / 3.7 + 2.51 * x / re) == Approx(0).margin(1e-13));
      CHECK(*swameeJain(re, k) == within(1 / (x * x), 0.035));
    }
  }
}

TEST_CASE("outlets: full and nearly empty against the head they need") {
  // low-cost drip: 1.0 to 1.5 m, IWMI multiple-use water study
  CHECK(requiredHead(OutletKind::drip_low_cost).low == 1.0);
  CHECK(requiredHead(OutletKind::drip_low_cost).high == 1.5);
  CHECK(checkOutlet(OutletKind::drip_low_cost, 2, 1)->verdict == OutletVerdict::works);
  CHECK(checkOutlet(OutletKind::drip_low_cost, 2, 0.99)->verdict == OutletVerdict::works_full);
  CHECK(checkOutlet(OutletKind::drip_low_cost, 0.99, 0.5)->verdict == OutletVerdict::too_low);
  const core::Figure sprinkler = requiredHead(OutletKind::sprinkler);
  CHECK(checkOutlet(OutletKind::sprinkler, 40, sprinkler.typical - 0.1)->verdict ==
        OutletVerdict::works_poorly);
  CHECK(checkOutlet(OutletKind::sprinkler, 40, 30)->left_low_m == Approx(30 - sprinkler.typical));
  CHECK(checkOutlet(OutletKind::tap, 1, 2).error() == "head_out_of_range");
  CHECK(checkOutlet(OutletKind::tap, kNan, 0).error() == "head_out_of_range");
  for (const OutletKind kind : outletKinds()) {
    CHECK(requiredHead(kind).unit == core::Unit::metre);
    CHECK(outletFlow(kind).unit == core::Unit::litre_per_minute);
  }
}

TEST_CASE("hydraulic figures: ordered, keyed once, with a known source") {
  std::set<std::string> keys;
  for (const core::Figure& f : figures()) {
    CAPTURE(f.key);
    CHECK(keys.insert(f.key).second);
    CHECK(f.low <= f.typical);
    CHECK(f.typical <= f.high);
    CHECK_NOTHROW(core::source(f.source));
  }
  CHECK_NOTHROW(core::source(pipeSizes(PipeGrade::pe80).front().source));
  CHECK(figure("minor.no_such").error() == "unknown_key");
  CHECK(figuresOf("erosion.").size() == 9);
}
