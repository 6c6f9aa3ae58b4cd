#include "core/works/schedule.h"
#include "ui/handouts/calendar_bars.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::works::Task;
using core::works::Works;

constexpr double kBarRow_mm = 7;

QString startText(const Task& task, const Formatter& format) {
  const QString day = format.date(task.start);
  if (task.start_in_day <= 0) return day;
  if (task.start_in_day < 0.5) return Text::tr("%1, after a quarter of the day").arg(day);
  return task.start_in_day > 0.5 ? Text::tr("%1, for the last quarter of the day").arg(day)
                                 : Text::tr("%1, at midday").arg(day);
}

QString when(const Task& task, const Formatter& format) {
  if (task.is_mark) return format.date(task.finish);
  if (task.start == task.finish) return startText(task, format);
  return Text::tr("%1 to %2").arg(startText(task, format), format.date(task.finish));
}

QString people(const Task& task, const Formatter& format) {
  const auto count = [&](int number) { return format.quantity(number, core::Unit::person, 0); };
  const core::works::Crew& crew = task.by_skill;
  if (task.crew == 0 && crew.wetters == 0) return {};
  if (task.crew == 0)
    return (isWetting(task) ? Text::tr("%1 for wetting") : Text::tr("%1 to watch")).arg(count(crew.wetters));
  if (crew.masons == 0) return count(task.crew);
  return Text::tr("%1, masons among them: %2").arg(count(task.crew), format.integer(crew.masons));
}

QString howLong(const Task& task, const Formatter& format) {
  const QString days = words::dayCount(task.work_days, format);
  return task.clock == core::works::Clock::calendar ? Text::tr("%1, rest days too").arg(days) : days;
}

QString room(const Task& task, const Formatter& format) {
  return task.is_critical ? Text::tr("no room to slip")
                          : Text::tr("may slip %1").arg(words::dayCount(task.float_days, format));
}

QString detail(const Task& task, const Formatter& format) {
  if (task.is_mark) return when(task, format);
  QStringList parts{when(task, format), howLong(task, format)};
  if (const QString who = people(task, format); !who.isEmpty()) parts << who;
  parts << room(task, format);
  return parts.join(QStringLiteral("; "));
}

void addTask(Sheet& sheet, const Task& task, const BarSpan& span, const Formatter& format) {
  const double width = sheet.width();
  const QString name = elided(words::taskName(task.id), kStrong, width - kCriticalSign_mm);
  const QStringList second = wrapped(detail(task, format), kBody, width);
  const double text = lineHeight_mm(kStrong) + static_cast<double>(second.size()) * lineHeight_mm(kBody);
  sheet.add({text + kBarRow_mm, [=](QPainter& painter, QPointF at) {
               const double left = task.is_critical ? kCriticalSign_mm : 0;
               if (task.is_critical) paintCriticalSign(painter, at);
               drawLines(painter, at + QPointF(left, 0), {name}, kStrong);
               drawLines(painter, at + QPointF(0, lineHeight_mm(kStrong)), second, kBody);
               paintBar(painter, task, span, {at + QPointF(0.2, text + 0.8), QSizeF(width - 0.4, 3.5)});
               painter.setPen(line(0.35));
               painter.drawLine(at + QPointF(0, text + 5.2), at + QPointF(width, text + 5.2));
             }});
}

void addLegend(Sheet& sheet, bool runs_on) {
  QString text = Text::tr(
      "Solid bar: work. Hatched bar: keep wet, rest days too. Open bar: the tank fills or is watched. "
      "Triangle "
      "alone: last day.");
  if (runs_on) text += QLatin1Char(' ') + Text::tr("Arrow at the right: later than these bars reach.");
  sheet.paragraph(text);
  sheet.add({lineHeight_mm(kBody) + 2, [width = sheet.width()](QPainter& painter, QPointF at) {
               paintCriticalSign(painter, at);
               const QString words = Text::tr("No room to slip: when this is late, the end is late.");
               drawLines(painter, at + QPointF(kCriticalSign_mm, 0),
                         {elided(words, kStrong, width - kCriticalSign_mm)}, kStrong);
             }});
}

void addLabour(Sheet& sheet, const Content& content) {
  const Works& works = *content.plan.works;
  const auto& format = content.format;
  sheet.heading(Text::tr("Work for each task"));
  const auto days = [&](double value) { return format.quantity(value, core::Unit::person_day, 1); };
  std::vector<std::vector<Cell>> rows;
  for (const auto& labour : works.labour) {
    rows.push_back({words::taskName(labour.task), words::workAmount(labour.quantity, labour.unit, format),
                    words::skillName(labour.skill), days(labour.days)});
  }
  rows.push_back({Text::tr("Together"), QString(), QString(), days(works.person_days)});
  for (Cell& cell : rows.back()) cell.strong = true;
  sheet.table({{Text::tr("Task"), 0.36},
               {Text::tr("Amount"), 0.17, CellAlign::right},
               {Text::tr("Who"), 0.22},
               {Text::tr("Work"), 0.25, CellAlign::right}},
              rows);
}

}  // namespace

void buildWorkCalendar(Sheet& sheet, const Content& content) {
  const auto& tasks = content.plan.works->schedule;
  if (tasks.empty()) return;
  const BarSpan span = barSpan(tasks);
  addLegend(sheet, span.runs_on);
  sheet.space(1);
  for (const Task& task : tasks) addTask(sheet, task, span, content.format);
  addLabour(sheet, content);
}

}  // namespace ui::handouts
