#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <chrono>
#include <iterator>
#include <vector>

namespace ui::words {
namespace {

using core::works::DayLoad;
using core::works::Task;
using core::works::Works;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString people(int count, const Formatter& format) {
  return format.quantity(count, core::Unit::person, 0);
}

QString personDays(double days, const Formatter& format) {
  return format.quantity(days, core::Unit::person_day, 1);
}

QString fromTo(const Works& works, const Formatter& format) {
  std::vector<Task> tasks;
  std::ranges::copy_if(works.schedule, std::back_inserter(tasks), core::works::isWork);
  if (tasks.empty()) return say(QT_TRANSLATE_NOOP("ui::words", "There is nothing to do yet."));
  const auto first = std::ranges::min(tasks, {}, &Task::start).start;
  const auto last = std::ranges::max(tasks, {}, &Task::finish).finish;
  const auto days = (std::chrono::sys_days(last) - std::chrono::sys_days(first)).count() + 1;
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The works begin on %1 and end on %2: %3 in all, days of rest and of wetting "
                               "counted."))
      .arg(format.date(first), format.date(last), format.quantity(double(days), core::Unit::day, 0));
}

QString planting(const Works& works, const Formatter& format) {
  const auto task = std::ranges::find(works.schedule, "planting", &Task::id);
  if (task == works.schedule.end()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "The beds are planted from %1 on."))
      .arg(format.date(task->start));
}

/// The days for which people have to be called together.
QString coatDays(const Works& works, const Formatter& format) {
  QStringList coats;
  for (const Task& task : works.schedule) {
    if (const int coat = numberIn(task.id, "coat_"))
      coats << say(QT_TRANSLATE_NOOP("ui::words", "coat %1 on %2"))
                   .arg(format.integer(coat), format.date(task.start));
  }
  if (coats.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Call people together for %1.")).arg(andList(coats));
}

QString fillBy(const Works& works, const Formatter& format) {
  const auto mark = std::ranges::find(works.schedule, "fill_by", &Task::id);
  if (mark == works.schedule.end()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Water must be let in by %1.")).arg(format.date(mark->start));
}

QString withoutRoom(const Works& works) {
  QStringList tasks;
  for (const Task& task : works.schedule) {
    if (task.is_critical && !task.is_mark) tasks << taskName(task.id);
  }
  if (tasks.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "A day lost on one of these moves the end, for they leave no room: %1."))
      .arg(tasks.join(say(QT_TRANSLATE_NOOP("ui::words", "; "))));
}

int hands(const DayLoad& day) {
  return day.labourers + day.masons;
}

QString mostPeople(const Works& works, const Formatter& format) {
  const auto day = std::ranges::max_element(works.days, {}, hands);
  if (day == works.days.end() || hands(*day) == 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Most people are needed on %1: %2, %3."))
      .arg(format.date(day->date), people(hands(*day), format), masonsAmong(day->masons, format));
}

QString work(const Works& works, const Formatter& format) {
  if (works.person_days <= 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "All tasks together take %1; %2 of it is masons' work."))
      .arg(personDays(works.person_days, format), personDays(works.mason_days, format));
}

/// Two rules of thumb, neither of them proved here.
QString digging(const Works& works, const Formatter& format) {
  if (!works.digging_days_by_norm || !works.digging_days_by_practice) return {};
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "For digging two rules of thumb are at hand: a published norm makes it %1, reports from "
                 "practice, without a source, %2. Ask people who have dug in this soil."))
      .arg(personDays(*works.digging_days_by_norm, format),
           personDays(*works.digging_days_by_practice, format));
}

QString wettingOnRestDays(const Works& works, const Formatter& format) {
  const auto count = std::ranges::count_if(works.days, [](const DayLoad& day) {
    return !day.is_worked && (day.wetters > 0 || day.wetting_l > 0);
  });
  if (count == 0) return {};
  return say(QT_TRANSLATE_NOOP(
                 "ui::words", "Sacks have to be wetted on days of rest too: %1. Agree beforehand who comes."))
      .arg(format.quantity(double(count), core::Unit::day, 0));
}

QString mostWetting(const Works& works, const Formatter& format) {
  const auto day = std::ranges::max_element(works.days, {}, &DayLoad::wetting_l);
  if (day == works.days.end() || day->wetting_l <= 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Wetting takes most water on %1: %2."))
      .arg(format.date(day->date), format.litres(day->wetting_l / 1000));
}

}  // namespace

QStringList datesAnswers(const Works& works, const Formatter& format) {
  QStringList answers{fromTo(works, format),  coatDays(works, format),          fillBy(works, format),
                      withoutRoom(works),     mostPeople(works, format),        work(works, format),
                      digging(works, format), wettingOnRestDays(works, format), mostWetting(works, format),
                      planting(works, format)};
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
