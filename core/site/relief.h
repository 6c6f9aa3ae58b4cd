#pragma once

#include "core/geometry/scene.h"
#include "core/site/site_plan.h"

#include <optional>

namespace core::site {

/// What the picture needs of the ground; nothing on level ground without a heap and when there is no bench.
std::optional<geometry::Relief> reliefOf(const SitePlan& plan, const geometry::TankGeometry& tank,
                                         const Lining& lining, double walkway_m);

}  // namespace core::site
