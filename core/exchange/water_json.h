#pragma once

#include "core/exchange/json_reader.h"
#include "core/water/water_plan.h"

namespace core::exchange {

/// The answers of the water balance as JSON, without the map.
Json waterJson(const water::WaterPlan& plan);
/// A coarse map of tank size and bed area, which is reckoned here.
Json waterMapJson(const water::WaterPlan& plan);

}  // namespace core::exchange
