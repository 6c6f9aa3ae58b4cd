// Leak test by floating bucket: rates by hand, bands at their borders, the two published marks side by side.
#include "core/hydraulics/figures.h"
#include "core/hydraulics/leak_test.h"

#include <limits>

#include <catch2/catch.hpp>

using namespace core::hydraulics;
using core::water::TankCurve;

namespace {

/// 6 m x 3.5 m, upright walls, 1.5 m deep.
TankCurve box() {
  TankCurve curve;
  curve.a0 = 21;
  curve.rim_level_m = 1.5;
  curve.full_level_m = 1.35;
  return curve;
}

LeakTest tested(double tank_mm, double bucket_mm, double hours, double error_mm = 0) {
  const auto test = leakTest(box(), 1, {tank_mm, bucket_mm, hours, error_mm});
  REQUIRE(test);
  return *test;
}

std::string_view faultOf(double level_m, const LeakReading& reading) {
  const auto test = leakTest(box(), level_m, reading);
  return test ? "" : test.error();
}

}  // namespace

TEST_CASE("leak test: tank drop less bucket drop, in mm and litres a day") {
  const LeakTest t = tested(20, 8, 48);
  CHECK(t.tank_mm_day == Approx(10));
  CHECK(t.evaporation_mm_day == Approx(4));
  CHECK(t.leak_mm_day == Approx(6));
  CHECK(t.leak_l_day == Approx(6 * 21));                      // 1 mm on 1 m2 is 1 L
  CHECK(t.share_percent_day == Approx(100 * 126 / 21000.0));  // of 21 m3
}

TEST_CASE("leak test: litres follow the surface at the level") {
  TankCurve battered = box();
  battered.a1 = 19 * 0.2;
  battered.a2 = 4 * 0.04;
  const double low = leakTest(battered, 0.5, {10, 4, 24, 0})->leak_l_day;
  const double high = leakTest(battered, 1.2, {10, 4, 24, 0})->leak_l_day;
  CHECK(low == Approx(6 * battered.surface(0.5)));
  CHECK(high > low);
}

TEST_CASE("leak test: the bands, each up to its end") {
  CHECK(tested(typical("leak.tight"), 0, 24).verdict == LeakVerdict::tight);
  CHECK(tested(typical("leak.tight") + 0.01, 0, 24).verdict == LeakVerdict::watch);
  CHECK(tested(typical("leak.watch"), 0, 24).verdict == LeakVerdict::watch);
  CHECK(tested(typical("leak.watch") + 0.01, 0, 24).verdict == LeakVerdict::repair);
  CHECK(tested(typical("leak.repair") + 0.01, 0, 24).verdict == LeakVerdict::empty_and_mend);
  CHECK(tested(typical("leak.watch"), 0, 24).band->key == "leak.watch");
  CHECK_FALSE(tested(50, 0, 24).band);
}

TEST_CASE("leak test: readings that cannot tell do not pass for tight") {
  // 1 mm error each: 1.41 mm together in a day
  CHECK(tested(1, 0, 24, 1).verdict == LeakVerdict::unsure);
  CHECK(tested(1, 0, 24, 1).error_mm_day == Approx(1.41421356));
  CHECK(tested(1, 0, 96, 1).verdict == LeakVerdict::tight);
  CHECK(tested(0, 3, 24, 1).verdict == LeakVerdict::gains);
  CHECK(tested(10, 0, 24, 1).verdict == LeakVerdict::repair);
}

TEST_CASE("leak test: two published marks stand side by side") {
  // BS 5337 as quoted: 10 mm in 7 days; AWWA and ACI summaries: 0.1 % of the volume a day
  CHECK(tested(10, 0, 7 * 24).by_drop.allowed_mm_day == Approx(10.0 / 7));
  CHECK(tested(10, 0, 7 * 24).by_drop.kept);
  CHECK_FALSE(tested(10.1, 0, 7 * 24).by_drop.kept);
  // 1 m of water in a box: 0.1 % is 1 mm a day
  CHECK(tested(1, 0, 24).by_volume.allowed_mm_day == Approx(1));
  CHECK(tested(0.99, 0, 24).by_volume.kept);
  CHECK_FALSE(tested(1.01, 0, 24).by_volume.kept);
  const LeakTest between = tested(1.2, 0, 24);
  CHECK(between.by_drop.kept);
  CHECK_FALSE(between.by_volume.kept);
}

TEST_CASE("leak test: what cannot be is refused") {
  CHECK(faultOf(1, {5, -1, 24, 1}) == "bucket_gained_water");
  CHECK(faultOf(1, {5, 1, 0.5, 1}) == "time_out_of_range");
  CHECK(faultOf(1, {1500, 1, 24, 1}) == "reading_out_of_range");
  CHECK(faultOf(1, {5, 1, 24, -1}) == "reading_out_of_range");
  CHECK(faultOf(1, {std::numeric_limits<double>::quiet_NaN(), 1, 24, 1}) == "reading_out_of_range");
  CHECK(faultOf(0, {5, 1, 24, 1}) == "level_out_of_range");
  CHECK(faultOf(1.6, {5, 1, 24, 1}) == "level_out_of_range");
}
