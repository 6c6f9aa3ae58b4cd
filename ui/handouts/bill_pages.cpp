#include "core/cost/cost_plan.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::cost::Bill;
using core::cost::Carriage;
using core::cost::CostLine;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kSign_mm = 27;  // high enough for a thumb

/// Amounts in the cells of a table, whose title names the currency.
QString bare(double amount, const Formatter& format) {
  static const core::Project kNoCurrency;
  return words::money(amount, kNoCurrency, format);
}

QString bare(const std::optional<double>& amount, const Formatter& format) {
  return amount ? bare(*amount, format) : Text::tr("not known");
}

/// "Amount (Rs)".
QString inCurrency(const QString& title, const Content& content) {
  const QString currency = QString::fromStdString(content.project.currency);
  return currency.isEmpty() ? title : QStringLiteral("%1 (%2)").arg(title, currency);
}

std::vector<Cell> lineRow(const CostLine& item, const Formatter& format) {
  return {words::priceItemName(item.item), words::costQuantity(item.quantity, item.unit, format),
          bare(item.price, format),        bare(item.amount, format),
          bare(item.own, format),          bare(item.cash, format)};
}

void addGroup(Rows& rows, const Bill& bill, const char* group, const QString& name, double sum,
              const Formatter& format) {
  const std::size_t first = rows.size();
  for (const CostLine& item : bill.lines)
    if (item.group == group) rows.push_back(lineRow(item, format));
  if (rows.size() == first) return;
  rows.push_back({name, QString(), QString(), bare(sum, format), QString(), QString()});
  for (Cell& cell : rows.back()) cell.strong = true;
}

void addLines(Sheet& sheet, const Content& content) {
  const Bill& bill = content.plan.cost->bill;
  const auto& format = content.format;
  Rows rows;
  addGroup(rows, bill, "materials", Text::tr("Materials together"), bill.materials, format);
  addGroup(rows, bill, "labour", Text::tr("Wages together"), bill.labour, format);
  addGroup(rows, bill, "other", Text::tr("Other things together"), bill.other, format);
  sheet.table({{Text::tr("For what"), 0.2},
               {Text::tr("How much"), 0.23, CellAlign::right},
               {inCurrency(Text::tr("Price of one"), content), 0.13, CellAlign::right},
               {inCurrency(Text::tr("Amount"), content), 0.15, CellAlign::right},
               {inCurrency(Text::tr("Given"), content), 0.14, CellAlign::right},
               {inCurrency(Text::tr("Cash"), content), 0.15, CellAlign::right}},
              rows);
}

QString loadsText(const Carriage& carriage, const Formatter& format) {
  const QString loads = format.integer(carriage.loads);
  if (carriage.loads_per_piece <= 1) return loads;
  return Text::tr("%1; split each piece into %2").arg(loads, format.integer(carriage.loads_per_piece));
}

void addCarriage(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  Rows rows;
  for (const CostLine& item : content.plan.cost->bill.lines) {
    if (!item.carriage) continue;
    const Carriage& c = *item.carriage;
    rows.push_back({words::priceItemName(item.item), words::carrierName(c.by),
                    format.quantity(c.kg, Unit::kilogram, 0), loadsText(c, format),
                    format.quantity(c.days, Unit::day, 1), bare(c.amount, format)});
  }
  if (rows.empty()) return;
  sheet.heading(Text::tr("Carrying it to the place"));
  sheet.table({{Text::tr("What"), 0.2},
               {Text::tr("By"), 0.14},
               {Text::tr("Weight"), 0.16, CellAlign::right},
               {Text::tr("Loads"), 0.2, CellAlign::right},
               {Text::tr("Days of one carrier"), 0.15, CellAlign::right},
               {inCurrency(Text::tr("Amount"), content), 0.15, CellAlign::right}},
              rows);
}

QString itemOrCarrier(const std::string& name) {
  if (name == "porter") return words::carrierName(core::Carrier::porter);
  if (name == "mule") return words::carrierName(core::Carrier::mule);
  if (name == "trolley") return words::carrierName(core::Carrier::trolley);
  return words::priceItemName(name);
}

void addMissing(Sheet& sheet, const Bill& bill) {
  if (bill.missing.empty()) return;
  QStringList names;
  for (const std::string& item : bill.missing) names << itemOrCarrier(item);
  sheet.paragraph(
      Text::tr("Not in these sums, for the price, the weight or how much is needed is not known: %1.")
          .arg(names.join(QStringLiteral(", "))),
      kStrong);
}

void addSums(Sheet& sheet, const Content& content) {
  const Bill& bill = content.plan.cost->bill;
  const auto& format = content.format;
  const auto money = [&](double amount) { return words::money(amount, content.project, format); };
  const QString share = format.quantity(content.project.prices->contingency_percent, Unit::percent, 0);
  Rows rows{{Text::tr("Materials"), money(bill.materials)},
            {Text::tr("Wages"), money(bill.labour)},
            {Text::tr("Other things"), money(bill.other)},
            {Text::tr("Carrying"), money(bill.carriage)},
            {Text::tr("Put aside for what is not foreseen, %1").arg(share), money(bill.contingency)},
            {Text::tr("All together"), money(bill.total)},
            {Text::tr("Of it given in work and kind"), money(bill.own)},
            {Text::tr("Of it in cash"), money(bill.cash)}};
  for (std::size_t k = rows.size() - 3; k < rows.size(); ++k)
    for (Cell& cell : rows[k]) cell.strong = true;
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("All together"));
  addMissing(sheet, bill);
  sheet.table({{Text::tr("What"), 0.62}, {Text::tr("Amount"), 0.38, CellAlign::right}}, rows);
  sheet.keepTogether(first);
}

void drawSignRow(QPainter& painter, QPointF at, const QString& who, const std::vector<double>& edges) {
  drawLines(painter, at + QPointF(1.2, 1.2), wrapped(who, kStrong, edges[1] - 2.4), kStrong);
  painter.setPen(line(0.5));
  painter.setBrush(Qt::NoBrush);
  for (std::size_t k = 1; k < edges.size(); ++k)
    painter.drawRect(QRectF(at + QPointF(edges[k - 1], 0), at + QPointF(edges[k], kSign_mm)));
}

/// Who says yes to the bill: a box for the name, one for a signature, one for a thumb.
void addSignatures(Sheet& sheet) {
  const double w = sheet.width() - 0.6;
  const std::vector<double> edges{0.3, 0.27 * w, 0.54 * w, 0.8 * w, w};
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Agreed"));
  sheet.table({{Text::tr("For"), 0.27},
               {Text::tr("Name and date"), 0.27},
               {Text::tr("Signature"), 0.26},
               {Text::tr("or thumb"), 0.2}},
              {});
  for (const QString& who : {Text::tr("the household or group"), Text::tr("masons and labourers"),
                             Text::tr("who pays a share"), Text::tr("a witness")})
    sheet.add(
        {kSign_mm, [who, edges](QPainter& painter, QPointF at) { drawSignRow(painter, at, who, edges); }});
  sheet.keepTogether(first);
}

}  // namespace

void buildMoneyBill(Sheet& sheet, const Content& content) {
  addSentences(sheet, words::billAnswers(content.project, *content.plan.cost, content.format));
  addLines(sheet, content);
  addCarriage(sheet, content);
  addSums(sheet, content);
  addSignatures(sheet);
}

}  // namespace ui::handouts
