#pragma once

#include "core/site/bishop.h"

#include <utility>
#include <vector>

namespace core::site {

/// Ends of the widest piece of ground that the circle's lower half cuts off.
tl::expected<std::pair<double, double>, SlipFault> slipEnds(const SlopeSection& section,
                                                            const SlipCircle& circle);

/// Level of the circle's lower half at x.
double slipLevel(const SlipCircle& circle, double x_m);

/// Slices of the piece between two ends, with everything but the normal stress.
/// `base_deg` is above 0 where the circle rises to the right.
tl::expected<std::vector<SlipSlice>, SlipFault> slipSlices(const SlopeSection& section,
                                                           const SlipCircle& circle, double from_x_m,
                                                           double to_x_m, int wanted);

}  // namespace core::site
