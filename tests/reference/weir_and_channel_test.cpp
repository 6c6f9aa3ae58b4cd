// Weirs, storms and channels against printed values; each has its source beside it. `fluids` is an open fluid
// library (MIT licence), `hydraulics` an open R package; both reprint textbook examples.
#include "core/hydraulics/channel.h"
#include "core/hydraulics/emptying.h"
#include "core/hydraulics/overflow.h"

#include <cmath>
#include <numbers>
#include <vector>

#include <catch2/catch.hpp>

using namespace core::hydraulics;

namespace {

constexpr double kFoot = 0.3048;
constexpr double kCubicFoot = kFoot * kFoot * kFoot;

Approx printed(double value, double last_digit) {
  return Approx(value).margin(last_digit / 2 * 1.0001).epsilon(0);
}

Approx within(double value, double share) {
  return Approx(value).epsilon(share);
}

/// One side at 1 vertical to m level of an angle over the level.
double sideSlope(double degrees) {
  return 1 / std::tan(degrees * std::numbers::pi / 180);
}

}  // namespace

TEST_CASE("broad-crested weir: Ponce, SDSU CIVE 530, midterm 1, 2005") {
  // theoretical C in ft units; printed with g 32.17 ft/s2, where standard gravity gives 3.0876
  CHECK(broadCrest() / std::sqrt(kFoot) == Approx(3.087).margin(0.001));
  const double q = *notchFlow({20 * kFoot, 1}, 0.8 * kFoot);
  CHECK(q / kCubicFoot == within(44.22, 0.002));  // printed with C rounded up to 3.09
  CHECK(*notchHead({20 * kFoot, 1}, q) == within(0.8 * kFoot, 1e-12));
}

TEST_CASE("broad-crested weir: 1.705 in SI units") {
  CHECK(broadCrest() == printed(1.705, 0.001));  // open-channel texts; 1.70489 with g 9.81
}

TEST_CASE("broad-crested weir is the critical flow over the sill") {
  // open-channel theory: depth yc = 2/3 H, velocity sqrt(g yc)
  const double h = 0.12, yc = 2 * h / 3;
  CHECK(*notchFlow({0.5, 1}, h) == within(0.5 * yc * std::sqrt(kGravity_m_s2 * yc), 1e-12));
}

TEST_CASE("rational method") {
  // Ponce, SDSU CIVE 445, midterm 2, problem 1: 45.48 mm/h effective on 80 ha
  const std::vector<StormArea> ponce{{1, 80e4}};
  CHECK(*stormPeak(ponce, 45.48) == printed(10.11, 0.01));
  // Q = C i A / 360 with mm/h and ha
  const std::vector<StormArea> hectares{{0.5, 1e4}, {0.25, 2e4}};
  CHECK(*stormPeak(hectares, 36) == within((0.5 * 1 + 0.25 * 2) * 36 / 360, 1e-12));
  // 1 inch/h on 1 acre is 1.008 cfs
  const std::vector<StormArea> acre{{1, 43560 * kFoot * kFoot}};
  CHECK(*stormPeak(acre, 25.4) / kCubicFoot == printed(1.008, 0.001));
}

TEST_CASE("Manning: velocity, fluids test suite") {
  CHECK(manningVelocity(5, 0.001, 0.05) == within(1.8493111942973235, 1e-13));
}

TEST_CASE("Manning: Cengel and Cimbala, weedy trapezoidal channel (in fluids)") {
  const Channel channel{0.8, sideSlope(60), std::tan(0.3 * std::numbers::pi / 180), 0.030};
  const ChannelFlow f = *flowAtDepth(channel, 0.52);
  CHECK(f.area_m2 == printed(0.5721, 1e-4));
  CHECK(f.hydraulic_radius_m == printed(0.2859, 1e-4));
  CHECK(f.velocity_m_s == printed(1.0468, 2e-4));
  CHECK(f.flow_m3_s == printed(0.60, 0.01));
  Channel steeper = channel;
  steeper.fall = std::tan(std::numbers::pi / 180);
  CHECK(flowAtDepth(steeper, 0.52)->flow_m3_s == printed(1.1, 0.1));  // from memory
}

TEST_CASE("Manning: examples of the R package hydraulics") {
  CHECK(flowAtDepth(Channel{3, 2, 0.0005, 0.013}, 1.83)->flow_m3_s == printed(22.2, 0.1));
  CHECK(evenFlow(Channel{0, 1, 0.0065, 0.011}, 1)->depth_m == printed(0.6, 0.1));
  const ChannelFlow rectangle = *flowAtDepth(Channel{4 * kFoot, 0, 0.0004, 0.0164}, 2 * kFoot);
  CHECK(rectangle.flow_m3_s / kCubicFoot == within(14.56, 0.005));  // solved for n, printed 0.016
  const ChannelFlow round = *evenFlow(RoundChannel{0.2, 0.001, 0.013}, 0.01);
  CHECK(round.depth_m == printed(0.158, 0.001));
  CHECK(round.velocity_m_s == printed(0.38, 0.01));
  CHECK(round.hydraulic_radius_m == printed(0.061, 0.001));
  CHECK(round.froude == printed(0.3, 0.1));
  CHECK(*criticalDepth(0.2, 0.01) == printed(0.085, 0.001));
}

TEST_CASE("Manning: Mott, example 14.2, 200 mm tile half full") {
  // printed 5.18e-3 is from memory; the cut-off digit is 5.186
  CHECK(flowAtDepth(RoundChannel{0.2, 0.001, 0.013}, 0.1)->flow_m3_s == Approx(5.18e-3).margin(1e-5));
}

TEST_CASE("Manning: a round pipe carries most at 0.938 of its depth, 1.076 of full flow") {
  // open-channel texts (Chow, geometric elements of circular sections)
  const RoundChannel pipe{0.11, 0.01, 0.01};
  const ChannelFlow most = *mostFlow(pipe);
  const ChannelFlow full = *flowAtDepth(pipe, 0.11);
  CHECK(most.flow_m3_s / full.flow_m3_s == printed(1.076, 0.001));
  CHECK(flowAtDepth(pipe, 0.11 * 0.93)->flow_m3_s < most.flow_m3_s);
  CHECK(flowAtDepth(pipe, 0.11 * 0.945)->flow_m3_s < most.flow_m3_s);
}

TEST_CASE("orifice: Torricelli") {
  // c A sqrt(2 g h): 1 m of head is 4.429 m/s
  CHECK(*orificeFlow(1, 1, 1) == printed(4.429, 0.001));
  CHECK(*orificeFlow(1e-3, 0.6, 2) == within(0.6e-3 * std::sqrt(2 * kGravity_m_s2 * 2), 1e-14));
}
