#pragma once

#include "core/exchange/json_reader.h"
#include "core/works/records.h"
#include "core/works/schedule.h"

namespace core::exchange {

/// Puts labour, schedule, links, people by day, crews of the coats, filling and weather window in the plan's
/// JSON.
void putWorks(Json& root, const works::Works& works);

/// What the records of a district say; null when there are none.
Json recordsJson(const works::Calibration& calibration);

}  // namespace core::exchange
