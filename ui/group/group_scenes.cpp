#include "ui/group/group_scenes.h"

#include "core/geometry/side_by_side.h"
#include "core/site/relief.h"

namespace ui::group {

namespace {

constexpr double kGap_m = 2.5;

}  // namespace

core::geometry::Scene tankScene(const core::Project& project, const core::Plan& plan,
                                const core::geometry::Built& built) {
  core::geometry::SceneOptions options;
  options.cut = core::geometry::CutPlane{plan.geometry.outline().centre(), -Eigen::Vector2d::UnitY()};
  options.relief =
      core::site::reliefOf(plan.site, plan.geometry, project.lining, project.site.platform.walkway_m);
  options.built = built;
  options.water_level_m = built.water_level_m;
  return core::geometry::scene(plan.geometry, options);
}

core::geometry::Scene waterScene(const core::Project& project, const core::Plan& plan, double level_m) {
  core::geometry::Built built;
  built.water_level_m = level_m;
  return tankScene(project, plan, built);
}

core::geometry::Scene optionsScene(const core::Plan& plan) {
  std::vector<core::geometry::TankGeometry> tanks;
  for (const core::OptionResult& option : plan.options) {
    if (option.geometry) tanks.push_back(*option.geometry);
  }
  if (tanks.empty()) tanks.push_back(plan.geometry);
  return core::geometry::sideBySide(tanks, kGap_m);
}

}  // namespace ui::group
