#include "ui/group/options_strip.h"

#include "ui/group/big_number.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QGridLayout>
#include <QLabel>

namespace ui::group {

namespace {

constexpr int kBetween_px = 16;
constexpr int kMostColumns = 4;  // so many stay readable on a small screen
const QChar kDash(0x2013);

}  // namespace

OptionsStrip::OptionsStrip(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  setObjectName(QStringLiteral("group.options"));
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setVerticalSpacing(0);
}

void OptionsStrip::add(int row, int column, const QString& text, bool strong) {
  auto* label = bigLabel(QStringLiteral("group.option.%1.%2").arg(row).arg(column),
                         strong ? kLeast_pt + 2 : kLeast_pt, this);
  label->setWordWrap(row == 0 && strong);
  label->setText(text);
  grid_->addWidget(label, row, column);
}

void OptionsStrip::show(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  while (QLayoutItem* item = grid_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  if (plan.options.size() < 2)
    return add(0, 0, tr("There are no options yet: the tab Options adds them."), false);
  int column = 1;
  grid_->setHorizontalSpacing(kBetween_px);
  add(1, 0, tr("Holds"), false);
  add(2, 0, tr("Cement"), false);
  add(3, 0, plan.cost ? tr("Cost") : tr("Work"), false);
  for (const core::OptionResult& option : plan.options) {
    if (!option.geometry || column > kMostColumns) continue;
    const auto text = [&](const auto& value, auto&& told) { return value ? told(*value) : QString(kDash); };
    add(0, column, QString::fromStdString(option.letter + "  " + option.name).simplified(), true);
    add(1, column, text(option.full_volume_m3, [&](double v) { return format.litres(v); }), false);
    add(2, column, text(option.cement_bags, [&](double v) { return words::amount(v, "bag", format); }),
        false);
    add(3, column,
        plan.cost ? text(option.cost, [&](double v) { return words::money(v, project, format); })
                  : text(option.person_days,
                         [&](double v) { return format.quantity(v, core::Unit::person_day, 0); }),
        false);
    grid_->setColumnStretch(column++, 1);
  }
}

}  // namespace ui::group
