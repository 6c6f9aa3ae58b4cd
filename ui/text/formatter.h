#pragma once

#include <chrono>
#include <optional>

#include <QLocale>
#include <QString>

#include "core/base/unit.h"

namespace ui {

/// Units people read: metres, or feet and inches with square and cubic feet. Litres, kilograms and days stay as they are.
enum class UnitSystem { metric, feet_inches };

/// Turns core's SI numbers into text and back, in the reader's units and digits. A value; cheap to copy.
class Formatter {
public:
  explicit Formatter(QLocale locale = QLocale(), UnitSystem system = UnitSystem::metric);

  const QLocale& locale() const { return locale_; }
  UnitSystem system() const { return system_; }

  /// Number alone, in the reader's unit and digits: "6.00", "19' 8 1/4\"". `decimals` are those wanted in SI.
  QString number(double value, core::Unit unit, int decimals) const;
  /// Number with its unit: "6.00 m", "22,500 L".
  QString quantity(double value, core::Unit unit, int decimals) const;
  /// Litres from cubic metres, rounded to a step a farmer uses: "22,500 L".
  QString litres(double volume_m3) const;
  /// Unit alone: "m", "ft", "L", "kg/m3" with superscripts; empty for none.
  QString unit(core::Unit unit) const;
  QString integer(int value) const;
  QString date(std::chrono::year_month_day day) const;       ///< short, with weekday: "Mon 15 Feb 2027"
  QString shortDate(std::chrono::year_month_day day) const;  ///< "15 Feb"

  /// SI value of a text typed in the reader's unit and digits; also takes plain ASCII digits, "6 m", "1 ft 6 in", "1' 6 1/2\"",
  /// and a length with the other system's unit. Nothing when it is not a number.
  std::optional<double> parse(const QString& text, core::Unit unit) const;

private:
  QLocale locale_;
  UnitSystem system_;
};

QDate toQDate(std::chrono::year_month_day day);

}  // namespace ui
