#pragma once

#include "core/project/project.h"

#include <chrono>

namespace core::works {

using Day = std::chrono::year_month_day;

Day addDays(Day day, int days);
bool isWorkingDay(Day day, RestDay rest);
/// `day` itself when it is worked, else the next day that is.
Day onOrAfter(Day day, RestDay rest);
/// Last day of `working_days` (at least 1) counted from a working day on.
Day finishOf(Day start, int working_days, RestDay rest);

}  // namespace core::works
