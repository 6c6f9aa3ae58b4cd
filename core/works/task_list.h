#pragma once

#include "core/works/filling.h"
#include "core/works/labour.h"
#include "core/works/network.h"
#include "core/works/schedule.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::works {

/// What someone wishes for a task: of several the last one. Null when there is none.
const TaskWish* wishFor(const core::Works& works, std::string_view task);

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
/// - spoil is away before the first coat;
/// - a coat waits for the curing of the one before; curing starts the day after its coat, so a wish to start
/// it
///   later is not used;
/// - trap, overflow and fence are made one after the other from the day after the first coat; water is let in
///   when they stand;
/// - filling starts on the last day of curing or of the window, whichever comes first, and planting with it.
/// - a filling that cannot be reckoned stands with its first day, and one that does not get full has no leak
/// test;
/// - spoil is carried all the time that the pit is dug, by as few people as do it.
TaskList taskList(const LabourInput& input, const std::vector<Labour>& labour, const FillTime& fill);

}  // namespace core::works
