#pragma once

#include "core/compare/search.h"
#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/option_result.h"
#include "core/project/project.h"

#include <vector>

namespace support {

/// Invented money for the drawings, in rupees.
core::Project moneyProject();
core::cost::CostPlan sampleCost(int days = 30);
core::cost::Spread sampleSpread();
core::compare::SearchResult sampleSearch();
core::compare::Candidate presentTank();
/// So many tanks that can be built, each a little other than the one before.
std::vector<core::OptionResult> sampleOptions(int count);

}  // namespace support
