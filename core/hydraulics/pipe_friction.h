#pragma once

#include "core/hydraulics/result.h"

namespace core::hydraulics {

/// The inside of a round pipe.
struct Bore {
  double diameter_m = 0;   ///< over 0 to 2 m
  double roughness_m = 0;  ///< equivalent sand roughness; up to 0.05 of the diameter
};

/// Laminar below Re 2000, turbulent from Re 4000 on. Between them the flow is unsteady and no formula holds:
/// the factor runs in a straight line from the laminar to the turbulent one, so that loss grows with flow.
enum class Regime { laminar, transition, turbulent };

inline constexpr double kLaminarBelow = 2000;
inline constexpr double kTurbulentFrom = 4000;

Regime regimeOf(double reynolds);

double reynolds(double velocity_m_s, double diameter_m, double viscosity_m2_s);  ///< V D / nu [1]
double meanVelocity(double flow_m3_s, double diameter_m);                        ///< [m/s]
double velocityHead(double velocity_m_s);                                        ///< V^2 / 2g [m]

/// Darcy friction factor of turbulent flow, 1/sqrt(f) = -2 log10(k/3.7D + 2.51/(Re sqrt(f))), solved to the
/// last bits from a Swamee-Jain start. Re 4000 to 1e8, k/D 0 to 0.05. @source colebrook_1939
Result<double> colebrookWhite(double reynolds, double relative_roughness);

/// The same without iteration, f = 0.25 / log10(k/3.7D + 5.74/Re^0.9)^2, within about 1 % for Re from 5000 on
/// and 3 % at 4000. @source swamee_jain_1976
Result<double> swameeJain(double reynolds, double relative_roughness);

/// Darcy friction factor in any regime: 64/Re, the straight line between, Colebrook-White. Re over 0 to 1e8.
Result<double> frictionFactor(double reynolds, double relative_roughness);

/// Head lost to the wall over a length [m], Darcy-Weisbach f L/D V^2/2g. 0 for no flow.
/// @param flow_m3_s at least 0 @param viscosity_m2_s kinematic
Result<double> frictionHead(const Bore& bore, double length_m, double flow_m3_s, double viscosity_m2_s);

/// The same by Hazen-Williams [m], hf = 10.67 L Q^1.852 / (C^1.852 D^4.87): a cross-check for water of about
/// 15 C in turbulent flow; at the bores of small lines it runs up to some 10 % low.
/// @param c 60 to 160 @source hazen_williams
Result<double> hazenWilliamsHead(double diameter_m, double length_m, double flow_m3_s, double c);

/// Flow that loses `head_m` by Hazen-Williams [m3/s].
Result<double> hazenWilliamsFlow(double diameter_m, double length_m, double head_m, double c);

}  // namespace core::hydraulics
