#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr std::string_view kDigging = "digging.";

constexpr std::array kRates{
    Entry{"digging.practice", QT_TRANSLATE_NOOP("ui::words", "digging, as reported from practice")},
    Entry{"digging.norm", QT_TRANSLATE_NOOP("ui::words", "digging, by the district's norm")},
    Entry{"clearing", QT_TRANSLATE_NOOP("ui::words", "clearing the ground")},
    Entry{"set_out", QT_TRANSLATE_NOOP("ui::words", "setting out")},
    Entry{"topsoil", QT_TRANSLATE_NOOP("ui::words", "stripping topsoil")},
    Entry{"ramming", QT_TRANSLATE_NOOP("ui::words", "filling and ramming")},
    Entry{"carrying.10", QT_TRANSLATE_NOOP("ui::words", "carrying spoil up to 10 m")},
    Entry{"carrying.20", QT_TRANSLATE_NOOP("ui::words", "carrying spoil up to 20 m")},
    Entry{"carrying.50", QT_TRANSLATE_NOOP("ui::words", "carrying spoil up to 50 m")},
    Entry{"trimming", QT_TRANSLATE_NOOP("ui::words", "trimming walls and floor")},
    Entry{"pipe_laying", QT_TRANSLATE_NOOP("ui::words", "laying pipe")},
    Entry{"stone_bed", QT_TRANSLATE_NOOP("ui::words", "laying the stone bed")},
    Entry{"plaster", QT_TRANSLATE_NOOP("ui::words", "plastering one coat")},
    Entry{"mixing", QT_TRANSLATE_NOOP("ui::words", "mixing mortar")},
    Entry{"wetting", QT_TRANSLATE_NOOP("ui::words", "keeping sacks wet")},
    Entry{"filling", QT_TRANSLATE_NOOP("ui::words", "watching the first filling")},
    Entry{"leak_test", QT_TRANSLATE_NOOP("ui::words", "testing for leaks")},
    Entry{"fence", QT_TRANSLATE_NOOP("ui::words", "building the fence")},
    Entry{"silt_trap", QT_TRANSLATE_NOOP("ui::words", "building the silt trap")},
    Entry{"overflow", QT_TRANSLATE_NOOP("ui::words", "building the overflow")},
    Entry{"planting", QT_TRANSLATE_NOOP("ui::words", "planting the beds")},
};

constexpr std::string_view kDryToWet = "dry_to_wet";

constexpr std::array kRecorded{
    Entry{"digging", QT_TRANSLATE_NOOP("ui::words", "Digging")},
    Entry{"ramming", QT_TRANSLATE_NOOP("ui::words", "Ramming fill")},
    Entry{"stone_bed", QT_TRANSLATE_NOOP("ui::words", "Laying the stone bed")},
    Entry{"spreading", QT_TRANSLATE_NOOP("ui::words", "Spreading plaster")},
    Entry{"mixing", QT_TRANSLATE_NOOP("ui::words", "Mixing mortar")},
};

QString jobs(double quantity, const Formatter& format) {
  const bool is_whole = quantity == std::floor(quantity);
  const int count = int(std::ceil(quantity));
  const QString pattern = quantity == 1 ? QCoreApplication::translate("ui::words", "%1 job")
                                        : QCoreApplication::translate("ui::words", "%1 jobs", nullptr, count);
  return QString(pattern)
      .replace(u' ', QChar::Nbsp)
      .arg(format.number(quantity, core::Unit::none, is_whole ? 0 : 1));
}

QString partOfADay(int quarters) {
  if (quarters == 1) return QCoreApplication::translate("ui::words", "a quarter of a day");
  if (quarters == 2) return QCoreApplication::translate("ui::words", "half a day");
  return QCoreApplication::translate("ui::words", "three quarters of a day");
}

}  // namespace

QString rateName(std::string_view key) {
  if (key.starts_with(kDigging) && !has(kRates, key))
    return QCoreApplication::translate("ui::words", "digging, %1")
        .arg(choiceLabel("site.soil", key.substr(kDigging.size())));
  return lookUp(kRates, key, "rate");
}

QString recordedName(std::string_view work) {
  return work == kDryToWet ? fieldLabel("lining.dry_to_wet") : lookUp(kRecorded, work, "record");
}

QString recordedAmount(double value, std::string_view work, const Formatter& format) {
  if (work == kDryToWet) return format.number(value, core::Unit::factor, 2);
  const bool is_by_face = work == "spreading";
  return format.quantity(value, is_by_face ? core::Unit::person_day_per_m2 : core::Unit::person_day_per_m3,
                         2);
}

QString workAmount(double quantity, std::string_view unit, const Formatter& format) {
  if (unit == "m3") return format.quantity(quantity, core::Unit::cubic_metre, 1);
  if (unit == "m2") return format.quantity(quantity, core::Unit::square_metre, 1);
  if (unit == "m") return format.quantity(quantity, core::Unit::metre, 1);
  if (unit == "day") return dayCount(quantity, format);
  if (unit == "job") return jobs(quantity, format);
  return lookUp({}, unit, "unit of work");
}

QString dayCount(double days, const Formatter& format) {
  constexpr int kQuarters = 4;
  // quarter, half, three quarters
  constexpr std::array<char16_t, kQuarters> kFractions{0, 0xbc, 0xbd, 0xbe};
  const int quarters = static_cast<int>(std::lround(days * kQuarters));
  const int whole = quarters / kQuarters, rest = quarters % kQuarters;
  if (rest == 0) return format.quantity(whole, core::Unit::day, 0);
  if (whole == 0) return partOfADay(rest);
  const int count = whole + 1;
  return QCoreApplication::translate("ui::words", "%1 days", nullptr, count)
      .replace(u' ', QChar::Nbsp)
      .arg(format.integer(whole) + QChar(kFractions[static_cast<std::size_t>(rest)]));
}

}  // namespace ui::words
