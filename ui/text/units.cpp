#include "ui/text/units.h"

#include <QCoreApplication>
#include <cmath>

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
    case Unit::kg_per_m2_h:
      return {kSquareFoot, 1};
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
    case Unit::kg_per_m2_h:
      return QT_TRANSLATE_NOOP("ui::words", "kg/ft² per hour");
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
    case Unit::millimetre:
      return QT_TRANSLATE_NOOP("ui::words", "mm");
    case Unit::mm_per_day:
      return QT_TRANSLATE_NOOP("ui::words", "mm per day");
    case Unit::mm_per_metre:
      return QT_TRANSLATE_NOOP("ui::words", "mm per m");
    case Unit::litre_per_minute:
      return QT_TRANSLATE_NOOP("ui::words", "L/min");
    case Unit::litre_per_day:
      return QT_TRANSLATE_NOOP("ui::words", "L per day");
    case Unit::second:
      return QT_TRANSLATE_NOOP("ui::words", "s");
    case Unit::celsius:
      return "°C";
    case Unit::metre_per_second:
      return QT_TRANSLATE_NOOP("ui::words", "m/s");
    case Unit::year:
      return QT_TRANSLATE_NOOP("ui::words", "years");
    case Unit::bar:
      return QT_TRANSLATE_NOOP("ui::words", "bar");
    case Unit::mm_per_hour:
      return QT_TRANSLATE_NOOP("ui::words", "mm per hour");
    case Unit::kilopascal:
      return QT_TRANSLATE_NOOP("ui::words", "kPa");
    case Unit::kn_per_m3:
      return QT_TRANSLATE_NOOP("ui::words", "kN/m³");
    case Unit::minute:
      return QT_TRANSLATE_NOOP("ui::words", "min");
    case Unit::kg_per_m2_h:
      return QT_TRANSLATE_NOOP("ui::words", "kg/m² per hour");
    case Unit::none:
    case Unit::batter:
    case Unit::factor:
    case Unit::piece:
    case Unit::money:
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
    case Unit::year:
      return QCoreApplication::translate("ui::words", "%1 year");
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
    case Unit::year:
      return QCoreApplication::translate("ui::words", "%1 years", nullptr, count);
    default:
      return QCoreApplication::translate("ui::words", "%1 parts", nullptr, count);
  }
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

}  // namespace ui::units
