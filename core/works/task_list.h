#pragma once

#include "core/works/labour.h"
#include "core/works/network.h"
#include "core/works/schedule.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::works {

/// All tasks of the works with their crews and arrows, before there are dates.
struct TaskList {
  std::vector<Activity> activities;
  std::vector<Crew> crews;  ///< one for each activity
  std::vector<Link> links;
  std::vector<std::size_t> beside;  ///< trap, overflow, fence: done while coats cure
  std::vector<std::string> wishes_unused;

  std::optional<std::size_t> find(std::string_view id) const;
};

/// Tasks with their times.
struct Laid {
  TaskList tasks;
  std::vector<ActivityTimes> times;

  const ActivityTimes& at(std::string_view id) const { return times[tasks.find(id).value()]; }
};

/// Tasks for the lines of labour. Duration of working tasks: person-days over people, in quarters of a day
/// rounded up, at least one; a coat takes one whole day. In order of work, one after the other, but:
/// - spoil is carried while the pit is dug, and is away before the first coat;
/// - a coat waits for the curing of the one before; curing starts the day after its coat, so a wish to start
/// it
///   later is not used;
/// - trap, overflow and fence are made one after the other from the day after the first coat; water is let in
///   when they stand;
/// - filling starts on the last day of curing or of the window, whichever comes first, and planting with it.
/// @param fill_days until the tank is full; absent: not known, filling stands with its first day and there is
/// no leak test
TaskList taskList(const LabourInput& input, const std::vector<Labour>& labour, std::optional<int> fill_days);

}  // namespace core::works
