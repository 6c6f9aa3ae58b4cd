#pragma once

#include "core/exchange/json_reader.h"
#include "core/exchange/plan_leaves.h"

#include <vector>

namespace core::exchange {

/// Places of a JSON value with their values, as planLeaves() has them.
std::vector<PlanLeaf> leavesOf(const Json& json);

}  // namespace core::exchange
