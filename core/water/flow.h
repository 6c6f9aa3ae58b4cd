#pragma once

#include "core/project/water.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace core::water {

/// What the bucket-and-watch readings of one month say.
struct MonthReadings {
  int month = 1;                  ///< 1 to 12
  std::vector<std::size_t> rows;  ///< of WaterSource::readings
  double median_l_per_min = 0;    ///< of all readings
  double least_l_per_min = 0, most_l_per_min = 0;
  double spread_percent = 0;  ///< most less least over median, outliers left out
  std::vector<std::size_t>
      outliers;  ///< rows further from the median than 3.5 median deviations (scaled), three or more readings
  std::vector<std::size_t> too_quick;  ///< rows in which the vessel filled in under 3 s
  bool enough = false;                 ///< more than three readings
};

double flowOf(const FlowReading& reading);  ///< [L/min]

/// Readings by month, in the order of the months that have any. Outliers by the modified z-score
/// (0.6745 |x - median| / MAD > 3.5). @source iglewicz_hoaglin, volumetric_method
std::vector<MonthReadings> readingsByMonth(const std::vector<FlowReading>& readings);

}  // namespace core::water
