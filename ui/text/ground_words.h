#pragma once

#include "ui/text/formatter.h"
#include "ui/text/words_table.h"

#include <QString>
#include <span>
#include <string_view>

namespace ui::words {

/// Labels and help of platform, place and spoil, behind fieldLabel() and fieldHelp().
std::span<const Entry> groundLabels();
std::span<const Entry> groundHelp();

/// Why no platform can be made, and what would help. @param fault outside_survey, leaves_survey,
/// never_daylights or cannot_balance
QString platformFault(std::string_view fault);
/// Why no ground can be made of the spot heights. @param fault too_few, collinear or failed
QString surveyFault(std::string_view fault);
QString compass(double azimuth_deg);  ///< "north-east", of a direction clockwise from north
/// "0.20 m below the natural ground at the middle of the tank", from its height over that ground.
QString overMiddle(double over_m, const Formatter& format);
/// The same with the height rounded down as it can be typed, so that the tank is not put too high by it.
QString atMostOverMiddle(double over_m, const Formatter& format);

}  // namespace ui::words
