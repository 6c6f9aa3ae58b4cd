#pragma once

#include "core/hydraulics/result.h"

namespace core::hydraulics {

/// What pipes and settling grains feel of clean water at air pressure.
struct Water {
  double temperature_c = 0;
  double density_kg_m3 = 0;
  double dynamic_viscosity_pa_s = 0;
  double vapour_pressure_pa = 0;  ///< absolute

  double kinematicViscosity() const { return dynamic_viscosity_pa_s / density_kg_m3; }  ///< [m2/s]
};

/// Water at a temperature from 0 to 50 C; elsewhere temperature_out_of_range.
///
/// Density: rational polynomial of t, within 0.01 kg/m3 up to 40 C. @source kell_1975 eq. 16
/// Viscosity: sum of a (T/300 K)^b, liquid water at 0.1 MPa, within 1 %. @source huber_2009
/// Vapour pressure: ln(p/pc) = Tc/T sum of a (1 - T/Tc)^b, within 0.1 %. @source wagner_pruss_2002 eq. 2.5
Result<Water> waterAt(double temperature_c);

/// Air pressure at an altitude from -430 to 5000 m [Pa]; FAO-56 eq. 7 (20 C at sea level), as everywhere in
/// the project. @source fao56
Result<double> airPressure(double altitude_m);

/// Height of water that the air holds up against the water's own vapour [m]: (p_air - p_vapour) / (rho g).
/// The end of every suction lift, without losses and without reserve.
Result<double> barometricHeight(double altitude_m, double temperature_c);

}  // namespace core::hydraulics
