#include "core/works/network.h"
#include "tests/unit/works_support.h"

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::RestDay;
using core::works::Activity;
using core::works::ActivityTimes;
using core::works::Calendar;
using core::works::Clock;
using core::works::Instant;
using core::works::Link;
using core::works::LinkKind;
using core::works::solve;
using support::day;

constexpr int kDay = core::works::kQuarters;

struct Spans {
  std::vector<Instant> start, finish;
};

Spans earlySpans(const std::vector<ActivityTimes>& times) {
  Spans spans;
  for (const ActivityTimes& t : times) {
    spans.start.push_back(t.early_start);
    spans.finish.push_back(t.early_finish);
  }
  return spans;
}

Spans lateSpans(const std::vector<ActivityTimes>& times) {
  Spans spans;
  for (const ActivityTimes& t : times) {
    spans.start.push_back(t.late_start);
    spans.finish.push_back(t.late_finish);
  }
  return spans;
}

bool isKept(const Link& link, const Spans& spans, const Calendar& calendar) {
  const bool from_start = link.kind == LinkKind::start_start || link.kind == LinkKind::start_finish;
  const bool to_start = link.kind == LinkKind::start_start || link.kind == LinkKind::finish_start;
  const Instant from = from_start ? spans.start[link.from] : spans.finish[link.from];
  const Instant to = to_start ? spans.start[link.to] : spans.finish[link.to];
  return to >= calendar.moved(from, link.lag_quarters, link.lag_clock);
}

bool canStart(const Activity& a, Instant at, const Calendar& calendar) {
  if (a.starts_a_day && at != Calendar::startOf(Calendar::dayOf(at))) return false;
  return a.clock == Clock::calendar || calendar.isWorked(Calendar::dayOf(at));
}

/// The same spans with one activity put to another start.
Spans with(Spans spans, std::size_t k, Instant start, const Activity& a, const Calendar& calendar) {
  spans.start[k] = start;
  spans.finish[k] = calendar.moved(start, a.quarters, a.clock);
  return spans;
}

struct RandomNetwork {
  std::vector<Activity> activities;
  std::vector<Link> links;
};

RandomNetwork randomNetwork(std::mt19937& random) {
  const auto whole = [&](int least, int most) {
    return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
  };
  RandomNetwork network;
  for (int k = 0; k < 12; ++k) {
    Activity a{std::to_string(k),
               whole(0, 9),
               whole(0, 3) == 0 ? Clock::calendar : Clock::working,
               whole(0, 4) == 0,
               {}};
    if (whole(0, 5) == 0) a.not_before = core::works::addDays(day(2028, 2, 20), whole(0, 25));
    network.activities.push_back(a);
    for (int before = 0; before < k; ++before) {
      if (whole(0, 3) != 0) continue;
      network.links.push_back({static_cast<std::size_t>(before), static_cast<std::size_t>(k),
                               static_cast<LinkKind>(whole(0, 3)), whole(-3, 8),
                               whole(0, 2) == 0 ? Clock::calendar : Clock::working});
    }
  }
  return network;
}

}  // namespace

TEST_CASE("network: a circle and a link to nowhere are refused") {
  const Calendar calendar(RestDay::none, {});
  const std::vector<Activity> two{{"a"}, {"b"}};
  const auto circle = solve(two, {{0, 1}, {1, 0}}, calendar, day(2028, 1, 1));
  REQUIRE_FALSE(circle);
  CHECK(circle.error() == core::works::NetworkFault::cycle);
  const auto nowhere = solve(two, {{0, 2}}, calendar, day(2028, 1, 1));
  REQUIRE_FALSE(nowhere);
  CHECK(nowhere.error() == core::works::NetworkFault::bad_link);
  CHECK(solve(two, {}, calendar, day(2028, 1, 1)));
}

TEST_CASE("network: each kind of link, with and without lag") {
  // reckoned by hand; a of 4 days, b of 2; no rest day
  struct Row {
    LinkKind kind;
    int lag, b_start;
  };
  const Calendar calendar(RestDay::none, {});
  for (const Row& row : {Row{LinkKind::finish_start, 0, 4}, Row{LinkKind::finish_start, 3, 7},
                         Row{LinkKind::finish_start, -1, 3}, Row{LinkKind::start_start, 1, 1},
                         Row{LinkKind::finish_finish, 0, 2}, Row{LinkKind::finish_finish, 1, 3},
                         Row{LinkKind::start_finish, 5, 3}, Row{LinkKind::start_finish, 1, 0}}) {
    INFO(static_cast<int>(row.kind) << " " << row.lag);
    const auto times = solve({{"a", 4 * kDay}, {"b", 2 * kDay}}, {{0, 1, row.kind, row.lag * kDay}}, calendar,
                             day(2028, 1, 1));
    REQUIRE(times);
    CHECK((*times)[1].early_start - (*times)[0].early_start == row.b_start * kDay);
  }
}

TEST_CASE("network: lags on the calendar run through the rest day, on the working clock they do not") {
  // Thursday 30 December 2027, rest on Saturday: finished on Friday evening; one day later
  const Calendar calendar(RestDay::saturday, {});
  const auto startOfNext = [&](Clock clock, std::int64_t lag) {
    const auto times = solve({{"a", 2 * kDay}, {"b"}}, {{0, 1, LinkKind::finish_start, lag, clock}}, calendar,
                             day(2027, 12, 30));
    REQUIRE(times);
    return Calendar::dayOf((*times)[1].early_start);
  };
  CHECK(startOfNext(Clock::calendar, kDay) == day(2028, 1, 2));
  CHECK(startOfNext(Clock::working, kDay) == day(2028, 1, 3));
}

TEST_CASE("network: what starts a day waits for the next one; earliest starts are kept") {
  const Calendar calendar(RestDay::saturday, {});
  const auto times = solve({{"a", 1},
                            {"coat", kDay, Clock::working, true, {}},
                            {"late", 1, Clock::working, false, day(2028, 1, 8)}},
                           {{0, 1}}, calendar, day(2027, 12, 31));
  REQUIRE(times);
  CHECK((*times)[1].early_start == Calendar::startOf(day(2028, 1, 2)));  // Sunday after the rest day
  CHECK((*times)[2].early_start == Calendar::startOf(day(2028, 1, 9)));  // the 8th is a Saturday
  CHECK((*times)[2].is_critical);
  CHECK((*times)[1].total_float_quarters == 5 * kDay);  // Sunday to Friday the 7th
  CHECK((*times)[1].free_float_quarters == 5 * kDay);
}

TEST_CASE("network: early and late times keep all links and none could be better") {
  std::mt19937 random(5);
  const core::works::Day start = day(2028, 2, 20);  // leap day ahead
  for (int run = 0; run < 60; ++run) {
    const Calendar calendar(static_cast<RestDay>(run % 8),
                            {{day(2028, 2, 27), 3, ""}, {day(2028, 3, 9), 1, ""}});
    const RandomNetwork n = randomNetwork(random);
    const auto times = solve(n.activities, n.links, calendar, start);
    REQUIRE(times);
    const Spans early = earlySpans(*times), late = lateSpans(*times);
    const Instant end = *std::max_element(early.finish.begin(), early.finish.end());
    const auto keepsAll = [&](const Spans& spans) {
      return std::all_of(n.links.begin(), n.links.end(),
                         [&](const Link& link) { return isKept(link, spans, calendar); });
    };
    CHECK(keepsAll(early));
    CHECK(keepsAll(late));
    for (std::size_t k = 0; k < n.activities.size(); ++k) {
      const Activity& a = n.activities[k];
      INFO(run << ": " << k);
      CHECK(canStart(a, early.start[k], calendar));
      CHECK(canStart(a, late.start[k], calendar));
      CHECK(late.finish[k] <= end);
      CHECK(late.start[k] >= early.start[k]);
      // no earlier start would do
      Instant sooner = early.start[k] - 1;
      while (!canStart(a, sooner, calendar)) --sooner;
      const bool is_before_all =
          sooner < Calendar::startOf(start) || (a.not_before && sooner < Calendar::startOf(*a.not_before));
      CHECK((is_before_all || !keepsAll(with(early, k, sooner, a, calendar))));
      // no later start would do
      Instant later = late.start[k] + 1;
      while (!canStart(a, later, calendar)) ++later;
      const Spans put_off = with(late, k, later, a, calendar);
      CHECK((put_off.finish[k] > end || !keepsAll(put_off)));
      // free float: the early spans of all others bear it, and not a step more
      const auto slipped = [&](Instant at) { return with(early, k, at, a, calendar); };
      Instant last = early.start[k];
      for (Instant at = last; at <= end + kDay; ++at) {
        const bool fits = canStart(a, at, calendar) && slipped(at).finish[k] <= end && keepsAll(slipped(at));
        if (fits) last = at;
      }
      CHECK((*times)[k].free_float_quarters == calendar.between(early.start[k], last, a.clock));
      CHECK((*times)[k].total_float_quarters == calendar.between(early.start[k], late.start[k], a.clock));
      CHECK((*times)[k].free_float_quarters <= (*times)[k].total_float_quarters);
    }
  }
}
