#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"
#include "core/works/earthwork.h"

#include <string>
#include <vector>

namespace core::works {

/// Below this depth under the ground beside the tank digging is slower (hand_output_tables) and a task of its
/// own.
inline constexpr double kDeepDigging_m = 1.5;

/// What the labour is reckoned from. The project is the one in force (see records.h).
struct LabourInput {
  const geometry::TankGeometry& geometry;
  const Project& project;
  const lining::Quantities& quantities;
  const Platform& platform;  ///< as moved; all 0 where none can be made
};

struct Labour {
  std::string task;            ///< id as in the schedule; "curing" for all wetting
  double days;                 ///< person-days at the rate used
  double low_days, high_days;  ///< at the table's low and high rate
  std::string skill;           ///< labourer, mason_and_helpers
  double mason_days;           ///< skilled person-days among `days`
  double quantity;             ///< worked, in `unit`
  std::string unit;            ///< m3, m2, m, day, job
  double rate;                 ///< person-days per quantity
  std::string source;
};

/// Labour of all tasks in the order of work. Left out: what the plan has none of (no pipes, no fence).
std::vector<Labour> labour(const LabourInput& input);

/// Length of a fence all round the opening, a metre away from it [m]. @source own
double fenceLength(const geometry::TankGeometry& geometry);

/// Skilled share of the people on a coat or the stone bed.
/// @source cpwd_plaster: mason 0.074 of 0.260; rate_norms_2073: 1 of 4.5
double masonShareOfPlaster();
double masonShareOfBed();

}  // namespace core::works
