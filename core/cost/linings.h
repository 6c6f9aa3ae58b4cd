#pragma once

#include "core/cost/cost_plan.h"

#include <vector>

namespace core::cost {

/// Linings of the price list by what they cost a year, the cheapest first, unknown ones last. Soil-cement
/// without a price of its own costs the whole bill; not known while the bill lacks prices. Digging and
/// platform are paid at the labourer's price, own work too; a moulded tank stands on the ground.
std::vector<LiningCost> linings(const CostInput& input, const Bill& bill);

}  // namespace core::cost
