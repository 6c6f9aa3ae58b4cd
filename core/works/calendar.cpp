#include "core/works/calendar.h"

#include <algorithm>
#include <utility>

namespace core::works {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::weekday;

Day addDays(Day day, int count) {
  return Day(sys_days(day) + days(count));
}

int daysBetween(Day from, Day to) {
  return static_cast<int>((sys_days(to) - sys_days(from)).count());
}

bool isWorkingDay(Day day, RestDay rest) {
  // RestDay counts from Monday = 1 as ISO 8601 does
  return rest == RestDay::none || weekday(sys_days(day)).iso_encoding() != static_cast<unsigned>(rest);
}

Calendar::Calendar(RestDay rest, std::vector<ClosedDays> closed) : rest_(rest), closed_(std::move(closed)) {}

bool Calendar::isWorked(Day day) const {
  const auto covers = [day](const ClosedDays& span) {
    const int passed = daysBetween(span.from, day);
    return passed >= 0 && passed < span.days;
  };
  return isWorkingDay(day, rest_) && std::none_of(closed_.begin(), closed_.end(), covers);
}

Instant Calendar::startOf(Day day) {
  return Instant{sys_days(day).time_since_epoch().count()} * kQuarters;
}

Day Calendar::dayOf(Instant at) {
  const Instant day = at >= 0 ? at / kQuarters : -((kQuarters - 1 - at) / kQuarters);
  return Day(sys_days(days(day)));
}

Instant Calendar::onOrAfter(Instant at, Clock clock) const {
  if (clock == Clock::calendar) return at;
  while (!isWorked(dayOf(at))) at = startOf(dayOf(at)) + kQuarters;
  return at;
}

Instant Calendar::onOrBefore(Instant at, Clock clock) const {
  if (clock == Clock::calendar) return at;
  while (!isWorked(dayOf(at - 1))) at = startOf(dayOf(at - 1));
  return at;
}

Instant Calendar::moved(Instant at, std::int64_t quarters, Clock clock) const {
  if (clock == Clock::calendar) return at + quarters;
  while (quarters > 0) {
    at = onOrAfter(at, clock);
    const Instant step = std::min<Instant>(quarters, startOf(dayOf(at)) + kQuarters - at);
    at += step;
    quarters -= step;
  }
  while (quarters < 0) {
    at = onOrBefore(at, clock);
    const Instant step = std::min<Instant>(-quarters, at - startOf(dayOf(at - 1)));
    at -= step;
    quarters += step;
  }
  return at;
}

std::int64_t Calendar::between(Instant from, Instant to, Clock clock) const {
  if (clock == Clock::calendar) return to - from;
  if (to < from) return -between(to, from, clock);
  std::int64_t quarters = 0;
  while (from < to) {
    const Instant next = std::min(to, startOf(dayOf(from)) + kQuarters);
    if (isWorked(dayOf(from))) quarters += next - from;
    from = next;
  }
  return quarters;
}

}  // namespace core::works
