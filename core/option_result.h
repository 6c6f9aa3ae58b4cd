#pragma once

#include "core/base/problem.h"
#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// What comes of one option, side by side with the others. The first is the project as it stands, A.
struct OptionResult {
  std::string letter;  ///< A, B, C, ...
  std::string name;
  std::vector<FieldChange> changes;  ///< empty for A
  Problems problems;                 ///< why it cannot be built; then nothing below stands
  std::optional<geometry::TankGeometry> geometry;
  std::optional<double> full_volume_m3, usable_volume_m3, pit_volume_m3;
  std::optional<double> length_m, width_m, depth_m;  ///< clear floor, and depth
  std::optional<double> cement_bags, sand_m3, soil_m3, stone_m3;
  std::optional<double> person_days;
  std::optional<int> people_on_coat;                         ///< most that a coat needs
  std::optional<std::chrono::year_month_day> start, finish;  ///< of the works
  std::optional<double> cost, cash, per_m3_stored;
  std::optional<double> years_in_ten, dry_days_mean, delivered_m3;
  int stops = 0, cautions = 0;
};

}  // namespace core
