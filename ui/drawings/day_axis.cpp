#include "ui/drawings/day_axis.h"

#include "ui/drawings/hatch.h"
#include "ui/drawings/line_cuts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::addDays;
using core::works::Day;

constexpr double kBetween_mm = 1.2;  // free room between numbers side by side
constexpr double kSpare_mm = 0.1;
constexpr double kRestHatch_mm = 2.6;
constexpr double kRestTone = 0.55;  // of the way from the ground to the colour of grids

enum class Fineness { days, weeks, months };
enum class Border { month, year };

/// Days from one border to the next and what they are called; `more` is said where there is room.
struct Span {
  int from, to;
  QString text, more;
};

int dayOfMonth(Day day) {
  return static_cast<int>(static_cast<unsigned>(day.day()));
}

int monthOf(Day day) {
  return static_cast<int>(static_cast<unsigned>(day.month()));
}

double widestNumber(const Chart& chart, const Formatter& format) {
  double widest_mm = 0;
  for (const int day : {8, 20, 26, 28, 30}) {
    widest_mm = std::max(widest_mm, width_mm(format.integer(day), chart.lettering()));
  }
  return widest_mm + kBetween_mm;
}

Fineness finenessOf(const Chart& chart, const DayAxis& days, const Formatter& format) {
  const double wide = widestNumber(chart, format);
  if (days.width() >= wide) return Fineness::days;
  return 7 * days.width() >= wide ? Fineness::weeks : Fineness::months;
}

bool beginsWeek(Day day, const Formatter& format) {
  const std::chrono::weekday weekday{std::chrono::sys_days(day)};
  return static_cast<int>(weekday.iso_encoding()) == static_cast<int>(format.locale().firstDayOfWeek());
}

bool beginsYear(Day day) {
  return dayOfMonth(day) == 1 && monthOf(day) == 1;
}

Span spanFrom(const DayAxis& days, int k, Border border, const Formatter& format) {
  const Day day = addDays(days.first(), k);
  const QString year = format.year(static_cast<int>(day.year()));
  if (border == Border::year) return {k, k, year, year};
  const QString month = format.monthName(monthOf(day));
  const bool says_year = k == 0 || beginsYear(day);
  return {k, k, month, says_year ? Text::tr("%1 %2", "month and year").arg(month, year) : month};
}

/// Months, or years, that the days lie in.
std::vector<Span> spansOf(const DayAxis& days, Border border, const Formatter& format) {
  std::vector<Span> spans;
  for (int k = 0; k < days.count(); ++k) {
    const Day day = addDays(days.first(), k);
    const bool begins = border == Border::month ? dayOfMonth(day) == 1 : beginsYear(day);
    if (begins || k == 0) spans.push_back(spanFrom(days, k, border, format));
    spans.back().to = k + 1;
  }
  return spans;
}

/// Names in the middle of their spans from left to right, where they touch neither each other nor the ends.
void addSpanNames(Chart& chart, const QRectF& plot, const DayAxis& days, const std::vector<Span>& spans,
                  double baseline) {
  double free_from = plot.left() - kSpare_mm;
  for (const Span& span : spans) {
    const double from = days.at(span.from), to = days.at(span.to), middle = (from + to) / 2;
    const double room = to - from - kBetween_mm;
    const QString& text = width_mm(span.more, chart.lettering()) <= room ? span.more : span.text;
    const double half = width_mm(text, chart.lettering()) / 2;
    if (middle - half < free_from || middle + half > plot.right() + kSpare_mm) continue;
    chart.text(text, {middle, baseline}, Align::centre);
    free_from = middle + half + kBetween_mm;
  }
}

/// Days that have a number of their own.
std::vector<int> numberedDays(const DayAxis& days, Fineness fineness, const Formatter& format) {
  std::vector<int> list;
  for (int k = 0; k < days.count(); ++k) {
    const bool has = fineness == Fineness::days || beginsWeek(addDays(days.first(), k), format);
    if (has && fineness != Fineness::months) list.push_back(k);
  }
  return list;
}

void addDayNumbers(Chart& chart, const QRectF& plot, const DayAxis& days, const std::vector<int>& numbered,
                   double baseline, const Formatter& format) {
  for (const int k : numbered) {
    const QString text = format.integer(dayOfMonth(addDays(days.first(), k)));
    const double half = width_mm(text, chart.lettering()) / 2, middle = days.at(k + 0.5);
    if (middle - half >= plot.left() - kSpare_mm && middle + half <= plot.right() + kSpare_mm)
      chart.text(text, {middle, baseline}, Align::centre);
  }
}

/// Where the two rows stand and which way they go from the plot.
struct Places {
  double edge, way, fine, coarse;  // baselines of fine and coarse row
};

Places placesOf(const QRectF& plot, DayRows rows, const Type& type) {
  if (rows == DayRows::below) {
    const double fine = plot.bottom() + kTick_mm + type.ascent;
    return {plot.bottom(), 1, fine, fine + type.line()};
  }
  const double fine = plot.top() - kTick_mm - type.descent;
  return {plot.top(), -1, fine, fine - type.line()};
}

void addTick(Chart& chart, double x, const Places& places, double length) {
  chart.line({x, places.edge}, {x, places.edge + places.way * length}, kAxisLine, chart.colours().ink);
}

}  // namespace

int DayAxis::dayAt(double mm) const {
  return std::clamp(static_cast<int>(std::floor(axis_.value(mm))), 0, std::max(0, count_ - 1));
}

double dayRowsHeight(const Type& type) {
  return kTick_mm + 2 * type.line() + kSpare_mm;
}

void addDayGrid(Chart& chart, const QRectF& plot, const DayAxis& days, const Formatter& format) {
  const Fineness fineness = finenessOf(chart, days, format);
  const auto add = [&](int k) {
    const double x = days.at(k);
    if (k > 0) chart.line({x, plot.top()}, {x, plot.bottom()}, kGridLine, chart.colours().grid);
  };
  if (fineness == Fineness::months) {
    for (const Span& span : spansOf(days, Border::month, format)) add(span.from);
  } else {
    for (const int k : numberedDays(days, Fineness::weeks, format)) add(k);
  }
}

void addDayAxis(Chart& chart, const QRectF& plot, const DayAxis& days, DayRows rows,
                const Formatter& format) {
  const Fineness fineness = finenessOf(chart, days, format);
  const Places places = placesOf(plot, rows, chart.type());
  const std::vector<Span> months = spansOf(days, Border::month, format);
  const double far = dayRowsHeight(chart.type()) - 2 * kSpare_mm;
  if (fineness == Fineness::months) {
    std::vector<Span> plain = months;
    for (Span& span : plain) span.more = span.text;
    addSpanNames(chart, plot, days, plain, places.fine);
    const std::vector<Span> years = spansOf(days, Border::year, format);
    addSpanNames(chart, plot, days, years, places.coarse);
    for (const Span& span : years) addTick(chart, days.at(span.from), places, far);
    for (const Span& span : months) addTick(chart, days.at(span.from), places, kTick_mm);
  } else {
    const std::vector<int> numbered = numberedDays(days, fineness, format);
    addDayNumbers(chart, plot, days, numbered, places.fine, format);
    addSpanNames(chart, plot, days, months, places.coarse);
    for (const Span& span : months) addTick(chart, days.at(span.from), places, far);
    for (const int k : numbered) addTick(chart, days.at(k), places, kTick_mm);
  }
  chart.line({plot.left(), places.edge}, {plot.right(), places.edge}, kAxisLine, chart.colours().ink);
}

QColor restColour(const Chart& chart) {
  const QColor ground = chart.colours().ground, grid = chart.colours().grid;
  const auto mix = [](int a, int b) { return static_cast<int>(std::lround(a + kRestTone * (b - a))); };
  return {mix(ground.red(), grid.red()), mix(ground.green(), grid.green()), mix(ground.blue(), grid.blue())};
}

void addRestDays(Chart& chart, const std::vector<QRectF>& columns, const std::vector<QRectF>& rooms) {
  QPainterPath all;
  for (const QRectF& column : columns) all.addRect(column);
  chart.fill(all, restColour(chart));
  if (chart.onPaper() && !columns.empty())
    chart.line(outside(lineHatch(all, -45, {kRestHatch_mm}), rooms), kHatchLine, chart.colours().ink);
}

}  // namespace ui::drawings
