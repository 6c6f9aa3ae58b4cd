#pragma once

#include "core/base/unit.h"

#include <QDate>
#include <QLocale>
#include <QString>
#include <chrono>
#include <optional>

namespace ui {

/// Units people read: metres, or feet and inches with square and cubic feet. Litres, kilograms and days stay
/// as they are.
enum class UnitSystem { metric, feet_inches };

/// Turns core's SI numbers into text and back, in the reader's units and digits. A value; cheap to copy.
/// A no-break space stands between a number and its unit, and between feet and inches.
class Formatter {
public:
  explicit Formatter(QLocale locale = QLocale(), UnitSystem system = UnitSystem::metric);

  const QLocale& locale() const { return locale_; }
  UnitSystem system() const { return system_; }

  /// Number alone, in the reader's unit and digits: "6.00", "19' 8 1/4\"". `decimals` are those wanted in SI.
  /// In feet and inches a length goes to the nearest 1/4 in (1/16 in below a foot; whole feet when decimals
  /// is 0).
  QString number(double value, core::Unit unit, int decimals) const;
  /// Number with its unit: "6.00 m", "22,500 L", "1 day".
  QString quantity(double value, core::Unit unit, int decimals) const;
  /// Smallest difference that `number` can show near `value`, in the SI unit.
  double shownStep(double value, core::Unit unit, int decimals) const;
  /// Litres from cubic metres, rounded to a step a farmer uses (100 L from 10,000 L up, 10 L from 1,000 L
  /// up): "22,500 L".
  QString litres(double volume_m3) const;
  /// Unit alone: "m", "ft", "L", "kg/m3" with superscripts; empty for none.
  QString unit(core::Unit unit) const;
  QString integer(int value) const;
  QString date(std::chrono::year_month_day day) const;       ///< short, with weekday: "Mon 15 Feb 2027"
  QString shortDate(std::chrono::year_month_day day) const;  ///< "15 Feb"
  /// A day of any year in the reader's order: "15 Feb", "Feb 15", "15 February".
  QString dayOfYear(int month, int day, QLocale::FormatType form = QLocale::ShortFormat) const;
  QString year(int year) const;  ///< without marks between the digits: "2027"
  /// Name of a month [1 to 12] standing alone: "Feb", "February".
  QString monthName(int month, QLocale::FormatType form = QLocale::ShortFormat) const;

  /// SI value of a text typed in the reader's unit and digits; also takes plain ASCII digits, "6 m", "60 mm",
  /// "1 ft 6 in", "1' 6 1/2\"", a length with the other system's unit, and "1 in 10" or "1:10" for a batter.
  /// A bare number is in the reader's unit (metres or feet). Nothing when it is not a number.
  std::optional<double> parse(const QString& text, core::Unit unit) const;

private:
  QLocale locale_;
  UnitSystem system_;
};

/// A number with its unit, kept in its own direction within a text that is written from the right.
QString isolated(const QString& text);

QDate toQDate(std::chrono::year_month_day day);

}  // namespace ui
