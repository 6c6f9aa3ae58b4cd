#pragma once

#include "ui/text/formatter.h"

#include <QString>

namespace ui::words {

enum class Rounding { nearest, up, down };

/// Years out of ten, whole or with one decimal, rounded down: "8", "7.9". Less than all ten is never "10",
/// and more than none never "0".
QString yearsInTenText(double years_in_ten, const Formatter& format);

/// How often out of ten times, rounded down: "8 times in 10", "once in 10 times", "less than once in 10
/// times"; "every time" and "never" only when it is so. @param share 0 to 1
QString timesInTen(double share, const Formatter& format);

/// `value` at the nearest number of the reader's unit that can be shown and typed, on one side of it [SI].
double toShownStep(double value, core::Unit unit, int decimals, const Formatter& format, Rounding rounding);

/// A volume or an area in two digits of the reader's unit; litres for a volume: "about" stands around it.
QString litresWorth(double volume_m3, const Formatter& format, Rounding rounding = Rounding::nearest);
QString areaWorth(double area_m2, const Formatter& format, Rounding rounding = Rounding::nearest);

}  // namespace ui::words
