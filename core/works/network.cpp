#include "core/works/network.h"

#include <algorithm>

namespace core::works {
namespace {

struct Span {
  Instant start, finish;
};

bool leavesFromStart(LinkKind kind) {
  return kind == LinkKind::start_start || kind == LinkKind::start_finish;
}

bool arrivesAtStart(LinkKind kind) {
  return kind == LinkKind::finish_start || kind == LinkKind::start_start;
}

/// The two passes over one network. Starts and finishes are those of work: a start lies on a day that counts,
/// a finish at the end of one.
class Passes {
public:
  Passes(const std::vector<Activity>& activities, const std::vector<Link>& links, const Calendar& calendar)
      : activities_(activities), links_(links), calendar_(calendar), out_(activities.size()) {
    for (const Link& link : links) out_[link.from].push_back(&link);
  }

  /// False when the arrows go round in a circle.
  bool sort() {
    std::vector<std::size_t> waits(activities_.size(), 0);
    for (const Link& link : links_) ++waits[link.to];
    for (std::size_t k = 0; k < waits.size(); ++k) {
      if (waits[k] == 0) order_.push_back(k);
    }
    for (std::size_t done = 0; done < order_.size(); ++done) {
      for (const Link* link : out_[order_[done]]) {
        if (--waits[link->to] == 0) order_.push_back(link->to);
      }
    }
    return order_.size() == activities_.size();
  }

  std::vector<Span> forward(Instant begin) const {
    std::vector<Span> early(activities_.size());
    for (std::size_t k = 0; k < early.size(); ++k) {
      const std::optional<Day>& wished = activities_[k].not_before;
      early[k].start = wished ? std::max(begin, Calendar::startOf(*wished)) : begin;
    }
    for (const std::size_t from : order_) {
      early[from] = spanFrom(activities_[from], aligned(activities_[from], early[from].start));
      for (const Link* link : out_[from]) {
        Instant& start = early[link->to].start;
        start = std::max(start, earliestStart(*link, early[from]));
      }
    }
    return early;
  }

  std::vector<Span> backward(Instant end) const {
    std::vector<Span> late(activities_.size());
    for (auto from = order_.rbegin(); from != order_.rend(); ++from)
      late[*from] = spanFrom(activities_[*from], latestStart(*from, late, end));
    return late;
  }

  /// Latest start of an activity that moves none of the spans that follow, and ends by `end`.
  Instant latestStart(std::size_t from, const std::vector<Span>& spans, Instant end) const {
    const Activity& a = activities_[from];
    Instant start = latestStartToFinishBy(a, end);
    for (const Link* link : out_[from]) {
      const Span& to = spans[link->to];
      const Instant by = latestToLeave(*link, arrivesAtStart(link->kind) ? to.start : to.finish);
      start =
          std::min(start, leavesFromStart(link->kind) ? alignedBack(a, by) : latestStartToFinishBy(a, by));
    }
    return start;
  }

private:
  const std::vector<Activity>& activities_;
  const std::vector<Link>& links_;
  const Calendar& calendar_;
  std::vector<std::vector<const Link*>> out_;
  std::vector<std::size_t> order_;

  Span spanFrom(const Activity& a, Instant start) const {
    return {start, calendar_.moved(start, a.quarters, a.clock)};
  }

  /// First instant at or after `at` at which the activity can start.
  Instant aligned(const Activity& a, Instant at) const {
    const Instant day = Calendar::startOf(Calendar::dayOf(at));
    if (a.starts_a_day && at != day) at = day + kQuarters;
    return calendar_.onOrAfter(at, a.clock);
  }

  Instant alignedBack(const Activity& a, Instant at) const {
    while (aligned(a, at) != at) --at;
    return at;
  }

  Instant latestStartToFinishBy(const Activity& a, Instant by) const {
    return alignedBack(a, calendar_.moved(by, -a.quarters, a.clock));
  }

  Instant earliestStart(const Link& link, const Span& from) const {
    const Instant leaves = leavesFromStart(link.kind) ? from.start : from.finish;
    const Instant arrives = calendar_.moved(leaves, link.lag_quarters, link.lag_clock);
    return arrivesAtStart(link.kind) ? arrives : earliestStartToFinishFrom(activities_[link.to], arrives);
  }

  Instant earliestStartToFinishFrom(const Activity& a, Instant finish) const {
    Instant start = aligned(a, calendar_.moved(finish, -a.quarters, a.clock));
    while (spanFrom(a, start).finish < finish) start = aligned(a, start + 1);
    return start;
  }

  /// Latest instant from which the lag ends by `by`.
  Instant latestToLeave(const Link& link, Instant by) const {
    Instant at = calendar_.moved(by, -link.lag_quarters, link.lag_clock);
    if (link.lag_quarters < 0) at = calendar_.onOrAfter(at, link.lag_clock);
    while (calendar_.moved(at, link.lag_quarters, link.lag_clock) > by) --at;
    return at;
  }
};

}  // namespace

tl::expected<std::vector<ActivityTimes>, NetworkFault> solve(const std::vector<Activity>& activities,
                                                             const std::vector<Link>& links,
                                                             const Calendar& calendar, Day start) {
  const auto isBad = [&](const Link& link) {
    return link.from >= activities.size() || link.to >= activities.size();
  };
  if (std::any_of(links.begin(), links.end(), isBad)) return tl::make_unexpected(NetworkFault::bad_link);
  Passes passes(activities, links, calendar);
  if (!passes.sort()) return tl::make_unexpected(NetworkFault::cycle);
  const std::vector<Span> early = passes.forward(Calendar::startOf(start));
  Instant end = Calendar::startOf(start);
  for (const Span& span : early) end = std::max(end, span.finish);
  const std::vector<Span> late = passes.backward(end);

  std::vector<ActivityTimes> times;
  times.reserve(activities.size());
  for (std::size_t k = 0; k < activities.size(); ++k) {
    const Clock clock = activities[k].clock;
    const std::int64_t total = calendar.between(early[k].start, late[k].start, clock);
    const std::int64_t free = calendar.between(early[k].start, passes.latestStart(k, early, end), clock);
    times.push_back(
        {early[k].start, early[k].finish, late[k].start, late[k].finish, total, free, total == 0});
  }
  return times;
}

}  // namespace core::works
