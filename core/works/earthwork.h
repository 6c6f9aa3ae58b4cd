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
  std::optional<double> bench_cut_m3,
      bench_fill_m3;                    ///< as it lies, as compacted; absent: no bench can be made
  std::optional<double> topsoil_m3;     ///< stripped first; absent likewise
  std::optional<double> spoil_bank_m3;  ///< left over, as it lies: pit and cut less the fill
  std::optional<double> swell_percent, spoil_loose_m3;  ///< absent: soil not known, or as above
};

/// Swell of dug soil, loose over bank volume less one [%]. @source merritt_swell
double swellPercent(Soil soil);

/// What is moved to make the platform [m3].
struct Platform {
  double cut_m3 = 0, fill_m3 = 0, topsoil_m3 = 0;
  double spoil_bank_m3 = 0;  ///< of platform and pit together
};

/// @param platform absent: none can be made on this ground
Earthwork earthwork(const geometry::TankGeometry& geometry, std::optional<Soil> soil,
                    const std::optional<Platform>& platform);

}  // namespace core::works
