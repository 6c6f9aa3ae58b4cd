#pragma once

#include "core/project/project.h"

#include <chrono>
#include <cstdint>
#include <vector>

namespace core::works {

using Day = std::chrono::year_month_day;

Day addDays(Day day, int days);
/// Days from `from` to `to`; below 0 when `to` comes first.
int daysBetween(Day from, Day to);
bool isWorkingDay(Day day, RestDay rest);

/// An instant in quarters of a day since the start of 1970-01-01; a working day has four quarters.
using Instant = std::int64_t;
inline constexpr int kQuarters = 4;

/// Which days a task counts: curing and waiting go on through rest days.
enum class Clock { working, calendar };

/// Rest days and closed days. All days are worked when nothing else is (a calendar without a working day is
/// refused by the check of the works).
class Calendar {
public:
  Calendar(RestDay rest, std::vector<ClosedDays> closed);

  bool isWorked(Day day) const;
  /// Start of the day.
  static Instant startOf(Day day);
  static Day dayOf(Instant at);
  /// The first worked instant at or after `at` (any instant for the calendar clock).
  Instant onOrAfter(Instant at, Clock clock) const;
  /// The last instant at or before `at` at which work can have ended.
  Instant onOrBefore(Instant at, Clock clock) const;
  /// `at` moved on by `quarters` of the clock; back when below 0.
  Instant moved(Instant at, std::int64_t quarters, Clock clock) const;
  /// Quarters of the clock from one instant to a later one; below 0 when `to` comes first.
  std::int64_t between(Instant from, Instant to, Clock clock) const;

private:
  RestDay rest_;
  std::vector<ClosedDays> closed_;
};

}  // namespace core::works
