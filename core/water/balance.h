#pragma once

#include "core/geometry/tank_geometry.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace core::water {

/// The clear inside of a tank as polynomials of the level z above the finished floor [m]:
/// surface = a0 + a1 z + a2 z^2 [m2]; wetted = a0 + w1 z + w2 z^2 [m2]; volume = its integral less the cove.
struct TankCurve {
  double a0 = 0, a1 = 0, a2 = 0;
  double w1 = 0, w2 = 0;
  double cove_m3 = 0;
  double full_level_m = 0, dead_level_m = 0, rim_level_m = 0;
  double full_m3 = 0, dead_m3 = 0;
  double catch_m2 = 0;  ///< opening at the rim that rain falls into

  double surface(double z_m) const { return a0 + z_m * (a1 + z_m * a2); }  ///< [m2]
  double wetted(double z_m) const { return a0 + z_m * (w1 + z_m * w2); }   ///< [m2]
  double volume(double z_m) const;  ///< [m3], below 0 where the water would not cover the cove
  /// Inverse of volume, held to 0..full_level_m, within 1e-12 m; quicker with a level near it.
  double level(double volume_m3) const;
  double level(double volume_m3, double near_m) const;
};

/// Curve of a tank. The cove counts whole above its top.
TankCurve curveOf(const geometry::TankGeometry& tank);

/// The same tank with its plan scaled by `factor`; depth, batter, freeboard and dead depth as they are.
TankCurve scaled(const TankCurve& curve, double factor);

/// Full volume that the scaled tank nears as its floor shrinks to a point [m3]; 0 with upright walls.
double leastFull(const TankCurve& curve);

/// Plan factor that gives the scaled tank a full volume of `full_m3`; within 1e-12 relative.
/// @pre full_m3 > leastFull(curve), else std::logic_error
double factorFor(const TankCurve& curve, double full_m3);

/// What happens on each day whatever the tank; columns of equal length.
struct DaySeries {
  std::vector<float> rain_mm;           ///< falls into the tank's opening
  std::vector<float> evaporation_mm;    ///< from open water, cover counted
  std::vector<float> supply_m3;         ///< source and runoff led in
  std::vector<float> beds_m3;           ///< need of the beds as entered
  std::vector<float> household_m3;      ///< need of animals and people
  std::vector<std::size_t> year_start;  ///< as in Weather
  double seepage_mm_day = 0;

  std::size_t days() const { return rain_mm.size(); }
  std::size_t years() const { return year_start.empty() ? 0 : year_start.size() - 1; }
};

/// A day is dry when less than this share of its need was met.
inline constexpr double kMetShare = 0.999;

/// Sums of a run [m3]; end - start + evaporation + seepage + drawn + spill = supply + rain.
struct Totals {
  double supply = 0, rain = 0, evaporation = 0, seepage = 0, drawn = 0, unmet = 0, spill = 0;
  double start = 0, end = 0;
};

/// One tank through all days: V(t+1) = clip(V + supply + rain on the opening - evaporation(surface at V)
/// - seepage(wetted area at V) - need, 0, full). Losses take no more than there is; the need draws down to
/// the dead depth only; what is above full at the end of a day spills.
struct Run {
  std::vector<float> volume_m3;  ///< at the end of each day
  std::vector<float> rain_m3, evaporation_m3, seepage_m3, drawn_m3, unmet_m3, spill_m3;  ///< of each day
  std::vector<std::uint8_t> dry;                                                         ///< 1: a dry day
  Totals totals;                                                                         ///< in double
};

/// @param start_m3 water at the start of the first day
/// @param bed_factor beds' need is multiplied by it
Run run(const TankCurve& tank, const DaySeries& series, double start_m3, double bed_factor = 1);

/// Water at the start of the first day: what is left after the last year has been run once from full.
double startVolume(const TankCurve& tank, const DaySeries& series, double bed_factor = 1);

}  // namespace core::water
