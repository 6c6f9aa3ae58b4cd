#pragma once

#include "core/plan.h"
#include "core/works/build_days.h"

#include <cstddef>
#include <vector>

namespace core {

/// The tank day by day as it is built; without dates stage by stage.
std::vector<works::BuildDay> buildTimeline(const Plan& plan);

/// Place of the first day of the stage after the one at `at`; the number of days after the last stage.
std::size_t nextStage(const std::vector<works::BuildDay>& days, std::size_t at);
/// Place of the first day of the stage before the one at `at` (which may be past the end); 0 in the first.
std::size_t stageBefore(const std::vector<works::BuildDay>& days, std::size_t at);

}  // namespace core
