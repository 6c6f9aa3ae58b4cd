#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

using core::Carrier;
using core::Project;
using core::cost::Bill;
using core::cost::CostLine;
using core::cost::CostPlan;
using core::cost::DayMoney;

constexpr double kNothing = 0.005;  // less is shown as no money

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString total(const Project& project, const Bill& bill, const Formatter& format) {
  const QString all = money(bill.total, project, format);
  if (bill.own < kNothing) return say(QT_TRANSLATE_NOOP("ui::words", "The tank costs about %1.")).arg(all);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The tank costs about %1: %2 in money, %3 given by the household in goods and work."))
      .arg(all, money(bill.cash, project, format), money(bill.own, project, format));
}

QString missing(const Bill& bill) {
  if (bill.missing.empty()) return {};
  QStringList items;
  for (const std::string& item : bill.missing) items << priceItemName(item);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Not counted, for what they cost or how much of them is needed is not known: "
                               "%1. What is free stands in the price list with a price of 0."))
      .arg(items.join(say(QT_TRANSLATE_NOOP("ui::words", ", "))));
}

QString parts(const Project& project, const Bill& bill, const Formatter& format) {
  struct Part {
    double amount;
    const char* text;
  };
  const std::array all{
      Part{bill.materials, QT_TRANSLATE_NOOP("ui::words", "%1 for materials")},
      Part{bill.labour, QT_TRANSLATE_NOOP("ui::words", "%1 for work")},
      Part{bill.carriage, QT_TRANSLATE_NOOP("ui::words", "%1 for carrying")},
      Part{bill.other, QT_TRANSLATE_NOOP("ui::words", "%1 for other things")},
      Part{bill.contingency, QT_TRANSLATE_NOOP("ui::words", "%1 kept for what nobody foresees")},
  };
  QStringList told;
  for (const Part& part : all) {
    if (part.amount >= kNothing) told << say(part.text).arg(money(part.amount, project, format));
  }
  if (told.size() < 2) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Of that, %1.")).arg(andList(told));
}

QString stored(const Project& project, const CostPlan& plan, const Formatter& format) {
  if (!plan.per_m3_stored) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "For each m³ (%1) that the full tank stores, building costs %2."))
      .arg(format.litres(1), money(*plan.per_m3_stored, project, format));
}

/// Months by name, those in a row from first to last, the year being a ring: "November to May".
QString monthsText(const std::vector<int>& months, const Formatter& format) {
  constexpr int kYear = 12;
  const auto name = [&](int month) { return format.monthName(month % kYear + 1, QLocale::LongFormat); };
  const auto holds = [&](int month) {
    return std::ranges::find(months, (month + kYear) % kYear) != months.end();
  };
  QStringList spells;
  for (int first = 0; first < kYear; ++first) {
    if (!holds(first) || holds(first - 1)) continue;
    int last = first;
    while (holds(last + 1)) ++last;
    spells << (last == first ? name(first)
                             : say(QT_TRANSLATE_NOOP("ui::words", "%1 to %2")).arg(name(first), name(last)));
  }
  return spells.isEmpty() ? say(QT_TRANSLATE_NOOP("ui::words", "all months")) : andList(spells);
}

QString delivered(const Project& project, const CostPlan& plan, const Formatter& format) {
  if (!plan.delivered_m3)
    return say(
        QT_TRANSLATE_NOOP("ui::words",
                          "What the water of the dry months costs cannot be told before the water balance is "
                          "there."));
  if (plan.dry_months.empty())
    return say(QT_TRANSLATE_NOOP(
        "ui::words", "No month counts as dry, so the cost of water in the dry months cannot be told."));
  const QString when = monthsText(plan.dry_months, format);
  if (!plan.per_m3_delivered)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "In the dry months (%1) of a mean year %2 are drawn from the tank; what they cost "
                   "cannot be told."))
        .arg(when, format.litres(*plan.delivered_m3));
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "For each m³ (%1) that it delivers in the dry months (%2), the tank costs %3 over "
                 "its life, interest and upkeep counted; in a mean year it delivers %4 then."))
      .arg(format.litres(1), when, money(*plan.per_m3_delivered, project, format),
           format.litres(*plan.delivered_m3));
}

QString loads(const Bill& bill, const Formatter& format) {
  QStringList told;
  for (const Carrier by : {Carrier::porter, Carrier::mule, Carrier::trolley}) {
    int count = 0;
    double days = 0;
    for (const CostLine& line : bill.lines) {
      if (!line.carriage || line.carriage->by != by) continue;
      count += line.carriage->loads;
      days += line.carriage->days;
    }
    if (count == 0) continue;
    told << say(QT_TRANSLATE_NOOP("ui::words", "%1: %2 (%3 for a single one)"))
                .arg(carrierName(by), format.integer(count),
                     format.quantity(std::ceil(days), core::Unit::day, 0));
  }
  if (told.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Loads to carry: %1."))
      .arg(told.join(say(QT_TRANSLATE_NOOP("ui::words", "; "))));
}

QString split(const Bill& bill, const Formatter& format) {
  QStringList told;
  for (const CostLine& line : bill.lines) {
    if (!line.carriage || line.carriage->loads_per_piece < 2) continue;
    told << say(QT_TRANSLATE_NOOP("ui::words", "%1 (into %2)"))
                .arg(priceItemName(line.item), format.integer(line.carriage->loads_per_piece));
  }
  if (told.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Too heavy for one load and split even: %1.")).arg(andList(told));
}

QString whenMost(const Project& project, const CostPlan& plan, const Formatter& format) {
  const auto needed = [](const DayMoney& day) { return day.goods + day.wages; };
  const auto most = std::ranges::max_element(plan.days, {}, needed);
  if (most == plan.days.end() || needed(*most) < kNothing) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Money is needed first on %1; most on one day is %2, on %3."))
      .arg(format.date(plan.days.front().date), money(needed(*most), project, format),
           format.date(most->date));
}

}  // namespace

QStringList billAnswers(const Project& project, const CostPlan& plan, const Formatter& format) {
  const Bill& bill = plan.bill;
  if (bill.total < kNothing && !bill.missing.empty())
    return {say(
        QT_TRANSLATE_NOOP("ui::words",
                          "No price is entered yet, so nothing is known of the money. Ask the shop and the "
                          "people who work, and enter what one unit costs."))};
  QStringList answers{total(project, bill, format),  missing(bill),
                      stored(project, plan, format), delivered(project, plan, format),
                      parts(project, bill, format),  whenMost(project, plan, format),
                      loads(bill, format),           split(bill, format)};
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
