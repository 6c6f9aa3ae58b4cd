#include "core/hydraulics/leak_test.h"

#include "core/hydraulics/figures.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string_view>
#include <utility>

namespace core::hydraulics {
namespace {

constexpr double kHoursPerDay = 24;
constexpr double kLeastHours = 1;
constexpr double kMmPerMetre = 1000;

constexpr std::array kBands{std::pair{LeakVerdict::tight, "leak.tight"},
                            std::pair{LeakVerdict::watch, "leak.watch"},
                            std::pair{LeakVerdict::repair, "leak.repair"}};

std::string_view readingFault(const LeakReading& r, double level_m) {
  if (!std::isfinite(r.bucket_drop_mm) || !(r.tank_drop_mm <= level_m * kMmPerMetre) ||
      !std::isfinite(r.tank_drop_mm) || !(r.reading_error_mm >= 0 && std::isfinite(r.reading_error_mm)))
    return "reading_out_of_range";
  if (!(r.hours >= kLeastHours && std::isfinite(r.hours))) return "time_out_of_range";
  return r.bucket_drop_mm < 0 ? "bucket_gained_water" : "";
}

/// The first band whose end the leak does not pass.
void judge(LeakTest& test) {
  if (std::abs(test.leak_mm_day) <= test.error_mm_day) {
    // within the readings' error: tight only when leak and error together stay within the tight band
    const bool surely = test.leak_mm_day + test.error_mm_day <= typical("leak.tight");
    test.verdict = surely ? LeakVerdict::tight : LeakVerdict::unsure;
    if (surely) test.band = *figure("leak.tight");
    return;
  }
  test.verdict = test.leak_mm_day < 0 ? LeakVerdict::gains : LeakVerdict::empty_and_mend;
  if (test.leak_mm_day < 0) return;
  for (const auto& [verdict, key] : kBands) {
    if (test.leak_mm_day > typical(key)) continue;
    test.verdict = verdict;
    test.band = *figure(key);
    return;
  }
}

LeakRule rule(double leak_mm_day, double allowed_mm_day, std::string_view source) {
  return {allowed_mm_day, leak_mm_day <= allowed_mm_day, source};
}

}  // namespace

Result<LeakTest> leakTest(const water::TankCurve& tank, double level_m, const LeakReading& reading) {
  if (!(level_m > 0 && level_m <= tank.rim_level_m && tank.volume(level_m) > 0))
    return fault("level_out_of_range");
  const std::string_view wrong = readingFault(reading, level_m);
  if (!wrong.empty()) return fault(wrong);
  const double days = reading.hours / kHoursPerDay;
  const double surface = tank.surface(level_m), volume = tank.volume(level_m);
  LeakTest test;
  test.tank_mm_day = reading.tank_drop_mm / days;
  test.evaporation_mm_day = reading.bucket_drop_mm / days;
  test.leak_mm_day = test.tank_mm_day - test.evaporation_mm_day;
  test.error_mm_day = std::numbers::sqrt2 * reading.reading_error_mm / days;
  test.leak_l_day = test.leak_mm_day * surface;  // 1 mm on 1 m2 is 1 litre
  test.share_percent_day = 100 * test.leak_l_day / (volume * kMmPerMetre);
  judge(test);
  test.by_drop = rule(test.leak_mm_day, typical("leak.published_drop") / typical("leak.published_drop_days"),
                      "water_tightness_drop");
  test.by_volume =
      rule(test.leak_mm_day, typical("leak.published_share") / 100 * volume / surface * kMmPerMetre,
           "water_tightness_share");
  return test;
}

}  // namespace core::hydraulics
