#pragma once

#include "core/plan.h"
#include "core/project/project.h"

#include <functional>
#include <string>
#include <string_view>

namespace core::exchange {

/// Words of a calendar for the id of a task, in UTF-8. Besides the tasks of the schedule there is "wetting":
/// walls kept wet outside the curing of a coat. An empty function, or an empty text, leaves the entry out; a
/// summary that is missing is the id, a reminder that is missing the summary.
struct CalendarWords {
  std::function<std::string(std::string_view task)> summary;
  std::function<std::string(std::string_view task)> description = {};
  std::function<std::string(std::string_view task)> reminder = {};
  /// When the file is made, "20261014T064500Z", for core has no clock; empty: the first day of the works.
  std::string stamp = {};
  /// Higher in a later file, so that it takes the place of an earlier one.
  int sequence = 0;
};

/// The works as iCalendar. One all-day event a task, first to last day, and one for each run of days on which
/// walls are kept wet outside the curing of a coat. Reminders: at 17:00 on the day before a coat and before
/// the last day to begin filling; at 06:00 on each day of wetting, in the zone of whoever reads it. An event
/// keeps its UID as long as title, place, who made the plan, latitude, elevation and task stay; two projects
/// that have all of them alike take each other's place. Reminders of many days are one that repeats. Empty
/// without works.
/// @source rfc_5545
std::string calendarText(const Project& project, const Plan& plan, const CalendarWords& words);

}  // namespace core::exchange
