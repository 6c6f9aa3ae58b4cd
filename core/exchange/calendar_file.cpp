#include "core/exchange/calendar_file.h"

#include "core/exchange/calendar_lines.h"
#include "core/works/calendar.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <iterator>
#include <vector>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;
using works::Day;

constexpr string_view kWetting = "wetting";
constexpr string_view kFillBy = "fill_by";
constexpr int kEveningBefore_h = 17 - 24;  // from the start of the event's first day
constexpr int kMorning_h = 6;
constexpr int kDay_h = 24;

/// One all-day event.
struct Event {
  std::string id;    ///< of its own within the plan
  std::string task;  ///< for the words
  Day first, last;
  std::vector<int> reminders_h;  ///< from 00:00 of the first day
};

std::string dateText(Day day) {
  return fmt::format("{:04}{:02}{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                     static_cast<unsigned>(day.day()));
}

/// FNV-1a with 64 bits: the same text gives the same number everywhere.
std::uint64_t hashOf(string_view text) {
  constexpr std::uint64_t kOffset = 14695981039346656037u, kPrime = 1099511628211u;
  std::uint64_t hash = kOffset;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * kPrime;
  return hash;
}

std::string uidOf(const Project& project, string_view event) {
  const auto known = [](const std::optional<double>& value) {
    return value ? fmt::format("{}", *value) : "";
  };
  const std::string whole =
      fmt::format("{}\n{}\n{}\n{}\n{}\n{}", project.title, project.place, project.prepared_by,
                  known(project.site.latitude_deg), known(project.site.elevation_m), event);
  return fmt::format("{:016x}-{}@tankwright", hashOf(whole), event);
}

bool isCure(const works::Task& task) {
  return task.id.starts_with("cure_");
}

std::vector<int> mornings(int days) {
  std::vector<int> hours(static_cast<std::size_t>(days), kMorning_h);
  for (std::size_t k = 1; k < hours.size(); ++k) hours[k] = hours[k - 1] + kDay_h;
  return hours;
}

std::vector<int> remindersOf(const works::Task& task) {
  if (task.id.starts_with("coat_") || task.id == kFillBy) return {kEveningBefore_h};
  if (isCure(task)) return mornings(works::daysBetween(task.start, task.finish) + 1);
  return {};
}

bool isWithinCure(const works::Works& works, Day day) {
  return std::any_of(works.schedule.begin(), works.schedule.end(), [&](const works::Task& task) {
    return isCure(task) && task.start <= day && day <= task.finish;
  });
}

/// Runs of days on which walls are wetted although no coat is being cured.
std::vector<Event> wettingEvents(const works::Works& works) {
  std::vector<Event> events;
  for (const works::DayLoad& day : works.days) {
    if (day.wetting_l <= 0 || isWithinCure(works, day.date)) continue;
    if (events.empty() || works::addDays(events.back().last, 1) != day.date) {
      const std::string id = fmt::format("{}_{}", kWetting, events.size() + 1);
      events.push_back({id, std::string(kWetting), day.date, day.date, {}});
    }
    events.back().last = day.date;
  }
  for (Event& event : events) event.reminders_h = mornings(works::daysBetween(event.first, event.last) + 1);
  return events;
}

std::vector<Event> eventsOf(const works::Works& works) {
  std::vector<Event> events;
  events.reserve(works.schedule.size());
  for (const works::Task& task : works.schedule)
    events.push_back({task.id, task.id, task.start, task.finish, remindersOf(task)});
  std::vector<Event> wetting = wettingEvents(works);
  std::move(wetting.begin(), wetting.end(), std::back_inserter(events));
  return events;
}

/// Duration as in "-PT7H" or "P2DT6H". @source rfc_5545, section 3.3.6
std::string durationText(int hours) {
  const int days = std::abs(hours) / kDay_h;
  const int rest = std::abs(hours) % kDay_h;
  return fmt::format("{}P{}{}", hours < 0 ? "-" : "", days > 0 ? fmt::format("{}D", days) : "",
                     rest > 0 || days == 0 ? fmt::format("T{}H", rest) : "");
}

class CalendarWriter {
public:
  CalendarWriter(const Project& project, const CalendarWords& words) : project_(project), words_(words) {}

  std::string write(const works::Works& works) {
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Tankwright//Works of a tank//EN");
    line("CALSCALE:GREGORIAN");
    stamp_ = words_.stamp.empty() ? dateText(works.schedule.front().start) + "T000000Z" : words_.stamp;
    for (const Event& event : eventsOf(works)) add(event);
    line("END:VCALENDAR");
    return std::move(text_);
  }

private:
  const Project& project_;
  const CalendarWords& words_;
  std::string text_, stamp_;

  void line(string_view content) { text_ += contentLine(content); }

  void text(string_view name, string_view value) {
    if (!value.empty()) line(fmt::format("{}:{}", name, escapedText(value)));
  }

  static std::string say(const std::function<std::string(string_view)>& words, const std::string& task) {
    return words ? words(task) : std::string();
  }

  std::string summaryOf(const std::string& task) const {
    std::string summary = say(words_.summary, task);
    return summary.empty() ? task : summary;
  }

  std::string reminderOf(const std::string& task) const {
    std::string reminder = say(words_.reminder, task);
    return reminder.empty() ? summaryOf(task) : reminder;
  }

  void add(const Event& event) {
    line("BEGIN:VEVENT");
    line("UID:" + uidOf(project_, event.id));
    line("DTSTAMP:" + stamp_);
    line(fmt::format("SEQUENCE:{}", words_.sequence));
    line("DTSTART;VALUE=DATE:" + dateText(event.first));
    line("DTEND;VALUE=DATE:" + dateText(works::addDays(event.last, 1)));  // the day after, section 3.6.1
    text("SUMMARY", summaryOf(event.task));
    text("DESCRIPTION", say(words_.description, event.task));
    text("LOCATION", project_.place);
    if (!event.reminders_h.empty()) addReminder(event.task, event.reminders_h);
    line("END:VEVENT");
  }

  /// One reminder that comes again every day: readers keep only a few of an event. @source rfc_5545, 3.8.6.2
  void addReminder(const std::string& task, const std::vector<int>& hours) {
    line("BEGIN:VALARM");
    line("ACTION:DISPLAY");
    line("TRIGGER:" + durationText(hours.front()));
    if (hours.size() > 1) {
      line(fmt::format("REPEAT:{}", hours.size() - 1));
      line("DURATION:P1D");
    }
    text("DESCRIPTION", reminderOf(task));
    line("END:VALARM");
  }
};

}  // namespace

std::string calendarText(const Project& project, const Plan& plan, const CalendarWords& words) {
  if (!plan.works || plan.works->schedule.empty()) return {};
  return CalendarWriter(project, words).write(*plan.works);
}

}  // namespace core::exchange
