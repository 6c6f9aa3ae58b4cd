#pragma once

#include "core/cost/cost_plan.h"
#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"
#include "core/works/schedule.h"

#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace core::cost {

/// One input that moves an outcome: its share of the spread.
struct Driver {
  RangedInput input;
  double share;        ///< squared correlation over the sum of all inputs' that move the outcome, 0 to 1
  double correlation;  ///< -1 to 1
};

/// How one outcome is spread.
struct Spread {
  std::string outcome;  ///< cement_bags, person_days, money, fill_days
  double typical = 0;   ///< with every input as entered
  double p10 = 0, p50 = 0, p90 = 0;
  double mean = 0;
  double least = 0, most = 0;
  std::vector<Driver> drivers;  ///< largest share first
};

struct RangesPlan {
  int draws = 0;
  std::vector<Spread> spreads;  ///< person_days with works; money when no price is missing; fill_days when
                                ///< the tank fills within a year at every flow
};

struct RangesInput {
  const Project& project;  ///< in force
  const geometry::TankGeometry& geometry;
  const lining::Quantities& quantities;
  const works::Works* works = nullptr;
  const CostPlan* cost = nullptr;
  const water::WaterPlan* water = nullptr;
};

/// Problems of the ranges: an input named twice, low above 0 or high below 0.
Problems check(const Ranges& ranges);

/// Seeded draws of all inputs, each triangular between its low and high about the value in force, and what
/// comes of them. The same input gives the same answer. Volumes of the coats at any thickness are exact (a
/// cubic of the factor on thickness); the platform stays as it is. Prices: of goods and own items; trips of
/// carriers stay. P10, P50, P90 are the least draw that so large a share does not exceed. @param cancel when
/// it becomes true the answer is empty
RangesPlan ranges(const RangesInput& input, const std::atomic<bool>* cancel = nullptr);

}  // namespace core::cost
