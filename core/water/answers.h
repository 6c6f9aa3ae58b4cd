#pragma once

#include "core/water/balance.h"
#include "core/water/water_plan.h"

namespace core::water {

/// Puts in the answers to "how big?" and "how much?": the curve of storage against reliability, the smallest
/// tank that meets the target and the largest area of beds that this tank keeps watered at the target.
/// @param plan its curve, series, bed area and years are read
void addSizes(WaterPlan& plan, double target_years_in_ten);

}  // namespace core::water
