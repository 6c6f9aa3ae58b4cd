#pragma once

#include "core/water/balance.h"

#include <atomic>
#include <cstddef>
#include <vector>

namespace core::water {

/// Years in ten without a dry day, by size of the tank and area of the beds.
struct ReliabilityMap {
  std::vector<double> full_m3;      ///< columns, rising
  std::vector<double> bed_area_m2;  ///< rows, rising from 0
  std::vector<float> years_in_ten;  ///< row after row

  bool empty() const { return years_in_ten.empty(); }
  double at(std::size_t column, std::size_t row) const { return years_in_ten[row * full_m3.size() + column]; }
  bool operator==(const ReliabilityMap&) const = default;
};

/// Reach of the map: sizes up to about 2.5 times the present tank, areas up to about 2.5 times the present
/// beds, both rounded up to a plain number.
struct MapReach {
  double most_full_m3 = 0;
  double most_bed_area_m2 = 0;
};
MapReach mapReach(double full_m3, double bed_area_m2);

/// Smallest size worth trying, full [m3]: a little over the one whose floor is a point.
double leastSize(const TankCurve& tank);

/// The map with `cells` columns and rows, spread over at most `threads` threads.
/// @param bed_area_m2 area that the series' need of the beds stands for; 0: no beds, one row
/// @param cancel when it becomes true the map comes back empty
/// @pre reach.most_full_m3 > leastFull(tank)
ReliabilityMap reliabilityMap(const TankCurve& tank, const DaySeries& series, double bed_area_m2,
                              const MapReach& reach, std::size_t cells, unsigned threads,
                              const std::atomic<bool>& cancel);

}  // namespace core::water
