#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>
#include <vector>

namespace ui::words {
namespace {

using core::water::WaterPlan;
using core::water::YearResult;

constexpr int kFewYears = 10;  // fewer are told by their count, not as years in ten

QString days(int count, const Formatter& format) {
  return format.quantity(count, core::Unit::day, 0);
}

int yearsOf(const WaterPlan& plan) {
  return static_cast<int>(plan.years);
}

QString nothingNeeded(const WaterPlan& plan) {
  if (plan.bed_area_m2 > 0) {
    return QCoreApplication::translate("ui::words",
                                       "Rain alone waters the beds; nothing has to be drawn from the tank.");
  }
  return QCoreApplication::translate(
      "ui::words", "Nothing is drawn from the tank yet. Enter beds, animals or people who use its water.");
}

bool isForBedsAlone(const WaterPlan& plan) {
  return plan.year.animals <= 0 && plan.year.people <= 0;
}

QString users(const WaterPlan& plan) {
  QStringList who;
  if (plan.year.beds > 0) who << QCoreApplication::translate("ui::words", "the beds");
  if (plan.year.animals > 0) who << QCoreApplication::translate("ui::words", "the animals");
  if (plan.year.people > 0) who << QCoreApplication::translate("ui::words", "the people");
  return andList(who);
}

/// "8 of 10", rounded down; by count where that would be none, and for a short record: "2 of 3".
std::pair<QString, QString> goodYears(const WaterPlan& plan, const Formatter& format) {
  const int years = yearsOf(plan);
  const int of_ten = plan.years_without_dry_day * 10 / years;
  if (years < kFewYears || of_ten == 0)
    return {format.integer(plan.years_without_dry_day), format.integer(years)};
  return {format.integer(of_ten), format.integer(10)};
}

QString everyYear(const WaterPlan& plan, const Formatter& format) {
  const QString years = format.quantity(yearsOf(plan), core::Unit::year, 0);
  if (isForBedsAlone(plan)) {
    return QCoreApplication::translate("ui::words", "In every year reckoned (%1) the beds stay watered.")
        .arg(years);
  }
  return QCoreApplication::translate("ui::words", "In every year reckoned (%1) there is water for %2.")
      .arg(years, users(plan));
}

QString noYear(const WaterPlan& plan, const Formatter& format) {
  const QString years = format.quantity(yearsOf(plan), core::Unit::year, 0);
  if (isForBedsAlone(plan)) {
    return QCoreApplication::translate("ui::words",
                                       "In no year reckoned (%1) do the beds stay watered all year.")
        .arg(years);
  }
  return QCoreApplication::translate("ui::words", "In no year reckoned (%1) is there water all year for %2.")
      .arg(years, users(plan));
}

QString someYears(const WaterPlan& plan, const Formatter& format) {
  const auto [good, all] = goodYears(plan, format);
  if (isForBedsAlone(plan)) {
    return QCoreApplication::translate("ui::words", "In %1 of %2 years the beds stay watered all year.")
        .arg(good, all);
  }
  return QCoreApplication::translate("ui::words", "In %1 of %2 years there is water all year for %3.")
      .arg(good, all, users(plan));
}

/// Dry days of a year with as many worse as better ones; the worse of two middle ones.
int middleDryDays(const WaterPlan& plan) {
  std::vector<int> dry;
  for (const YearResult& year : plan.each_year) dry.push_back(year.dry_days);
  std::ranges::sort(dry);
  return dry[dry.size() / 2];
}

bool isBetter(const YearResult& a, const YearResult& b) {
  return std::pair(a.dry_days, a.short_m3) < std::pair(b.dry_days, b.short_m3);
}

QString badYears(const WaterPlan& plan, const Formatter& format) {
  const YearResult worst = *std::ranges::max_element(plan.each_year, isBetter);
  const QString short_l = litresWorth(worst.short_m3, format);
  if (yearsOf(plan) == 1) {
    return QCoreApplication::translate("ui::words", "Water is missing on %1, about %2 in all.")
        .arg(days(worst.dry_days, format), short_l);
  }
  QString text =
      QCoreApplication::translate("ui::words", "In the worst of %1 water is missing on %2, about %3 in all.")
          .arg(format.quantity(yearsOf(plan), core::Unit::year, 0), days(worst.dry_days, format), short_l);
  if (const int usual = middleDryDays(plan); usual > 0) {
    text += u' ' + QCoreApplication::translate("ui::words", "In a middling year it is missing on %1.")
                       .arg(days(usual, format));
  }
  return text;
}

}  // namespace

QString waterHeadline(const WaterPlan& plan, const Formatter& format) {
  if (plan.year.need() <= 0) return nothingNeeded(plan);
  if (plan.years_without_dry_day == yearsOf(plan)) return everyYear(plan, format);
  const QString first = plan.years_without_dry_day == 0 ? noYear(plan, format) : someYears(plan, format);
  return first + u' ' + badYears(plan, format);
}

}  // namespace ui::words
