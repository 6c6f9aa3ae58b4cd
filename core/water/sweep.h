#pragma once

#include "core/water/balance.h"

#include <atomic>
#include <span>
#include <string>
#include <vector>

namespace core::water {

/// One tank with one share of the beds.
struct Lane {
  TankCurve tank;
  double bed_factor = 1;
};

/// What came of one lane over all years of the series (the warm-up year not counted).
struct LaneResult {
  int years_without_dry_day = 0;
  int dry_days = 0;
  Totals totals;
};

/// Lanes side by side in single precision, as run() does them one by one: each starts with what is left
/// after the last year has been run once from full. Agrees with run() within 1e-3 of the tank's capacity on
/// any day. Processes as many lanes at once as the processor can; picks its code at run time.
/// @param cancel when it becomes true the answer is empty
std::vector<LaneResult> sweep(const std::vector<Lane>& lanes, const DaySeries& series,
                              const std::atomic<bool>* cancel = nullptr);

/// Years without a dry day of each lane, as sweep() counts them: for the map, in less time.
/// @param cancel when it becomes true the answer is empty
std::vector<int> yearsWithoutDryDay(std::span<const Lane> lanes, const DaySeries& series,
                                    const std::atomic<bool>* cancel = nullptr);

/// Water at the end of each day in each lane, as sweep() reckons it [m3]; to hold it against run().
std::vector<std::vector<float>> sweepVolumes(const std::vector<Lane>& lanes, const DaySeries& series);

/// Name of the vector instructions that sweep() uses here, for the benchmark: "AVX2".
std::string sweepTarget();

}  // namespace core::water
