#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/money_axis.h"
#include "ui/drawings/money_charts.h"
#include "ui/text/money_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QLineF>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::compare::Candidate;
using core::compare::SearchResult;

constexpr double kMostYears = 10;
constexpr Stroke kCurve{0.5};
constexpr Stroke kTarget{0.5, 3, 1.2};
constexpr double kDot_mm = 0.8;    // radius
constexpr double kRing_mm = 1.5;   // radius
constexpr double kCross_mm = 2.8;  // half its patch
constexpr double kSpare = 0.06;    // of the range, on both sides

/// What the two axes show of a candidate; absent when it is not known.
struct Measures {
  bool by_cost, by_years;

  explicit Measures(const SearchResult& result)
      : by_cost(result.by_cost), by_years(std::ranges::all_of(result.frontier, [](const Candidate& c) {
          return c.years_in_ten.has_value();
        })) {}
  std::optional<double> price(const Candidate& c) const {
    return by_cost ? c.cost : std::optional(c.cement_bags);
  }
  std::optional<double> worth(const Candidate& c) const {
    return by_years ? c.years_in_ten : std::optional(c.full_volume_m3);
  }
  bool shows(const std::optional<Candidate>& c) const { return c && price(*c) && worth(*c); }
};

/// Least and most of some values, with spare on both sides but not below nothing.
struct Range {
  double least = 0, most = 0;

  Range(const std::vector<double>& values) {
    least = *std::ranges::min_element(values);
    most = *std::ranges::max_element(values);
    const double spare = most > least ? kSpare * (most - least) : std::max(0.5, 0.1 * most);
    least = std::max(0., least - spare);
    most += spare;
  }
};

std::vector<Candidate> shownOf(const Measures& measures, const SearchResult& result,
                               const std::optional<Candidate>& present) {
  std::vector<Candidate> list;
  for (const Candidate& candidate : result.frontier) {
    if (measures.shows(candidate)) list.push_back(candidate);
  }
  if (measures.shows(present)) list.push_back(*present);
  return list;
}

/// Where everything of the chart stands.
struct Layout {
  Measures measures;
  AxisUnit worth_unit;
  QRectF plot;
  Axis price, worth;
  std::vector<Tick> price_ticks, worth_ticks;

  Layout(const QRectF& box, const SearchResult& result, const std::optional<Candidate>& present,
         const Formatter& format, const Type& type)
      : measures(result) {
    if (result.frontier.empty()) return;
    const double high = plotHeight(box, {}, true, type), line = type.line() + kGap_mm;
    if (high <= 2 * line) return;
    std::vector<double> prices, worths;
    for (const Candidate& candidate : shownOf(measures, result, present)) {
      prices.push_back(*measures.price(candidate));
      worths.push_back(*measures.worth(candidate));
    }
    if (prices.empty()) return;
    const Range across(prices), up = measures.by_years ? Range({0, kMostYears}) : Range(worths);
    worth_unit = measures.by_years ? yearsUnit() : volumeUnit(up.most);
    const double top = measures.by_years ? kMostYears : up.most;
    worth_ticks = ticksUp(up.least, top, high - line, worth_unit, format, type);
    const double left = leftMargin(worth_ticks, type.lettering);
    price_ticks =
        ticksAlong(across.least, across.most, box.width() - 1.5 * left, moneyUnit(), format, type.lettering);
    plot = plotRoom(box, {}, {left, widest(price_ticks, type.lettering) / 2 + 0.5, true}, type);
    price = Axis(across.least, across.most, plot.left(), plot.right());
    worth = Axis(up.least, up.least + (top - up.least) * high / (high - line), plot.bottom(), plot.top());
  }

  QPointF at(const Candidate& c) const {
    return {price.at(*measures.price(c)), worth.at(*measures.worth(c))};
  }
  bool holds(const std::optional<Candidate>& c) const {
    return measures.shows(c) && price.holds(*measures.price(*c)) && worth.holds(*measures.worth(*c));
  }
};

void addFrontier(Chart& chart, const Layout& layout, const SearchResult& result) {
  QPainterPath line, dots;
  for (const Candidate& candidate : result.frontier) {
    if (!layout.measures.shows(candidate)) continue;
    const QPointF at = layout.at(candidate);
    if (line.elementCount() == 0) line.moveTo(at);
    line.lineTo(at);
    dots.addEllipse(at, kDot_mm, kDot_mm);
  }
  chart.dataLine(line, kCurve, chart.colours().middle);
  dots.setFillRule(Qt::WindingFill);
  chart.solid(dots, chart.colours().middle);
}

void addTarget(Chart& chart, const Layout& layout, double target) {
  if (!layout.measures.by_years || target <= 0) return;
  const double y = layout.worth.at(target);
  chart.dataLine(straight({layout.plot.left(), y}, {layout.plot.right(), y}), kTarget, chart.colours().ink);
}

void addTargetName(Chart& chart, const Layout& layout, double target, const Formatter& format) {
  if (!layout.measures.by_years || target <= 0) return;
  const double y = layout.worth.at(target);
  const QString name = Text::tr("target %1").arg(words::yearsInTenText(target, format));
  const double half = width_mm(name, chart.lettering()) / 2 + kGap_mm, up = chart.type().line() / 2 + 0.3;
  const double left = layout.plot.left() + half, right = layout.plot.right() - half;
  chart.label(name, {{left, y - up}, {right, y + up}, {right, y - up}, {left, y + up}}, layout.plot);
}

void addName(Chart& chart, const Layout& layout, QPointF at, const QString& name, double sign_mm) {
  const double half = width_mm(name, chart.lettering()) / 2 + 0.2, up = chart.type().line() / 2 + sign_mm;
  const QRectF& plot = layout.plot;
  const double x = std::clamp(at.x(), plot.left() + half, std::max(plot.left() + half, plot.right() - half));
  std::vector<QPointF> places;
  for (const double rows : {1.05, 1.6, 2.2, 3.}) {
    for (const double aside : {0., -half, half}) {
      places.emplace_back(x + aside, at.y() - rows * up);
      places.emplace_back(x + aside, at.y() + rows * up);
    }
    places.emplace_back(at.x() - half - rows * sign_mm - kGap_mm, at.y());
    places.emplace_back(at.x() + half + rows * sign_mm + kGap_mm, at.y());
  }
  chart.label(name, places, plot);
}

/// A ring about one candidate of the frontier.
void addRing(Chart& chart, const Layout& layout, const std::optional<Candidate>& candidate) {
  if (!layout.holds(candidate)) return;
  QPainterPath ring;
  ring.addEllipse(layout.at(*candidate), kRing_mm, kRing_mm);
  chart.dataLine(ring, kSignLine, chart.colours().ink);
}

/// The present tank, the cheapest and the largest one: all signs first, so that no name covers one.
void addStanding(Chart& chart, const Layout& layout, const SearchResult& result,
                 const std::optional<Candidate>& present) {
  const bool has_largest = layout.holds(result.largest) && result.largest != result.cheapest;
  addRing(chart, layout, result.cheapest);
  if (has_largest) addRing(chart, layout, result.largest);
  if (layout.holds(present)) {
    addPresentSign(chart, layout.at(*present), layout.plot);
    addName(chart, layout, layout.at(*present), Text::tr("this tank"), kCross_mm);
  }
  if (has_largest) addName(chart, layout, layout.at(*result.largest), Text::tr("most water"), kRing_mm);
  if (layout.holds(result.cheapest))
    addName(chart, layout, layout.at(*result.cheapest),
            result.by_cost ? Text::tr("cheapest that meets the target")
                           : Text::tr("fewest bags that meet the target"),
            kRing_mm);
}

void addMarked(Chart& chart, const Layout& layout, const core::Project& project, const SearchResult& result,
               int k, const Formatter& format) {
  if (k < 0 || k >= static_cast<int>(result.frontier.size())) return;
  const Candidate& candidate = result.frontier[static_cast<std::size_t>(k)];
  if (!layout.measures.shows(candidate)) return;
  const QPointF at = layout.at(candidate);
  chart.line({at.x(), layout.plot.top()}, {at.x(), layout.plot.bottom()}, kMarkLine, chart.colours().marked);
  chart.reading(words::candidateText(project, candidate, format), QRectF(at, at), layout.plot);
}

void addAxes(Chart& chart, const Layout& layout, const QRectF& box_mm, const core::Project& project,
             const Formatter& format) {
  const QString up = layout.measures.by_years
                         ? Text::tr("Years in ten in which the water lasts")
                         : axisTitle(Text::tr("Water when the tank is full"), layout.worth_unit, format);
  addUprightAxis(chart, layout.plot, layout.worth, layout.worth_ticks, fittedTitle(up, box_mm, chart.type()));
  const QString across =
      layout.measures.by_cost ? moneyTitle(Text::tr("Cost"), project) : Text::tr("Bags of cement");
  addLevelAxis(chart, layout.plot, layout.price, layout.price_ticks,
               shortened(across, chart.lettering(), layout.plot.width()));
}

}  // namespace

void drawFrontier(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                  const SearchResult& result, const std::optional<Candidate>& present,
                  const Formatter& format, const Style& style, std::optional<int> marked) {
  if (result.frontier.empty())
    return drawSentence(painter, box_mm,
                        result.tried > 0 ? Text::tr("No size is within the limits.")
                                         : Text::tr("Search the sizes to see which are worth their price."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, result, present, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addGround(chart, layout.plot);
  addGrid(chart, layout.plot, layout.worth, layout.worth_ticks);
  addFrontier(chart, layout, result);
  addAxes(chart, layout, box_mm, project, format);
  addTarget(chart, layout, result.target_years_in_ten);
  addStanding(chart, layout, result, present);
  addTargetName(chart, layout, result.target_years_in_ten, format);
  if (marked) addMarked(chart, layout, project, result, *marked, format);
  chart.paint(painter);
}

std::optional<int> frontierAt(const QRectF& box_mm, QPointF at, const core::Project&,
                              const SearchResult& result, const std::optional<Candidate>& present,
                              const Formatter& format, const Style& style) {
  const Layout layout(box_mm, result, present, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  std::optional<int> nearest;
  double least = 0;
  for (std::size_t k = 0; k < result.frontier.size(); ++k) {
    if (!layout.measures.shows(result.frontier[k])) continue;
    const double away = QLineF(at, layout.at(result.frontier[k])).length();
    if (!nearest || away < least) {
      nearest = static_cast<int>(k);
      least = away;
    }
  }
  return nearest;
}

}  // namespace ui::drawings
