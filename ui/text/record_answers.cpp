#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <optional>
#include <string_view>

namespace ui::words {
namespace {

using core::works::Calibration;
using core::works::Measured;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString recordCount(int count, const Formatter& format) {
  return QCoreApplication::translate("ui::words", "%1 records", nullptr, count).arg(format.integer(count));
}

QString measuredText(std::string_view work, const Measured& m, const Formatter& format) {
  const auto figure = [&](double value) { return recordedAmount(value, work, format); };
  if (m.count == 1)
    return say(QT_TRANSLATE_NOOP("ui::words", "%1: one record, %2; entered is %3."))
        .arg(recordedName(work), figure(m.median), figure(m.entered));
  return say(QT_TRANSLATE_NOOP("ui::words", "%1: %2, the middle one %3, from %4 to %5; entered is %6."))
      .arg(recordedName(work), recordCount(m.count, format), figure(m.median), figure(m.least),
           figure(m.most), figure(m.entered));
}

QString inForce(const Calibration& calibration) {
  if (calibration.in_force)
    return say(
        QT_TRANSLATE_NOOP("ui::words",
                          "The plan is reckoned with the middle values of the records, not with the figures "
                          "entered."));
  return say(QT_TRANSLATE_NOOP(
      "ui::words", "The plan is reckoned with the figures entered; the records stand beside them."));
}

}  // namespace

QStringList recordAnswers(const core::Plan& plan, const Formatter& format) {
  const Calibration& c = plan.calibration;
  QStringList answers;
  const auto tell = [&](std::string_view work, const std::optional<Measured>& measured) {
    if (measured) answers << measuredText(work, *measured, format);
  };
  tell("dry_to_wet", c.dry_to_wet);
  tell("digging", c.digging);
  tell("ramming", c.ramming);
  tell("stone_bed", c.stone_bed);
  tell("spreading", c.spreading);
  tell("mixing", c.mixing);
  if (answers.isEmpty())
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No records yet. Mix one batch and measure the face that it covers, or "
                                  "write down how many people took how "
                                  "many days for a piece of work: the order of cement and the dates then "
                                  "follow your own sand, soil and "
                                  "people."))};
  answers.prepend(inForce(c));
  return answers;
}

}  // namespace ui::words
