#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/water/balance.h"

#include <vector>

namespace support {

/// The daily balance as core/water/balance.h describes it, written plainly to hold the library against:
/// double precision, the level found by halving, areas by Steiner's formula, volumes by the prismoidal one.
struct PlainTank {
  double floor_m2 = 0, perimeter_m = 0, corners = 0, batter = 0;
  double full_level_m = 0, full_m3 = 0, dead_m3 = 0, cove_m3 = 0, opening_m2 = 0;

  double surface(double z_m) const;
  double wetted(double z_m) const;
  double volume(double z_m) const;
  double level(double volume_m3) const;
};

PlainTank plainTank(const core::geometry::TankGeometry& tank);

struct PlainRun {
  std::vector<double> volume_m3;                                                   ///< at the end of each day
  std::vector<int> dry;                                                            ///< 1: a dry day
  double rain = 0, evaporation = 0, seepage = 0, drawn = 0, unmet = 0, spill = 0;  ///< sums [m3]
};

/// Days from `first` to before `last`.
PlainRun plainRun(const PlainTank& tank, const core::water::DaySeries& series, std::size_t first,
                  std::size_t last, double start_m3, double bed_factor);

/// What the last year leaves when it is run from full.
double plainStart(const PlainTank& tank, const core::water::DaySeries& series, double bed_factor);

}  // namespace support
