#pragma once

#include "core/project/water.h"
#include "core/water/balance.h"
#include "core/water/water_plan.h"
#include "core/water/weather.h"

#include <vector>

namespace core::water {

/// What each day brings and needs, by where it comes from and goes to [m3]; columns as long as the weather.
struct DayParts {
  std::vector<float> source, roof, ground, beds;
  double animals = 0, people = 0;  ///< the same every day
};

/// @param needs filled with one entry a bed
DayParts dayParts(const Water& water, const Weather& weather, std::vector<BedNeed>& needs);

/// Largest value of each year, mean over the years.
double meanPeak(const std::vector<float>& column, const std::vector<std::size_t>& year_start);

/// The series for the balance.
DaySeries daySeries(const Water& water, const Weather& weather, const DayParts& parts);

}  // namespace core::water
