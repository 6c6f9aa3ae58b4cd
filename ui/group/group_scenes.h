#pragma once

#include "core/build_timeline.h"
#include "core/geometry/scene.h"
#include "core/plan.h"

namespace ui::group {

/// The tank cut open along its length on its ground, as far as it is built, with the water of that state.
core::geometry::Scene tankScene(const core::Project& project, const core::Plan& plan,
                                const core::geometry::Built& built);
/// The same with water up to a level in the finished tank.
core::geometry::Scene waterScene(const core::Project& project, const core::Plan& plan, double level_m);
/// The tanks of all options that can be built, side by side; the tank alone when there are none.
core::geometry::Scene optionsScene(const core::Plan& plan);

}  // namespace ui::group
