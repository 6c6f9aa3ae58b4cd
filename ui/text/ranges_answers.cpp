#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::words {
namespace {

using core::Project;
using core::cost::Driver;
using core::cost::RangesPlan;
using core::cost::Spread;

constexpr double kLeastShare = 0.05;  // of the spread; less is not worth a word
constexpr int kMostDrivers = 3;
constexpr double kPercent = 100;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString middle(const Spread& spread, const Project& project, const Formatter& format) {
  const auto told = [&](double value) { return outcomeAmount(value, spread.outcome, project, format); };
  const QString name = outcomeName(spread.outcome);
  const QString low = told(spread.p10), mid = told(spread.p50), high = told(spread.p90);
  if (low == high) return say(QT_TRANSLATE_NOOP("ui::words", "%1: %2, hardly more or less.")).arg(name, mid);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: %2 in the middle; in one of ten cases more than %3, in one of ten less than %4."))
      .arg(name, mid, high, low);
}

QString asEntered(const Spread& spread, const Project& project, const Formatter& format) {
  const QString typical = outcomeAmount(spread.typical, spread.outcome, project, format);
  if (typical == outcomeAmount(spread.p50, spread.outcome, project, format)) return {};
  return u' ' + say(QT_TRANSLATE_NOOP("ui::words", "With the figures as entered it is %1.")).arg(typical);
}

QString drivers(const Spread& spread, const Formatter& format) {
  QStringList told;
  for (const Driver& driver : spread.drivers) {
    if (driver.share < kLeastShare || told.size() == kMostDrivers) break;
    told << say(QT_TRANSLATE_NOOP("ui::words", "%1 (%2)"))
                .arg(rangedInputName(driver.input),
                     format.quantity(driver.share * kPercent, core::Unit::percent, 0));
  }
  if (told.isEmpty()) return {};
  return u' ' + say(QT_TRANSLATE_NOOP("ui::words", "What moves it most: %1.")).arg(andList(told));
}

}  // namespace

QStringList rangesAnswers(const Project& project, const RangesPlan& plan, const Formatter& format) {
  QStringList answers;
  for (const Spread& spread : plan.spreads)
    answers << middle(spread, project, format) + asEntered(spread, project, format) + drivers(spread, format);
  if (answers.isEmpty())
    return {say(QT_TRANSLATE_NOOP("ui::words", "Nothing has been drawn yet, so no range can be told."))};
  answers << say(QT_TRANSLATE_NOOP(
                     "ui::words",
                     "From %1 draws between the lowest and highest values entered. A range is no "
                     "promise: it is as good as these values."))
                 .arg(format.integer(plan.draws));
  return answers;
}

}  // namespace ui::words
