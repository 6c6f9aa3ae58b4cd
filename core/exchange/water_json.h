#pragma once

#include "core/exchange/json_reader.h"
#include "core/water/water_plan.h"

namespace core::exchange {

/// The answers of the water balance as JSON, with a coarse map of tank size and bed area, which is reckoned
/// here.
Json waterJson(const water::WaterPlan& plan);

}  // namespace core::exchange
