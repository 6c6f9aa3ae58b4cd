#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"

#include <optional>

namespace core::works {

struct Earthwork {
  double pit_volume_m3;
  double pit_top_length_m, pit_top_width_m;  ///< outside of coat 1 at ground; the rim ledge is not counted
  double pit_floor_length_m, pit_floor_width_m;
  double pit_depth_m;
  std::optional<double> bench_cut_m3, bench_fill_m3;    ///< absent: not computed for this ground
  std::optional<double> swell_percent, spoil_loose_m3;  ///< absent: soil not known
};

/// Swell of dug soil, loose over bank volume less one [%]. @source merritt_swell
double swellPercent(Soil soil);

Earthwork earthwork(const geometry::TankGeometry& geometry, const Site& site);

}  // namespace core::works
