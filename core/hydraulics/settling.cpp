#include "core/hydraulics/settling.h"

#include "core/hydraulics/root.h"

#include <cmath>

namespace core::hydraulics {
namespace {

constexpr double kFinest_mm = 0.001;
constexpr double kCoarsest_mm = 2;
constexpr double kHeaviest_kg_m3 = 5000;
constexpr double kMostReynolds = 1500;

// natural grains, sieve diameter: Ferguson, Church 2004
constexpr double kViscousTerm = 18;
constexpr double kDragTerm = 1.0;

double dragOf(double re) {
  const double w = std::log10(re);
  // Clift, Grace, Weber 1978, table 5.2; under Re 0.01 Oseen's 24/Re + 9/2, which meets the next line
  // (the table prints 24/Re + 3/16 there)
  if (re < 0.01) return 24 / re + 3.0 / 16 * 24;
  if (re <= 20) return 24 / re * (1 + 0.1315 * std::pow(re, 0.82 - 0.05 * w));
  if (re <= 260) return 24 / re * (1 + 0.1935 * std::pow(re, 0.6305));
  return std::pow(10, 1.6435 - 1.1242 * w + 0.1558 * w * w);
}

/// Speed at which the drag of a ball equals its weight in water; nothing under the curve's last Re.
Result<double> ballVelocity(double d, double grain_kg_m3, const Water& water) {
  const double weight = 4.0 / 3 * kGravity_m_s2 * d * (grain_kg_m3 / water.density_kg_m3 - 1);
  const double nu = water.kinematicViscosity();
  const double most = kMostReynolds * nu / d;
  const auto excess = [&](double v) { return dragOf(v * d / nu) * v * v - weight; };
  if (excess(most) < 0) return fault("grain_beyond_drag_curve");
  return rootBetween(excess, most * 1e-12, most);
}

double naturalVelocity(double d, double grain_kg_m3, const Water& water) {
  const double pull = (grain_kg_m3 / water.density_kg_m3 - 1) * kGravity_m_s2;  // R g
  // Ferguson, Church 2004 eq. 4
  return pull * d * d /
         (kViscousTerm * water.kinematicViscosity() + std::sqrt(0.75 * kDragTerm * pull * d * d * d));
}

}  // namespace

double stokesVelocity(double diameter_m, double grain_kg_m3, double water_kg_m3, double viscosity_pa_s) {
  return (grain_kg_m3 - water_kg_m3) * kGravity_m_s2 * diameter_m * diameter_m / (18 * viscosity_pa_s);
}

Result<double> ballDrag(double reynolds) {
  if (!(reynolds > 0)) return fault("reynolds_out_of_range");
  if (reynolds > kMostReynolds) return fault("grain_beyond_drag_curve");
  return dragOf(reynolds);
}

Result<Settling> settlingVelocity(const Grain& grain, const Water& water) {
  if (!(grain.diameter_mm >= kFinest_mm && grain.diameter_mm <= kCoarsest_mm))
    return fault("grain_out_of_range");
  if (!(grain.density_kg_m3 > water.density_kg_m3 && grain.density_kg_m3 <= kHeaviest_kg_m3))
    return fault("density_out_of_range");
  const double d = grain.diameter_mm / 1000;
  const Result<double> v = grain.shape == GrainShape::ball
                               ? ballVelocity(d, grain.density_kg_m3, water)
                               : Result<double>(naturalVelocity(d, grain.density_kg_m3, water));
  if (!v) return fault(v.error());
  return Settling{*v, *v * d / water.kinematicViscosity(),
                  stokesVelocity(d, grain.density_kg_m3, water.density_kg_m3, water.dynamic_viscosity_pa_s)};
}

}  // namespace core::hydraulics
