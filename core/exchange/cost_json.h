#pragma once

#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/exchange/json_reader.h"
#include "core/option_result.h"

namespace core::exchange {

Json costJson(const cost::CostPlan& plan);

Json rangesJson(const cost::RangesPlan& plan);

/// One option: its figures, or code and path of why it cannot be built.
Json optionJson(const OptionResult& result);

}  // namespace core::exchange
