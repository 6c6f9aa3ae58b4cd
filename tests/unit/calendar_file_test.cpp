#include "core/exchange/calendar_file.h"

#include "core/exchange/calendar_lines.h"
#include "core/exchange/project_file.h"
#include "core/exchange/utf8.h"
#include "core/works/calendar.h"

#include <algorithm>
#include <array>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <libical/ical.h>

// Rules and examples: RFC 5545, Internet Calendaring and Scheduling, 2009. Read back by libical.

namespace {

using core::exchange::calendarText;
using core::exchange::CalendarWords;
using core::exchange::contentLine;
using core::exchange::escapedText;
using core::works::Day;
using std::string_view;

core::Project demo() {
  return core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/terrace.tankwright")->project;
}

core::Plan planOf(const core::Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return *plan;
}

CalendarWords words() {
  return {[](string_view task) { return "Do " + std::string(task); },
          [](string_view task) { return "How to do " + std::string(task) + "; with care,\nby hand"; },
          [](string_view task) { return "Think of " + std::string(task); }};
}

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::size_t from = 0;
  for (std::size_t end = text.find("\r\n"); end != std::string::npos; end = text.find("\r\n", from)) {
    lines.push_back(text.substr(from, end - from));
    from = end + 2;
  }
  REQUIRE(from == text.size());
  return lines;
}

/// RFC 5545, section 3.1: a break and the blank after it go.
std::string unfolded(std::string text) {
  for (std::size_t at = text.find("\r\n "); at != std::string::npos; at = text.find("\r\n ", at))
    text.erase(at, 3);
  return text;
}

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

Component parsed(const std::string& text) {
  return {icalparser_parse_string(text.c_str()), icalcomponent_free};
}

Day dayOf(const icaltimetype& time) {
  REQUIRE(time.is_date);
  return Day{std::chrono::year(time.year), std::chrono::month(static_cast<unsigned>(time.month)),
             std::chrono::day(static_cast<unsigned>(time.day))};
}

struct Event {
  Day first, end;
  std::string uid, summary, description;
  std::vector<int> triggers_s;
  std::set<std::string> reminders;
};

Event eventOf(icalcomponent* from) {
  Event event{dayOf(icalcomponent_get_dtstart(from)),
              dayOf(icalcomponent_get_dtend(from)),
              icalcomponent_get_uid(from),
              icalcomponent_get_summary(from),
              {},
              {},
              {}};
  if (const char* text = icalcomponent_get_description(from)) event.description = text;
  for (auto* alarm = icalcomponent_get_first_component(from, ICAL_VALARM_COMPONENT); alarm != nullptr;
       alarm = icalcomponent_get_next_component(from, ICAL_VALARM_COMPONENT)) {
    auto* action = icalcomponent_get_first_property(alarm, ICAL_ACTION_PROPERTY);
    CHECK(icalproperty_get_action(action) == ICAL_ACTION_DISPLAY);
    auto* trigger = icalcomponent_get_first_property(alarm, ICAL_TRIGGER_PROPERTY);
    const int first_s = icaldurationtype_as_int(icalproperty_get_trigger(trigger).duration);
    auto* repeat = icalcomponent_get_first_property(alarm, ICAL_REPEAT_PROPERTY);
    auto* every = icalcomponent_get_first_property(alarm, ICAL_DURATION_PROPERTY);
    REQUIRE((repeat != nullptr) == (every != nullptr));  // section 3.6.6: both or none
    const int more = repeat != nullptr ? icalproperty_get_repeat(repeat) : 0;
    const int step_s = every != nullptr ? icaldurationtype_as_int(icalproperty_get_duration(every)) : 0;
    for (int k = 0; k <= more; ++k) event.triggers_s.push_back(first_s + k * step_s);
    event.reminders.insert(icalcomponent_get_description(alarm));
  }
  return event;
}

/// Events by their summary; no two have the same one, or `Do wetting`.
std::multimap<std::string, Event> eventsOf(icalcomponent* calendar) {
  std::multimap<std::string, Event> events;
  for (auto* event = icalcomponent_get_first_component(calendar, ICAL_VEVENT_COMPONENT); event != nullptr;
       event = icalcomponent_get_next_component(calendar, ICAL_VEVENT_COMPONENT)) {
    const Event read = eventOf(event);
    events.emplace(read.summary, read);
  }
  return events;
}

const core::works::Task& taskOf(const core::Plan& plan, const char* id) {
  const core::works::Task* task = core::works::findTask(*plan.works, id);
  REQUIRE(task != nullptr);
  return *task;
}

constexpr int kHour_s = 3600;

}  // namespace

TEST_CASE("text is escaped as RFC 5545, section 3.3.11 has it") {
  // the example of section 3.3.11
  CHECK(escapedText("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.") ==
        "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
  CHECK(escapedText("a\\b;c,d") == "a\\\\b\\;c\\,d");
  CHECK(escapedText("10:30 \"noon\"") == "10:30 \"noon\"");  // a colon SHALL NOT be escaped
  CHECK(escapedText("a\r\nb\rc") == "a\\nb\\nc");
  CHECK(escapedText(string_view("a\x01\x7F\tb\0c", 7)) == "a  \tb c");  // no controls but the tab
}

TEST_CASE("long lines are folded as RFC 5545, section 3.1 has it") {
  const std::string full = "DESCRIPTION:" + std::string(63, 'x');  // 75 octets
  CHECK(contentLine(full) == full + "\r\n");
  CHECK(contentLine(full + "y") == full + "\r\n y\r\n");
  for (const char* character : {"x", "é", "क", "😀"}) {
    for (std::size_t before = 0; before < 4; ++before) {
      std::string line(before, '-');
      while (line.size() < 400) line += character;
      const std::string folded = contentLine(line);
      INFO(folded);
      CHECK(unfolded(folded) == line + "\r\n");
      const auto parts = linesOf(folded);
      for (std::size_t k = 0; k < parts.size(); ++k) {
        CHECK(parts[k].size() <= 75);
        if (k + 1 < parts.size()) CHECK(parts[k].size() >= 72);  // no break comes sooner than it must
        CHECK_FALSE(core::exchange::notUtf8At(parts[k]));
      }
    }
  }
}

TEST_CASE("the calendar has what RFC 5545, sections 3.4 and 3.6 ask for") {
  const core::Project project = demo();
  const std::string text = calendarText(project, planOf(project), words());
  const auto lines = linesOf(unfolded(text));
  REQUIRE(lines.size() > 10);
  CHECK(lines.front() == "BEGIN:VCALENDAR");
  CHECK(lines.back() == "END:VCALENDAR");
  std::map<std::string, int> count;
  for (const std::string& line : lines) ++count[line.substr(0, line.find_first_of(":;"))];
  CHECK(count["VERSION"] == 1);
  CHECK(count["PRODID"] == 1);
  const auto events = std::count(lines.begin(), lines.end(), "BEGIN:VEVENT");
  CHECK(events > 0);
  for (const char* once : {"UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY"}) CHECK(count[once] == events);
  CHECK(count["DURATION"] ==
        count["REPEAT"]);  // of reminders alone  // DTEND and DURATION exclude each other
  CHECK(text.find('\n') == text.find("\r\n") + 1);
  for (std::size_t k = 0; k < text.size(); ++k)
    if (text[k] == '\n') REQUIRE(text[k - 1] == '\r');
}

TEST_CASE("libical reads every task with its days, its words and no error") {
  core::Project project = demo();
  project.place = "Ridge; north, above \\ the spring";
  const core::Plan plan = planOf(project);
  const Component calendar = parsed(calendarText(project, plan, words()));
  REQUIRE(calendar != nullptr);
  CHECK(icalcomponent_isa(calendar.get()) == ICAL_VCALENDAR_COMPONENT);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  CHECK(icalrestriction_check(calendar.get()) != 0);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  const auto events = eventsOf(calendar.get());
  std::set<std::string> uids;
  for (const auto& [summary, event] : events) CHECK(uids.insert(event.uid).second);
  CHECK(events.size() == plan.works->schedule.size() + events.count("Do wetting"));
  for (const core::works::Task& task : plan.works->schedule) {
    INFO(task.id);
    REQUIRE(events.count("Do " + task.id) == 1);
    const Event& event = events.find("Do " + task.id)->second;
    CHECK(event.first == task.start);
    CHECK(core::works::addDays(event.end, -1) == task.finish);
    CHECK(event.description == "How to do " + task.id + "; with care,\nby hand");
  }
  auto* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
  CHECK(icalcomponent_get_location(event) == project.place);
}

TEST_CASE("the end of an all-day event is the day after its last one") {
  // RFC 5545, section 3.6.1: 28 June to 8 July 2007 inclusive has DTEND 9 July; here over a leap day and a
  // year's end as well
  core::Project project = demo();
  core::Plan plan = planOf(project);
  using namespace std::chrono;
  const std::vector<std::array<Day, 3>> cases{
      {Day{2007y / June / 28}, Day{2007y / July / 8}, Day{2007y / July / 9}},
      {Day{2028y / February / 27}, Day{2028y / February / 28}, Day{2028y / February / 29}},
      {Day{2027y / December / 31}, Day{2027y / December / 31}, Day{2028y / January / 1}}};
  for (const auto& [first, last, end] : cases) {
    plan.works->schedule.resize(1);
    plan.works->schedule[0].start = first;
    plan.works->schedule[0].finish = last;
    plan.works->days.clear();
    const Component calendar = parsed(calendarText(project, plan, words()));
    const auto events = eventsOf(calendar.get());
    REQUIRE(events.size() == 1);
    CHECK(events.begin()->second.first == first);
    CHECK(events.begin()->second.end == end);
  }
  plan.works->schedule[0].start = Day{2007y / June / 28};
  plan.works->schedule[0].finish = Day{2007y / July / 8};
  const std::string text = calendarText(project, plan, words());
  CHECK(text.find("DTSTART;VALUE=DATE:20070628\r\nDTEND;VALUE=DATE:20070709\r\n") != std::string::npos);
  CHECK(text.find("DTSTAMP:20070628T000000Z\r\n") != std::string::npos);
}

TEST_CASE("reminders come at 17:00 before a coat and before the last day to fill, at 6:00 to wet") {
  const core::Project project = demo();
  const core::Plan plan = planOf(project);
  const Component calendar = parsed(calendarText(project, plan, words()));
  const auto events = eventsOf(calendar.get());
  for (const char* id : {"coat_1", "coat_2", "fill_by"}) {
    INFO(id);
    const Event& event = events.find("Do " + std::string(id))->second;
    CHECK(event.triggers_s == std::vector<int>{-7 * kHour_s});
    CHECK(event.reminders == std::set<std::string>{"Think of " + std::string(id)});
  }
  for (const char* id : {"cure_1", "cure_2"}) {
    INFO(id);
    const core::works::Task& cure = taskOf(plan, id);
    const Event& event = events.find("Do " + std::string(id))->second;
    REQUIRE(event.triggers_s.size() ==
            static_cast<std::size_t>(core::works::daysBetween(cure.start, cure.finish) + 1));
    for (std::size_t k = 0; k < event.triggers_s.size(); ++k)
      CHECK(event.triggers_s[k] == (24 * static_cast<int>(k) + 6) * kHour_s);
  }
  CHECK(events.find("Do stone_bed")->second.triggers_s.empty());
}

TEST_CASE("every day on which sacks are wetted has a reminder in its morning, and no other day") {
  core::Project project = demo();
  project.works->fill_inflow_l_per_day = 3000;
  const core::Plan plan = planOf(project);
  const Component calendar = parsed(calendarText(project, plan, words()));
  std::set<Day> wetted, reminded;
  for (const core::works::DayLoad& day : plan.works->days)
    if (day.wetting_l > 0) wetted.insert(day.date);
  for (const core::works::Task& task : plan.works->schedule)
    for (Day day = task.start; task.id.starts_with("cure_") && day <= task.finish;
         day = core::works::addDays(day, 1))
      wetted.insert(day);
  for (const auto& [summary, event] : eventsOf(calendar.get())) {
    for (const int trigger : event.triggers_s) {
      if (trigger < 0) continue;
      CHECK(trigger % (24 * kHour_s) == 6 * kHour_s);
      CHECK(reminded.insert(core::works::addDays(event.first, trigger / (24 * kHour_s))).second);
    }
  }
  CHECK(wetted.size() > 7);
  CHECK(reminded == wetted);
}

TEST_CASE("an event keeps its UID from plan to plan and differs from project to project") {
  const auto uidsOf = [](const core::Project& project) {
    std::map<std::string, std::string> uids;
    const Component calendar = parsed(calendarText(project, planOf(project), words()));
    for (const auto& [summary, event] : eventsOf(calendar.get())) uids[summary] = event.uid;
    return uids;
  };
  core::Project project = demo();
  const auto first = uidsOf(project);
  project.works->start_date = core::works::addDays(project.works->start_date, 30);
  project.tank.depth_m += 0.1;
  const auto later = uidsOf(project);
  for (const char* task : {"Do excavate", "Do coat_1", "Do fill"}) CHECK(first.at(task) == later.at(task));
  project.title.back() = project.title.back() == 'x' ? 'y' : 'x';
  const auto other = uidsOf(project);
  for (const auto& [summary, uid] : later) CHECK(other.at(summary) != uid);
}

TEST_CASE("without words the ids stand in the calendar, without works there is none") {
  core::Project project = demo();
  const Component calendar = parsed(calendarText(project, planOf(project), {}));
  CHECK(eventsOf(calendar.get()).count("coat_1") == 1);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  project.works.reset();
  CHECK(calendarText(project, planOf(project), words()).empty());
}

TEST_CASE("words of any script and length come back as they were") {
  const core::Project project = demo();
  std::string said;
  for (int k = 0; k < 60; ++k) said += "पानी; भराई, ठीक \\ ";
  said += "end";
  const CalendarWords long_words{[&](string_view) { return said; }};
  const std::string text = calendarText(project, planOf(project), long_words);
  for (const std::string& line : linesOf(text)) {
    CHECK(line.size() <= 75);
    CHECK_FALSE(core::exchange::notUtf8At(line));
  }
  const Component calendar = parsed(text);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  for (const auto& [summary, event] : eventsOf(calendar.get())) CHECK(summary == said);
}
