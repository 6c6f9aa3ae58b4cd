#include "core/hydraulics/silt_trap.h"

#include "core/hydraulics/root.h"

#include <cmath>
#include <string_view>

namespace core::hydraulics {
namespace {

constexpr double kSecondsPerDay = 86400;
constexpr double kFinest_mm = 0.001, kCoarsest_mm = 2;  // of settlingVelocity

bool over(double value) {
  return value > 0 && std::isfinite(value);
}

std::string_view taskFault(const SiltTrapTask& t) {
  if (!over(t.flow_m3_s)) return "flow_out_of_range";
  if (!(t.area_reserve >= 1 && t.area_reserve <= 10)) return "coefficient_out_of_range";
  if (!(t.length_over_width >= 1 && t.length_over_width <= 50)) return "coefficient_out_of_range";
  if (t.width_m && !over(*t.width_m)) return "width_out_of_range";
  if (!(t.freeboard_m >= 0 && std::isfinite(t.freeboard_m))) return "depth_out_of_range";
  if (!(t.silt_kg_m3 >= 0 && t.silt_kg_m3 <= 100)) return "concentration_out_of_range";
  if (!(t.cleaning_interval_days >= 0 && std::isfinite(t.cleaning_interval_days))) return "time_out_of_range";
  if (!over(t.deposit_grain_kg_m3)) return "density_out_of_range";
  return t.packing > 0 && t.packing <= 1 ? "" : "coefficient_out_of_range";
}

Result<Settling> settlingAt(const Grain& grain, double temperature_c) {
  const Result<Water> water = waterAt(temperature_c);
  if (!water) return fault(water.error());
  return settlingVelocity(grain, *water);
}

void fillPlan(SiltTrap& trap, const SiltTrapTask& t) {
  trap.ideal_area_m2 = t.flow_m3_s / trap.settling.velocity_m_s;
  trap.area_m2 = t.area_reserve * trap.ideal_area_m2;  // micro_hydro_civil_works: L B = 2 Q / w
  trap.width_m = t.width_m.value_or(std::sqrt(trap.area_m2 / t.length_over_width));
  trap.length_m = trap.area_m2 / trap.width_m;
  trap.surface_loading_m_day = t.flow_m3_s / trap.area_m2 * kSecondsPerDay;
}

void fillDepth(SiltTrap& trap, const SiltTrapTask& t) {
  trap.speed_limit_m_s = forwardSpeedLimit(t.grain.diameter_mm);
  trap.settling_depth_m = t.flow_m3_s / (trap.width_m * trap.speed_limit_m_s);
  trap.deposit_kg = t.flow_m3_s * t.silt_kg_m3 * t.cleaning_interval_days * kSecondsPerDay;
  trap.deposit_m3 = trap.deposit_kg / (t.deposit_grain_kg_m3 * t.packing);
  trap.deposit_depth_m = trap.deposit_m3 / trap.area_m2;
  trap.depth_m = t.freeboard_m + trap.settling_depth_m + trap.deposit_depth_m;
  trap.detention_s = trap.area_m2 * trap.settling_depth_m / t.flow_m3_s;
}

/// Diameter of the grain that falls at `velocity_m_s`.
Result<double> grainFor(const Grain& like, double velocity_m_s, double temperature_c) {
  const auto excess = [&](double mm) -> Result<double> {
    Grain grain = like;
    grain.diameter_mm = mm;
    const Result<Settling> s = settlingAt(grain, temperature_c);
    if (!s) return fault(s.error());
    return s->velocity_m_s - velocity_m_s;
  };
  const Result<double> finest = excess(kFinest_mm), coarsest = excess(kCoarsest_mm);
  if (!finest) return finest;
  if (!coarsest) return coarsest;
  if (*finest > 0 || *coarsest < 0) return fault("grain_out_of_range");
  return rootBetween([&](double mm) { return *excess(mm); }, kFinest_mm, kCoarsest_mm);
}

}  // namespace

double forwardSpeedLimit(double diameter_mm) {
  return 0.44 * std::sqrt(diameter_mm);  // micro_hydro_civil_works
}

Result<SiltTrap> siltTrap(const SiltTrapTask& task) {
  const std::string_view wrong = taskFault(task);
  if (!wrong.empty()) return fault(wrong);
  const Result<Settling> settling = settlingAt(task.grain, task.temperature_c);
  if (!settling) return fault(settling.error());
  SiltTrap trap;
  trap.settling = *settling;
  fillPlan(trap, task);
  fillDepth(trap, task);
  return trap;
}

Result<SiltTrapCheck> checkSiltTrap(const SiltTrapShape& shape, double flow_m3_s, const Grain& grain,
                                    double temperature_c, double area_reserve) {
  if (!over(flow_m3_s)) return fault("flow_out_of_range");
  if (!over(shape.length_m)) return fault("length_out_of_range");
  if (!over(shape.width_m)) return fault("width_out_of_range");
  if (!over(shape.water_depth_m)) return fault("depth_out_of_range");
  if (!(area_reserve >= 1 && area_reserve <= 10)) return fault("coefficient_out_of_range");
  const double fall = area_reserve * flow_m3_s / (shape.length_m * shape.width_m);
  const Result<double> kept = grainFor(grain, fall, temperature_c);
  if (!kept) return fault(kept.error());
  const double forward = flow_m3_s / (shape.width_m * shape.water_depth_m);
  const double limit = forwardSpeedLimit(*kept);
  return SiltTrapCheck{*kept, forward, limit, forward <= limit};
}

}  // namespace core::hydraulics
