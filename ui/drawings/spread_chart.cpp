#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/money_axis.h"
#include "ui/drawings/money_charts.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::cost::Driver;
using core::cost::Spread;

constexpr Stroke kPartLine{0.25};
constexpr Stroke kWhole{0.35};
constexpr Stroke kMedian{0.9};
constexpr double kSpreadBar_mm = 4;
constexpr double kShareHatch_mm = 1.2;
constexpr double kPercent = 100;
constexpr double kStretch = 1.3;                      // of the rows where there is room
constexpr double kOutcome_mm = 46, kDriver_mm = 5.5;  // of the picture: alone, and more for each driver

void addBand(Chart& chart, const QRectF& room) {
  chart.fill(rectangle(room), chart.colours().band);
  chart.hatch(rectangle(room), 45, 1.3);
  chart.line(rectangle(room), kPartLine, chart.colours().ink);
}

void addUpright(Chart& chart, const QRectF& room) {
  chart.halo(straight({room.center().x(), room.top()}, {room.center().x(), room.bottom()}),
             kMedian.width_mm + 0.8);
  chart.line({room.center().x(), room.top()}, {room.center().x(), room.bottom()}, kMedian,
             chart.colours().middle);
}

QPainterPath diamond(QPointF at) {
  constexpr double kHalf_mm = 1.3;
  QPainterPath path(at + QPointF(-kHalf_mm, 0));
  path.lineTo(at + QPointF(0, -kHalf_mm));
  path.lineTo(at + QPointF(kHalf_mm, 0));
  path.lineTo(at + QPointF(0, kHalf_mm));
  path.closeSubpath();
  return path;
}

/// @param from, to between which something else stands
void addWhole(Chart& chart, const QRectF& room, double from, double to) {
  QPainterPath path = straight({room.left(), room.center().y()}, {from, room.center().y()});
  path.addPath(straight({to, room.center().y()}, {room.right(), room.center().y()}));
  for (const double x : {room.left(), room.right()})
    path.addPath(straight({x, room.top() + room.height() / 4}, {x, room.bottom() - room.height() / 4}));
  chart.line(path, kWhole, chart.colours().ink);
}

Legend legendOf() {
  return {{Text::tr("8 times in ten"), addBand},
          {Text::tr("half of the times less"), addUpright},
          {Text::tr("all times"),
           [](Chart& chart, const QRectF& room) { addWhole(chart, room, room.right(), room.right()); }},
          {Text::tr("as entered"), [](Chart& chart, const QRectF& room) {
             chart.solid(diamond(room.center()), chart.colours().ink);
           }}};
}

void addShare(Chart& chart, const QRectF& bar, bool lowers) {
  chart.fill(rectangle(bar), lowers ? chart.colours().people : chart.colours().beds);
  if (lowers) chart.hatch(rectangle(bar), -45, kShareHatch_mm);
  chart.line(rectangle(bar), kPartLine, chart.colours().ink);
}

/// A caption over the drivers, and what their hatch says where there is one.
Legend driversLegend(const Spread& spread) {
  Legend legend{{Text::tr("What the spread comes from:")}};
  if (std::ranges::none_of(spread.drivers, [](const Driver& d) { return d.correlation < 0; })) return legend;
  const auto sign = [](bool lowers) {
    return [lowers](Chart& chart, const QRectF& room) { addShare(chart, room, lowers); };
  };
  legend.push_back({Text::tr("raises the outcome", "an input that grows"), sign(false)});
  legend.push_back({Text::tr("lowers the outcome", "an input that grows"), sign(true)});
  return legend;
}

QStringList namesOf(const Spread& spread) {
  QStringList names;
  for (const Driver& driver : spread.drivers) names << words::rangedInputName(driver.input);
  return names;
}

/// Where everything of the chart stands: the bar of the outcome over its axis, the drivers below.
struct Layout {
  Legend legend, drivers_legend;
  QStringList names;
  double wide;
  QRectF plot;
  Axis outcome, share;
  std::vector<Tick> ticks;
  Rows rows;

  Layout(const QRectF& box, const Spread& spread, const Formatter& format, const Type& type)
      : legend(legendOf()), drivers_legend(driversLegend(spread)), names(namesOf(spread)), wide(box.width()) {
    if (spread.outcome.empty()) return;
    const double top = box.top() + legendHeight(legend, box.width(), type) + kGap_mm;
    const double high = type.line() + kSpreadBar_mm + 2 * kGap_mm;
    const double below = kTick_mm + 2 * type.line() + kGap_mm;
    const double caption = legendHeight(drivers_legend, wide, type) + kGap_mm;
    const double least = std::min(spread.least, spread.typical);
    const double most = std::max(spread.most, spread.typical);
    const double spare = most > least ? 0.04 * (most - least) : std::max(1., 0.1 * std::abs(most));
    const QRectF room(QPointF(box.left(), top + high + below + caption), box.bottomRight());
    rows = rowsIn(room, names, 0.5, type, kStretch);
    ticks = ticksAlong(least - spare, most + spare, 0.8 * box.width(), moneyUnit(), format, type.lettering);
    const double aside = widest(ticks, type.lettering) / 2 + 0.5;
    if (top + high + below > box.bottom() || box.width() < 60) return;
    plot = QRectF(box.left() + aside, top, box.width() - 2 * aside, high);
    outcome = Axis(least - spare, most + spare, plot.left(), plot.right());
    const double behind = width_mm(percent(1, format), type.lettering) + 2 * kGap_mm;
    share = Axis(0, std::max(0.01, mostShare(spread)), rows.plot.left(), rows.plot.right() - behind);
  }

  static double mostShare(const Spread& spread) {
    double most = 0;
    for (const Driver& driver : spread.drivers) most = std::max(most, driver.share);
    return most;
  }
  static QString percent(double share, const Formatter& format) {
    return format.quantity(kPercent * share, core::Unit::percent, 0);
  }
  QRectF bar(double from, double to) const {
    return {QPointF(outcome.at(from), plot.bottom() - kGap_mm - kSpreadBar_mm),
            QPointF(outcome.at(to), plot.bottom() - kGap_mm)};
  }
};

void addValue(Chart& chart, const Layout& layout, const core::Project& project, const Spread& spread,
              double value, const Formatter& format) {
  const QString text = words::outcomeAmount(value, spread.outcome, project, format);
  const double half = width_mm(text, chart.lettering()) / 2;
  const double y = layout.bar(value, value).top() - chart.type().line() / 2 - 0.3;
  const double x =
      std::clamp(layout.outcome.at(value), layout.plot.left() + half + 0.1, layout.plot.right() - half - 0.1);
  chart.label(text, {{x, y}}, layout.plot.adjusted(0, -0.5, 0, 0));
}

void addOutcome(Chart& chart, const Layout& layout, const core::Project& project, const Spread& spread,
                const Formatter& format) {
  const QRectF band = layout.bar(spread.p10, spread.p90);
  addWhole(chart, layout.bar(spread.least, spread.most), band.left(), band.right());
  addBand(chart, band);
  addUpright(chart, layout.bar(spread.p50, spread.p50));
  const QPointF typical = layout.bar(spread.typical, spread.typical).center();
  chart.halo(diamond(typical), 0.8);
  chart.solid(diamond(typical), chart.colours().ink);
  for (const double value : {spread.p50, spread.p10, spread.p90})
    addValue(chart, layout, project, spread, value, format);
}

QString titleOf(const Spread& spread, const core::Project& project) {
  const QString name = words::outcomeName(spread.outcome);
  return spread.outcome == "money" ? moneyTitle(name, project) : name;
}

void addPercent(Chart& chart, const Rows& rows, int k, const QString& text, double from_mm) {
  if (!rows.holdsText(chart.type())) return;
  const double x = from_mm + kGap_mm + width_mm(text, chart.lettering()) / 2;
  const QRectF within = rows.plot.adjusted(0, -chart.type().line(), 0, chart.type().line());
  chart.label(text, {{x, rows.row(k).center().y()}}, within);
}

void addDrivers(Chart& chart, const Layout& layout, const Spread& spread, const Formatter& format) {
  if (layout.rows.isEmpty()) return;
  const Rows& rows = layout.rows;
  addGround(chart, rows.plot);
  addLegend(chart, layout.drivers_legend,
            QRectF(rows.names.left(),
                   rows.plot.top() - kGap_mm - legendHeight(layout.drivers_legend, layout.wide, chart.type()),
                   layout.wide, 0));
  for (int k = 0; k < rows.count; ++k) {
    const Driver& driver = spread.drivers[static_cast<std::size_t>(k)];
    const double end = layout.share.at(driver.share);
    if (driver.share > 0) {
      addShare(chart, rows.bar(k, rows.plot.left(), end), driver.correlation < 0);
    }
    addPercent(chart, rows, k, Layout::percent(driver.share, format), end);
  }
  addNames(chart, rows, layout.names, format);
  chart.line(rows.plot.topLeft(), rows.plot.bottomLeft(), kAxisLine, chart.colours().ink);
}

}  // namespace

void drawSpread(QPainter& painter, const QRectF& box_mm, const core::Project& project, const Spread& spread,
                const Formatter& format, const Style& style, std::optional<int> marked_driver) {
  if (spread.outcome.empty())
    return drawSentence(painter, box_mm, Text::tr("How far the numbers may be off is not worked out yet."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, spread, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addOutcome(chart, layout, project, spread, format);
  addLevelAxis(chart, layout.plot, layout.outcome, layout.ticks,
               shortened(titleOf(spread, project), chart.lettering(), layout.plot.width()));
  addDrivers(chart, layout, spread, format);
  if (marked_driver && *marked_driver >= 0 && *marked_driver < layout.rows.count)
    chart.line(rectangle(layout.rows.row(*marked_driver)), kMarkLine, chart.colours().marked);
  chart.paint(painter);
}

double spreadHeight_mm(const Spread& spread) {
  return kOutcome_mm + kDriver_mm * static_cast<double>(spread.drivers.size());
}

std::optional<int> driverAt(const QRectF& box_mm, QPointF at, const core::Project&, const Spread& spread,
                            const Formatter& format, const Style& style) {
  const Layout layout(box_mm, spread, format, Type(style, format));
  return layout.plot.isEmpty() ? std::nullopt : layout.rows.at(at);
}

}  // namespace ui::drawings
