#pragma once

#include "core/water/balance.h"
#include "tests/support/random_tank.h"

#include <cstddef>

namespace support {

/// Days all alike, in years of 365 days; what is over makes the last year shorter.
struct AlikeDays {
  double rain_mm = 0, evaporation_mm = 0, supply_m3 = 0, beds_m3 = 0, household_m3 = 0;
  double seepage_mm_day = 0;
};
core::water::DaySeries alikeDays(const AlikeDays& day, std::size_t days);

/// Days of a wet and a dry season, made to suit a tank of `full_m3`: sources, runoff and needs from a ten
/// thousandth to a third of it a day, cloudbursts that may fill it at once, some of them absent.
core::water::DaySeries randomDays(Dice& dice, double full_m3, std::size_t days);

}  // namespace support
