#pragma once

#include "core/hydraulics/result.h"
#include "core/water/balance.h"

#include <functional>
#include <vector>

namespace core::hydraulics {

/// What leaves the tank at a water level [m3/s], what flows in at the same time already taken off. Levels
/// above the finished floor, as in TankCurve. Must be over 0 everywhere over the last level.
using OutflowAt = std::function<double(double level_m)>;

/// Time since the start at which the water stands at a level.
struct LevelTime {
  double level_m, seconds;
};

struct Emptying {
  double seconds = 0;
  double error_s = 0;  ///< bound of the integration's error
  int evaluations = 0;
  std::vector<LevelTime> curve;  ///< from the first level down to the last, both with them
};

/// Time for the water to fall from one level to another, integral of surface(z)/outflow(z) dz, by adaptive
/// 15-point Gauss-Kronrod rules, each to `tolerance` of the whole time; error_s is their sum. An outflow that
/// dies away like the root of the head ends in finite time; one that dies away with the head itself, as
/// laminar flow in a pipe does, never: does_not_empty, unless the last level lies over the outlet. The cove's
/// share of the room near the floor is left out, as in TankCurve. Codes: level_out_of_range, outflow_stops,
/// does_not_empty.
/// @param curve_points of the answer's curve, at least 2
Result<Emptying> emptyingTime(const water::TankCurve& tank, double from_level_m, double to_level_m,
                              const OutflowAt& outflow, double tolerance = 1e-8, int curve_points = 21);

/// Flow through an opening under a head h over its middle [m3/s], c A sqrt(2 g h). 0 for no head.
/// Codes: area_, coefficient_ (0 to 1), head_out_of_range.
Result<double> orificeFlow(double area_m2, double coefficient, double head_m);

}  // namespace core::hydraulics
