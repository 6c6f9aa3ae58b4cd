#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <chrono>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::works::Task;
using std::chrono::sys_days;

/// First and last day of the works.
struct Span {
  sys_days first, last;
  double days() const { return static_cast<double>((last - first).count()) + 1; }
};

Span spanOf(const std::vector<Task>& tasks) {
  Span span{sys_days(tasks.front().start), sys_days(tasks.front().finish)};
  for (const Task& task : tasks) {
    span.first = std::min(span.first, sys_days(task.start));
    span.last = std::max(span.last, sys_days(task.finish));
  }
  return span;
}

bool isWetting(const Task& task) {
  return task.id.starts_with("cure_");
}

bool isDeadline(const Task& task) {
  return task.id == "fill_by";
}

QRectF barOf(const Task& task, const Span& span, double width) {
  const double day = width / span.days();
  const double from = static_cast<double>((sys_days(task.start) - span.first).count()) * day;
  const double to = static_cast<double>((sys_days(task.finish) - span.first).count() + 1) * day;
  return {from, 0, to - from, 3.5};
}

/// Work is solid, wetting is hatched, the last day to start filling is a triangle.
void paintBar(QPainter& painter, const Task& task, QRectF bar) {
  QPainterPath path;
  painter.setPen(drawings::pen(drawings::Line::thin, Qt::black));
  painter.setBrush(Qt::NoBrush);
  if (isDeadline(task)) {
    const double x = bar.right() - 2;
    path.addPolygon(QPolygonF{{x - 2, bar.top()}, {x + 2, bar.top()}, {x, bar.bottom()}});
    path.closeSubpath();
    painter.setBrush(Qt::black);
    return painter.drawPath(path);
  }
  path.addRect(bar);
  if (!isWetting(task)) painter.setBrush(Qt::black);
  painter.drawPath(path);
  if (isWetting(task)) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(drawings::pen(drawings::Line::hatch, Qt::black));
    painter.drawPath(drawings::lineHatch(path, 45, {1.2}));
  }
}

QString when(const Task& task, const Formatter& format) {
  if (task.start == task.finish || isDeadline(task)) return format.date(task.finish);
  return Text::tr("%1 to %2").arg(format.date(task.start), format.date(task.finish));
}

QString howLong(const Task& task, const Formatter& format) {
  if (isDeadline(task)) return {};
  const QString days = format.quantity(task.days, core::Unit::day, 0);
  return task.crew > 0 ? Text::tr("%1, %2").arg(days, format.quantity(task.crew, core::Unit::person, 0))
                       : days;
}

void addTask(Sheet& sheet, const Task& task, const Span& span, const Formatter& format) {
  const double width = sheet.width();
  const QString name = words::taskName(task.id);
  const QStringList second = wrapped(
      when(task, format) + (isDeadline(task) ? QString() : QStringLiteral("; ") + howLong(task, format)),
      kBody, width);
  const double text = lineHeight_mm(kStrong) + static_cast<double>(second.size()) * lineHeight_mm(kBody);
  sheet.add({text + 7, [=](QPainter& painter, QPointF at) {
               drawLines(painter, at, {elided(name, kStrong, width)}, kStrong);
               drawLines(painter, at + QPointF(0, lineHeight_mm(kStrong)), second, kBody);
               paintBar(painter, task,
                        barOf(task, span, width - 0.4).translated(at + QPointF(0.2, text + 0.8)));
               painter.setPen(line(0.35));
               painter.drawLine(at + QPointF(0, text + 5.2), at + QPointF(width, text + 5.2));
             }});
}

void addWettingRows(Sheet& sheet, const Task& task, const Formatter& format) {
  std::vector<std::vector<Cell>> rows;
  for (sys_days day = task.start; day <= sys_days(task.finish); day += std::chrono::days(1)) {
    rows.push_back({format.date(day), Cell::box(), Cell::box(), Cell::box()});
  }
  sheet.heading(words::taskName(task.id));
  sheet.table({{Text::tr("Day"), 0.4},
               {Text::tr("morning"), 0.2, CellAlign::centre},
               {Text::tr("noon"), 0.2, CellAlign::centre},
               {Text::tr("evening"), 0.2, CellAlign::centre}},
              rows);
}

void addDeadline(Sheet& sheet, const std::vector<Task>& tasks, const Formatter& format) {
  const auto fill = std::ranges::find_if(tasks, isDeadline);
  if (fill == tasks.end()) return;
  sheet.space(2);
  sheet.paragraph(Text::tr("Start filling no later than %1.").arg(format.date(fill->finish)), kHeading);
  sheet.task(Text::tr("Filling begun. Until water covers a wall, its sacks stay on and stay wet."));
}

void addLabour(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Work for each task"));
  const auto days = [&](double value) { return content.format.quantity(value, core::Unit::person_day, 1); };
  std::vector<std::vector<Cell>> rows;
  for (const auto& labour : content.plan.works->labour) {
    rows.push_back({words::taskName(labour.task), words::skillName(labour.skill), days(labour.days)});
  }
  sheet.table({{Text::tr("Task"), 0.42}, {Text::tr("Who"), 0.32}, {Text::tr("Work"), 0.26, CellAlign::right}},
              rows);
}

}  // namespace

void buildWorkCalendar(Sheet& sheet, const Content& content) {
  const auto& tasks = content.plan.works->schedule;
  if (tasks.empty()) return;
  sheet.paragraph(Text::tr("Solid bar: work. Hatched bar: keep wet, rest days too. Triangle: last day."));
  sheet.space(1);
  const Span span = spanOf(tasks);
  for (const Task& task : tasks) addTask(sheet, task, span, content.format);
  addLabour(sheet, content);
}

void buildWettingCalendar(Sheet& sheet, const Content& content) {
  const auto& tasks = content.plan.works->schedule;
  sheet.paragraph(Text::tr(
      "Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. "
      "Plaster that dries early cracks and leaks."));
  for (const Task& task : tasks) {
    if (isWetting(task)) addWettingRows(sheet, task, content.format);
  }
  addDeadline(sheet, tasks, content.format);
}

}  // namespace ui::handouts
