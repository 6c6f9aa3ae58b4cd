#include "ui/text/feet_inches.h"

#include "ui/text/number_reader.h"
#include "ui/text/units.h"

#include <cmath>
#include <numeric>

namespace ui {
namespace {

using units::kMetresPerFoot;
using units::kMetresPerInch;

/// Inches with their fraction; after feet a zero is written too ("25' 0 1/2\"").
enum class After { nothing, feet };

QString inchesText(long long parts, int parts_per_inch, After after, const QLocale& locale) {
  const long long whole = parts / parts_per_inch;
  const long long over = parts % parts_per_inch;
  QString text = whole > 0 || over == 0 || after == After::feet ? locale.toString(whole) : QString();
  if (over > 0) {
    const long long divisor = std::gcd(over, static_cast<long long>(parts_per_inch));
    if (!text.isEmpty()) text += QChar::Nbsp;
    text += locale.toString(over / divisor) + u'/' + locale.toString(parts_per_inch / divisor);
  }
  return text + u'"';
}

QString sizeText(double size_m, int decimals, const QLocale& locale) {
  const int per_inch = partsOfAnInch(size_m, decimals);
  if (per_inch == 0) return locale.toString(std::llround(size_m / kMetresPerFoot)) + u'\'';
  const long long parts = std::llround(size_m / kMetresPerInch * per_inch);
  const long long per_foot = 12LL * per_inch;
  if (parts < per_foot) return inchesText(parts, per_inch, After::nothing, locale);
  const QString feet = locale.toString(parts / per_foot) + u'\'';
  return feet + QChar(QChar::Nbsp) + inchesText(parts % per_foot, per_inch, After::feet, locale);
}

/// Unit letters at the start of `text`, up to the next number.
QString leadingUnit(const QString& text) {
  qsizetype end = 0;
  while (end < text.size() && !text[end].isDigit()) ++end;
  if (end < text.size() && end > 0 && (text[end - 1] == u'.' || text[end - 1] == u',')) --end;
  return text.left(end);
}

std::optional<double> metresPer(const QString& unit, std::optional<double> unit_before, UnitSystem system) {
  if (!unit.trimmed().isEmpty()) return units::siPerTyped(core::Unit::metre, unit.trimmed());
  if (unit_before) return *unit_before == kMetresPerFoot ? std::optional(kMetresPerInch) : std::nullopt;
  return system == UnitSystem::metric ? 1 : kMetresPerFoot;
}

}  // namespace

int partsOfAnInch(double length_m, int decimals) {
  if (decimals == 0) return 0;
  return std::abs(length_m) < kMetresPerFoot ? 16 : 4;
}

QString feetInches(double length_m, int decimals, const QLocale& locale) {
  QString text = sizeText(std::abs(length_m), decimals, locale);
  const bool zero = text == sizeText(0, decimals, locale);
  if (length_m < 0 && !zero) text.prepend(locale.negativeSign());
  if (locale.textDirection() == Qt::LeftToRight) return text;
  return QChar(0x2066) + text + QChar(0x2069);
}

std::optional<double> lengthFrom(const QString& plain, const QLocale& locale, UnitSystem system) {
  double sum_m = 0;
  std::optional<double> unit_before;
  QString rest = plain;
  do {
    const auto number = leadingNumber(rest, locale);
    if (!number) return std::nullopt;
    const QString unit = leadingUnit(number->rest);
    const auto metres = metresPer(unit, unit_before, system);
    if (!metres || (unit_before && *metres >= *unit_before)) return std::nullopt;
    sum_m += number->value * *metres;
    unit_before = metres;
    rest = number->rest.mid(unit.size()).trimmed();
  } while (!rest.isEmpty());
  return sum_m;
}

}  // namespace ui
