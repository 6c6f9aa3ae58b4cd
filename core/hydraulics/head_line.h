#pragma once

#include "core/hydraulics/gravity_line.h"

namespace core::hydraulics {

/// Parts of solveLine that follow from the flow once it is known.

/// Length along the pipe [m].
double pipeLength(const std::vector<PipePoint>& profile);

/// Fills points, above_head_line, near_vapour, humps and air_lock_head_m.
/// @pre flow, losses, length and lowest_allowed_m stand
void fillHeadLine(LineFlow& flow, const Line& line, double upper_level_m);

/// Fills static_head_m, static_bar and class_left_bar.
void fillStatic(LineFlow& flow, const Line& line, double upper_level_m, const Water& water);

/// Stretches of a head line under `bound_m` of pressure; straight between points.
std::vector<Stretch> stretchesBelow(const std::vector<LinePoint>& points, double bound_m);

}  // namespace core::hydraulics
