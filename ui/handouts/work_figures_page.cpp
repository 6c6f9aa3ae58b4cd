#include "core/works/schedule.h"
#include "ui/drawings/works_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"
#include "ui/handouts/works_tables.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::works::Clock;
using core::works::DayLoad;
using core::works::LinkKind;
using core::works::Task;
using core::works::TaskLink;
using core::works::Works;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kPeople_mm = 75;

QString nameText(const Task& task, const Formatter& format) {
  const QString name = words::taskName(task.id);
  return task.not_before ? Text::tr("%1; not before %2, as wished").arg(name, format.date(*task.not_before))
                         : name;
}

QString daysText(double days, const Formatter& format) {
  return format.number(days, core::Unit::day, words::decimalsFor(days, 0));
}

QString slipText(const Task& task, const Formatter& format) {
  return task.is_critical ? Text::tr("NONE") : daysText(task.float_days, format);
}

std::vector<Cell> taskRow(const Task& task, const Formatter& format) {
  if (task.is_mark)
    return {nameText(task, format), QString(), format.date(task.finish), QString(), QString(), QString()};
  const int people = task.crew > 0 ? task.crew : task.by_skill.wetters;
  std::vector<Cell> row{nameText(task, format),
                        format.date(task.start),
                        format.date(task.finish),
                        daysText(task.work_days, format),
                        people > 0 ? format.integer(people) : none(),
                        slipText(task, format)};
  row.front().strong = row.back().strong = task.is_critical;
  return row;
}

void addTasks(Sheet& sheet, const Works& works, const Formatter& format) {
  Rows rows;
  for (const Task& task : works.schedule) rows.push_back(taskRow(task, format));
  sheet.heading(Text::tr("All tasks"));
  sheet.paragraph(Text::tr(
      "Heavy type and NONE: no room to slip. Curing, filling and watching count all days, other tasks "
      "the days that are worked."));
  sheet.table({{Text::tr("Task"), 0.3},
               {Text::tr("Starts"), 0.2},
               {Text::tr("Ends"), 0.2},
               {Text::tr("Days"), 0.09, CellAlign::right},
               {Text::tr("People"), 0.1, CellAlign::right},
               {Text::tr("Room, days"), 0.11, CellAlign::right}},
              rows);
}

/// Ways to say one kind of link: %1 the other task, %2 the days between.
struct LinkWords {
  const char *at_once, *later, *sooner;
};

const LinkWords& wordsOf(LinkKind kind) {
  static constexpr LinkWords kFinishStart{QT_TRANSLATE_NOOP("Handouts", "starts after the end of: %1"),
                                          QT_TRANSLATE_NOOP("Handouts", "starts %2 after the end of: %1"),
                                          QT_TRANSLATE_NOOP("Handouts", "starts %2 before the end of: %1")};
  static constexpr LinkWords kStartStart{QT_TRANSLATE_NOOP("Handouts", "starts after the start of: %1"),
                                         QT_TRANSLATE_NOOP("Handouts", "starts %2 after the start of: %1"),
                                         QT_TRANSLATE_NOOP("Handouts", "starts %2 before the start of: %1")};
  static constexpr LinkWords kFinishFinish{QT_TRANSLATE_NOOP("Handouts", "ends after the end of: %1"),
                                           QT_TRANSLATE_NOOP("Handouts", "ends %2 after the end of: %1"),
                                           QT_TRANSLATE_NOOP("Handouts", "ends %2 before the end of: %1")};
  static constexpr LinkWords kStartFinish{QT_TRANSLATE_NOOP("Handouts", "ends after the start of: %1"),
                                          QT_TRANSLATE_NOOP("Handouts", "ends %2 after the start of: %1"),
                                          QT_TRANSLATE_NOOP("Handouts", "ends %2 before the start of: %1")};
  if (kind == LinkKind::finish_start) return kFinishStart;
  if (kind == LinkKind::start_start) return kStartStart;
  return kind == LinkKind::finish_finish ? kFinishFinish : kStartFinish;
}

QString lagText(const TaskLink& link, const Formatter& format) {
  const QString days = words::dayCount(std::abs(link.lag_days), format);
  return link.lag_clock == Clock::calendar ? Text::tr("%1 (rest days counted)").arg(days) : days;
}

QString linkText(const TaskLink& link, const Formatter& format) {
  const LinkWords& ways = wordsOf(link.kind);
  const QString other = words::taskName(link.from);
  if (link.lag_days == 0) return QCoreApplication::translate("Handouts", ways.at_once).arg(other);
  const char* const way = link.lag_days > 0 ? ways.later : ways.sooner;
  return QCoreApplication::translate("Handouts", way).arg(other, lagText(link, format));
}

void addLinks(Sheet& sheet, const Works& works, const Formatter& format) {
  Rows rows;
  for (const Task& task : works.schedule) {
    QStringList all;
    for (const TaskLink& link : works.links)
      if (link.to == task.id) all << linkText(link, format);
    if (!all.isEmpty()) rows.push_back({words::taskName(task.id), all.join(u'\n')});
  }
  if (rows.empty()) return;
  sheet.heading(Text::tr("What waits for what"));
  sheet.table({{Text::tr("Task"), 0.32}, {Text::tr("Its order"), 0.68}}, rows);
}

bool sameCrew(const DayLoad& a, const DayLoad& b) {
  return a.labourers == b.labourers && a.masons == b.masons && a.wetters == b.wetters;
}

QString count(int people, const Formatter& format) {
  return people > 0 ? format.integer(people) : none();
}

/// Days in a row with the same people share a row.
Rows peopleRows(const std::vector<DayLoad>& days, const Formatter& format) {
  Rows rows;
  for (std::size_t first = 0; first < days.size();) {
    std::size_t last = first;
    while (last + 1 < days.size() && sameCrew(days[first], days[last + 1])) ++last;
    const DayLoad& load = days[first];
    rows.push_back({spanText(load.date, days[last].date, format), count(load.labourers, format),
                    count(load.masons, format), count(load.wetters, format)});
    first = last + 1;
  }
  return rows;
}

void addPeople(Sheet& sheet, const Content& content) {
  const Works& works = *content.plan.works;
  if (works.days.empty()) return;
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("People by day"));
  sheet.drawing(kPeople_mm, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawPeople(painter, box, *content.plan.works, content.format, {});
  });
  sheet.keepTogether(first);
  sheet.space(2);
  sheet.table({{Text::tr("Days"), 0.4},
               {Text::tr("Labourers"), 0.2, CellAlign::right},
               {Text::tr("Masons"), 0.2, CellAlign::right},
               {Text::tr("Wetting"), 0.2, CellAlign::right}},
              peopleRows(works.days, content.format));
}

void addBars(Sheet& sheet, const Content& content) {
  const double wanted = drawings::workBarsHeight(*content.plan.works, content.format, {});
  sheet.space(2);
  sheet.drawing(std::min(wanted, sheet.height()), [&content](QPainter& painter, const QRectF& box) {
    drawings::drawWorkBars(painter, box, *content.plan.works, content.format, {});
  });
}

void addMethod(Sheet& sheet, SourceList& sources) {
  sheet.paragraph(
      Text::tr("Dates: critical path method, forward and backward pass %1. Room: days that a task may "
               "slip before the last day moves.")
          .arg(sources.mark("kelley_walker_1959")));
}

}  // namespace

void buildWorkFigures(Sheet& sheet, const Content& content) {
  const Works& works = *content.plan.works;
  SourceList sources(content.format);
  addSentences(sheet, words::datesAnswers(works, content.format));
  addMethod(sheet, sources);
  addTasks(sheet, works, content.format);
  addLinks(sheet, works, content.format);
  addBars(sheet, content);
  addPeople(sheet, content);
  addRates(sheet, content, sources);
  addRecords(sheet, content);
  addWeatherWindow(sheet, content, sources);
  sources.print(sheet);
}

}  // namespace ui::handouts
