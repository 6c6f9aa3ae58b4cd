#pragma once

#include "core/hydraulics/result.h"
#include "core/hydraulics/settling.h"

#include <optional>

namespace core::hydraulics {

/// What a silt trap before the tank must do.
struct SiltTrapTask {
  double flow_m3_s = 0;
  Grain grain;                      ///< the smallest that must stay behind
  double temperature_c = 10;        ///< the coldest water: grains fall slowest in it
  double area_reserve = 2;          ///< area over the ideal Q/w, figure silt.reserve; at least 1
  double length_over_width = 6;     ///< at least 1; figure silt.length_over_width
  std::optional<double> width_m{};  ///< chosen; then the length follows from the area
  double freeboard_m = 0.1;
  double silt_kg_m3 = 0.5;  ///< in the water that comes in
  double cleaning_interval_days = 7;
  double deposit_grain_kg_m3 = 2600;  ///< figure silt.deposit_grain_density
  double packing = 0.5;               ///< share of the deposit that is grain, figure silt.packing
};

struct SiltTrap {
  Settling settling;
  double ideal_area_m2 = 0;  ///< Q/w
  double area_m2 = 0;        ///< with the reserve: L B = 2 Q/w
  double length_m = 0, width_m = 0;
  double surface_loading_m_day = 0;       ///< Q over area
  double speed_limit_m_s = 0;             ///< 0.44 sqrt(d mm): faster, the grain is carried on
  double settling_depth_m = 0;            ///< least water depth over the deposit that keeps the limit
  double deposit_kg = 0, deposit_m3 = 0;  ///< between two cleanings, all of the silt staying behind
  double deposit_depth_m = 0;
  double depth_m = 0;      ///< freeboard, settling and deposit depth together
  double detention_s = 0;  ///< of the settling depth
};

/// A trap for a grain size. @source micro_hydro_civil_works (area, speed, deposit)
/// Codes: flow_, coefficient_ (reserve, length over width, packing), width_, depth_ (freeboard),
/// concentration_, time_, density_, grain_, temperature_out_of_range.
Result<SiltTrap> siltTrap(const SiltTrapTask& task);

/// A trap that stands or is planned by eye.
struct SiltTrapShape {
  double length_m = 0, width_m = 0;
  double water_depth_m = 0;  ///< over the deposit
};

struct SiltTrapCheck {
  double kept_mm = 0;          ///< smallest grain that stays with the reserve
  double forward_m_s = 0;      ///< mean speed through it
  double speed_limit_m_s = 0;  ///< for the kept grain
  bool slow_enough = false;
};

/// What a trap keeps of a flow. Codes as siltTrap; grain_out_of_range when it keeps nothing up to 2 mm or all
/// down to 0.001 mm. @param grain its density and shape count, not its size
Result<SiltTrapCheck> checkSiltTrap(const SiltTrapShape& shape, double flow_m3_s, const Grain& grain,
                                    double temperature_c, double area_reserve = 2);

/// Greatest forward speed for a grain [m/s], 0.44 sqrt(d mm). @source micro_hydro_civil_works
double forwardSpeedLimit(double diameter_mm);

}  // namespace core::hydraulics
