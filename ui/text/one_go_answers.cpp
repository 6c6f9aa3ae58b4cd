#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>
#include <string>

namespace ui::words {
namespace {

using core::works::CoatCheck;
using core::works::SizeForCrew;

constexpr int kSizeDecimals = 2;
constexpr double kSameLength_m = 0.005;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString nameOf(const CoatCheck& check) {
  return layerName("coat_" + std::to_string(check.coat));
}

QString people(int count, const Formatter& format) {
  return format.quantity(count, core::Unit::person, 0);
}

QString minutes(double count, const Formatter& format) {
  return format.quantity(count, core::Unit::minute, 0);
}

QString crew(const CoatCheck& check, const Formatter& format) {
  const char* const text =
      check.is_enough()
          ? QT_TRANSLATE_NOOP(
                "ui::words", "%1 can be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).")
          : QT_TRANSLATE_NOOP(
                "ui::words",
                "%1 cannot be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).");
  return say(text).arg(nameOf(check),
                       format.quantity(check.hours, core::Unit::hour, decimalsFor(check.hours, 0)),
                       people(check.needed, format), masonsAmong(check.masons_needed, format),
                       people(check.people, format), masonsAmong(check.masons, format));
}

QString remedy(const CoatCheck& check, const Formatter& format) {
  if (check.is_enough()) return {};
  if (check.size) return sizeForCrew(*check.size, format);
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "No smaller tank of this depth is found that these people could plaster in one "
                        "go: ask for more people."));
}

QString verdict(const CoatCheck& check, const Formatter& format) {
  const QString more = remedy(check, format);
  return more.isEmpty() ? crew(check, format) : crew(check, format) + u' ' + more;
}

QString batches(const CoatCheck& check, const Formatter& format) {
  const auto an_hour = [&](double count) { return format.number(count, core::Unit::piece, 1); };
  const bool is_fast_enough = check.batches_per_hour_possible >= check.batches_per_hour_needed;
  const QString text =
      say(QT_TRANSLATE_NOOP(
              "ui::words",
              "%1: batches with a whole bag each: %2, which is %3 an hour; the mixing places bring "
              "%4 an hour."))
          .arg(nameOf(check), format.integer(check.batches), an_hour(check.batches_per_hour_needed),
               an_hour(check.batches_per_hour_possible));
  if (is_fast_enough) return text;
  return text + u' ' +
         say(QT_TRANSLATE_NOOP("ui::words", "That is too slow; mixing places needed: %1."))
             .arg(format.integer(check.mixing_places_needed));
}

QString placing(const CoatCheck& check, const Formatter& format) {
  const QString takes = minutes(check.minutes_to_place_batch, format);
  const QString limit = minutes(check.placing_minutes, format);
  if (check.minutes_to_place_batch <= check.placing_minutes)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "%1: a batch is on the wall in %2; it may take %3 before it stiffens."))
        .arg(nameOf(check), takes, limit);
  const QString half = minutes(check.minutes_to_place_half_batch, format);
  if (check.minutes_to_place_half_batch <= check.placing_minutes)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "%1: a batch takes %2 to spread and stiffens after %3. Mix half a bag at a "
                                 "time, which is on the wall in %4."))
        .arg(nameOf(check), takes, limit, half);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "%1: a batch takes %2 to spread and stiffens after %3; even half a bag takes "
                               "%4. More people have to spread."))
      .arg(nameOf(check), takes, limit, half);
}

QString ready(const CoatCheck& check, const Formatter& format) {
  constexpr double kLitres = 1000;
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: have ready %2 of cement, %3 of water for mixing and %4 sacks to cover it."))
      .arg(nameOf(check), amount(std::ceil(check.bags), "bag", format),
           format.litres(check.water_l / kLitres), format.integer(check.sacks));
}

}  // namespace

QString masonsAmong(int count, const Formatter& format) {
  if (count == 1) return say(QT_TRANSLATE_NOOP("ui::words", "one of them a mason"));
  if (count == 0) return say(QT_TRANSLATE_NOOP("ui::words", "none of them a mason"));
  return QCoreApplication::translate("ui::words", "%1 of them masons", nullptr, count)
      .arg(format.integer(count));
}

QString sizeForCrew(const SizeForCrew& size, const Formatter& format) {
  const auto down = [&](double length_m) {
    return format.quantity(toShownStep(length_m, core::Unit::metre, kSizeDecimals, format, Rounding::down),
                           core::Unit::metre, kSizeDecimals);
  };
  const QString holds = litresWorth(size.full_volume_m3, format, Rounding::down);
  if (std::abs(size.length_m - size.width_m) < kSameLength_m)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "These people could plaster a tank of the same depth that is %1 across and "
                                 "holds about %2."))
        .arg(down(size.length_m), holds);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "These people could plaster a tank of the same depth that is %1 long and %2 "
                               "wide and holds about %3."))
      .arg(down(size.length_m), down(size.width_m), holds);
}

QStringList oneGoAnswers(const core::works::Works& works, const Formatter& format) {
  QStringList answers;
  for (const CoatCheck& check : works.coat_checks) answers << verdict(check, format);
  for (const CoatCheck& check : works.coat_checks)
    answers << batches(check, format) << placing(check, format) << ready(check, format);
  return answers;
}

}  // namespace ui::words
