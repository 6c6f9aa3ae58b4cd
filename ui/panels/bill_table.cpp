#include "ui/panels/bill_table.h"

#include "core/plan.h"
#include "ui/text/money_words.h"

#include <QHeaderView>
#include <QScrollBar>
#include <algorithm>

namespace ui {

namespace {

using core::cost::CostLine;

const auto kNone = QStringLiteral("–");

QString loadsText(const CostLine& line, const Formatter& format) {
  if (!line.carriage) return kNone;
  return QStringLiteral("%1 × %2").arg(format.integer(line.carriage->loads),
                                       words::carrierName(line.carriage->by));
}

}  // namespace

BillTable::BillTable(QWidget* parent) : QTableWidget(parent) {
  setObjectName(QStringLiteral("bill.table"));
  setAccessibleName(tr("The bill"));
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setTabKeyNavigation(false);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  verticalHeader()->hide();
}

void BillTable::addLine(const QStringList& cells) {
  const int row = rowCount();
  insertRow(row);
  for (int column = 0; column < cells.size(); ++column) {
    auto* item = new QTableWidgetItem(cells[column]);
    item->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    setItem(row, column, item);
  }
}

void BillTable::show(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const QStringList heads{tr("Item"),  tr("Quantity"), tr("Price"), tr("Amount"),
                          tr("Given"), tr("Paid"),     tr("Loads"), tr("Carriage")};
  setRowCount(0);
  setColumnCount(int(heads.size()));
  setHorizontalHeaderLabels(heads);
  if (!plan.cost) return;
  const auto money = [&](const std::optional<double>& amount) {
    return amount ? words::money(*amount, project, format) : kNone;
  };
  for (const CostLine& line : plan.cost->bill.lines)
    addLine({words::priceItemName(line.item), words::costQuantity(line.quantity, line.unit, format),
             money(line.price), money(line.amount), money(line.own), money(line.cash),
             loadsText(line, format), line.carriage ? money(line.carriage->amount) : kNone});
  const core::cost::Bill& bill = plan.cost->bill;
  const auto sum = [&](const QString& name, double amount, double own, double cash) {
    addLine({name, QString(), QString(), money(amount), money(own), money(cash), QString(), QString()});
  };
  if (bill.carriage > 0) sum(tr("Carriage, together"), bill.carriage, 0, bill.carriage);
  if (bill.contingency > 0) sum(tr("For what is not foreseen"), bill.contingency, 0, bill.contingency);
  sum(tr("All together"), bill.total, bill.own, bill.cash);
  horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  constexpr int kMostRows = 10;
  setFixedHeight(horizontalHeader()->sizeHint().height() + 2 * frameWidth() +
                 std::clamp(rowCount(), 1, kMostRows) * verticalHeader()->defaultSectionSize() +
                 horizontalScrollBar()->sizeHint().height());
}

}  // namespace ui
