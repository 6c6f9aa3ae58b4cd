#pragma once

#include <QLocale>
#include <QString>
#include <optional>

namespace ui {

/// Typed text with the digits of any script as ASCII digits, and one form of minus, prime, space and
/// fraction.
QString plainText(const QString& typed, const QLocale& locale);

/// A number at the start of a text, and what follows it.
struct LeadingNumber {
  double value;
  QString rest;
};

/// Reads "6", "6.5", "6,5", "22,500", "8 1/4" or "1/4" at the start of plainText(); no sign. A lone comma or
/// point is the decimal mark unless it is the locale's group separator before exactly three digits.
std::optional<LeadingNumber> leadingNumber(const QString& plain, const QLocale& locale);

}  // namespace ui
