#pragma once

#include "core/cost/cost_plan.h"

#include <vector>

namespace core::cost {

/// Cash of the bill by the day on which it is needed, without the contingency, which has no day. Goods and
/// their carriage: when the first task that uses them starts; own items: on the first day. Wages: person-days
/// of each task spread evenly over the days on which it is done; what belongs to no task stands on the first
/// day.
std::vector<DayMoney> moneyDays(const Bill& bill, const works::Works& works);

}  // namespace core::cost
