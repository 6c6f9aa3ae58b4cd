#pragma once

#include "core/base/unit.h"
#include "ui/text/formatter.h"

#include <QString>
#include <optional>

namespace ui::words {

/// A range of numbers in core's unit; an absent end is open.
struct Range {
  std::optional<double> least, most;
  core::Unit unit = core::Unit::none;
  int decimals = 0;  ///< at least so many are shown in SI
};

/// "0.30 m to 4.00 m", "3 or more", "up to 4"; empty when both ends are open. Ends are rounded inward, so
/// that what is read is allowed.
QString rangeText(const Range& range, const Formatter& format);

/// Decimals that show a number whole, from `least` to 4.
int decimalsFor(double value, int least);

}  // namespace ui::words
