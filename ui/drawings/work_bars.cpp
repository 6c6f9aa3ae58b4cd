#include "ui/drawings/work_bars_layout.h"
#include "ui/drawings/works_charts.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::Task;
using core::works::Works;

constexpr double kArrow_mm = 1.8;
constexpr double kInset_mm = 0.05;       // so that rounding puts nothing outside
constexpr double kFrame_mm = 0.9;        // from a bar to the frame that marks it
constexpr double kLegendWidth_mm = 180;  // in which the legend is taken to stand for the best height
const Stroke kGhost{0.7, 1.4, 0.9};

bool goesOn(const WorkBarsLayout& layout, double to) {
  return to > layout.days.count() + 1e-9;
}

QPainterPath arrowAt(double tip_x, double y, double half) {
  QPainterPath arrow(QPointF(tip_x, y));
  arrow.lineTo(tip_x - kArrow_mm, y - half);
  arrow.lineTo(tip_x - kArrow_mm, y + half);
  arrow.closeSubpath();
  return arrow;
}

/// The bar of a task as far as it is shown; room for an arrow is left where it goes on.
QRectF barOf(const WorkBarsLayout& layout, const Works& works, int k) {
  const TaskSpan span = spanOf(works, works.schedule[static_cast<std::size_t>(k)]);
  QRectF bar = layout.bar(k, span);
  if (goesOn(layout, span.to))
    bar = QRectF(QPointF(std::min(bar.left(), layout.rows.plot.right() - kArrow_mm - 1), bar.top()),
                 QPointF(layout.rows.plot.right() - kArrow_mm, bar.bottom()));
  return bar;
}

QString datesOfHidden(const WorkBarsLayout& layout, const Works& works, const Task& task,
                      const Formatter& format) {
  if (spanOf(works, task).from < layout.days.count())
    return Text::tr("until %1").arg(format.shortDate(task.finish));
  return format.shortDate(task.start);
}

/// An arrow at the end of the plot, and until when, or on which day, where that is beyond it.
void addGoesOn(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k,
               const Formatter& format) {
  const Task& task = works.schedule[static_cast<std::size_t>(k)];
  const QRectF bar = barOf(layout, works, k);
  chart.solid(arrowAt(layout.rows.plot.right(), bar.center().y(), std::min(1.6, bar.height() * 0.75)),
              chart.colours().ink);
  if (!layout.rows.holdsText(chart.type())) return;
  const QString text = datesOfHidden(layout, works, task, format);
  const double half = width_mm(text, chart.lettering()) / 2;
  const double right = spanOf(works, task).from < layout.days.count() ? bar.right() : bar.left();
  chart.label(text, {{right - half - kGap_mm, bar.center().y()}}, layout.rows.plot);
}

void addFloatOf(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k) {
  const Task& task = works.schedule[static_cast<std::size_t>(k)];
  const double from = spanOf(works, task).to, to = latestEnd(works, task);
  if (task.is_mark || task.is_critical || task.float_days <= 0 || from >= layout.days.count()) return;
  const double shown = std::min<double>(to, layout.days.count());
  addFloat(chart, layout.rows.bar(k, layout.days.at(from), layout.days.at(shown)), to <= shown + 1e-9);
}

void addMark(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k) {
  const TaskSpan span = spanOf(works, works.schedule[static_cast<std::size_t>(k)]);
  if (span.from >= layout.days.count()) return;
  const QRectF row = layout.rows.bar(k, layout.days.at(span.from), layout.days.at(span.to));
  chart.solid(lastDaySign(row.center(), std::min(2.6, row.height())), chart.colours().ink);
}

void addBar(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k, const Formatter& format) {
  const Task& task = works.schedule[static_cast<std::size_t>(k)];
  const BarKind kind = kindOf(task);
  if (kind == BarKind::mark) return addMark(chart, layout, works, k);
  const QRectF bar = barOf(layout, works, k);
  for (const TaskSpan& part : workedParts(works, task)) {
    const QRectF shown = layout.bar(k, part).intersected(bar);
    if (!shown.isEmpty()) addBarFill(chart, shown, kind, task.is_critical);
  }
  addBarEdge(chart, bar, task.is_critical);
  chart.keepClear(rectangle(bar));
  if (goesOn(layout, spanOf(works, task).to)) addGoesOn(chart, layout, works, k, format);
}

/// The bars themselves, where no shading of rest days may show through.
std::vector<QRectF> wetRooms(const WorkBarsLayout& layout, const Works& works) {
  std::vector<QRectF> rooms;
  for (int k = 0; k < layout.rows.count; ++k) {
    const BarKind kind = kindOf(works.schedule[static_cast<std::size_t>(k)]);
    if (kind == BarKind::wetting || kind == BarKind::filling) rooms.push_back(barOf(layout, works, k));
  }
  return rooms;
}

QString ghostText(const Task& task, int shifted_days, const Formatter& format) {
  const core::works::Day day = core::works::addDays(task.start, shifted_days);
  return Text::tr("%1: not before %2").arg(words::taskName(task.id), format.date(day));
}

void addGhost(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k, int shifted_days,
              const Formatter& format) {
  const Task& task = works.schedule[static_cast<std::size_t>(k)];
  const TaskSpan span = spanOf(works, task);
  const QRectF bar = layout.bar(k, {span.from + shifted_days, span.to + shifted_days})
                         .adjusted(-kFrame_mm / 2, -kFrame_mm / 2, kFrame_mm / 2, kFrame_mm / 2)
                         .intersected(layout.rows.plot);
  chart.line(rectangle(bar), kGhost, chart.colours().marked);
  chart.reading(ghostText(task, shifted_days, format), bar, layout.rows.plot);
}

void addMarked(Chart& chart, const WorkBarsLayout& layout, const Works& works, int k,
               const Formatter& format) {
  const QRectF bar = barOf(layout, works, k)
                         .adjusted(-kFrame_mm, -kFrame_mm, kFrame_mm, kFrame_mm)
                         .intersected(layout.rows.plot);
  chart.line(rectangle(bar), kMarkLine, chart.colours().marked);
  chart.reading(workBarReading(works, k, format), bar, layout.rows.plot);
}

}  // namespace

void drawWorkBars(QPainter& painter, const QRectF& box_mm, const Works& works, const Formatter& format,
                  const Style& style, std::optional<int> marked_task, int shifted_days) {
  if (works.schedule.empty())
    return drawSentence(painter, box_mm,
                        Text::tr("Enter when the works start and who is there to see their days."), style);
  const WorkBarsLayout layout(box_mm, works, format, style);
  if (layout.rows.isEmpty()) return;
  Chart chart(layout.style, format);
  addLegend(chart, layout.legend, box_mm.adjusted(0, kInset_mm, 0, 0));
  addGround(chart, layout.rows.plot);
  addRestDays(chart, restColumns(works, layout.days, layout.rows.plot), wetRooms(layout, works));
  addDayGrid(chart, layout.rows.plot, layout.days, format);
  for (int k = 0; k < layout.rows.count; ++k) addFloatOf(chart, layout, works, k);
  for (int k = 0; k < layout.rows.count; ++k) addBar(chart, layout, works, k, format);
  addNames(chart, layout.rows, layout.names, format);
  addDayAxis(chart, layout.rows.plot, layout.days, DayRows::above, format);
  chart.line(layout.rows.plot.topLeft(), layout.rows.plot.bottomLeft(), kAxisLine, chart.colours().ink);
  if (marked_task && *marked_task >= 0 && *marked_task < layout.rows.count) {
    if (shifted_days != 0) addGhost(chart, layout, works, *marked_task, shifted_days, format);
    if (shifted_days == 0) addMarked(chart, layout, works, *marked_task, format);
  }
  chart.paint(painter);
}

double workBarsHeight(const Works& works, const Formatter& format, const Style& style) {
  const Type type(style, format);
  const double legend = legendHeight(workBarsLegend(works), kLegendWidth_mm, type);
  const double rows = static_cast<double>(works.schedule.size()) * bestPitch(type);
  return legend + kGap_mm + dayRowsHeight(type) + rows + 1;
}

std::optional<int> workBarAt(const QRectF& box_mm, QPointF at, const Works& works, const Formatter& format,
                             const Style& style) {
  return WorkBarsLayout(box_mm, works, format, style).rows.at(at);
}

double workBarDayWidth(const QRectF& box_mm, const Works& works, const Formatter& format,
                       const Style& style) {
  const WorkBarsLayout layout(box_mm, works, format, style);
  return layout.rows.isEmpty() ? 0 : layout.days.width();
}

}  // namespace ui::drawings
