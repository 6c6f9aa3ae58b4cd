#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/works_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::WeatherWindow;

constexpr double kTen = 10;
constexpr double kBarShare = 0.74;
constexpr Stroke kPartLine{0.25};
constexpr Stroke kPlannedLine{0.5};
constexpr double kBestHatch_mm = 0.9;

/// How a week stands out.
enum class Week { any, best, planned };

void addWeek(Chart& chart, const QRectF& bar, Week week) {
  const QPainterPath path = rectangle(bar);
  if (week == Week::planned) {
    chart.solid(path, chart.colours().middle);
  } else {
    chart.fill(path, week == Week::best ? chart.colours().beds : chart.colours().band);
    if (week == Week::best) chart.hatch(path, 45, kBestHatch_mm);
  }
  chart.line(path, week == Week::any ? kPartLine : kPlannedLine, chart.colours().ink);
}

bool isUsable(const WeatherWindow& window) {
  return window.weeks.size() == core::works::kWeeks && window.years > 0;
}

LegendEntry entry(const QString& text, Week week) {
  return {text, [week](Chart& chart, const QRectF& room) { addWeek(chart, room, week); }};
}

Legend legendOf(const WeatherWindow& window) {
  if (window.best == window.chosen)
    return {entry(Text::tr("first coat as planned, and best"), Week::planned)};
  return {entry(Text::tr("first coat as planned"), Week::planned), entry(Text::tr("best week"), Week::best)};
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  QRectF plot;
  Axis weeks, times;
  std::vector<Tick> ticks;

  Layout(const QRectF& box, const WeatherWindow& window, const Formatter& format, const Type& type) {
    if (!isUsable(window)) return;
    legend = legendOf(window);
    const double high = plotHeight(box, legend, false, type), line = type.line() + kGap_mm;
    if (high <= 2 * line) return;
    const double to = kTen * high / (high - line);  // room for names over the bars
    ticks = ticksUp(0, kTen, high - line, yearsUnit(), format, type);
    plot = plotRoom(box, legend, {leftMargin(ticks, type.lettering), 1, false}, type);
    weeks = Axis(0, core::works::kWeeks, plot.left(), plot.right());
    times = Axis(0, to, plot.bottom(), plot.top());
  }

  QRectF bar(int week, double times_in_ten) const {
    const double wide = kBarShare * (weeks.at(1) - weeks.at(0)), middle = weeks.at(week + 0.5);
    return {QPointF(middle - wide / 2, times.at(times_in_ten)), QPointF(middle + wide / 2, plot.bottom())};
  }
};

double timesOf(const WeatherWindow& window, int week) {
  return kTen * window.weeks[static_cast<std::size_t>(week)].undisturbed;
}

/// Where months begin among the weeks, and the end.
std::vector<double> monthStarts(const Layout& layout) {
  constexpr int kDaysBefore[] = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
  std::vector<double> starts;
  for (const int days : kDaysBefore) starts.push_back(layout.weeks.at(days / 7.));
  starts.push_back(layout.plot.right());
  return starts;
}

void addBars(Chart& chart, const Layout& layout, const WeatherWindow& window) {
  for (int k = 0; k < core::works::kWeeks; ++k) {
    if (timesOf(window, k) <= 0) continue;
    const QRectF bar = layout.bar(k, timesOf(window, k));
    addWeek(chart, bar, k == window.chosen ? Week::planned : k == window.best ? Week::best : Week::any);
    chart.keepClear(rectangle(bar));
  }
}

/// A name over a week's bar, with a sign that points to it.
void addName(Chart& chart, const Layout& layout, const WeatherWindow& window, int week, const QString& name) {
  const QRectF bar = layout.bar(week, timesOf(window, week));
  const double up = chart.type().line() / 2, half = width_mm(name, chart.lettering()) / 2;
  std::vector<QPointF> places;
  for (const double rows : {1., 2., 3., 4.5, 6.}) {
    for (const double aside : {0., half, -half})
      places.emplace_back(bar.center().x() + aside, bar.top() - rows * up - 0.4);
  }
  chart.label(name, places, layout.plot);
}

void addMarked(Chart& chart, const Layout& layout, const WeatherWindow& window, int week,
               const Formatter& format) {
  if (week < 0 || week >= core::works::kWeeks) return;
  const QRectF column(QPointF(layout.weeks.at(week), layout.plot.top()),
                      QPointF(layout.weeks.at(week + 1), layout.plot.bottom()));
  chart.line(rectangle(column), kMarkLine, chart.colours().marked);
  chart.reading(weekReading(window, week, format), column, layout.plot);
}

}  // namespace

void drawWeatherWindow(QPainter& painter, const QRectF& box_mm, const WeatherWindow& window,
                       const Formatter& format, const Style& style, std::optional<int> marked_week) {
  if (!isUsable(window))
    return drawSentence(
        painter, box_mm,
        Text::tr("Enter the weather to see in which weeks coats are likely to stay undisturbed."), style);
  Chart chart(style, format);
  const Layout layout(box_mm, window, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.times, layout.ticks);
  addBars(chart, layout, window);
  const bool is_best = window.chosen == window.best;
  addName(chart, layout, window, window.chosen, is_best ? Text::tr("planned, best") : Text::tr("planned"));
  if (!is_best) addName(chart, layout, window, window.best, Text::tr("best"));
  addUprightAxis(
      chart, layout.plot, layout.times, layout.ticks,
      fittedTitle(Text::tr("Times in ten that coats of this week stay undisturbed"), box_mm, chart.type()));
  addMonths(chart, layout.plot, monthStarts(layout), 0, format);
  if (marked_week) addMarked(chart, layout, window, *marked_week, format);
  chart.paint(painter);
}

std::optional<int> weekAt(const QRectF& box_mm, QPointF at, const WeatherWindow& window,
                          const Formatter& format, const Style& style) {
  const Layout layout(box_mm, window, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  return std::clamp(static_cast<int>(layout.weeks.value(at.x())), 0, core::works::kWeeks - 1);
}

}  // namespace ui::drawings
