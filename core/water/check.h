#pragma once

#include "core/base/problem.h"
#include "core/project/water.h"

namespace core::water {

/// Problems across the fields of Water: crops that are not there, days that a month has not, rain without wet
/// days, minima above maxima, seasons of more than a year. Codes in core/base/problem.h.
Problems check(const Water& water);

/// Days of a month [1 to 12] in a year without a leap day.
int daysInMonth(int month);

}  // namespace core::water
