#pragma once

#include "core/base/finding.h"
#include "core/base/problem.h"
#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/geometry/setting_out.h"
#include "core/geometry/tank_geometry.h"
#include "core/hydraulics/delivery_plan.h"
#include "core/lining/quantities.h"
#include "core/option_result.h"
#include "core/project/project.h"
#include "core/site/field_tests.h"
#include "core/site/site_plan.h"
#include "core/water/water_plan.h"
#include "core/works/earthwork.h"
#include "core/works/records.h"
#include "core/works/schedule.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace core {

/// Depth and what the tank holds up to it, for a dip-stick.
struct DipMark {
  double level_m;
  double volume_m3;
};

struct TankFigures {
  double brim_volume_m3, full_volume_m3, usable_volume_m3, dead_volume_m3;
  double full_surface_m2, floor_m2, wall_m2, rim_length_m, brim_area_m2;
  double clear_floor_length_m,
      clear_floor_width_m;  ///< extents at the finished floor; both the diameter for a round tank
  double clear_rim_length_m, clear_rim_width_m;  ///< extents at the rim
  double depth_m, full_level_m, dead_level_m;    ///< above the finished floor
};

/// Everything computed from a Project. The same Project gives the same Plan, byte for byte.
struct Plan {
  geometry::TankGeometry geometry;
  TankFigures tank;
  works::Earthwork earthwork;
  std::vector<geometry::Layer> layers;
  lining::Quantities quantities;
  std::vector<DipMark> dip_stick;  ///< every 5 cm from the finished floor, and the overflow level and the rim
  geometry::SettingOut setting_out;
  site::SitePlan site;
  site::FieldTests field_tests;    ///< what the field notes say; nothing here was reckoned with it
  works::Calibration calibration;  ///< when in force, everything here was reckoned with its medians
  std::optional<works::Works> works;
  std::optional<water::WaterPlan> water;  ///< absent: not asked, or the climate or latitude is not known
  std::optional<hydraulics::DeliveryPlan> delivery;
  std::optional<cost::CostPlan> cost;
  std::optional<cost::RangesPlan> ranges;  ///< absent until refined; see core/compare/refine.h
  std::vector<OptionResult> options;       ///< A and the options; empty until refined, and without options
  std::vector<Finding> findings;
};

/// Problems that keep a project from being planned: each field against its range, then across fields. Empty
/// when it can be planned.
Problems check(const Project& project);

/// The plan, or the problems that stand in its way. The outcome does not depend on what is used again.
/// @param before an earlier plan whose weather years, and ground, are used again where they are the same
/// @param ground of a survey made ready beforehand; used when it is of the project's spot heights
tl::expected<Plan, Problems> plan(const Project& project, const Plan* before = nullptr,
                                  std::shared_ptr<const site::SurveyedGround> ground = nullptr);

}  // namespace core
