#pragma once

#include "core/hydraulics/outlets.h"
#include "ui/text/formatter.h"

#include <QString>
#include <string_view>

namespace ui::words {

/// How an outlet works with the head that is left, as the end of a sentence: "it works only while the tank is
/// rather full". @param verdict works, works_poorly, works_full or too_low
QString outletVerdict(std::string_view verdict);
QString outletVerdict(core::hydraulics::OutletVerdict verdict);
/// What a spill path is dug in or covered with: "grass", "firm loam".
/// @param bed token of a cover or of a soil
QString spillBed(std::string_view bed);
/// A width in whole millimetres, rounded up.
QString millimetresUp(double width_m, const Formatter& format);
QString flowText(double flow_m3_s, const Formatter& format);    ///< "18 L/min"
QString durationText(double seconds, const Formatter& format);  ///< "40 min", "7.5 hours", "3.0 days"
/// What a figure of core::hydraulics::figures() is for.
QString hydraulicsFigureName(std::string_view key);

}  // namespace ui::words
