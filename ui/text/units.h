#pragma once

#include "core/base/unit.h"
#include "ui/text/formatter.h"

#include <QString>
#include <optional>

namespace ui::units {

inline constexpr double kMetresPerInch = 0.0254;  ///< exact, international yard and pound agreement, 1959
inline constexpr double kMetresPerFoot = 12 * kMetresPerInch;

/// How a unit of core is shown.
struct Shown {
  double per_si;      ///< shown number = SI number * per_si
  int more_decimals;  ///< decimals beyond those wanted in SI
};

/// Shown form of every unit. Lengths in feet and inches are written by feetInches() instead.
Shown shown(core::Unit unit, UnitSystem system);

/// Name or symbol of the unit as people read it; empty for plain numbers.
QString name(core::Unit unit, UnitSystem system);

/// A number's text with its unit, in the right plural: "1 day", "3 days", "15 %".
QString withName(const QString& number, double shown_value, core::Unit unit, UnitSystem system);

/// SI units in one of the typed unit ("mm" for metre: 0.001). Nothing when `typed` does not measure `unit`.
std::optional<double> siPerTyped(core::Unit unit, const QString& typed);

}  // namespace ui::units
