#include "ui/handouts/calendar_bars.h"

#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

using core::works::Task;

constexpr int kMostDays = 120;  // 1.5 mm a day
constexpr double kArrow_mm = 2.5, kTriangle_mm = 2;
constexpr double kWetHatch_mm = 1.2;

/// Nobody works: water rises, or the tank is watched.
bool isWaiting(const Task& task) {
  return task.clock == core::works::Clock::calendar && !isWetting(task);
}

double startDay(const Task& task, const BarSpan& span) {
  return core::works::daysBetween(span.first, task.start) + task.start_in_day;
}

/// A bar ends as far into its last day as start and length leave of it.
double endDay(const Task& task, const BarSpan& span) {
  const double over = std::fmod(task.start_in_day + task.work_days, 1);
  return core::works::daysBetween(span.first, task.finish) + (over > 0 ? over : 1);
}

void paintSolid(QPainter& painter, const QPolygonF& shape) {
  QPainterPath path;
  path.addPolygon(shape);
  path.closeSubpath();
  painter.setPen(drawings::pen(drawings::Line::thin, Qt::black));
  painter.setBrush(Qt::black);
  painter.drawPath(path);
  painter.setBrush(Qt::NoBrush);
}

void paintMark(QPainter& painter, double x, const QRectF& row) {
  const double at = std::clamp(x, row.left() + kTriangle_mm, row.right() - kTriangle_mm);
  paintSolid(painter, {{at - kTriangle_mm, row.top()}, {at + kTriangle_mm, row.top()}, {at, row.bottom()}});
}

void paintArrow(QPainter& painter, const QRectF& row) {
  const double x = row.right();
  paintSolid(painter, {{x - kArrow_mm, row.top()}, {x, row.center().y()}, {x - kArrow_mm, row.bottom()}});
}

void paintShape(QPainter& painter, const Task& task, const QRectF& bar) {
  QPainterPath path;
  path.addRect(bar);
  const bool is_solid = !isWetting(task) && !isWaiting(task);
  painter.setPen(drawings::pen(drawings::Line::thin, Qt::black));
  painter.setBrush(is_solid ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
  painter.drawPath(path);
  painter.setBrush(Qt::NoBrush);
  if (!isWetting(task)) return;
  painter.setPen(drawings::pen(drawings::Line::hatch, Qt::black));
  painter.drawPath(drawings::lineHatch(path, 45, {kWetHatch_mm}));
}

}  // namespace

bool isWetting(const Task& task) {
  return task.id.starts_with("cure_");
}

BarSpan barSpan(const std::vector<Task>& tasks) {
  core::works::Day first = tasks.front().start, last = first;
  for (const Task& task : tasks) {
    first = std::min(first, task.start);
    last = std::max(last, task.finish);
  }
  const int days = core::works::daysBetween(first, last) + 1;
  return {first, std::min(days, kMostDays), days > kMostDays};
}

void paintBar(QPainter& painter, const Task& task, const BarSpan& span, const QRectF& row) {
  const double day = row.width() / span.days;
  if (task.is_mark && endDay(task, span) <= span.days)
    return paintMark(painter, row.left() + endDay(task, span) * day, row);
  const double from = startDay(task, span), to = endDay(task, span);
  const bool runs_on = to > span.days;
  const double right = row.right() - (runs_on ? kArrow_mm : 0);
  const double left = row.left() + from * day;
  if (left < right)
    paintShape(painter, task,
               {QPointF(left, row.top()), QPointF(std::min(right, row.left() + to * day), row.bottom())});
  if (runs_on) paintArrow(painter, row);
}

void paintCriticalSign(QPainter& painter, QPointF top_left) {
  const QPointF middle = top_left + QPointF(2.2, 2.4);
  paintSolid(painter, {middle + QPointF(0, -1.7), middle + QPointF(1.7, 0), middle + QPointF(0, 1.7),
                       middle + QPointF(-1.7, 0)});
}

}  // namespace ui::handouts
