#pragma once

#include "ui/text/formatter.h"

#include <QLocale>
#include <QString>
#include <optional>

namespace ui {

/// Parts of an inch to which a length is shown: 4 from one foot up, 16 below; 0 when whole feet are wanted
/// (decimals 0).
int partsOfAnInch(double length_m, int decimals);

/// Length in feet and inches: "19' 8 1/4\"", "2 1/2\"". `decimals` are those wanted in metres.
QString feetInches(double length_m, int decimals, const QLocale& locale);

/// Length [m] from plainText() without a sign: one term or several with falling units ("1 ft 6 in", "6.5 m",
/// "1' 6").
std::optional<double> lengthFrom(const QString& plain, const QLocale& locale, UnitSystem system);

}  // namespace ui
