#include "ui/text/units.h"

#include <array>
#include <string_view>

namespace ui::units {
namespace {

using core::Unit;

constexpr double kSquareFoot = kMetresPerFoot * kMetresPerFoot;
constexpr double kCubicFoot = kSquareFoot * kMetresPerFoot;
constexpr double kMillimetresPerInch = 1000 * kMetresPerInch;
constexpr double kGravity_m_s2 = 9.80665;          // standard gravity, CGPM 1901
constexpr double kKilogramsPerPound = 0.45359237;  // international yard and pound agreement, 1959
constexpr double kPascalPerBar = 1e5;
constexpr double kBarPerPsi =
    kKilogramsPerPound * kGravity_m_s2 / (kMetresPerInch * kMetresPerInch) / kPascalPerBar;
constexpr double kBarPerKgfPerCm2 = kGravity_m_s2 * 1e4 / kPascalPerBar;

struct Typed {
  Unit unit;
  std::string_view text;  ///< lower case, without spaces and full stops
  double si;
};

constexpr std::array kTyped{
    Typed{Unit::metre, "m", 1},
    Typed{Unit::metre, "metre", 1},
    Typed{Unit::metre, "metres", 1},
    Typed{Unit::metre, "mm", 0.001},
    Typed{Unit::metre, "cm", 0.01},
    Typed{Unit::metre, "'", kMetresPerFoot},
    Typed{Unit::metre, "ft", kMetresPerFoot},
    Typed{Unit::metre, "foot", kMetresPerFoot},
    Typed{Unit::metre, "feet", kMetresPerFoot},
    Typed{Unit::metre, "\"", kMetresPerInch},
    Typed{Unit::metre, "in", kMetresPerInch},
    Typed{Unit::metre, "inch", kMetresPerInch},
    Typed{Unit::metre, "inches", kMetresPerInch},
    Typed{Unit::square_metre, "m2", 1},
    Typed{Unit::square_metre, "sqm", 1},
    Typed{Unit::square_metre, "ft2", kSquareFoot},
    Typed{Unit::square_metre, "sqft", kSquareFoot},
    Typed{Unit::cubic_metre, "m3", 1},
    Typed{Unit::cubic_metre, "cum", 1},
    Typed{Unit::cubic_metre, "l", 0.001},
    Typed{Unit::cubic_metre, "litre", 0.001},
    Typed{Unit::cubic_metre, "litres", 0.001},
    Typed{Unit::cubic_metre, "ft3", kCubicFoot},
    Typed{Unit::cubic_metre, "cft", kCubicFoot},
    Typed{Unit::cubic_metre, "cuft", kCubicFoot},
    Typed{Unit::litre, "l", 1},
    Typed{Unit::litre, "litre", 1},
    Typed{Unit::litre, "litres", 1},
    Typed{Unit::litre, "m3", 1000},
    Typed{Unit::litre, "ft3", 1000 * kCubicFoot},
    Typed{Unit::litre, "cft", 1000 * kCubicFoot},
    Typed{Unit::kilogram, "kg", 1},
    Typed{Unit::percent, "%", 1},
    Typed{Unit::degree, "°", 1},
    Typed{Unit::day, "day", 1},
    Typed{Unit::day, "days", 1},
    Typed{Unit::day, "d", 1},
    Typed{Unit::hour, "hour", 1},
    Typed{Unit::hour, "hours", 1},
    Typed{Unit::hour, "h", 1},
    Typed{Unit::person, "person", 1},
    Typed{Unit::person, "people", 1},
    Typed{Unit::person_day, "person-day", 1},
    Typed{Unit::person_day, "person-days", 1},
    Typed{Unit::part, "part", 1},
    Typed{Unit::part, "parts", 1},
    Typed{Unit::millimetre, "mm", 1},
    Typed{Unit::millimetre, "cm", 10},
    Typed{Unit::millimetre, "in", kMillimetresPerInch},
    Typed{Unit::millimetre, "inch", kMillimetresPerInch},
    Typed{Unit::millimetre, "inches", kMillimetresPerInch},
    Typed{Unit::mm_per_day, "mm/day", 1},
    Typed{Unit::mm_per_day, "mm/d", 1},
    Typed{Unit::mm_per_day, "mm", 1},
    Typed{Unit::mm_per_metre, "mm/m", 1},
    Typed{Unit::mm_per_metre, "mm", 1},
    Typed{Unit::litre_per_minute, "l/min", 1},
    Typed{Unit::litre_per_minute, "lpm", 1},
    Typed{Unit::litre_per_minute, "l/s", 60},
    Typed{Unit::litre_per_minute, "lps", 60},
    Typed{Unit::litre_per_minute, "l/h", 1.0 / 60},
    Typed{Unit::litre_per_minute, "l/hour", 1.0 / 60},
    Typed{Unit::litre_per_minute, "l/day", 1.0 / 1440},
    Typed{Unit::litre_per_minute, "m3/h", 1000.0 / 60},
    Typed{Unit::litre_per_day, "l/day", 1},
    Typed{Unit::litre_per_day, "l/d", 1},
    Typed{Unit::litre_per_day, "l", 1},
    Typed{Unit::litre_per_day, "litre", 1},
    Typed{Unit::litre_per_day, "litres", 1},
    Typed{Unit::second, "s", 1},
    Typed{Unit::second, "sec", 1},
    Typed{Unit::second, "second", 1},
    Typed{Unit::second, "seconds", 1},
    Typed{Unit::second, "min", 60},
    Typed{Unit::second, "minute", 60},
    Typed{Unit::second, "minutes", 60},
    Typed{Unit::celsius, "°c", 1},
    Typed{Unit::celsius, "c", 1},
    Typed{Unit::celsius, "°", 1},
    Typed{Unit::metre_per_second, "m/s", 1},
    Typed{Unit::metre_per_second, "km/h", 1 / 3.6},
    Typed{Unit::metre_per_second, "kmh", 1 / 3.6},
    Typed{Unit::year, "year", 1},
    Typed{Unit::year, "years", 1},
    Typed{Unit::bar, "bar", 1},
    Typed{Unit::bar, "kpa", 0.01},
    Typed{Unit::bar, "mpa", 10},
    Typed{Unit::bar, "psi", kBarPerPsi},
    Typed{Unit::bar, "kg/cm2", kBarPerKgfPerCm2},
    Typed{Unit::bar, "kgf/cm2", kBarPerKgfPerCm2},
    Typed{Unit::mm_per_hour, "mm/h", 1},
    Typed{Unit::mm_per_hour, "mm/hr", 1},
    Typed{Unit::mm_per_hour, "mm/hour", 1},
    Typed{Unit::mm_per_hour, "in/h", kMillimetresPerInch},
    Typed{Unit::mm_per_hour, "in/hr", kMillimetresPerInch},
    Typed{Unit::mm_per_hour, "in/hour", kMillimetresPerInch},
    Typed{Unit::mm_per_hour, "inch/hour", kMillimetresPerInch},
    Typed{Unit::mm_per_hour, "inches/hour", kMillimetresPerInch},
    Typed{Unit::kilopascal, "kpa", 1},
    Typed{Unit::kilopascal, "kn/m2", 1},
    Typed{Unit::kn_per_m3, "kn/m3", 1},
    Typed{Unit::minute, "min", 1},
    Typed{Unit::minute, "minute", 1},
    Typed{Unit::minute, "minutes", 1},
    Typed{Unit::minute, "s", 1.0 / 60},
    Typed{Unit::minute, "h", 60},
    Typed{Unit::minute, "hour", 60},
    Typed{Unit::minute, "hours", 60},
    Typed{Unit::kg_per_m2_h, "kg/m2/h", 1},
    Typed{Unit::kg_per_m2_h, "kg/m2h", 1},
};

/// Lower case without spaces, full stops; superscripts as digits.
QString bare(const QString& text) {
  QString out;
  for (const QChar c : text.toLower()) {
    if (c.isSpace() || c == u'.') continue;
    out += c == u'²' ? QChar(u'2') : c == u'³' ? QChar(u'3') : c;
  }
  return out;
}

bool names(const QString& typed, Unit unit, UnitSystem system) {
  return typed == bare(name(unit, system)) || typed == bare(withName({}, 1, unit, system)) ||
         typed == bare(withName({}, 5, unit, system));
}

}  // namespace

std::optional<double> siPerTyped(Unit unit, const QString& typed) {
  const QString text = bare(typed);
  for (const Typed& t : kTyped) {
    if (t.unit == unit && text == QString::fromUtf8(t.text.data(), qsizetype(t.text.size()))) return t.si;
  }
  for (const UnitSystem system : {UnitSystem::metric, UnitSystem::feet_inches}) {
    if (names(text, unit, system)) return 1 / shown(unit, system).per_si;
  }
  return std::nullopt;
}

}  // namespace ui::units
