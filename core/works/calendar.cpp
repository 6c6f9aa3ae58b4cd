#include "core/works/calendar.h"

namespace core::works {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::weekday;

Day addDays(Day day, int count) {
  return Day(sys_days(day) + days(count));
}

bool isWorkingDay(Day day, RestDay rest) {
  // RestDay counts from Monday = 1 as ISO 8601 does
  return rest == RestDay::none || weekday(sys_days(day)).iso_encoding() != static_cast<unsigned>(rest);
}

Day onOrAfter(Day day, RestDay rest) {
  while (!isWorkingDay(day, rest)) day = addDays(day, 1);
  return day;
}

Day finishOf(Day start, int working_days, RestDay rest) {
  Day day = onOrAfter(start, rest);
  for (int k = 1; k < working_days; ++k) day = onOrAfter(addDays(day, 1), rest);
  return day;
}

}  // namespace core::works
