#include "ui/drawings/money_axis.h"

#include "ui/text/words_table.h"

#include <QCoreApplication>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

}  // namespace

AxisUnit moneyUnit() {
  return {core::Unit::none, 1};
}

QString moneyTitle(const QString& what, const core::Project& project) {
  const QString currency = words::fromCore(project.currency).trimmed();
  return currency.isEmpty() ? what : Text::tr("%1 (%2)", "quantity (unit)").arg(what, currency);
}

}  // namespace ui::drawings
