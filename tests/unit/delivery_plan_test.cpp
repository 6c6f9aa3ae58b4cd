// The delivery part: levels by hand, losses and heads by formulas written out here, what is handed to which
// engine. The engines themselves are held against published values in the hydraulics tests.
#include "core/hydraulics/delivery_plan.h"

#include "core/exchange/delivery_json.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

using namespace core;
using hydraulics::DeliveryPlan;
using hydraulics::LinePlan;

namespace {

constexpr double kG = 9.80665;
// water at 15 C: tables of water properties, 999.1 kg/m3 and 1.139e-6 m2/s
constexpr double kDensity = 999.1, kViscosity = 1.139e-6;
constexpr double kLitrePerMinute = 1e-3 / 60;
const double kBroadCrest = std::pow(2.0 / 3, 1.5) * std::sqrt(kG);

struct Case {
  Tank tank;
  Site site;
  std::optional<Water> water;
  Delivery delivery;

  DeliveryPlan plan() const {
    REQUIRE(hydraulics::check(delivery).empty());
    const geometry::TankGeometry geometry(tank, Lining{});
    return hydraulics::deliveryPlan(geometry, site, water, delivery);
  }
};

/// A box of 6 m by 3.5 m, 1.5 m deep; full at 1.3 m, dead below 0.1 m.
Case box() {
  Case c;
  c.tank.batter = 0;
  c.tank.freeboard_m = 0.2;
  c.tank.dead_depth_m = 0.1;
  return c;
}

Case withLines() {
  Case c = box();
  c.delivery.source.route = {{0, 8}, {100, 2}, {300, 0.1}};
  c.delivery.field.route = {{0, 0}, {20, -3}, {60, -6}};
  return c;
}

/// Head lost at a flow, friction factor by plain repetition of Colebrook and White's formula.
double lossOf(double flow_m3_s, double bore_m, double length_m, double k) {
  const double v = flow_m3_s / (std::numbers::pi / 4 * bore_m * bore_m);
  const double re = v * bore_m / kViscosity;
  double root = 0.15;
  for (int i = 0; i < 100; ++i) root = 1 / (-2 * std::log10(1.5e-6 / bore_m / 3.7 + 2.51 / (re * root)));
  return (1 + k + root * root * length_m / bore_m) * v * v / (2 * kG);
}

/// Flow that loses a head, by halving.
double flowFor(double head_m, double bore_m, double length_m, double k) {
  double low = 1e-6, high = 0.1;
  for (int i = 0; i < 100; ++i) {
    const double middle = (low + high) / 2;
    (lossOf(middle, bore_m, length_m, k) < head_m ? low : high) = middle;
  }
  return low;
}

Approx near(double value, double share = 1e-3) {
  return Approx(value).epsilon(share);
}

}  // namespace

TEST_CASE("delivery: distances of a way grow from row to row") {
  Delivery d = withLines().delivery;
  CHECK(hydraulics::check(d).empty());
  d.field.route[2].distance_m = 20;
  Problems problems = hydraulics::check(d);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == "route_not_onward");
  CHECK(problems[0].path == "delivery.field.route[2].distance_m");
  CHECK(problems[0].least == 20);
  d.field.route[2].distance_m = 20.001;
  CHECK(hydraulics::check(d).empty());
  d.source.route[1].distance_m = -1;
  problems = hydraulics::check(d);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].path == "delivery.source.route[1].distance_m");
}

TEST_CASE("delivery: a pipe is in the table, or its bore is measured") {
  // ISO 4427-2: PE 80 of 20 mm is made of SDR 6 to 11, PN 25 to 12.5
  Delivery d;
  d.source.pipe.outside_mm = 20;
  Problems problems = hydraulics::check(d);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == "unknown_pipe");
  CHECK(problems[0].path == "delivery.source.pipe.class_bar");
  CHECK(problems[0].allowed == "12.5|16|20|25");
  d.source.pipe.class_bar = 12.5;
  CHECK(hydraulics::check(d).empty());
  d.field.pipe.outside_mm = 33;
  problems = hydraulics::check(d);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].path == "delivery.field.pipe.outside_mm");
  CHECK(problems[0].allowed == "20|25|32|40|50|63|75|90|110");
  d.field.pipe.bore_mm = 27;
  CHECK(hydraulics::check(d).empty());
}

TEST_CASE("delivery: without ways there are no lines, and the tank's own levels stand") {
  Case c = box();
  c.delivery.source.route = {{0, 5}};
  const DeliveryPlan plan = c.plan();
  CHECK_FALSE(plan.source);
  CHECK_FALSE(plan.field);
  CHECK(plan.rim_level_m == 1.5);
  CHECK(plan.full_level_m == Approx(1.3));
  CHECK(plan.dead_level_m == 0.1);
  CHECK_FALSE(plan.is_altitude_known);
  CHECK(plan.climate.altitude_m == 0);
  c.site.elevation_m = 1400;
  CHECK(c.plan().climate.altitude_m == 1400);
  CHECK(c.plan().is_altitude_known);
}

TEST_CASE("source line: levels, head and losses by hand") {
  const DeliveryPlan plan = withLines().plan();
  REQUIRE(plan.source);
  const LinePlan& line = *plan.source;
  REQUIRE(line.line.profile.size() == 3);
  CHECK(line.line.profile[0].level_m == 9.5);
  CHECK(line.line.profile[2].level_m == Approx(1.6));
  CHECK(line.full_heads.upper_level_m == Approx(9.7));  // 0.2 m of water over the inlet
  CHECK_FALSE(line.full_heads.lower_level_m);           // ends over the water
  CHECK_FALSE(line.wanted_m3_s);
  CHECK_FALSE(line.smallest);
  REQUIRE(line.size);
  CHECK(line.line.bore.diameter_m == Approx(0.0272));  // 32 mm less two walls of 2.4 mm, PN 10
  REQUIRE(line.full);
  CHECK(line.full->head_m == Approx(8.1));
  const double length_m = std::hypot(100, 6) + std::hypot(200, 1.9);
  const double k = 1 + 0.5 + 4 * 0.9 + 0.15;  // screen, sharp entrance, four elbows, gate valve
  CHECK(lossOf(line.full->flow_m3_s, 0.0272, length_m, k) == near(8.1));
  CHECK(line.full->static_bar == near(kDensity * kG * 8.1 / 1e5, 1e-4));
  CHECK(line.low->flow_m3_s == line.full->flow_m3_s);
}

TEST_CASE("source line: an end under the tank's water runs against it") {
  Case c = withLines();
  c.delivery.source.route[2].over_rim_m = -1;  // at 0.5 m: under water when full, free when nearly empty
  DeliveryPlan plan = c.plan();
  CHECK(plan.source->full_heads.lower_level_m == plan.full_level_m);
  CHECK(plan.source->full->head_m == Approx(9.7 - 1.3));
  CHECK_FALSE(plan.source->low_heads.lower_level_m);
  CHECK(plan.source->low->head_m == Approx(9.7 - 0.5));
  c.delivery.source.route[2].over_rim_m = -1.45;  // at 0.05 m
  plan = c.plan();
  CHECK(plan.source->low_heads.lower_level_m == 0.1);
  CHECK(plan.source->low->residual_head_m == Approx(0.05));
}

TEST_CASE("source line: heat lessens the class, a measured bore replaces the table") {
  Case c = withLines();
  c.delivery.water_temperature_c = 30;
  c.delivery.source.pipe.bore_mm = 24;
  const DeliveryPlan plan = c.plan();
  CHECK_FALSE(plan.source->size);
  CHECK(plan.source->line.bore.diameter_m == Approx(0.024));
  CHECK(plan.source->line.pressure_class_bar == Approx(8.7));  // ISO 4427-1: 0.87 at 30 C
  CHECK(plan.field->pipe.line.pressure_class_bar == Approx(8.7));
}

TEST_CASE("source line: no smaller pipe of the table brings what is wanted") {
  Case c = withLines();
  c.delivery.source.wanted_l_per_min = 40;
  const DeliveryPlan plan = c.plan();
  REQUIRE(plan.source->smallest);
  REQUIRE(plan.source->smallest->has_value());
  const hydraulics::PipeSize chosen = (*plan.source->smallest)->size;
  const double length_m = std::hypot(100, 6) + std::hypot(200, 1.9);
  for (const hydraulics::PipeSize& size : hydraulics::pipeSizes(PipeGrade::pe80)) {
    const double flow = flowFor(8.1, size.insideMm() / 1000, length_m, 5.25);
    if (size.outside_mm < chosen.outside_mm) CHECK(flow < 40 * kLitrePerMinute);
  }
  CHECK(flowFor(8.1, chosen.insideMm() / 1000, length_m, 5.25) >= 40 * kLitrePerMinute);
  CHECK(chosen.pressure_bar == 6);  // the weakest that ISO 4427-2 has of 40 mm PE 80; 0.8 bar are there
}

TEST_CASE("smallest pipe: strong enough for the full tank although chosen for the nearly empty one") {
  // end 50.5 m under the full level, 49.3 m under the dead one: 4.94 and 4.82 bar. At 22 C PN 5 bears
  // 5 x 0.974 = 4.87 bar (ISO 4427-1), which would do for the nearly empty tank alone
  Case c = withLines();
  c.delivery.field.route = {{0, 0}, {200, -0.2 - 50.5}};
  c.delivery.field.outlets = 40;
  c.delivery.water_temperature_c = 22;
  const DeliveryPlan plan = c.plan();
  REQUIRE(plan.field->pipe.smallest);
  REQUIRE(plan.field->pipe.smallest->has_value());
  const hydraulics::PipeSize chosen = (*plan.field->pipe.smallest)->size;
  CHECK(chosen.pressure_bar * (1 - 0.013 * 2) >= 997.8 * kG * 50.5 / 1e5);  // 997.8 kg/m3 at 22 C
}

TEST_CASE("field line over the rim: levels by hand") {
  Case c = withLines();
  c.tank.batter = 0.1;
  c.delivery.field.route = {{5, -0.3}, {25, -3}, {65, -6}};
  const auto profile = c.plan().field->pipe.line.profile;
  REQUIRE(profile.size() == 4);
  CHECK(profile[0].station_m == 0);
  CHECK(profile[0].level_m == Approx(0.08));  // 2 cm under the dead level
  CHECK(profile[1].station_m == Approx(0.1 + 0.1 * 1.42));
  CHECK(profile[1].level_m == Approx(1.6));  // 0.1 m over the rim
  CHECK(profile[2].station_m == Approx(profile[1].station_m + 20));
  CHECK(profile[2].level_m == Approx(-1.5));
  CHECK(profile[3].level_m == Approx(-4.5));
}

TEST_CASE("field line through the lining leaves at the inlet's level") {
  Case c = withLines();
  c.delivery.field.over_rim = false;
  const DeliveryPlan plan = c.plan();
  const auto& profile = plan.field->pipe.line.profile;
  REQUIRE(profile.size() == 3);
  CHECK(profile[0].level_m == Approx(0.08));
  CHECK(profile[1].station_m == 20);
  CHECK_FALSE(plan.field->siphon_full);
  CHECK_FALSE(plan.field->siphon_low);
  CHECK(plan.field->pipe.full->head_m == Approx(1.3 + 4.5));
}

TEST_CASE("field line: a tank without dead depth leaves the inlet dry when empty") {
  Case c = withLines();
  c.tank.dead_depth_m = 0;
  const DeliveryPlan plan = c.plan();
  CHECK(plan.field->pipe.full);
  REQUIRE_FALSE(plan.field->pipe.low);
  CHECK(plan.field->pipe.low.error() == "inlet_dry");
  CHECK(plan.field->check.error() == "inlet_dry");
}

TEST_CASE("field line: heads left at the outlets are levels less losses") {
  Case c = withLines();
  c.delivery.field.outlets = 3;
  const DeliveryPlan plan = c.plan();
  const hydraulics::FieldPlan& field = *plan.field;
  CHECK(*field.pipe.wanted_m3_s == Approx(30 * kLitrePerMinute));  // three taps of 10 L/min
  const double length_m = std::hypot(0.1, 1.52) + std::hypot(20, 3.1) + std::hypot(40, 3);
  const double loss_m = lossOf(30 * kLitrePerMinute, 0.0272, length_m, 1 + 0.5 + 4 * 0.9 + 0.15);
  CHECK(*field.head_full_m == near(1.3 + 4.5 - loss_m));
  CHECK(*field.head_low_m == near(0.1 + 4.5 - loss_m));
  CHECK(field.check->left_low_m == Approx(*field.head_low_m - 1));  // a tap wants 1 m
}

TEST_CASE("field line: the siphon's own engine finds the flow of the gravity line") {
  const DeliveryPlan plan = withLines().plan();
  const hydraulics::FieldPlan& field = *plan.field;
  REQUIRE(field.siphon_full);
  CHECK((*field.siphon_full)->flow_m3_s == near(field.pipe.full->flow_m3_s, 1e-9));
  CHECK((*field.siphon_low)->flow_m3_s == near(field.pipe.low->flow_m3_s, 1e-9));
  CHECK((*field.siphon_full)->lift_m == Approx(0.3));
  CHECK((*field.siphon_low)->lift_m == Approx(1.5));
  // losses up to the crest: screen, entrance, two of four elbows, the rising leg
  const double crest_m = lossOf(field.pipe.full->flow_m3_s, 0.0272, std::hypot(0.1, 1.52), 1 + 0.5 + 2 * 0.9);
  CHECK((*field.siphon_full)->crest_loss_m == near(crest_m));
}

TEST_CASE("field line: the pipe named for its outlets leaves them their head") {
  Case c = withLines();
  c.delivery.field.outlets = 8;
  const auto smallest = c.plan().field->pipe.smallest;
  REQUIRE(smallest);
  REQUIRE(smallest->has_value());
  c.delivery.field.pipe.outside_mm = (*smallest)->size.outside_mm;
  c.delivery.field.pipe.class_bar = (*smallest)->size.pressure_bar;
  CHECK(c.plan().field->check->verdict == hydraulics::OutletVerdict::works);
}

TEST_CASE("emptying: a box by Simpson's rule over flows found here") {
  const DeliveryPlan plan = withLines().plan();
  const hydraulics::FieldPlan& field = *plan.field;
  CHECK(field.empty_to_level_m == Approx(0.1));
  const double length_m = std::hypot(0.1, 1.52) + std::hypot(20, 3.1) + std::hypot(40, 3);
  const auto seconds_per_metre = [&](double z) { return 21 / flowFor(z + 4.5, 0.0272, length_m, 5.25); };
  const int pieces = 20;
  double sum = 0;
  for (int i = 0; i <= pieces; ++i)
    sum += (i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2) * seconds_per_metre(0.1 + 1.2 * i / pieces);
  REQUIRE(field.emptying);
  CHECK(field.emptying->seconds == near(sum * 1.2 / pieces / 3));
  CHECK(field.emptying->curve.front().level_m == Approx(1.3));
  CHECK(field.emptying->curve.back().level_m == Approx(0.1));
}

TEST_CASE("emptying: down to the end of the line, or as far as the air can lift") {
  Case c = withLines();
  c.delivery.field.route = {{0, 0}, {10, -1}, {20, -1.1}};  // ends at 0.4 m
  CHECK(c.plan().field->empty_to_level_m == Approx(0.42));
  // crest 3 m over the rim at 4000 m: air by FAO-56 eq. 7, vapour of 1.71 kPa at 15 C (steam tables), 2 m
  // kept
  c = withLines();
  c.site.elevation_m = 4000;
  c.delivery.field.crest_over_rim_m = 3;
  const double air_pa = 101300 * std::pow((293 - 0.0065 * 4000) / 293, 5.26);
  const double most_m = (air_pa - 1706) / (kDensity * kG) - 2;
  const DeliveryPlan plan = c.plan();
  CHECK(plan.field->empty_to_level_m == near(4.5 - most_m, 1e-2));
  CHECK((*plan.field->siphon_low)->state == hydraulics::SiphonState::crest_too_high);
}

TEST_CASE("overflow: storm by the rational method, notch by the broad-crested formula") {
  Case c = box();
  c.water.emplace();
  c.water->roof = {40, 0.8, 1};     // counts with 0.90, the figure of storms on roofs
  c.water->ground = {100, 0.2, 5};  // with 0.50, bare packed soil
  c.water->source.months[6] = {30, 24};
  c.water->source.months[7] = {50, 0};  // never runs
  DeliveryPlan plan = c.plan();
  const double storm = 100 / 3.6e6 * (0.9 * 40 + 0.5 * 100 + 21);
  CHECK(plan.overflow.storm_mm_h == 100);
  CHECK_FALSE(plan.overflow.is_storm_known);
  CHECK(plan.overflow.storm_m3_s == Approx(storm));
  CHECK(plan.overflow.source_m3_s == Approx(30 * kLitrePerMinute));
  const double flow = storm + 30 * kLitrePerMinute;
  CHECK(plan.overflow.flow_m3_s == Approx(flow));
  const double head_m = std::pow(flow / (0.9 * kBroadCrest * 0.5), 2.0 / 3);
  REQUIRE(plan.overflow.state);
  CHECK(plan.overflow.state->head_m == Approx(head_m));
  CHECK(plan.overflow.state->freeboard_left_m == Approx(0.2 - 0.03 - head_m));
  REQUIRE(plan.overflow.width_that_would_m);
  CHECK(*plan.overflow.width_that_would_m ==
        Approx(flow / (0.9 * kBroadCrest * std::pow(0.2 - 0.03 - 0.05, 1.5))));
  CHECK_FALSE(plan.overflow.pipe_that_would_m);
  c.water->ground.runoff = 0.7;  // entered higher than the figure
  c.delivery.overflow.storm_mm_h = 60;
  plan = c.plan();
  CHECK(plan.overflow.is_storm_known);
  CHECK(plan.overflow.storm_m3_s == Approx(60 / 3.6e6 * (0.9 * 40 + 0.7 * 100 + 21)));
}

TEST_CASE("overflow: a source line counts in place of the source's months") {
  Case c = withLines();
  c.water.emplace();
  c.water->source.months[0] = {3, 24};
  DeliveryPlan plan = c.plan();
  CHECK(plan.overflow.source_m3_s == plan.source->full->flow_m3_s);
  c.delivery.source.route[0].over_rim_m = -1;  // under its end: brings nothing
  plan = c.plan();
  CHECK(plan.source->full.error() == "no_head");
  CHECK(plan.overflow.source_m3_s == 0);
}

TEST_CASE("overflow: the pipe that leaves the freeboard, and none 5 mm smaller") {
  Case c = box();
  c.water.emplace();
  c.water->roof = {300, 0.9, 0};
  c.delivery.overflow.kind = OverflowKind::pipe;
  const DeliveryPlan plan = c.plan();
  CHECK_FALSE(plan.overflow.width_that_would_m);
  REQUIRE(plan.overflow.pipe_that_would_m);
  c.delivery.overflow.pipe_mm = *plan.overflow.pipe_that_would_m * 1000;
  CHECK(c.plan().overflow.state->freeboard_left_m >= 0.05);
  c.delivery.overflow.pipe_mm -= 5;
  CHECK(c.plan().overflow.state->freeboard_left_m < 0.05);
}

TEST_CASE("overflow: no state and no size without freeboard") {
  Case c = box();
  c.tank.freeboard_m = 0;
  const DeliveryPlan plan = c.plan();
  CHECK(plan.overflow.state.error() == "level_out_of_range");
  CHECK_FALSE(plan.overflow.width_that_would_m);
}

TEST_CASE("blocked overflow: lip and rim, each by the broad-crested formula") {
  Case c = box();
  DeliveryPlan plan = c.plan();
  REQUIRE(plan.overflow.blocked);
  const double flow = 100 / 3.6e6 * 21;
  CHECK(plan.overflow.flow_m3_s == Approx(flow));
  const double deepest_m = std::pow(flow / (0.9 * kBroadCrest * 1.5), 2.0 / 3);  // under 3 cm: the lip alone
  CHECK(plan.overflow.blocked->deepest_m == Approx(deepest_m));
  CHECK(plan.overflow.blocked->water_level_m == Approx(1.47 + deepest_m));
  REQUIRE(plan.overflow.blocked->parts.size() == 2);
  CHECK(plan.overflow.blocked->parts[1].flow_m3_s == 0);
  c.delivery.overflow.lip_drop_m = 0;
  plan = c.plan();
  REQUIRE(plan.overflow.blocked->parts.size() == 1);
  CHECK(plan.overflow.blocked->deepest_m == Approx(std::pow(flow / (0.9 * kBroadCrest * 19), 2.0 / 3)));
  c.delivery.overflow.lip_drop_m = 0.03;
  c.delivery.overflow.lip_length_m = 19.5;  // longer than the rim of 19 m
  CHECK(c.plan().overflow.blocked.error() == "length_out_of_range");
}

TEST_CASE("spill path: Manning's formula at the depth found, limits by soil and cover") {
  Case c = box();
  const auto manning = [](const hydraulics::Channel& ch, double y) {
    const double area = (ch.bottom_width_m + ch.side_slope * y) * y;
    const double wet = ch.bottom_width_m + 2 * y * std::sqrt(1 + ch.side_slope * ch.side_slope);
    return std::pow(area / wet, 2.0 / 3) * std::sqrt(ch.fall) / ch.manning_n * area;
  };
  const auto with = [&](SpillCover cover, std::optional<Soil> soil) {
    c.delivery.spill.cover = cover;
    c.site.soil = soil;
    const DeliveryPlan plan = c.plan();
    REQUIRE(plan.overflow.spill);
    REQUIRE(plan.overflow.scour);
    CHECK(manning(plan.overflow.channel, plan.overflow.spill->depth_m) == Approx(plan.overflow.flow_m3_s));
    CHECK(plan.overflow.channel.fall == Approx(0.02));
    return std::pair{plan.overflow.channel.manning_n, plan.overflow.scour->limit.key};
  };
  CHECK(with(SpillCover::soil, Soil::stiff_clay) == std::pair{0.025, std::string("erosion.stiff_clay")});
  CHECK(with(SpillCover::soil, Soil::rock).second == "erosion.rock");
  CHECK(with(SpillCover::soil, {}).second == "erosion.loose_fill");  // not known: the softest
  CHECK(with(SpillCover::grass, {}) == std::pair{0.035, std::string("erosion.grass")});
  CHECK(with(SpillCover::stone_pitching, {}) == std::pair{0.035, std::string("erosion.stone_pitching")});
  CHECK(with(SpillCover::plaster, {}) == std::pair{0.014, std::string("erosion.plaster")});
}

TEST_CASE("silt trap: its flow, and the area by Ferguson and Church's settling speed") {
  Case c = box();
  c.water.emplace();
  c.water->roof = {40, 0.8, 1};
  c.water->source.months[0] = {30, 24};
  DeliveryPlan plan = c.plan();
  const double flow = 100 / 3.6e6 * 0.9 * 40 + 30 * kLitrePerMinute;  // the tank's own opening not with it
  CHECK_FALSE(plan.trap.is_flow_given);
  CHECK(plan.trap.flow_m3_s == Approx(flow));
  const double d = 1e-4, r = 2650 / kDensity - 1;
  const double speed = r * kG * d * d / (18 * kViscosity + std::sqrt(0.75 * r * kG * d * d * d));
  REQUIRE(plan.trap.trap);
  CHECK(plan.trap.trap->area_m2 == near(2 * flow / speed));
  CHECK(plan.trap.trap->length_m == near(6 * plan.trap.trap->width_m, 1e-9));
  CHECK_FALSE(plan.trap.check);
  c.delivery.silt_trap.flow_l_per_min = 60;
  c.delivery.silt_trap.length_m = 2;
  c.delivery.silt_trap.width_m = 0.5;
  plan = c.plan();
  CHECK(plan.trap.is_flow_given);
  CHECK(plan.trap.flow_m3_s == Approx(1e-3));
  CHECK_FALSE(plan.trap.check);  // no depth yet
  c.delivery.silt_trap.depth_m = 0.4;
  plan = c.plan();
  REQUIRE(plan.trap.check);
  CHECK((*plan.trap.check)->forward_m_s == Approx(1e-3 / (0.5 * 0.4)));
}

TEST_CASE("silt trap: nothing comes, nothing is planned") {
  CHECK(box().plan().trap.trap.error() == "flow_out_of_range");
}

TEST_CASE("leak test: reckoned at the mean level when both drops are there") {
  Case c = box();
  c.delivery.leak_test.tank_drop_mm = 20;
  CHECK_FALSE(c.plan().leak);
  c.delivery.leak_test.bucket_drop_mm = 8;
  c.delivery.leak_test.hours = 48;
  DeliveryPlan plan = c.plan();
  REQUIRE(plan.leak);
  CHECK(plan.leak_level_m == Approx(1.29));  // full at the start, sunk by 20 mm
  CHECK((*plan.leak)->leak_mm_day == Approx(6));
  CHECK((*plan.leak)->leak_l_day == Approx(6 * 21));
  c.delivery.leak_test.level_m = 0.8;
  CHECK(c.plan().leak_level_m == 0.8);
}

TEST_CASE("delivery as JSON: units by hand, null and fault for what is not there") {
  Case c = withLines();
  c.tank.freeboard_m = 0;
  const DeliveryPlan plan = c.plan();
  const exchange::Json json = exchange::deliveryJson(plan);
  const auto flow = json["source"]["full"]["flow_l_per_min"].get<double>();
  CHECK(flow == near(plan.source->full->flow_m3_s * 60000));
  CHECK(json["source"]["wanted_l_per_min"].is_null());
  CHECK(json["source"]["smallest_pipe"].is_null());
  CHECK(json["source"]["full"]["regime"] == "turbulent");
  CHECK(json["source"]["full"]["points"].size() == plan.source->full->points.size());
  CHECK(json["field"]["siphon_full"]["state"] == "runs");
  CHECK(json["field"]["emptying"]["emptying_hours"].get<double>() ==
        near(plan.field->emptying->seconds / 3600));
  CHECK(json["overflow"]["state"]["fault"] == "level_out_of_range");
  CHECK(json["leak_test"].is_null());
}

TEST_CASE("silt trap: mud comes with the source all the time and with one hour of the storm") {
  Case c;
  c.water.emplace();
  c.water->roof = {40, 0.8, 1};
  c.water->ground = {100, 0.2, 5};
  c.water->source.months[6] = {30, 24};
  c.delivery.overflow.storm_mm_h = 60;
  c.delivery.silt_trap.silt_kg_m3 = 0.5;
  c.delivery.silt_trap.cleaning_days = 7;
  const DeliveryPlan plan = c.plan();
  REQUIRE(plan.trap.trap);
  const double source_m3 = 30e-3 * 60 * 24 * 7;
  const double storm_m3 = 0.06 * (0.9 * 40 + 0.5 * 100);  // 60 mm in one hour
  CHECK(plan.trap.trap->deposit_kg == Approx(0.5 * (source_m3 + storm_m3)));
}
