#pragma once

#include "core/geometry/tank_geometry.h"

#include <optional>

namespace core::site {

struct UpliftInput {
  double water_table_m = 0;     ///< below the rim; negative: above it
  double plaster_kg_m3 = 1900;  ///< of the set lining: soil-cement plaster (own)
  double water_kg_m3 = 1000;
  double factor = 1.2;  ///< weight over uplift wanted (own)
};

/// Groundwater against the empty tank. Only the lining's own weight holds it: neither its grip on the ground
/// nor the stone bed under it counts.
struct Uplift {
  double head_m = 0;        ///< of groundwater over the underside of the floor lining; 0: none reaches it
  double weight_kg = 0;     ///< lining: floor, walls, cove and rim
  double displaced_kg = 0;  ///< groundwater displaced by tank and lining below the water table
  /// Weight over uplift of the whole tank; absent when no groundwater reaches it.
  std::optional<double> factor;
  /// Weight of the floor lining over the pressure under it, square metre by square metre; absent likewise.
  std::optional<double> floor_factor;
  /// Water to be left in the tank, above the finished floor, so that both factors come to what is wanted [m].
  /// Absent when even a full tank does not hold it down.
  std::optional<double> keep_water_m = 0;
};

/// Uplift of the empty tank by a high water table.
Uplift uplift(const geometry::TankGeometry& tank, const UpliftInput& input);

/// Frost at a site.
struct FrostInput {
  double freezing_index_c_days = 0;  ///< sum of daily means below 0 C over a winter, without sign
  double conductivity_w_mk = 1.8;    ///< of the frozen ground (own)
  double dry_density_kg_m3 = 1600;
  double water_percent = 15;  ///< of the dry weight, over 0
};

/// Depth to which ground freezes [m]: Stefan's formula sqrt(2 k t / L), latent heat L of the water in the
/// ground. On the deep side: the heat of the ground itself is left out. @source stefan_frost
double frostDepth(const FrostInput& input);

enum class Frost {
  none,      ///< no frost, or ground that does not heave (sand, rock)
  possible,  ///< ground that heaves, water too deep to feed ice
  likely,    ///< ground that heaves with water near
};

/// @param water_below_frost_m water table below the depth of frost; absent: not known, counts as near
Frost frostHeave(double frost_depth_m, std::optional<Soil> soil, std::optional<double> water_below_frost_m);

enum class Swelling { low, moderate, high, very_high };

/// Swelling by linear extensibility, the shrinkage of a clod of the soil from moist to dry [% of its moist
/// length over dry less one]: 3, 6 and 9 %. @source nssh_shrink_swell
Swelling swellingByExtensibility(double percent);

/// Swelling where only the clay share is known: moderate from 35 % clay, never more; what clay it is decides.
/// Own proposal.
Swelling swellingByClay(double clay_percent);

}  // namespace core::site
