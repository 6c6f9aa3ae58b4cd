#pragma once

#include "core/works/calendar.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace core::works {

/// One node of the network.
struct Activity {
  std::string id;
  std::int64_t quarters = kQuarters;  ///< duration on its clock; 0 for a mark
  Clock clock = Clock::working;
  bool starts_a_day = false;  ///< begins with the day: a coat
  std::optional<Day> not_before = {};
};

enum class LinkKind { finish_start, start_start, finish_finish, start_finish };

/// One arrow of the network; the lag may be below 0.
struct Link {
  std::size_t from, to;
  LinkKind kind = LinkKind::finish_start;
  std::int64_t lag_quarters = 0;
  Clock lag_clock = Clock::working;
};

struct ActivityTimes {
  Instant early_start, early_finish, late_start, late_finish;
  std::int64_t total_float_quarters;  ///< on the activity's clock, from early start to late start
  std::int64_t free_float_quarters;   ///< it may slip so far and no other is moved
  bool is_critical;                   ///< no float at all
};

enum class NetworkFault { cycle, bad_link };

/// Early and late times of all activities: the critical path method with lags of four kinds, working and
/// calendar days and earliest starts. Nothing starts before `start`; the late times are reckoned back from
/// the last early finish. Order of work: forward pass, backward pass (Kelley and Walker 1959).
tl::expected<std::vector<ActivityTimes>, NetworkFault> solve(const std::vector<Activity>& activities,
                                                             const std::vector<Link>& links,
                                                             const Calendar& calendar, Day start);

}  // namespace core::works
