#pragma once

#include "core/site/site_plan.h"

namespace core::site {

/// Fills SitePlan::across, ::along and, where the ground falls, ::downhill.
void addGroundLines(SitePlan& plan, const geometry::TankGeometry& tank, const PitShape& pit);

/// Finished ground, or the natural one under it: where filled natural, where cut finished.
enum class GroundOf { finished, natural_under };
/// Ground down the fall with as few points as hold it within 1 cm; empty on level ground.
GroundLine groundLine(const SitePlan& plan, GroundOf of);

enum class Side { downhill, uphill };
/// From the middle of the tank to the pit edge, straight down or up the fall; along the tank's y on level
/// ground.
double pitReach(const SitePlan& plan, const geometry::TankGeometry& tank, const PitShape& pit,
                Side side = Side::downhill);

}  // namespace core::site
