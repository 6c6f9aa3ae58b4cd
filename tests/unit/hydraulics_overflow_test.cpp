// Overflow: level over a notch or before a pipe, the blocked case, the spill path.
#include "core/hydraulics/channel.h"
#include "core/hydraulics/figures.h"
#include "core/hydraulics/overflow.h"
#include "core/hydraulics/pipe_friction.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <vector>

#include <catch2/catch.hpp>

using namespace core::hydraulics;

namespace {

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

OverflowPipe pipe(double diameter_m, double length_m, double fall_m) {
  OverflowPipe p;
  p.diameter_m = diameter_m;
  p.length_m = length_m;
  p.fall_m = fall_m;
  return p;
}

}  // namespace

TEST_CASE("overflow: a notch leaves the freeboard that the weir formula says") {
  const Overflow overflow{Notch{0.5, 1}, 1.35, 1.5};
  // storm of 60 mm/h on 300 m2 with C 0.5 and a source of 20 L/min, by hand: 2.833 L/s
  const std::vector<StormArea> areas{{0.5, 300}};
  const double q = *stormPeak(areas, 60) + 20.0 / 60000;
  CHECK(q == within(0.0025 + 0.001 / 3, 1e-14));
  const OverflowState state = *overflowState(overflow, q);
  CHECK(state.head_m ==
        within(std::pow(q / (1.70460 * 0.5), 2.0 / 3), 1e-4));  // 1.7046 with standard gravity
  CHECK(state.water_level_m == Approx(1.35 + state.head_m));
  CHECK(state.freeboard_left_m == Approx(0.15 - state.head_m));
  CHECK(state.capacity_m3_s == within(1.70460 * 0.5 * std::pow(0.15, 1.5), 1e-4));
  CHECK(overflowState(overflow, state.capacity_m3_s)->freeboard_left_m == Approx(0).margin(1e-12));
  CHECK(overflowState(overflow, 2 * state.capacity_m3_s)->freeboard_left_m < 0);
}

TEST_CASE("overflow: a smaller share needs more head") {
  CHECK(*notchHead({0.5, 0.9}, 0.01) == within(*notchHead({0.5, 1}, 0.01) * std::pow(0.9, -2.0 / 3), 1e-12));
}

TEST_CASE("overflow pipe: at a free inlet the water has critical energy and the entrance loss") {
  const OverflowPipe p = pipe(0.11, 1, 0.1);  // steep and short: the inlet governs
  const double q = 2e-3;
  const PipeHead head = *pipeHead(p, q);
  CHECK(head.control == PipeControl::entrance);
  CHECK(head.barrel_head_m == 0);
  const double yc = *criticalDepth(0.11, q);
  const ChannelFlow at = *flowAtDepth(RoundChannel{0.11, 0.01, 0.01}, yc);
  const double v = q / at.area_m2;
  CHECK(v == within(std::sqrt(kGravity_m_s2 * at.area_m2 / at.top_width_m), 1e-9));  // Froude number 1
  CHECK(head.head_m == within(yc + 1.5 * v * v / (2 * kGravity_m_s2), 1e-12));
}

TEST_CASE("overflow pipe: a drowned inlet is an orifice") {
  const OverflowPipe p = pipe(0.11, 1, 0.5);
  const double q = 0.03;
  const PipeHead head = *pipeHead(p, q);
  CHECK(head.control == PipeControl::orifice);
  const double area = std::numbers::pi / 4 * 0.11 * 0.11;
  CHECK(q == within(0.6 * area * std::sqrt(2 * kGravity_m_s2 * (head.head_m - 0.055)), 1e-12));
}

TEST_CASE("overflow pipe: on a mild slope even flow governs") {
  const OverflowPipe p = pipe(0.11, 10, 0.02);
  const double q = 1e-3;
  const PipeHead head = *pipeHead(p, q);
  CHECK(head.control == PipeControl::barrel);
  const ChannelFlow even = *evenFlow(RoundChannel{0.11, 0.002, 0.010}, q);
  CHECK(even.froude < 1);
  CHECK(even.flow_m3_s == within(q, 1e-12));
  CHECK(head.head_m == within(even.depth_m + 1.5 * velocityHead(even.velocity_m_s), 1e-12));
}

TEST_CASE("overflow pipe: a long flat pipe runs full") {
  const OverflowPipe p = pipe(0.075, 30, 0.03);
  const double q = 3e-3;
  const PipeHead head = *pipeHead(p, q);
  CHECK(head.control == PipeControl::full_pipe);
  // FHWA HDS-5 (from memory): H = (1 + Ke + 19.63 n^2 L / R^1.33) V^2/2g, HW = H + (yc + D)/2 - L S
  const double v = meanVelocity(q, 0.075);
  const double loss = 1 + 0.5 + 19.63 * 1e-4 * 30 / std::pow(0.075 / 4, 1.33);
  const double expected = loss * velocityHead(v) + (*criticalDepth(0.075, q) + 0.075) / 2 - 0.03;
  CHECK(head.head_m == within(expected, 0.015));  // the printed exponent 1.33 is 4/3 cut off
}

TEST_CASE("overflow pipe: head never falls as flow grows through every kind of control") {
  std::set<PipeControl> seen;
  for (const OverflowPipe& p :
       {pipe(0.11, 2, 0.02), pipe(0.11, 20, 0.02), pipe(0.075, 30, 3), pipe(0.05, 5, 0.02)}) {
    double before = 0;
    for (double q = 1e-6; q < 0.1; q *= 1.02) {
      const PipeHead head = *pipeHead(p, q);
      CHECK(head.head_m >= before);
      CHECK(head.head_m >= std::max(head.entrance_head_m, head.barrel_head_m));
      before = head.head_m;
      seen.insert(head.control);
    }
  }
  CHECK(seen.size() == 4);
}

TEST_CASE("overflow pipe: capacity gives its head back") {
  const OverflowPipe p = pipe(0.11, 2, 0.02);
  for (const double head : {0.01, 0.08, 0.15, 0.4}) {
    CAPTURE(head);
    CHECK(pipeHead(p, *pipeCapacity(p, head))->head_m == within(head, 1e-9));
  }
  const OverflowState state = *overflowState({p, 1.2, 1.5}, 1e-3);
  CHECK(state.capacity_m3_s == within(*pipeCapacity(p, 0.3), 1e-12));
  CHECK(state.head_m == within(pipeHead(p, 1e-3)->head_m, 1e-12));
}

TEST_CASE("blocked overflow: a level rim, and the lowest side first") {
  const std::vector<RimPart> level{{"a", 6, 1.5}, {"b", 3.5, 1.5}, {"c", 6, 1.5}, {"d", 3.5, 1.5}};
  const BlockedState even = *overRim(level, 0.01, 1);
  CHECK(even.deepest_m == within(*notchHead({19, 1}, 0.01), 1e-9));
  const std::vector<RimPart> tilted{{"a", 6, 1.5}, {"b", 3.5, 1.48}, {"c", 6, 1.5}};
  const BlockedState low = *overRim(tilted, 0.01, 1);
  CHECK(low.parts[0].flow_m3_s == 0);
  CHECK(low.parts[1].flow_m3_s == within(0.01, 1e-9));
  CHECK(low.deepest_m == within(*notchHead({3.5, 1}, 0.01), 1e-9));
  const BlockedState high = *overRim(tilted, 0.2, 1);
  double sum = 0;
  for (const RimPartFlow& part : high.parts) sum += part.flow_m3_s;
  CHECK(sum == within(0.2, 1e-9));
  CHECK(high.parts[0].depth_m == Approx(high.parts[1].depth_m - 0.02));
  CHECK(high.parts[1].flow_m3_s / 3.5 > high.parts[0].flow_m3_s / 6);
}

TEST_CASE("spill path: even depth, velocity, and whether the soil holds") {
  Channel channel{0.3, 1.5, 0.05, 0.025};
  const ChannelFlow flow = *evenFlow(channel, 0.01);
  CHECK(flow.flow_m3_s == within(0.01, 1e-12));
  CHECK(flow.area_m2 * flow.velocity_m_s == within(0.01, 1e-12));
  CHECK(flow.area_m2 == within(flow.depth_m * (0.3 + 1.5 * flow.depth_m), 1e-12));
  CHECK(flow.froude ==
        within(flow.velocity_m_s / std::sqrt(kGravity_m_s2 * flow.area_m2 / flow.top_width_m), 1e-12));
  CHECK(checkScour(flow.velocity_m_s, "sandy")->verdict == Scour::scours);
  CHECK(checkScour(flow.velocity_m_s, "rock")->verdict == Scour::safe);
  const core::Figure clay = *figure("erosion.stiff_clay");
  CHECK(checkScour(clay.low, "stiff_clay")->verdict == Scour::safe);
  CHECK(checkScour(clay.low + 1e-6, "stiff_clay")->verdict == Scour::doubtful);
  CHECK(checkScour(clay.high + 1e-6, "stiff_clay")->verdict == Scour::scours);
  CHECK(checkScour(1, "no_such").error() == "unknown_key");
  channel.fall = 0.005;
  CHECK(evenFlow(channel, 0.01)->velocity_m_s < flow.velocity_m_s);
}

TEST_CASE("overflow: what cannot be is refused") {
  CHECK(pipeHead(pipe(0.11, 2, 0), 1e-3).error() == "pipe_without_fall");
  CHECK(pipeHead(pipe(0, 2, 0.1), 1e-3).error() == "bore_out_of_range");
  CHECK(pipeHead(pipe(0.1, 0, 0.1), 1e-3).error() == "length_out_of_range");
  CHECK(pipeHead(pipe(0.1, 1, 2), 1e-3).error() == "slope_out_of_range");
  CHECK(pipeHead(pipe(0.1, 1, 0.1), 0).error() == "flow_out_of_range");
  CHECK(pipeCapacity(pipe(0.1, 1, 0.1), 0).error() == "head_out_of_range");
  OverflowPipe p = pipe(0.1, 1, 0.1);
  p.orifice_coefficient = 0.3;
  CHECK(pipeHead(p, 1e-3).error() == "coefficient_out_of_range");
  CHECK(overflowState({Notch{0.5, 1}, 1.5, 1.5}, 1e-3).error() == "level_out_of_range");
  CHECK(overflowState({Notch{0.5, 1}, 1.4, 1.5}, 0).error() == "flow_out_of_range");
  CHECK(notchFlow({0, 1}, 0.1).error() == "width_out_of_range");
  CHECK(notchFlow({1, 1.2}, 0.1).error() == "coefficient_out_of_range");
  CHECK(notchFlow({1, 1}, -0.1).error() == "head_out_of_range");
  CHECK(overRim({}, 0.01).error() == "no_rim");
  const std::vector<RimPart> bad{{"a", 0, 1}};
  CHECK(overRim(bad, 0.01).error() == "length_out_of_range");
  const std::vector<StormArea> wet{{1.1, 10}};
  CHECK(stormPeak(wet, 10).error() == "coefficient_out_of_range");
  const std::vector<StormArea> ground{{0.5, 10}};
  CHECK(stormPeak(ground, -1).error() == "intensity_out_of_range");
  CHECK(evenFlow(Channel{0, 0, 0.1, 0.025}, 1).error() == "width_out_of_range");
  CHECK(evenFlow(Channel{1, 0, 0, 0.025}, 1).error() == "slope_out_of_range");
  CHECK(evenFlow(RoundChannel{0.1, 0.001, 0.01}, 1).error() == "flow_out_of_range");
  CHECK(flowAtDepth(RoundChannel{0.1, 0.001, 0.01}, 0.2).error() == "depth_out_of_range");
}
