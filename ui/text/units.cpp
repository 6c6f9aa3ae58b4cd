#include "ui/text/units.h"

#include <QCoreApplication>
#include <array>
#include <cmath>
#include <string_view>

namespace ui::units {
namespace {

using core::Unit;

constexpr double kSquareFoot = kMetresPerFoot * kMetresPerFoot;
constexpr double kCubicFoot = kSquareFoot * kMetresPerFoot;

constexpr Shown feetShown(Unit unit) {
  switch (unit) {
    case Unit::metre:
      return {1 / kMetresPerFoot, 0};
    case Unit::square_metre:
      return {1 / kSquareFoot, -1};
    case Unit::cubic_metre:
      return {1 / kCubicFoot, -1};
    case Unit::kg_per_m3:
    case Unit::litre_per_m3:
      return {kCubicFoot, 2};
    case Unit::litre_per_m2_day:
      return {kSquareFoot, 2};
    case Unit::person_day_per_m3:
      return {100 * kCubicFoot, 0};
    case Unit::person_day_per_m2:
      return {100 * kSquareFoot, 0};
    default:
      return {1, 0};
  }
}

const char* feetName(Unit unit) {
  switch (unit) {
    case Unit::metre:
      return QT_TRANSLATE_NOOP("ui::words", "ft");
    case Unit::square_metre:
      return QT_TRANSLATE_NOOP("ui::words", "ft²");
    case Unit::cubic_metre:
      return QT_TRANSLATE_NOOP("ui::words", "ft³");
    case Unit::kg_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "kg/ft³");
    case Unit::litre_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "L/ft³");
    case Unit::litre_per_m2_day:
      return QT_TRANSLATE_NOOP("ui::words", "L/ft² per day");
    case Unit::person_day_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "person-days per 100 ft³");
    case Unit::person_day_per_m2:
      return QT_TRANSLATE_NOOP("ui::words", "person-days per 100 ft²");
    default:
      return nullptr;
  }
}

const char* metricName(Unit unit) {
  switch (unit) {
    case Unit::metre:
      return QT_TRANSLATE_NOOP("ui::words", "m");
    case Unit::square_metre:
      return QT_TRANSLATE_NOOP("ui::words", "m²");
    case Unit::cubic_metre:
      return QT_TRANSLATE_NOOP("ui::words", "m³");
    case Unit::litre:
      return QT_TRANSLATE_NOOP("ui::words", "L");
    case Unit::kilogram:
      return QT_TRANSLATE_NOOP("ui::words", "kg");
    case Unit::percent:
      return "%";
    case Unit::degree:
      return "°";
    case Unit::day:
      return QT_TRANSLATE_NOOP("ui::words", "days");
    case Unit::hour:
      return QT_TRANSLATE_NOOP("ui::words", "hours");
    case Unit::person:
      return QT_TRANSLATE_NOOP("ui::words", "people");
    case Unit::person_day:
      return QT_TRANSLATE_NOOP("ui::words", "person-days");
    case Unit::part:
      return QT_TRANSLATE_NOOP("ui::words", "parts");
    case Unit::kg_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "kg/m³");
    case Unit::litre_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "L/m³");
    case Unit::litre_per_m2_day:
      return QT_TRANSLATE_NOOP("ui::words", "L/m² per day");
    case Unit::person_day_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "person-days per m³");
    case Unit::person_day_per_m2:
      return QT_TRANSLATE_NOOP("ui::words", "person-days per m²");
    case Unit::none:
    case Unit::batter:
    case Unit::factor:
    case Unit::piece:
      return "";
  }
  return "";
}

/// "%1 day" for exactly one; empty for units that have no plural.
QString single(Unit unit) {
  switch (unit) {
    case Unit::day:
      return QCoreApplication::translate("ui::words", "%1 day");
    case Unit::hour:
      return QCoreApplication::translate("ui::words", "%1 hour");
    case Unit::person:
      return QCoreApplication::translate("ui::words", "%1 person");
    case Unit::person_day:
      return QCoreApplication::translate("ui::words", "%1 person-day");
    case Unit::part:
      return QCoreApplication::translate("ui::words", "%1 part");
    default:
      return {};
  }
}

QString several(Unit unit, int count) {
  switch (unit) {
    case Unit::day:
      return QCoreApplication::translate("ui::words", "%1 days", nullptr, count);
    case Unit::hour:
      return QCoreApplication::translate("ui::words", "%1 hours", nullptr, count);
    case Unit::person:
      return QCoreApplication::translate("ui::words", "%1 people", nullptr, count);
    case Unit::person_day:
      return QCoreApplication::translate("ui::words", "%1 person-days", nullptr, count);
    default:
      return QCoreApplication::translate("ui::words", "%1 parts", nullptr, count);
  }
}

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

Shown shown(Unit unit, UnitSystem system) {
  return system == UnitSystem::feet_inches ? feetShown(unit) : Shown{1, 0};
}

QString name(Unit unit, UnitSystem system) {
  const char* const feet = system == UnitSystem::feet_inches ? feetName(unit) : nullptr;
  const char* const text = feet ? feet : metricName(unit);
  return *text ? QCoreApplication::translate("ui::words", text) : QString();
}

QString withName(const QString& number, double shown_value, Unit unit, UnitSystem system) {
  QString pattern = single(unit);
  if (!pattern.isEmpty()) {
    const double size = std::abs(shown_value);
    if (size != 1) pattern = several(unit, size < 1e6 ? static_cast<int>(std::ceil(size)) : 5);
    return pattern.replace(u' ', QChar::Nbsp).arg(number);
  }
  if (unit == Unit::degree) return number + name(unit, system);
  const QString after = name(unit, system);
  return after.isEmpty() ? number : number + QChar(QChar::Nbsp) + after;
}

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
