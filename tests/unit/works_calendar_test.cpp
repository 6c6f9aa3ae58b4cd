#include "core/works/calendar.h"
#include "tests/unit/works_support.h"

#include <chrono>

#include <catch2/catch.hpp>

namespace {

using core::ClosedDays;
using core::RestDay;
using core::works::addDays;
using core::works::Calendar;
using core::works::Clock;
using core::works::Instant;
using support::day;

constexpr int kDay = core::works::kQuarters;

/// `day` itself when it is worked, else the next day that is.
core::works::Day onOrAfter(core::works::Day day, RestDay rest) {
  return Calendar::dayOf(Calendar(rest, {}).onOrAfter(Calendar::startOf(day), Clock::working));
}

/// Last of so many working days.
core::works::Day finishOf(core::works::Day start, int working_days, RestDay rest) {
  const Instant end = Calendar(rest, {}).moved(Calendar::startOf(start), working_days * kDay, Clock::working);
  return Calendar::dayOf(end - 1);
}

}  // namespace

TEST_CASE("calendar: weekdays, leap days and year ends") {
  // Gregorian calendar: 29 February 2028 is a Tuesday, 1 January 2028 a Saturday; 2100 is no leap year
  CHECK(addDays(day(2028, 2, 28), 1) == day(2028, 2, 29));
  CHECK(addDays(day(2100, 2, 28), 1) == day(2100, 3, 1));
  CHECK(addDays(day(2027, 12, 31), 1) == day(2028, 1, 1));
  CHECK(core::works::daysBetween(day(2028, 2, 28), day(2028, 3, 1)) == 2);
  CHECK(core::works::daysBetween(day(2100, 2, 28), day(2100, 3, 1)) == 1);
  CHECK(core::works::daysBetween(day(2028, 1, 1), day(2027, 1, 1)) == -365);
  CHECK_FALSE(core::works::isWorkingDay(day(2028, 2, 29), RestDay::tuesday));
  CHECK(core::works::isWorkingDay(day(2028, 2, 29), RestDay::saturday));
  CHECK_FALSE(core::works::isWorkingDay(day(2028, 1, 1), RestDay::saturday));
  CHECK(core::works::isWorkingDay(day(2028, 1, 1), RestDay::none));
  CHECK(onOrAfter(day(2028, 1, 1), RestDay::saturday) == day(2028, 1, 2));
}

TEST_CASE("calendar: working days skip the rest day, also across the year's end") {
  // Thursday 30 Dec 2027 + 3 working days, Saturday closed: Thu, Fri, Sun 2 Jan
  CHECK(finishOf(day(2027, 12, 30), 3, RestDay::saturday) == day(2028, 1, 2));
  CHECK(finishOf(day(2027, 12, 30), 3, RestDay::none) == day(2028, 1, 1));
  CHECK(finishOf(day(2028, 1, 1), 1, RestDay::saturday) == day(2028, 1, 2));
  // 60 working days of six in a week are ten weeks
  CHECK(finishOf(day(2027, 2, 14), 60, RestDay::saturday) == addDays(day(2027, 2, 14), 10 * 7 - 2));
}

TEST_CASE("calendar: instants count quarters of days since 1970, before it too") {
  CHECK(Calendar::startOf(day(1970, 1, 1)) == 0);
  CHECK(Calendar::startOf(day(1970, 1, 2)) == kDay);
  CHECK(Calendar::startOf(day(1969, 12, 31)) == -kDay);
  for (const Instant quarter : {-5, -4, -3, -1}) {
    INFO(quarter);
    CHECK(Calendar::dayOf(quarter) == (quarter < -kDay ? day(1969, 12, 30) : day(1969, 12, 31)));
  }
  CHECK(Calendar::dayOf(Calendar::startOf(day(2028, 2, 29)) + 3) == day(2028, 2, 29));
}

TEST_CASE("calendar: closed days count from their first day and cover leap day and year's end") {
  const Calendar feast(RestDay::none, {{day(2028, 2, 28), 3, ""}, {day(2027, 12, 31), 2, ""}});
  CHECK(feast.isWorked(day(2028, 2, 27)));
  for (const auto closed :
       {day(2028, 2, 28), day(2028, 2, 29), day(2028, 3, 1), day(2027, 12, 31), day(2028, 1, 1)})
    CHECK_FALSE(feast.isWorked(closed));
  CHECK(feast.isWorked(day(2028, 3, 2)));
  CHECK(feast.isWorked(day(2028, 1, 2)));
}

TEST_CASE("calendar: work goes over rest and closed days, waiting does not") {
  // Friday 31 December 2027, rest on Saturday, closed Sunday and Monday: work goes on on Tuesday the 4th
  const Calendar calendar(RestDay::saturday, {{day(2028, 1, 2), 2, ""}});
  const Instant friday = Calendar::startOf(day(2027, 12, 31));
  const Instant tuesday = Calendar::startOf(day(2028, 1, 4));
  CHECK(calendar.onOrAfter(friday + kDay, Clock::working) == tuesday);
  CHECK(calendar.onOrAfter(friday + kDay, Clock::calendar) == friday + kDay);
  CHECK(calendar.onOrBefore(tuesday, Clock::working) == friday + kDay);
  CHECK(calendar.onOrBefore(tuesday + 1, Clock::working) == tuesday + 1);
  // one day of work ends on Friday evening, not on Tuesday morning
  CHECK(calendar.moved(friday, kDay, Clock::working) == friday + kDay);
  CHECK(calendar.moved(friday, kDay + 1, Clock::working) == tuesday + 1);
  CHECK(calendar.moved(friday, kDay + 1, Clock::calendar) == friday + kDay + 1);
  CHECK(calendar.moved(friday + kDay, 2, Clock::working) == tuesday + 2);
  // back: a day of work that ends when Tuesday begins is Friday's
  CHECK(calendar.moved(tuesday, -kDay, Clock::working) == friday);
  CHECK(calendar.moved(tuesday + 1, -2, Clock::working) == friday + 3);
  CHECK(calendar.between(friday, tuesday, Clock::working) == kDay);
  CHECK(calendar.between(friday, tuesday, Clock::calendar) == 4 * kDay);
  CHECK(calendar.between(tuesday + 1, friday + 1, Clock::working) == -kDay);
}

TEST_CASE("calendar: moving on and counting undo each other") {
  const Calendar calendar(RestDay::tuesday, {{day(2028, 2, 26), 5, ""}, {day(2028, 3, 10), 1, ""}});
  const Instant first = Calendar::startOf(day(2028, 2, 20));
  for (Instant at = first; at < first + 30 * kDay; ++at) {
    for (const int quarters : {1, 3, 4, 9, 40}) {
      const Instant on = calendar.moved(at, quarters, Clock::working);
      CHECK(calendar.between(at, on, Clock::working) == quarters);
      CHECK(calendar.between(at, on - 1, Clock::working) == quarters - 1);  // none earlier would do
      const Instant back = calendar.moved(at, -quarters, Clock::working);
      CHECK(calendar.between(back, at, Clock::working) == quarters);
      CHECK(calendar.between(back + 1, at, Clock::working) == quarters - 1);  // none later would do
    }
  }
}
