#include "ui/handouts/ranges_part.h"

#include "core/cost/ranges.h"
#include "ui/drawings/money_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::cost::Driver;
using core::cost::RangesPlan;
using core::cost::Spread;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kLeastShare = 0.005;  // shows as 0 %
constexpr double kPercent = 100;

void addSpreads(Sheet& sheet, const Content& content) {
  Rows rows;
  for (const Spread& spread : content.plan.ranges->spreads) {
    const auto amount = [&](double value) {
      return words::outcomeAmount(value, spread.outcome, content.project, content.format);
    };
    rows.push_back({words::outcomeName(spread.outcome), amount(spread.typical), amount(spread.p10),
                    amount(spread.p50), amount(spread.p90)});
  }
  sheet.table({{Text::tr("What comes of it"), 0.2},
               {Text::tr("As entered"), 0.2, CellAlign::right},
               {Text::tr("P10"), 0.2, CellAlign::right},
               {Text::tr("P50"), 0.2, CellAlign::right},
               {Text::tr("P90"), 0.2, CellAlign::right}},
              rows);
}

QString signedPercent(double percent, const Formatter& format) {
  const QString text = format.quantity(std::abs(percent), Unit::percent, 0);
  return percent < 0 ? QStringLiteral("−") + text : QStringLiteral("+") + text;
}

/// Share of the spread, with the sign of what more of the input does.
QString shareText(const Spread& spread, core::RangedInput input, const Formatter& format) {
  const auto found = std::ranges::find(spread.drivers, input, &Driver::input);
  if (found == spread.drivers.end() || found->share < kLeastShare) return none();
  return signedPercent(kPercent * (found->correlation < 0 ? -found->share : found->share), format);
}

void addDrivers(Sheet& sheet, const Content& content) {
  const auto& spreads = content.plan.ranges->spreads;
  const auto& format = content.format;
  if (spreads.empty()) return;
  std::vector<Column> columns{{Text::tr("Input"), 0.27},
                              {Text::tr("Low"), 0.11, CellAlign::right},
                              {Text::tr("High"), 0.11, CellAlign::right}};
  for (const Spread& spread : spreads)
    columns.push_back(
        {words::outcomeName(spread.outcome), 0.51 / static_cast<double>(spreads.size()), CellAlign::right});
  Rows rows;
  for (const core::InputRange& range : content.project.ranges.inputs) {
    rows.push_back({words::rangedInputName(range.input), signedPercent(range.low_percent, format),
                    signedPercent(range.high_percent, format)});
    for (const Spread& spread : spreads) rows.back().emplace_back(shareText(spread, range.input, format));
  }
  sheet.heading(Text::tr("What drives the spread"));
  addLeadIn(
      sheet,
      Text::tr(
          "Low and high: how far an input may lie from what is entered. Then its share of the spread; +: "
          "more of the input makes more, −: more of it makes less."));
  sheet.table(columns, rows);
}

void addPictures(Sheet& sheet, const Content& content) {
  for (const Spread& spread : content.plan.ranges->spreads) {
    sheet.drawing(drawings::spreadHeight_mm(spread),
                  [&content, &spread](QPainter& painter, const QRectF& box) {
                    drawings::drawSpread(painter, box, content.project, spread, content.format, {});
                  });
    sheet.space(2);
  }
}

}  // namespace

void addRanges(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("How sure the numbers are"));
  if (!content.plan.ranges)
    return sheet.paragraph(Text::tr("The ranges were not drawn when this page was made."), kStrong);
  const RangesPlan& plan = *content.plan.ranges;
  const auto& format = content.format;
  addSentences(sheet, words::rangesAnswers(content.project, plan, format));
  sheet.paragraph(
      Text::tr(
          "%1 draws; each input triangular between low and high about what is entered. 1 draw in 10 is "
          "below P10, half are below P50, 9 in 10 below P90. The draws start with the number %2: the same "
          "number gives the same answer.")
          .arg(format.integer(plan.draws), format.integer(content.project.ranges.seed)));
  addSpreads(sheet, content);
  addDrivers(sheet, content);
  addPictures(sheet, content);
}

}  // namespace ui::handouts
