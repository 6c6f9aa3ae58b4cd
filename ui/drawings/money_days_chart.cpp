#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/day_axis.h"
#include "ui/drawings/money_axis.h"
#include "ui/drawings/money_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::cost::CostPlan;
using core::cost::DayMoney;

constexpr Stroke kTogether{0.9};
constexpr Stroke kPartLine{0.25};
constexpr double kLeastBar_mm = 0.5, kMostBar_mm = 6;
constexpr double kBarShare = 0.8;  // of a day's width
constexpr double kOver = 1.06;     // room over the highest
constexpr double kLeastHigh_mm = 10;
constexpr double kTitle_mm = 0.8;  // between the title of the lower plot and the number over it
constexpr double kGoodsHatch_mm = 1.2;

void addGoods(Chart& chart, const QRectF& bar) {
  chart.fill(rectangle(bar), chart.colours().runoff);
  chart.hatch(rectangle(bar), 45, kGoodsHatch_mm);
  chart.line(rectangle(bar), kPartLine, chart.colours().ink);
}

void addWages(Chart& chart, const QRectF& bar) {
  chart.solid(rectangle(bar), chart.colours().source);
  chart.line(rectangle(bar), kPartLine, chart.colours().ink);
}

Legend legendOf() {
  return {{Text::tr("goods and carrying"), addGoods}, {Text::tr("wages"), addWages}};
}

double mostTogether(const CostPlan& plan) {
  return plan.days.empty() ? 0 : std::ranges::max(plan.days, {}, &DayMoney::together).together;
}

double mostOnADay(const CostPlan& plan) {
  double most = 0;
  for (const DayMoney& day : plan.days) most = std::max(most, day.goods + day.wages);
  return most;
}

/// A plot of money with its axis.
struct Money {
  QRectF plot;
  Axis axis;
  std::vector<Tick> ticks;

  void place(const QRectF& room, double most) {
    plot = room;
    axis = Axis(0, kOver * most, room.bottom(), room.top());
  }
};

/// Where everything of the chart stands: the line over the bars, above one row of days.
struct Layout {
  Legend legend;
  DayAxis days;
  Money together, daily;

  Layout(const QRectF& box, const CostPlan& plan, const Formatter& format, const Type& type)
      : legend(legendOf()) {
    const double most = mostTogether(plan), most_daily = mostOnADay(plan);
    const double title = type.line() + type.descent + type.lettering.cap_mm + kTitle_mm;
    const double high = (plotHeight(box, legend, true, type) - title) / 2;
    if (most <= 0 || most_daily <= 0 || high < kLeastHigh_mm) return;
    together.ticks = ticksUp(0, kOver * most, high, moneyUnit(), format, type);
    daily.ticks = ticksUp(0, kOver * most_daily, high, moneyUnit(), format, type);
    const double left =
        std::max(leftMargin(together.ticks, type.lettering), leftMargin(daily.ticks, type.lettering));
    const QRectF all = plotRoom(box, legend, {left, 1, true}, type);
    if (all.isEmpty()) return;
    together.place(QRectF(all.left(), all.top(), all.width(), high), most);
    daily.place(QRectF(all.left(), all.bottom() - high, all.width(), high), most_daily);
    const auto first = plan.days.front().date, last = plan.days.back().date;
    days = DayAxis(first, core::works::daysBetween(first, last) + 1, all.left(), all.right());
  }

  bool isEmpty() const { return daily.plot.isEmpty(); }
  QRectF plot() const { return together.plot.united(daily.plot); }
  double middle(const DayMoney& day) const { return days.at(days.indexOf(day.date) + 0.5); }
  QRectF bar(const DayMoney& day, double from, double to) const {
    const double wide = std::clamp(kBarShare * days.width(), kLeastBar_mm, kMostBar_mm);
    const double left = std::clamp(middle(day) - wide / 2, daily.plot.left(), daily.plot.right() - wide);
    return {QPointF(left, daily.axis.at(to)), QPointF(left + wide, daily.axis.at(from))};
  }
};

void addBars(Chart& chart, const Layout& layout, const CostPlan& plan) {
  for (const DayMoney& day : plan.days) {
    if (day.goods > 0) addGoods(chart, layout.bar(day, 0, day.goods));
    if (day.wages > 0) addWages(chart, layout.bar(day, day.goods, day.goods + day.wages));
    chart.keepClear(rectangle(layout.bar(day, 0, day.goods + day.wages)));
  }
}

/// Level from day to day, up at each day on which money is needed.
void addTogether(Chart& chart, const Layout& layout, const CostPlan& plan) {
  QPainterPath line(layout.together.plot.bottomLeft());
  for (const DayMoney& day : plan.days) {
    line.lineTo(layout.middle(day), line.currentPosition().y());
    line.lineTo(layout.middle(day), layout.together.axis.at(day.together));
  }
  line.lineTo(layout.together.plot.right(), line.currentPosition().y());
  chart.dataLine(line, kTogether, chart.colours().middle);
}

void addFrame(Chart& chart, const Layout& layout, const Money& money, const QString& title,
              const Formatter& format) {
  addGround(chart, money.plot);
  addDayGrid(chart, money.plot, layout.days, format);
  addGrid(chart, money.plot, money.axis, money.ticks);
  addUprightAxis(chart, money.plot, money.axis, money.ticks, title);
}

void addMarked(Chart& chart, const Layout& layout, const core::Project& project, const CostPlan& plan,
               int day, const Formatter& format) {
  if (day < 0 || day >= static_cast<int>(plan.days.size())) return;
  const DayMoney& at = plan.days[static_cast<std::size_t>(day)];
  const QPointF place(layout.middle(at), layout.together.axis.at(at.together));
  chart.line({place.x(), layout.plot().top()}, {place.x(), layout.plot().bottom()}, kMarkLine,
             chart.colours().marked);
  chart.reading(moneyDayReading(project, plan, day, format), QRectF(place, place), layout.together.plot);
}

}  // namespace

void drawMoneyDays(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                   const CostPlan& plan, const Formatter& format, const Style& style,
                   std::optional<int> marked_day) {
  if (mostOnADay(plan) <= 0)
    return drawSentence(painter, box_mm,
                        Text::tr("Enter prices and when the works start to see when money is needed."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, plan, format, chart.type());
  if (layout.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  const auto title = [&](const QString& what) {
    return fittedTitle(moneyTitle(what, project), box_mm, chart.type());
  };
  addFrame(chart, layout, layout.together, title(Text::tr("Money needed up to then")), format);
  addFrame(chart, layout, layout.daily, title(Text::tr("Money needed on the day")), format);
  addBars(chart, layout, plan);
  addTogether(chart, layout, plan);
  chart.line(layout.together.plot.bottomLeft(), layout.together.plot.bottomRight(), kAxisLine,
             chart.colours().ink);
  addDayAxis(chart, layout.daily.plot, layout.days, DayRows::below, format);
  if (marked_day) addMarked(chart, layout, project, plan, *marked_day, format);
  chart.paint(painter);
}

std::optional<int> moneyDayAt(const QRectF& box_mm, QPointF at, const core::Project&, const CostPlan& plan,
                              const Formatter& format, const Style& style) {
  const Layout layout(box_mm, plan, format, Type(style, format));
  if (layout.isEmpty() || !layout.plot().contains(at)) return std::nullopt;
  const auto away = [&](const DayMoney& day) { return std::abs(layout.middle(day) - at.x()); };
  return static_cast<int>(std::ranges::min_element(plan.days, {}, away) - plan.days.begin());
}

}  // namespace ui::drawings
