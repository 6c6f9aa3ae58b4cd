#include "ui/text/formatter.h"

#include "ui/text/feet_inches.h"
#include "ui/text/languages.h"
#include "ui/text/number_reader.h"
#include "ui/text/units.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

bool inFeet(core::Unit unit, UnitSystem system) {
  return unit == core::Unit::metre && system == UnitSystem::feet_inches;
}

int shownDecimals(core::Unit unit, UnitSystem system, int decimals) {
  return std::max(0, decimals + units::shown(unit, system).more_decimals);
}

/// `value` rounded to `decimals`, never a negative zero.
double rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  const double near = std::round(value * scale) / scale;
  if (!std::isfinite(near)) return value;
  return near == 0 ? 0.0 : near;
}

/// "1 in 10" and "1:10": run in height.
std::optional<double> ratioFrom(const QString& plain, const QLocale& locale) {
  static const QRegularExpression between(QStringLiteral("^(.+?)\\s*(?:\\bin\\b|:)\\s*(.+)$"));
  const auto match = between.match(plain);
  if (!match.hasMatch()) return std::nullopt;
  const auto run = leadingNumber(match.captured(1), locale);
  const auto height = leadingNumber(match.captured(2), locale);
  if (!run || !height || !run->rest.isEmpty() || !height->rest.isEmpty() || height->value == 0)
    return std::nullopt;
  return run->value / height->value;
}

std::optional<double> amountFrom(const QString& plain, const QLocale& locale, core::Unit unit,
                                 UnitSystem system) {
  const auto number = leadingNumber(plain, locale);
  if (!number) return std::nullopt;
  const QString typed = number->rest.trimmed();
  if (typed.isEmpty()) return number->value / units::shown(unit, system).per_si;
  const auto si = units::siPerTyped(unit, typed);
  if (!si) return std::nullopt;
  return number->value * *si;
}

std::optional<double> sizeFrom(const QString& plain, const QLocale& locale, core::Unit unit,
                               UnitSystem system) {
  if (unit == core::Unit::metre) return lengthFrom(plain, locale, system);
  if (unit == core::Unit::batter) {
    if (const auto ratio = ratioFrom(plain, locale)) return ratio;
  }
  return amountFrom(plain, locale, unit, system);
}

/// What names day and month in a locale's long date: "d MMMM", "MMMM d", "d 'de' MMMM".
QString dayAndMonth(const QString& long_date) {
  static const QRegularExpression part(QStringLiteral(
      "(?<!d)d{1,2}(?!d)(?:'[^']*'|[^'dMy])*M+|M+(?:'[^']*'|[^'dMy])*d{1,2}(?!d)[^\\s',dMy]?"));
  const auto found = part.match(long_date);
  return found.hasMatch() ? found.captured() : QStringLiteral("d MMMM");
}

}  // namespace

QString isolated(const QString& text) {
  // the mark in front tells a label with nothing else in it where it begins
  constexpr QChar kRightToLeftMark(0x200F), kFirstStrongIsolate(0x2068), kPopIsolate(0x2069);
  if (textDirection() == Qt::LeftToRight || text.isEmpty()) return text;
  return QString(kRightToLeftMark) + kFirstStrongIsolate + text + kPopIsolate;
}

Formatter::Formatter(QLocale locale, UnitSystem system) : locale_(std::move(locale)), system_(system) {
  if (locale_.language() == QLocale::C) locale_.setNumberOptions(QLocale::DefaultNumberOptions);
}

QString Formatter::number(double value, core::Unit unit, int decimals) const {
  if (inFeet(unit, system_) && std::abs(value) < 1e12) return isolated(feetInches(value, decimals, locale_));
  const int shown = shownDecimals(unit, system_, decimals);
  return locale_.toString(rounded(value * units::shown(unit, system_).per_si, shown), 'f', shown);
}

QString Formatter::quantity(double value, core::Unit unit, int decimals) const {
  const QString text = number(value, unit, decimals);
  if (inFeet(unit, system_)) return text;
  const double shown_value = value * units::shown(unit, system_).per_si;
  return isolated(
      units::withName(text, rounded(shown_value, shownDecimals(unit, system_, decimals)), unit, system_));
}

double Formatter::shownStep(double value, core::Unit unit, int decimals) const {
  if (inFeet(unit, system_)) {
    const int parts = partsOfAnInch(value, decimals);
    return parts == 0 ? units::kMetresPerFoot : units::kMetresPerInch / parts;
  }
  return std::pow(10.0, -shownDecimals(unit, system_, decimals)) / units::shown(unit, system_).per_si;
}

QString Formatter::litres(double volume_m3) const {
  const double volume_l = volume_m3 * 1000;
  const double size = std::abs(volume_l);
  const double step = size >= 10000 ? 100 : size >= 1000 ? 10 : 1;
  return quantity(std::round(volume_l / step) * step, core::Unit::litre, 0);
}

QString Formatter::unit(core::Unit unit) const {
  return units::name(unit, system_);
}

QString Formatter::integer(int value) const {
  return locale_.toString(value);
}

QString Formatter::date(std::chrono::year_month_day day) const {
  return locale_.toString(toQDate(day), QStringLiteral("ddd d MMM yyyy"));
}

QString Formatter::shortDate(std::chrono::year_month_day day) const {
  return locale_.toString(toQDate(day), QStringLiteral("d MMM"));
}

QString Formatter::dayOfYear(int month, int day, QLocale::FormatType form) const {
  static const QRegularExpression name(QStringLiteral("M{3,}"));
  constexpr int kLeapYear = 2000;
  QString pattern = dayAndMonth(locale_.dateFormat(QLocale::LongFormat));
  pattern.replace(name, form == QLocale::LongFormat ? QStringLiteral("MMMM") : QStringLiteral("MMM"));
  return locale_.toString(QDate(kLeapYear, month, day), pattern);
}

QString Formatter::year(int year) const {
  QLocale plain = locale_;
  plain.setNumberOptions(plain.numberOptions() | QLocale::OmitGroupSeparator);
  return plain.toString(year);
}

QString Formatter::monthName(int month, QLocale::FormatType form) const {
  return locale_.standaloneMonthName(month, form);
}

std::optional<double> Formatter::parse(const QString& text, core::Unit unit) const {
  QString plain = plainText(text, locale_);
  const bool negative = plain.startsWith(u'-');
  if (negative || plain.startsWith(u'+')) plain.remove(0, 1);
  const auto size = sizeFrom(plain.trimmed(), locale_, unit, system_);
  if (!size || !std::isfinite(*size)) return std::nullopt;
  return negative ? -*size : *size;
}

QDate toQDate(std::chrono::year_month_day day) {
  return QDate(int(day.year()), int(unsigned(day.month())), int(unsigned(day.day())));
}

}  // namespace ui
