#include "ui/drawings/money_charts.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::Unit;
using core::cost::DayMoney;
using core::cost::Driver;
using core::cost::LiningCost;

constexpr double kPercent = 100;
constexpr double kNoWay = 0.05;  // a weaker correlation is not called rising or falling

bool has(int index, std::size_t size) {
  return index >= 0 && index < static_cast<int>(size);
}

QString wayOf(const Driver& driver) {
  if (std::abs(driver.correlation) < kNoWay) return {};
  return QLatin1String("; ") + (driver.correlation > 0
                                    ? Text::tr("when it rises, the outcome rises", "of an input")
                                    : Text::tr("when it rises, the outcome falls", "of an input"));
}

}  // namespace

QString moneyDayReading(const core::Project& project, const core::cost::CostPlan& plan, int day,
                        const Formatter& format) {
  if (!has(day, plan.days.size())) return {};
  const DayMoney& at = plan.days[static_cast<std::size_t>(day)];
  const auto money = [&](double amount) { return words::money(amount, project, format); };
  QStringList parts;
  if (at.goods > 0) parts << Text::tr("goods and carrying %1", "amount of money").arg(money(at.goods));
  if (at.wages > 0) parts << Text::tr("wages %1", "amount of money").arg(money(at.wages));
  parts << Text::tr("together up to then %1", "amount of money").arg(money(at.together));
  return Text::tr("%1: %2", "date: amounts").arg(format.date(at.date), parts.join(QStringLiteral(", ")));
}

QString liningReading(const core::Project& project, const core::cost::CostPlan& plan, int lining,
                      const Formatter& format) {
  if (!has(lining, plan.linings.size())) return {};
  const LiningCost& at = plan.linings[static_cast<std::size_t>(lining)];
  const QString name = words::liningName(at.lining);
  if (!at.annual) return Text::tr("%1: cost not known", "lining").arg(name);
  const auto money = [&](double amount) { return words::money(amount, project, format); };
  const bool whole = std::abs(at.life_years - std::round(at.life_years)) < 0.05;
  QString text = Text::tr("%1: %2 a year (building it %3, upkeep %4), lasts %5", "lining: amounts, years")
                     .arg(name, money(*at.annual), money(at.capital * at.recovery), money(at.upkeep_year),
                          format.quantity(at.life_years, Unit::year, whole ? 0 : 1));
  if (at.annual_per_m3)
    text +=
        QLatin1String("; ") + Text::tr("%1 a year for each %2", "amount of money, volume")
                                  .arg(money(*at.annual_per_m3), format.quantity(1, Unit::cubic_metre, 0));
  return text;
}

QString driverReading(const core::cost::Spread& spread, int driver, const Formatter& format) {
  if (!has(driver, spread.drivers.size())) return {};
  const Driver& at = spread.drivers[static_cast<std::size_t>(driver)];
  return Text::tr("%1: %2 of the spread", "input, percentage")
             .arg(words::rangedInputName(at.input), format.quantity(kPercent * at.share, Unit::percent, 0)) +
         wayOf(at);
}

}  // namespace ui::drawings
