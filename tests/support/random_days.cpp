#include "tests/support/random_days.h"

#include <cmath>
#include <numbers>

namespace support {
namespace {

constexpr std::size_t kYear = 365;

void closeYears(core::water::DaySeries& series) {
  for (std::size_t day = 0; day < series.days(); day += kYear) series.year_start.push_back(day);
  series.year_start.push_back(series.days());
}

void push(core::water::DaySeries& series, const AlikeDays& day) {
  series.rain_mm.push_back(static_cast<float>(day.rain_mm));
  series.evaporation_mm.push_back(static_cast<float>(day.evaporation_mm));
  series.supply_m3.push_back(static_cast<float>(day.supply_m3));
  series.beds_m3.push_back(static_cast<float>(day.beds_m3));
  series.household_m3.push_back(static_cast<float>(day.household_m3));
}

double share(Dice& dice, double least_power, double most_power) {
  return dice.chance(0.3) ? 0 : std::pow(10, dice.between(least_power, most_power));
}

}  // namespace

core::water::DaySeries alikeDays(const AlikeDays& day, std::size_t days) {
  core::water::DaySeries series;
  series.seepage_mm_day = day.seepage_mm_day;
  for (std::size_t i = 0; i < days; ++i) push(series, day);
  closeYears(series);
  return series;
}

core::water::DaySeries randomDays(Dice& dice, double full_m3, std::size_t days) {
  const double wet_days = dice.between(0.02, 0.6), storm_mm = dice.between(1, 60);
  const double evaporation_mm = dice.chance(0.1) ? 0 : dice.between(0, 9);
  const double source_m3 = full_m3 * share(dice, -4, -0.5), beds_m3 = full_m3 * share(dice, -4, -0.5);
  const double household_m3 = full_m3 * share(dice, -5, -1);
  const double runoff_m3_per_mm = dice.chance(0.5) ? full_m3 * dice.between(0, 1.5) / 50 : 0;
  core::water::DaySeries series;
  series.seepage_mm_day = dice.chance(0.3) ? 0 : dice.between(0, 6);
  for (std::size_t day = 0; day < days; ++day) {
    const double wet = 0.5 - 0.5 * std::cos(2 * std::numbers::pi * static_cast<double>(day % kYear) / kYear);
    const double rain_mm = dice.chance(wet_days * wet) ? -storm_mm * std::log(dice.between(1e-6, 1)) : 0;
    push(series, {rain_mm, evaporation_mm * (1 - 0.4 * wet), source_m3 * wet + runoff_m3_per_mm * rain_mm,
                  beds_m3 * (1 - wet), household_m3, 0});
  }
  closeYears(series);
  return series;
}

}  // namespace support
