#pragma once

#include "core/works/calendar.h"
#include "core/works/task_list.h"

#include <vector>

namespace core::works {

/// People and water of every day of the works, marks left out. People are the most that are there at a time,
/// so that a crew that goes on to another task within the day counts once; those who keep sacks wet see to
/// all of them.
/// @param works schedule and filling are there
/// @param last_cure last day of the last coat's curing
std::vector<DayLoad> dayLoads(const Laid& laid, const Calendar& calendar, const LabourInput& input,
                              const Works& works, Day last_cure);

}  // namespace core::works
