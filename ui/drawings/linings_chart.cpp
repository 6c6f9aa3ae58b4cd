#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/money_axis.h"
#include "ui/drawings/money_charts.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::cost::CostPlan;
using core::cost::LiningCost;

constexpr Stroke kPartLine{0.25};
constexpr double kUpkeepHatch_mm = 1.2;
constexpr double kStretch = 2;  // of the rows where there is room

void addCapital(Chart& chart, const QRectF& bar) {
  chart.solid(rectangle(bar), chart.colours().source);
  chart.line(rectangle(bar), kPartLine, chart.colours().ink);
}

void addUpkeep(Chart& chart, const QRectF& bar) {
  chart.fill(rectangle(bar), chart.colours().animals);
  chart.hatch(rectangle(bar), 45, kUpkeepHatch_mm);
  chart.line(rectangle(bar), kPartLine, chart.colours().ink);
}

Legend legendOf() {
  return {{Text::tr("building it, spread over its life"), addCapital}, {Text::tr("upkeep"), addUpkeep}};
}

double mostOf(const CostPlan& plan) {
  double most = 0;
  for (const LiningCost& lining : plan.linings) most = std::max(most, lining.annual.value_or(0));
  return most;
}

QStringList namesOf(const CostPlan& plan) {
  QStringList names;
  for (const LiningCost& lining : plan.linings) names << words::liningName(lining.lining);
  return names;
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  QStringList names;
  Rows rows;
  Axis money;
  std::vector<Tick> ticks;

  Layout(const QRectF& box, const core::Project& project, const CostPlan& plan, const Formatter& format,
         const Type& type)
      : legend(legendOf()), names(namesOf(plan)) {
    const double to = mostOf(plan);
    if (to <= 0) return;
    const double above = legendHeight(legend, box.width(), type) + kGap_mm;
    const double below = kTick_mm + 2 * type.line() + 0.2;
    const QRectF room = box.adjusted(0, above, 0, -below);
    rows = rowsIn(room, names, 0.5, type, kStretch);
    if (rows.isEmpty()) return;
    double price = 0;  // room for the price behind a bar
    for (const LiningCost& lining : plan.linings)
      price =
          std::max(price, width_mm(words::money(lining.annual.value_or(0), project, format), type.lettering));
    const double end = std::max(rows.plot.center().x(), rows.plot.right() - price - 2 * kGap_mm);
    ticks = ticksAlong(0, to, end - rows.plot.left(), moneyUnit(), format, type.lettering);
    money = Axis(0, to, rows.plot.left(), end);
  }
};

void addPrice(Chart& chart, const Layout& layout, int k, const QString& text, double from_mm) {
  if (!layout.rows.holdsText(chart.type())) return;
  const double half = width_mm(text, chart.lettering()) / 2, y = layout.rows.row(k).center().y();
  const QRectF within = layout.rows.plot.adjusted(0, -chart.type().line(), 0, chart.type().line());
  chart.label(text, {{from_mm + kGap_mm + half, y}}, within);
}

void addLining(Chart& chart, const Layout& layout, const core::Project& project, const LiningCost& lining,
               int k, const Formatter& format) {
  const double zero = layout.money.at(0);
  if (!lining.annual) return addPrice(chart, layout, k, Text::tr("cost not known"), zero);
  const double built = layout.money.at(*lining.annual - lining.upkeep_year);
  const double all = layout.money.at(*lining.annual);
  if (built > zero) addCapital(chart, layout.rows.bar(k, zero, built));
  if (all > built) addUpkeep(chart, layout.rows.bar(k, built, all));
  addPrice(chart, layout, k, words::money(*lining.annual, project, format), all);
}

}  // namespace

void drawLinings(QPainter& painter, const QRectF& box_mm, const core::Project& project, const CostPlan& plan,
                 const Formatter& format, const Style& style, std::optional<int> marked_lining) {
  if (mostOf(plan) <= 0)
    return drawSentence(painter, box_mm,
                        Text::tr("Enter the prices of linings to see what each costs a year."), style);
  Chart chart(style, format);
  const Layout layout(box_mm, project, plan, format, chart.type());
  if (layout.rows.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.rows.plot);
  for (const Tick& tick : layout.ticks) {
    const double x = layout.money.at(tick.value);
    if (tick.value > 0)
      chart.line({x, layout.rows.plot.top()}, {x, layout.rows.plot.bottom()}, kGridLine,
                 chart.colours().grid);
  }
  for (int k = 0; k < layout.rows.count; ++k)
    addLining(chart, layout, project, plan.linings[static_cast<std::size_t>(k)], k, format);
  addNames(chart, layout.rows, layout.names, format);
  chart.line(layout.rows.plot.topLeft(), layout.rows.plot.bottomLeft(), kAxisLine, chart.colours().ink);
  addLevelAxis(
      chart, layout.rows.plot, layout.money, layout.ticks,
      shortened(moneyTitle(Text::tr("Cost a year"), project), chart.lettering(), layout.rows.plot.width()));
  if (marked_lining && *marked_lining >= 0 && *marked_lining < layout.rows.count)
    chart.line(rectangle(layout.rows.row(*marked_lining)), kMarkLine, chart.colours().marked);
  chart.paint(painter);
}

std::optional<int> liningAt(const QRectF& box_mm, QPointF at, const core::Project& project,
                            const CostPlan& plan, const Formatter& format, const Style& style) {
  return Layout(box_mm, project, plan, format, Type(style, format)).rows.at(at);
}

}  // namespace ui::drawings
