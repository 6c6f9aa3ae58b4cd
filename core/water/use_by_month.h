#pragma once

#include "core/water/water_plan.h"

#include <vector>

namespace core::water {

/// What one month asks of the tank and what it gives, means over all years, and how high the water stands.
struct MonthUse {
  int month = 1;  ///< from 1
  double wanted_m3 = 0, wanted_a_day_m3 = 0;
  double drawn_m3 = 0, drawn_a_day_m3 = 0;    ///< what was there to be drawn
  double usual_level_m = 0, low_level_m = 0;  ///< on the first of the month, above the finished floor: in the
                                              ///< middle year and in the worst year of ten
};

/// One entry a month, from the first month of the weather year on.
std::vector<MonthUse> useByMonth(const WaterPlan& plan);

}  // namespace core::water
