#pragma once

#include "core/water/balance.h"
#include "core/water/water_plan.h"
#include "core/water/weather.h"

#include <vector>

namespace core::water {

/// How long a full tank lasts when nothing flows in and no rain falls on it: days from the first of each
/// month to the first dry day, middle of all years. Rain still waters the beds. January first.
std::vector<DaysFrom> lasting(const TankCurve& tank, const DaySeries& series, const Weather& weather);

/// How long an empty tank takes to fill to the overflow when nothing is drawn, from the first of each month.
std::vector<DaysFrom> filling(const TankCurve& tank, const DaySeries& series, const Weather& weather);

}  // namespace core::water
