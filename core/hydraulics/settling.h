#pragma once

#include "core/hydraulics/result.h"
#include "core/hydraulics/water_properties.h"

namespace core::hydraulics {

/// How a grain falls: a smooth ball falls faster than natural sand of the same sieve size.
enum class GrainShape { ball, natural };

struct Grain {
  double diameter_mm = 0;  ///< 0.001 to 2
  double density_kg_m3 = 2650;
  GrainShape shape = GrainShape::natural;
};

struct Settling {
  double velocity_m_s = 0;
  double reynolds = 0;    ///< of the grain
  double stokes_m_s = 0;  ///< what Stokes' law alone would give
};

/// Stokes' law [m/s], (rho_s - rho) g d^2 / 18 mu; within 5 % up to a grain Reynolds number of about 0.3.
double stokesVelocity(double diameter_m, double grain_kg_m3, double water_kg_m3, double viscosity_pa_s);

/// Drag coefficient of a smooth ball, Re over 0 to 1500; beyond, grain_beyond_drag_curve. @source clift_1978
Result<double> ballDrag(double reynolds);

/// Speed at which one grain falls in still water: a ball where its drag balances its weight in water; a
/// natural grain by w = R g d^2 / (18 nu + sqrt(0.75 R g d^3)). @source clift_1978, ferguson_church_2004
/// Codes: grain_, density_out_of_range (heavier than water, up to 5000 kg/m3), grain_beyond_drag_curve.
Result<Settling> settlingVelocity(const Grain& grain, const Water& water);

}  // namespace core::hydraulics
