#include "ui/drawings/work_bars_layout.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::DayLoad;
using core::works::Task;
using core::works::Works;

constexpr Stroke kEdgeLine{0.25};
constexpr double kLeastCritical_mm = 0.55, kMostCritical_mm = 0.8;
constexpr double kCriticalShare = 0.25;  // of a bar's height
constexpr Stroke kFloatLine{0.35};
constexpr double kWettingHatch_mm = 1.2;
constexpr double kFillingHatch_mm = 0.8;

LegendEntry barEntry(const QString& text, BarKind kind, bool is_critical) {
  return {text, [kind, is_critical](Chart& chart, const QRectF& room) {
            addBarFill(chart, room, kind, is_critical);
            addBarEdge(chart, room, is_critical);
          }};
}

LegendEntry restEntry() {
  return {Text::tr("no work on this day"), [](Chart& chart, const QRectF& room) {
            addRestDays(chart, {room}, {});
            chart.line(rectangle(room), kEdgeLine, chart.colours().grid);
          }};
}

bool hasKind(const Works& works, BarKind kind) {
  return std::ranges::any_of(works.schedule, [kind](const Task& task) { return kindOf(task) == kind; });
}

}  // namespace

void addBarFill(Chart& chart, const QRectF& bar, BarKind kind, bool is_critical) {
  const ChartColours& colours = chart.colours();
  const QPainterPath path = rectangle(bar);
  if (kind == BarKind::filling) {
    chart.fill(path, colours.wide_band);
    chart.hatch(path, 0, kFillingHatch_mm);
  } else if (kind == BarKind::wetting) {
    chart.fill(path, colours.runoff);
    chart.hatch(path, 45, kWettingHatch_mm);
  } else {
    chart.fill(path, is_critical ? colours.source : colours.band);
  }
}

void addBarEdge(Chart& chart, const QRectF& bar, bool is_critical) {
  const Stroke heavy{std::clamp(kCriticalShare * bar.height(), kLeastCritical_mm, kMostCritical_mm)};
  const Stroke& stroke = is_critical ? heavy : kEdgeLine;
  const double in_x = std::min(stroke.width_mm, bar.width()) / 2;
  const double in_y = std::min(stroke.width_mm, bar.height()) / 2;
  chart.line(rectangle(bar.adjusted(in_x, in_y, -in_x, -in_y)), stroke, chart.colours().ink);
}

void addFloat(Chart& chart, const QRectF& room, bool ends) {
  QPainterPath path = straight({room.left(), room.center().y()}, {room.right(), room.center().y()});
  if (ends)
    path.addPath(straight({room.right(), room.top() + room.height() / 4},
                          {room.right(), room.bottom() - room.height() / 4}));
  chart.line(path, kFloatLine, chart.colours().ink);
}

QPainterPath lastDaySign(QPointF middle, double size_mm) {
  const double half = size_mm / 2;
  QPainterPath sign(middle + QPointF(-half, -half));
  sign.lineTo(middle + QPointF(half, -half));
  sign.lineTo(middle + QPointF(0, half));
  sign.closeSubpath();
  return sign;
}

Legend workBarsLegend(const Works& works) {
  const auto critical = [](const Task& task) { return task.is_critical && !task.is_mark; };
  const auto slips = [](const Task& task) { return task.float_days > 0 && !task.is_mark; };
  Legend legend{barEntry(Text::tr("work"), BarKind::work, false)};
  if (std::ranges::any_of(works.schedule, critical))
    legend.push_back(barEntry(Text::tr("no room to slip"), BarKind::work, true));
  if (std::ranges::any_of(works.schedule, slips))
    legend.push_back(
        {Text::tr("room to slip"), [](Chart& chart, const QRectF& room) { addFloat(chart, room, true); }});
  if (hasKind(works, BarKind::wetting))
    legend.push_back(barEntry(Text::tr("kept wet"), BarKind::wetting, false));
  if (hasKind(works, BarKind::filling))
    legend.push_back(barEntry(Text::tr("filling"), BarKind::filling, false));
  if (!std::ranges::all_of(works.days, &DayLoad::is_worked)) legend.push_back(restEntry());
  if (hasKind(works, BarKind::mark))
    legend.push_back({Text::tr("last day"), [](Chart& chart, const QRectF& room) {
                        chart.solid(lastDaySign(room.center(), room.height()), chart.colours().ink);
                      }});
  return legend;
}

}  // namespace ui::drawings
