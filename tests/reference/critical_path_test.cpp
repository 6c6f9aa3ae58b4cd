// The critical path method against printed networks.
#include "core/works/network.h"

#include <map>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::works::Activity;
using core::works::ActivityTimes;
using core::works::Calendar;
using core::works::Clock;
using core::works::Link;
using core::works::LinkKind;

constexpr int kUnit = core::works::kQuarters;  // a unit of the book stands as one day

/// One activity and what goes before it; "X" finish to start, "X SS" start to start.
struct Row {
  std::string id;
  int duration;
  std::vector<std::string> before;
};

std::map<std::string, ActivityTimes> solved(const std::vector<Row>& rows) {
  std::map<std::string, std::size_t> at;
  std::vector<Activity> activities;
  std::vector<Link> links;
  for (const Row& row : rows) {
    at[row.id] = activities.size();
    activities.push_back({row.id, row.duration * kUnit});
    for (const std::string& before : row.before) {
      const std::string id = before.substr(0, before.find(' '));
      links.push_back(
          {at.at(id), at.at(row.id), id == before ? LinkKind::finish_start : LinkKind::start_start});
    }
  }
  const core::works::Day start{std::chrono::year(1970), std::chrono::January, std::chrono::day(1)};
  const auto times = core::works::solve(activities, links, Calendar(core::RestDay::none, {}), start);
  REQUIRE(times);
  std::map<std::string, ActivityTimes> by_id;
  for (std::size_t k = 0; k < rows.size(); ++k) by_id.emplace(rows[k].id, (*times)[k]);
  return by_id;
}

/// Early start and finish, late start and finish, slack.
struct Printed {
  std::string id;
  int es, ef, ls, lf, slack;
};

void compare(const std::map<std::string, ActivityTimes>& times, const std::vector<Printed>& printed) {
  for (const Printed& p : printed) {
    INFO(p.id);
    const ActivityTimes& t = times.at(p.id);
    CHECK(t.early_start == p.es * kUnit);
    CHECK(t.early_finish == p.ef * kUnit);
    CHECK(t.late_start == p.ls * kUnit);
    CHECK(t.late_finish == p.lf * kUnit);
    CHECK(t.total_float_quarters == p.slack * kUnit);
    CHECK(t.is_critical == (p.slack == 0));
  }
}

}  // namespace

TEST_CASE("Taylor, Introduction to Management Science, solutions to chapter 8: seven activities") {
  // activities by their events; times and slack as printed
  const auto times = solved({{"1-2", 7, {}},
                             {"1-3", 10, {}},
                             {"2-4", 6, {"1-2"}},
                             {"3-4", 5, {"1-3"}},
                             {"3-5", 4, {"1-3"}},
                             {"4-5", 3, {"2-4", "3-4"}},
                             {"5-6", 2, {"3-5", "4-5"}}});
  compare(times, {{"1-2", 0, 7, 2, 9, 2},
                  {"1-3", 0, 10, 0, 10, 0},
                  {"2-4", 7, 13, 9, 15, 2},
                  {"3-4", 10, 15, 10, 15, 0},
                  {"3-5", 10, 14, 14, 18, 4},
                  {"4-5", 15, 18, 15, 18, 0},
                  {"5-6", 18, 20, 18, 20, 0}});
}

TEST_CASE("Taylor, Introduction to Management Science, solutions to chapter 8: a dummy of no duration") {
  // activities by their events; times and slack as printed; 4-5 is the dummy
  const auto times = solved({{"1-2", 8, {}},
                             {"1-3", 10, {}},
                             {"1-4", 9, {}},
                             {"2-5", 6, {"1-2"}},
                             {"2-6", 4, {"1-2"}},
                             {"3-5", 5, {"1-3"}},
                             {"4-5", 0, {"1-4"}},
                             {"4-7", 7, {"1-4"}},
                             {"5-7", 12, {"2-5", "3-5", "4-5"}},
                             {"5-8", 15, {"2-5", "3-5", "4-5"}},
                             {"6-9", 18, {"2-6"}},
                             {"7-8", 4, {"4-7", "5-7"}},
                             {"8-9", 7, {"5-8", "7-8"}}});
  compare(times, {{"1-2", 0, 8, 1, 9, 1},
                  {"1-3", 0, 10, 0, 10, 0},
                  {"1-4", 0, 9, 6, 15, 6},
                  {"2-5", 8, 14, 9, 15, 1},
                  {"2-6", 8, 12, 16, 20, 8},
                  {"3-5", 10, 15, 10, 15, 0},
                  {"4-5", 9, 9, 15, 15, 6},
                  {"4-7", 9, 16, 20, 27, 11},
                  {"5-7", 15, 27, 15, 27, 0},
                  {"5-8", 15, 30, 16, 31, 1},
                  {"6-9", 12, 30, 20, 38, 8},
                  {"7-8", 27, 31, 27, 31, 0},
                  {"8-9", 31, 38, 31, 38, 0}});
}

TEST_CASE("Hillier and Lieberman, Introduction to Operations Research: building a plant takes 44 weeks") {
  // durations as reprinted in exercises after the book (that of H, the order, length, path and slacks: from
  // memory)
  const auto times = solved({{"A", 2, {}},
                             {"B", 4, {"A"}},
                             {"C", 10, {"B"}},
                             {"D", 6, {"C"}},
                             {"E", 4, {"C"}},
                             {"F", 5, {"E"}},
                             {"G", 7, {"D"}},
                             {"H", 9, {"E", "G"}},
                             {"I", 7, {"C"}},
                             {"J", 8, {"F", "I"}},
                             {"K", 4, {"J"}},
                             {"L", 5, {"J"}},
                             {"M", 2, {"H"}},
                             {"N", 6, {"K", "L"}}});
  CHECK(times.at("N").early_finish == 44 * kUnit);
  std::string critical;
  for (const auto& [id, t] : times) critical += t.is_critical ? id : "";
  CHECK(critical == "ABCEFJLN");
  for (const auto& [id, slack] :
       std::map<std::string, int>{{"D", 4}, {"G", 4}, {"H", 4}, {"I", 2}, {"K", 1}, {"M", 4}}) {
    INFO(id);
    CHECK(times.at(id).total_float_quarters == slack * kUnit);
  }
}

TEST_CASE("a precedence diagram with starts tied to starts") {
  // activities, durations and relations of a published lecture, Network Construction - Precedence Diagram
  // Method; it shows its times in figures only, so those here are reckoned by hand
  const auto times = solved({{"A", 2, {}},
                             {"B", 10, {"A SS"}},
                             {"C", 13, {"A"}},
                             {"D", 12, {"A"}},
                             {"E", 12, {"B"}},
                             {"F", 7, {"B"}},
                             {"G", 10, {"D"}},
                             {"H", 16, {"D"}},
                             {"I", 6, {"F"}},
                             {"J", 12, {"C", "G SS"}},
                             {"K", 5, {"I SS"}},
                             {"L", 8, {"E", "I", "K"}},
                             {"M", 5, {"H"}},
                             {"N", 3, {"G", "J", "L", "M"}}});
  compare(times, {{"A", 0, 2, 0, 2, 0},
                  {"B", 0, 10, 4, 14, 4},
                  {"C", 2, 15, 10, 23, 8},
                  {"D", 2, 14, 2, 14, 0},
                  {"E", 10, 22, 15, 27, 5},
                  {"F", 10, 17, 14, 21, 4},
                  {"G", 14, 24, 23, 33, 9},
                  {"H", 14, 30, 14, 30, 0},
                  {"I", 17, 23, 21, 27, 4},
                  {"J", 15, 27, 23, 35, 8},
                  {"K", 17, 22, 22, 27, 5},
                  {"L", 23, 31, 27, 35, 4},
                  {"M", 30, 35, 30, 35, 0},
                  {"N", 35, 38, 35, 38, 0}});
}
