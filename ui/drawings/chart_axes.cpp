#include "ui/drawings/chart_axes.h"

#include "ui/text/units.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

constexpr double kMostInLitres_m3 = 100;
constexpr double kBetweenTicks_mm = 4;  // free room between numbers side by side
constexpr int kMostTicks = 8;
constexpr double kSpare_mm = 0.1;  // so that rounding puts nothing outside

/// Decimals that tell multiples of a plain step apart.
int decimalsFor(double step) {
  return std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
}

QString tickText(double value, int decimals, const AxisUnit& unit, const Formatter& format) {
  const int more = units::shown(unit.unit, format.system()).more_decimals;
  return format.number(value * unit.per_value, unit.unit, decimals - more);
}

/// From the plot up to its title: a number beside the top of the axis reaches into it.
double titleGap(const Type& type) {
  return type.lettering.cap_mm / 2 + 0.8;
}

/// Room for numbers or names under the plot, and for a title under them.
double heightBelow(bool title, const Type& type) {
  return kTick_mm + (title ? 2 : 1) * type.line() + kSpare_mm;
}

}  // namespace

double AxisUnit::shownPerValue(const Formatter& format) const {
  return per_value * units::shown(unit, format.system()).per_si;
}

AxisUnit volumeUnit(double most_m3) {
  if (most_m3 <= kMostInLitres_m3) return {core::Unit::litre, 1000};
  return {core::Unit::cubic_metre, 1};
}

AxisUnit areaUnit() {
  return {core::Unit::square_metre, 1};
}

AxisUnit yearsUnit() {
  return {core::Unit::none, 1};
}

double plainStep(double least) {
  const double decade = std::pow(10, std::floor(std::log10(least)));
  for (const double k : {1., 2., 5.}) {
    if (k * decade >= least * 0.999) return k * decade;
  }
  return 10 * decade;
}

std::vector<Tick> plainTicks(double from, double to, int at_most, const AxisUnit& unit,
                             const Formatter& format) {
  const double per_value = unit.shownPerValue(format);
  const double step = plainStep((to - from) * per_value / std::max(1, at_most));
  std::vector<Tick> ticks;
  const auto last = static_cast<int>(std::floor(to * per_value / step + 1e-9));
  for (auto k = static_cast<int>(std::ceil(from * per_value / step - 1e-9)); k <= last; ++k)
    ticks.push_back({k * step / per_value, tickText(k * step / per_value, decimalsFor(step), unit, format)});
  return ticks;
}

std::vector<Tick> ticksAlong(double from, double to, double length_mm, const AxisUnit& unit,
                             const Formatter& format, const Lettering& lettering) {
  for (int n = kMostTicks; n > 1; --n) {
    std::vector<Tick> ticks = plainTicks(from, to, n, unit, format);
    const double pitch =
        ticks.size() < 2 ? length_mm : (ticks[1].value - ticks[0].value) / (to - from) * length_mm;
    if (pitch >= widest(ticks, lettering) + kBetweenTicks_mm) return ticks;
  }
  return plainTicks(from, to, 1, unit, format);
}

std::vector<Tick> ticksUp(double from, double to, double length_mm, const AxisUnit& unit,
                          const Formatter& format, const Type& type) {
  const int room = static_cast<int>(length_mm / (1.6 * type.line()));
  return plainTicks(from, to, std::clamp(room, 1, kMostTicks), unit, format);
}

double widest(const std::vector<Tick>& ticks, const Lettering& lettering) {
  double width = 0;
  for (const Tick& tick : ticks) width = std::max(width, width_mm(tick.text, lettering));
  return width;
}

QString axisTitle(const QString& what, const AxisUnit& unit, const Formatter& format) {
  const QString name = unit.name(format);
  return name.isEmpty() ? what : Text::tr("%1 (%2)", "quantity (unit)").arg(what, name);
}

double plotHeight(const QRectF& box_mm, const Legend& legend, bool title_below, const Type& type) {
  const double above = legendHeight(legend, box_mm.width(), type) + type.line() + titleGap(type) + kSpare_mm;
  return box_mm.height() - above - heightBelow(title_below, type);
}

QRectF plotRoom(const QRectF& box_mm, const Legend& legend, const Margins& margins, const Type& type) {
  constexpr double kLeastWidth_mm = 30, kLeastHeight_mm = 16;
  const double height = plotHeight(box_mm, legend, margins.title_below, type);
  const double top = box_mm.bottom() - heightBelow(margins.title_below, type) - height;
  const QRectF plot(box_mm.left() + margins.left, top, box_mm.width() - margins.left - margins.right, height);
  return plot.width() < kLeastWidth_mm || height < kLeastHeight_mm ? QRectF() : plot;
}

double leftMargin(const std::vector<Tick>& ticks, const Lettering& lettering) {
  return widest(ticks, lettering) + kTick_mm + kGap_mm + kSpare_mm;
}

void addGround(Chart& chart, const QRectF& plot) {
  chart.fill(rectangle(plot), chart.colours().ground);
}

void addGrid(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks) {
  for (const Tick& tick : ticks) {
    const double y = axis.at(tick.value);
    if (tick.value > 0) chart.line({plot.left(), y}, {plot.right(), y}, kGridLine, chart.colours().grid);
  }
}

void addTitle(Chart& chart, const QString& title, QPointF plot_top, Align align) {
  chart.text(title, plot_top - QPointF(0, titleGap(chart.type()) + chart.type().descent), align);
}

void addUprightAxis(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks,
                    const QString& title) {
  const double left = plot.left() - kTick_mm - kGap_mm;
  for (const Tick& tick : ticks) {
    const double y = axis.at(tick.value);
    chart.line({plot.left() - kTick_mm, y}, {plot.left(), y}, kAxisLine, chart.colours().ink);
    chart.text(tick.text, {left, y + chart.lettering().cap_mm / 2}, Align::right);
  }
  chart.line(plot.topLeft(), plot.bottomLeft(), kAxisLine, chart.colours().ink);
  const double first = ticks.empty() ? plot.left() : left - widest(ticks, chart.lettering());
  addTitle(chart, title, {first, plot.top()}, Align::left);
}

void addLevelAxis(Chart& chart, const QRectF& plot, const Axis& axis, const std::vector<Tick>& ticks,
                  const QString& title) {
  const double baseline = plot.bottom() + kTick_mm + chart.type().ascent;
  for (const Tick& tick : ticks) {
    const double x = axis.at(tick.value);
    chart.line({x, plot.bottom()}, {x, plot.bottom() + kTick_mm}, kAxisLine, chart.colours().ink);
    chart.text(tick.text, {x, baseline}, Align::centre);
  }
  chart.line(plot.bottomLeft(), plot.bottomRight(), kAxisLine, chart.colours().ink);
  chart.text(title, {plot.center().x(), baseline + chart.type().line()}, Align::centre);
}

void addMonths(Chart& chart, const QRectF& plot, const std::vector<double>& starts_mm, int first,
               const Formatter& format) {
  const int count = static_cast<int>(starts_mm.size()) - 1;
  double widest_mm = 0;
  for (int k = 0; k < 12; ++k)
    widest_mm = std::max(widest_mm, width_mm(format.monthName(k + 1), chart.lettering()) + kGap_mm);
  const double span = (starts_mm.back() - starts_mm.front()) / count;
  int every = 1;
  while (every < 6 && widest_mm > every * span) every += every == 4 ? 2 : 1;
  const double baseline = plot.bottom() + kTick_mm + chart.type().ascent;
  for (int k = 0; k <= count; ++k) {
    const double x = starts_mm[static_cast<std::size_t>(k)];
    chart.line({x, plot.bottom()}, {x, plot.bottom() + kTick_mm}, kAxisLine, chart.colours().ink);
    if (k == count || k % every != 0) continue;
    const double middle = (x + starts_mm[static_cast<std::size_t>(k) + 1]) / 2;
    chart.text(format.monthName((first + k) % 12 + 1), {middle, baseline}, Align::centre);
  }
  chart.line(plot.bottomLeft(), plot.bottomRight(), kAxisLine, chart.colours().ink);
}

}  // namespace ui::drawings
