#pragma once

#include "core/cost/cost_plan.h"

#include <vector>

namespace core::cost {

/// Linings of the price list by what they cost a year (see LiningCost), the cheapest first, unknown ones
/// last. Work is paid at its price, own work too.
std::vector<LiningCost> linings(const CostInput& input, const Bill& bill);

}  // namespace core::cost
