#include "ui/text/worth.h"

#include "ui/text/units.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::words {
namespace {

constexpr double kTenths = 10;
constexpr double kBinary = 1e-9;  // what binary fractions leave
constexpr double kSingle = 1e-4;  // the same in single precision, as maps hold years in ten

double wholeSteps(double steps, Rounding rounding) {
  return rounding == Rounding::up     ? std::ceil(steps - kBinary)
         : rounding == Rounding::down ? std::floor(steps + kBinary)
                                      : std::round(steps);
}

/// `value` to two digits, and to whole numbers below ten; more than nothing stays at least one.
double twoDigits(double value, Rounding rounding) {
  if (value <= 0) return 0;
  const double step = std::pow(10.0, std::max(0.0, std::floor(std::log10(value)) - 1));
  return std::max(1.0, wholeSteps(value / step, rounding) * step);
}

}  // namespace

QString yearsInTenText(double years_in_ten, const Formatter& format) {
  double tenths = std::floor(years_in_ten * kTenths + kSingle);
  if (years_in_ten > 0) tenths = std::max(1.0, tenths);
  const bool is_whole = std::fmod(tenths, kTenths) == 0;
  return format.number(tenths / kTenths, core::Unit::none, is_whole ? 0 : 1);
}

QString timesInTen(double share, const Formatter& format) {
  const int times = static_cast<int>(std::floor(share * kTenths + kBinary));
  if (times >= kTenths) return QCoreApplication::translate("ui::words", "every time");
  if (times > 1)
    return QCoreApplication::translate("ui::words", "%1 times in %2", nullptr, times)
        .arg(format.integer(times), format.integer(static_cast<int>(kTenths)));
  const QString ten = format.integer(static_cast<int>(kTenths));
  if (times == 1) return QCoreApplication::translate("ui::words", "once in %1 times").arg(ten);
  if (share > 0) return QCoreApplication::translate("ui::words", "less than once in %1 times").arg(ten);
  return QCoreApplication::translate("ui::words", "never");
}

double toShownStep(double value, core::Unit unit, int decimals, const Formatter& format, Rounding rounding) {
  const double step = format.shownStep(value, unit, decimals);
  return wholeSteps(value / step, rounding) * step;
}

QString litresWorth(double volume_m3, const Formatter& format, Rounding rounding) {
  constexpr double kLitres = 1000;
  return format.quantity(twoDigits(volume_m3 * kLitres, rounding), core::Unit::litre, 0);
}

QString areaWorth(double area_m2, const Formatter& format, Rounding rounding) {
  const double per_m2 = units::shown(core::Unit::square_metre, format.system()).per_si;
  return format.quantity(twoDigits(area_m2 * per_m2, rounding) / per_m2, core::Unit::square_metre, 0);
}

}  // namespace ui::words
