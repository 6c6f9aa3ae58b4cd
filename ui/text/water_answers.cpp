#include "ui/text/water_sizes.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <vector>

namespace ui::words {
namespace {

using core::kMonths;
using core::water::DaysFrom;
using core::water::MonthFlows;
using core::water::WaterPlan;

constexpr double kLeastSpill_m3 = 0.01;

QString month(std::size_t from_january, const Formatter& format) {
  return format.monthName(static_cast<int>(from_january % kMonths) + 1, QLocale::LongFormat);
}

QString days(int count, const Formatter& format) {
  return format.quantity(count, core::Unit::day, 0);
}

/// Months one after another, the year being a ring.
struct Spell {
  std::size_t first, length;
};

bool isDry(const WaterPlan& plan, std::size_t from_january) {
  return plan.months[from_january % kMonths].dry_days > 0;
}

/// Spells of months with dry days, in the order of the year; one of twelve months when there are no others.
std::vector<Spell> drySpells(const WaterPlan& plan) {
  std::vector<Spell> spells;
  for (std::size_t m = 0; m < kMonths; ++m) {
    if (!isDry(plan, m) || isDry(plan, m + kMonths - 1)) continue;
    std::size_t length = 1;
    while (isDry(plan, m + length)) ++length;
    spells.push_back({m, length});
  }
  if (spells.empty() && isDry(plan, 0)) spells.push_back({0, kMonths});
  return spells;
}

QString spellText(const Spell& spell, const Formatter& format) {
  if (spell.length == 1) return month(spell.first, format);
  return QCoreApplication::translate("ui::words", "%1 to %2")
      .arg(month(spell.first, format), month(spell.first + spell.length - 1, format));
}

QString missingIn(const WaterPlan& plan, const Formatter& format) {
  const std::vector<Spell> spells = drySpells(plan);
  if (spells.empty()) return {};
  QStringList when;
  for (const Spell& spell : spells) when << spellText(spell, format);
  if (spells.size() == 1 && spells[0].length == 1) {
    return QCoreApplication::translate("ui::words", "Where water is missing, it is in %1.").arg(when[0]);
  }
  const auto most = std::ranges::max_element(plan.months, {}, &MonthFlows::dry_days) - plan.months.begin();
  if (spells[0].length == kMonths)
    return QCoreApplication::translate("ui::words", "Water is missing all year round; most often in %1.")
        .arg(month(static_cast<std::size_t>(most), format));
  return QCoreApplication::translate("ui::words", "Where water is missing, it is in %1; most often in %2.")
      .arg(andList(when), month(static_cast<std::size_t>(most), format));
}

QString lasting(const WaterPlan& plan, const Formatter& format) {
  if (plan.lasts.empty()) return {};
  const auto found = std::ranges::min_element(plan.lasts, [](const DaysFrom& a, const DaysFrom& b) {
    return a.days && (!b.days || *a.days < *b.days);
  });
  const QString when = month(static_cast<std::size_t>(found->month), format);
  if (!found->days) {
    return QCoreApplication::translate(
               "ui::words",
               "Full at the start of %1 and with nothing more flowing in, the tank lasts a year or longer.")
        .arg(when);
  }
  return QCoreApplication::translate(
             "ui::words",
             "Full at the start of %1, when it is used up fastest, and with nothing more flowing in, "
             "the tank lasts %2.")
      .arg(when, days(*found->days, format));
}

QString filling(const WaterPlan& plan, const Formatter& format) {
  if (plan.fills.empty()) return {};
  const auto never_last = [](const DaysFrom& a, const DaysFrom& b) {
    return a.days && (!b.days || *a.days < *b.days);
  };
  const auto [quickest, slowest] = std::ranges::minmax_element(plan.fills, never_last);
  if (!quickest->days) {
    return QCoreApplication::translate("ui::words",
                                       "With nothing drawn, an empty tank does not fill within a year.");
  }
  const QString takes = days(*quickest->days, format);
  if (slowest->days == quickest->days) {
    return QCoreApplication::translate("ui::words", "With nothing drawn, an empty tank fills in %1.")
        .arg(takes);
  }
  return QCoreApplication::translate(
             "ui::words", "With nothing drawn, an empty tank fills quickest from the start of %1 on: in %2.")
      .arg(month(static_cast<std::size_t>(quickest->month), format), takes);
}

QString tankWanted(const WaterPlan& plan, const Formatter& format) {
  const MetSize smallest = smallestTank(plan, format);
  if (smallest.kind == MetSize::Kind::none) {
    return QCoreApplication::translate(
               "ui::words",
               "No tank of this depth and batter, up to %1, gives as many good years as "
               "are wanted.")
        .arg(smallest.text);
  }
  if (smallest.kind == MetSize::Kind::any) {
    return QCoreApplication::translate("ui::words",
                                       "Almost any tank gives as many good years as are wanted.");
  }
  return (*plan.smallest_full_m3 <= plan.curve.full_m3
              ? QCoreApplication::translate(
                    "ui::words", "A tank that holds about %1 already gives as many good years as are wanted.")
              : QCoreApplication::translate(
                    "ui::words",
                    "To give as many good years as are wanted, a tank of this depth has to hold about %1."))
      .arg(smallest.text);
}

QString bedsWatered(const WaterPlan& plan, const Formatter& format) {
  if (plan.bed_area_m2 <= 0) return {};
  const MetSize largest = largestBeds(plan, format);
  if (largest.kind == MetSize::Kind::none) {
    return QCoreApplication::translate(
        "ui::words", "With this tank, beds of no size have as many good years as are wanted.");
  }
  if (largest.kind == MetSize::Kind::all_tried) {
    return QCoreApplication::translate(
               "ui::words", "With this tank, even beds of %1 have as many good years as are wanted.")
        .arg(largest.text);
  }
  return QCoreApplication::translate(
             "ui::words",
             "With this tank, beds of up to about %1 have as many good years as are wanted; entered: %2.")
      .arg(largest.text, format.quantity(plan.bed_area_m2, core::Unit::square_metre, 0));
}

QString spill(const WaterPlan& plan, const Formatter& format) {
  if (plan.spill_mean_m3 < kLeastSpill_m3) return {};
  return QCoreApplication::translate("ui::words", "In a mean year about %1 run over unused.")
      .arg(litresWorth(plan.spill_mean_m3, format));
}

}  // namespace

QStringList waterAnswers(const WaterPlan& plan, const Formatter& format) {
  QStringList answers;
  if (plan.year.need() > 0) {
    answers << missingIn(plan, format) << lasting(plan, format) << tankWanted(plan, format)
            << bedsWatered(plan, format);
  }
  answers << filling(plan, format) << spill(plan, format);
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
