#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "ui/drawings/money_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/ranges_part.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::cost::CostPlan;
using core::cost::DayMoney;
using core::cost::LiningCost;
using Rows = std::vector<std::vector<Cell>>;

constexpr std::size_t kLiningsBeside = 5;
constexpr double kNames = 0.175;
constexpr double kLinings_mm = 60, kDays_mm = 95;

QString money(double amount, const Content& content) {
  return words::money(amount, content.project, content.format);
}

QString money(const std::optional<double>& amount, const Content& content) {
  return amount ? money(*amount, content) : none();
}

using LiningText = std::function<QString(const LiningCost&)>;

std::vector<Cell> liningRow(const QString& what, std::span<const LiningCost> linings,
                            const LiningText& text) {
  std::vector<Cell> row{what};
  for (const LiningCost& lining : linings) row.emplace_back(text(lining));
  return row;
}

/// What is reckoned from the price stands only where the price is known.
LiningText known(const std::function<QString(const LiningCost&)>& text) {
  return [text](const LiningCost& lining) { return lining.annual ? text(lining) : none(); };
}

Rows liningRows(std::span<const LiningCost> linings, const Content& content) {
  const auto& format = content.format;
  const auto row = [&](const QString& what, const LiningText& text) {
    return liningRow(what, linings, text);
  };
  Rows rows{
      row(Text::tr("Price of the lining"), [&](const LiningCost& l) { return money(l.price, content); }),
      row(Text::tr("Digging and platform"),
          known([&](const LiningCost& l) { return money(l.earth, content); })),
      row(Text::tr("Capital"), known([&](const LiningCost& l) { return money(l.capital, content); })),
      row(Text::tr("Life"),
          [&](const LiningCost& l) { return format.quantity(l.life_years, Unit::year, 0); }),
      row(Text::tr("Factor"),
          [&](const LiningCost& l) { return format.number(l.recovery, Unit::factor, 4); }),
      row(Text::tr("Upkeep a year"),
          known([&](const LiningCost& l) { return money(l.upkeep_year, content); })),
      row(Text::tr("Cost a year"), [&](const LiningCost& l) { return money(l.annual, content); }),
      row(Text::tr("Cost a year for each m³ held"),
          [&](const LiningCost& l) { return money(l.annual_per_m3, content); })};
  for (std::size_t k = rows.size() - 2; k < rows.size(); ++k)
    for (Cell& cell : rows[k]) cell.strong = true;
  return rows;
}

void addLiningTable(Sheet& sheet, std::span<const LiningCost> linings, const Content& content) {
  std::vector<Column> columns{{Text::tr("Lining"), kNames}};
  for (const LiningCost& lining : linings)
    columns.push_back({words::liningName(lining.lining), (1 - kNames) / kLiningsBeside, CellAlign::right});
  sheet.table(columns, liningRows(linings, content));
}

void addLinings(Sheet& sheet, const Content& content, SourceList& sources) {
  const CostPlan& cost = *content.plan.cost;
  const auto& format = content.format;
  sheet.heading(Text::tr("Linings by what they cost a year"));
  addSentences(sheet, words::liningAnswers(content.project, cost, format));
  if (cost.linings.empty()) return;
  const std::span<const LiningCost> all = cost.linings;
  for (std::size_t k = 0; k < all.size(); k += kLiningsBeside)
    addLiningTable(sheet, all.subspan(k, std::min(kLiningsBeside, all.size() - k)), content);
  sheet.paragraph(
      Text::tr("Soil-cement without a price of its own: materials, their carriage and the work of stone bed, "
               "coats and curing, with %1 for what is not foreseen, as on digging and platform. Other prices "
               "are as entered.")
          .arg(format.quantity(content.project.prices->contingency_percent, Unit::percent, 0)));
  sheet.paragraph(Text::tr("Cost a year = capital × factor + upkeep; factor = i (1 + i)^n / ((1 + i)^n − 1), "
                           "with i interest a year (%1 %2) and n life in years %3.")
                      .arg(format.quantity(content.project.prices->discount_percent, Unit::percent, 1),
                           sources.mark("discount_rate"), sources.mark("capital_recovery")));
  sheet.drawing(kLinings_mm, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawLinings(painter, box, content.project, *content.plan.cost, content.format, {});
  });
}

QString dryMonths(const CostPlan& cost, const Formatter& format) {
  QStringList names;
  for (const int month : cost.dry_months) names << format.monthName(month + 1, QLocale::LongFormat);
  return names.isEmpty() ? Text::tr("none") : names.join(QStringLiteral(", "));
}

void addPerCubicMetre(Sheet& sheet, const Content& content, SourceList& sources) {
  const CostPlan& cost = *content.plan.cost;
  const auto volume = [&](double m3) { return content.format.quantity(m3, Unit::cubic_metre, 1); };
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Cost of a cubic metre"));
  if (cost.per_m3_stored)
    sheet.paragraph(Text::tr("Each m³ held = the whole bill ÷ water when full: %1 ÷ %2 = %3.")
                        .arg(money(cost.bill.total, content), volume(content.plan.tank.full_volume_m3),
                             money(*cost.per_m3_stored, content)));
  else
    sheet.paragraph(Text::tr("Not reckoned while prices are missing."));
  if (cost.per_m3_delivered && cost.annual && cost.delivered_m3)
    sheet.paragraph(
        Text::tr("Each m³ delivered = cost of the whole tank a year (the bill × the factor of soil-cement + "
                 "its upkeep) ÷ water drawn in the dry months of a mean year: %1 ÷ %2 = %3.")
            .arg(money(*cost.annual, content), volume(*cost.delivered_m3),
                 money(*cost.per_m3_delivered, content)));
  if (cost.delivered_m3)
    sheet.paragraph(Text::tr("Dry months, with rain below half of the reference evapotranspiration %1: %2.")
                        .arg(sources.mark("fao_growing_period"), dryMonths(cost, content.format)));
  else
    sheet.paragraph(
        Text::tr("What a m³ delivered costs is not reckoned: whether the water lasts is not asked."));
  sheet.keepTogether(first);
}

std::vector<Cell> dayRow(const std::vector<DayMoney>& days, const DaySpan& span, const Content& content) {
  double goods = 0, wages = 0;
  for (std::size_t k = span.first; k <= span.last; ++k) {
    goods += days[k].goods;
    wages += days[k].wages;
  }
  std::vector<Cell> row{spanText(days[span.first].date, days[span.last].date, content.format),
                        money(goods, content), money(wages, content),
                        money(days[span.last].together, content)};
  row.back().strong = true;
  return row;
}

void addDays(Sheet& sheet, const Content& content) {
  const auto& days = content.plan.cost->days;
  if (days.empty()) return;
  std::vector<core::works::Day> dates;
  for (const DayMoney& day : days) dates.push_back(day.date);
  Rows rows;
  for (const DaySpan& span : daysThenWeeks(dates)) rows.push_back(dayRow(days, span, content));
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Cash needed, first by days, then by weeks"));
  sheet.drawing(kDays_mm, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawMoneyDays(painter, box, content.project, *content.plan.cost, content.format, {});
  });
  sheet.keepTogether(first);
  sheet.space(2);
  sheet.table({{Text::tr("Day or week"), 0.34},
               {Text::tr("Goods and carrying"), 0.22, CellAlign::right},
               {Text::tr("Wages"), 0.2, CellAlign::right},
               {Text::tr("Together so far"), 0.24, CellAlign::right}},
              rows);
}

}  // namespace

void buildMoneyFigures(Sheet& sheet, const Content& content) {
  SourceList sources(content.format);
  addLinings(sheet, content, sources);
  addPerCubicMetre(sheet, content, sources);
  addRanges(sheet, content);
  addDays(sheet, content);
  sources.print(sheet);
}

}  // namespace ui::handouts
