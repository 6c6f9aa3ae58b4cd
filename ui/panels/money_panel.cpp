#include "ui/panels/money_panel.h"

#include "ui/document/document.h"
#include "ui/drawings/money_charts.h"
#include "ui/panels/bill_table.h"
#include "ui/panels/screen_style.h"
#include "ui/text/money_words.h"
#include "ui/widgets/row_table.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

using core::cost::CostPlan;
using core::cost::Spread;

constexpr int kLeastChart_px = 230;
constexpr int kPriceRows = 8;
constexpr int kFewRows = 5;

CellChoices itemChoices() {
  CellChoices all;
  for (const core::PriceItem& item : core::usualItems())
    all << qMakePair(QString::fromStdString(item.item), words::priceItemName(item.item));
  all << qMakePair(QStringLiteral("water"), words::priceItemName("water"));
  return all;
}

}  // namespace

MoneyPanel::MoneyPanel(Document& document, QWidget* parent)
    : PagedPanel(document, QStringLiteral("money_panel"), parent) {
  setQuestion(
      tr("What does it cost, and who gives what?"), tr("Plan the money"),
      [this] { return this->document().plan().cost.has_value(); },
      [](core::Project& project) { project.prices.emplace(); });
  makeBillPage();
  makeDaysPage();
  makeLiningsPage();
  makeRangesPage();
  refresh();
}

const CostPlan& MoneyPanel::cost() const {
  static const CostPlan none;
  return document().plan().cost ? *document().plan().cost : none;
}

const Spread& MoneyPanel::spread() const {
  static const Spread none;
  const auto& ranges = document().plan().ranges;
  if (!ranges) return none;
  for (const Spread& s : ranges->spreads) {
    if (QString::fromStdString(s.outcome) == outcome_->currentData().toString()) return s;
  }
  return none;
}

void MoneyPanel::makeBillPage() {
  QVBoxLayout* layout = addPage(tr("Bill"));
  addAnswers(
      QStringLiteral("bill"), [this] { return words::billAnswers(document().project(), cost(), format()); },
      "bill");
  bill_ = new BillTable(this);
  layout->addWidget(bill_);
  RowTable* prices =
      addTable("prices.items", tr("Prices. A quantity that is left empty comes from the plan."), kPriceRows);
  prices->setChoices("prices.items[].item", itemChoices);
  const auto button = [&](const QString& name, const QString& text, auto signal) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(idOf(name));
    connect(made, &QPushButton::clicked, this, signal);
    prices->buttons()->insertWidget(prices->buttons()->count() - 1, made);
  };
  button(QStringLiteral("read_district"), tr("Read a district file…"), &MoneyPanel::readDistrictWanted);
  button(QStringLiteral("write_district"), tr("Write a district file…"), &MoneyPanel::writeDistrictWanted);
  layout->addStretch();
}

void MoneyPanel::makeDaysPage() {
  addPage(tr("Money by day"));
  Chart chart;
  chart.name = tr("Money needed on each day");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> day) {
    drawings::drawMoneyDays(painter, box, document().project(), cost(), format(), screenStyle(isDark()), day);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::moneyDayAt(box, at, document().project(), cost(), format(), screenStyle(isDark()));
  };
  chart.reading = [this](int day) {
    return drawings::moneyDayReading(document().project(), cost(), day, format());
  };
  chart.places = [this] { return int(cost().days.size()); };
  addChart(QStringLiteral("money_days"), std::move(chart), kLeastChart_px);
}

void MoneyPanel::makeLiningsPage() {
  addPage(tr("Linings"));
  addAnswers(
      QStringLiteral("linings"),
      [this] {
        const QStringList all = words::liningAnswers(document().project(), cost(), format());
        return all.mid(0, 1) + all.mid(std::max<qsizetype>(1, all.size() - 1));  // the rest is the chart
      },
      "linings");
  Chart chart;
  chart.name = tr("Linings by what they cost a year");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> lining) {
    drawings::drawLinings(painter, box, document().project(), cost(), format(), screenStyle(isDark()),
                          lining);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::liningAt(box, at, document().project(), cost(), format(), screenStyle(isDark()));
  };
  chart.reading = [this](int lining) {
    return drawings::liningReading(document().project(), cost(), lining, format());
  };
  chart.places = [this] { return int(cost().linings.size()); };
  addChart(QStringLiteral("linings"), std::move(chart), kLeastChart_px);
  addTable("prices.linings",
           tr("Price of the lining alone, digging left out. For soil-cement an empty price is reckoned "
              "from the bill and the works."),
           kFewRows);
}

void MoneyPanel::makeRangesPage() {
  QVBoxLayout* layout = addPage(tr("How sure is it?"));
  addAnswers(
      QStringLiteral("ranges"),
      [this] {
        const auto& ranges = document().plan().ranges;
        return ranges ? words::rangesAnswers(document().project(), *ranges, format())
                      : QStringList{tr("Being reckoned…")};
      },
      "ranges");
  outcome_ = new QComboBox(this);
  outcome_->setObjectName(idOf(QStringLiteral("outcome")));
  outcome_->setAccessibleName(tr("What the chart is about"));
  layout->addWidget(outcome_, 0, Qt::AlignLeft);
  Chart chart;
  chart.name = tr("Spread of one outcome and what drives it");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> driver) {
    drawings::drawSpread(painter, box, document().project(), spread(), format(), screenStyle(isDark()),
                         driver);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::driverAt(box, at, document().project(), spread(), format(), screenStyle(isDark()));
  };
  chart.reading = [this](int driver) { return drawings::driverReading(spread(), driver, format()); };
  chart.places = [this] { return int(spread().drivers.size()); };
  chart.height_mm = [this] { return drawings::spreadHeight_mm(spread()); };
  spread_ = addChart(QStringLiteral("spread"), std::move(chart), kLeastChart_px);
  connect(outcome_, &QComboBox::currentIndexChanged, this, [this] { spread_->changed(); });
  addTable("ranges.inputs", tr("How far each may lie from the value in force"), kFewRows);
}

void MoneyPanel::showOutcomes() {
  const auto& ranges = document().plan().ranges;
  if (!ranges) return;
  const QSignalBlocker quiet(outcome_);
  const QString chosen = outcome_->currentData().toString();
  outcome_->clear();
  for (const Spread& s : ranges->spreads)
    outcome_->addItem(words::outcomeName(s.outcome), QString::fromStdString(s.outcome));
  outcome_->setCurrentIndex(std::max(0, outcome_->findData(chosen)));
  spread_->changed();
}

void MoneyPanel::refreshMore() {
  if (bill_ != nullptr) bill_->show(document().project(), document().plan(), format());
  if (spread_ != nullptr) showOutcomes();
}

}  // namespace ui
