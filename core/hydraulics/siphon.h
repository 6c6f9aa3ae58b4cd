#pragma once

#include "core/hydraulics/pipe_friction.h"
#include "core/hydraulics/result.h"

#include <optional>

namespace core::hydraulics {

/// A pipe that leads over the rim, so that none goes through the lining. Levels above one common zero.
struct Siphon {
  double water_level_m = 0;     ///< in the tank
  double inlet_level_m = 0;     ///< end of the pipe in the tank
  double crest_level_m = 0;     ///< axis of the pipe at its highest point
  double outlet_level_m = 0;    ///< end of the pipe outside, or the water it dips into where that is higher
  double rising_length_m = 0;   ///< from the inlet to the crest
  double falling_length_m = 0;  ///< from the crest to the outlet
  Bore bore;
  double rising_k = 0.5;  ///< entrance, screen and bends up to and at the crest
  double falling_k = 0;   ///< bends and valve after it; the outflow's velocity head is counted by itself
  double temperature_c = 15;
  double altitude_m = 0;
  double reserve_m =
      2;  ///< kept over vapour at the crest, for air that comes out of the water; siphon.reserve
};

enum class SiphonState {
  runs,
  crest_too_high,   ///< the column parts at rest already: it cannot be primed
  parts_when_open,  ///< it holds at rest, but running full lowers the crest's pressure too far: throttle it
  no_fall,          ///< outlet not under the water
  inlet_dry,
};

struct SiphonFlow {
  SiphonState state = SiphonState::no_fall;
  double barometric_m = 0;    ///< air pressure less vapour pressure as water column
  double most_lift_m = 0;     ///< crest over water at rest: barometric less reserve
  double lift_m = 0;          ///< crest over water; under 0 the crest is drowned
  double lowest_level_m = 0;  ///< to which the tank can be drawn at a trickle: highest of inlet, outlet and
                              ///< crest less most_lift
  double primed_with_m3 = 0;  ///< water that fills the pipe
  // only when the outlet lies under the water and the inlet is covered; full flow with the valve open
  double flow_m3_s = 0, velocity_m_s = 0;
  double crest_loss_m = 0;           ///< velocity head and losses up to the crest
  double crest_pressure_m = 0;       ///< gauge; under 0 is suction
  double lift_left_m = 0;            ///< most_lift less lift less crest_loss
  double clearing_velocity_m_s = 0;  ///< that carries air down the falling leg @source sanks_air
  bool clears_air = false;
  std::optional<double> throttled_m3_s;  ///< most the crest allows; absent when full flow is allowed or none
};

/// Flow of the full pipe, and whether the crest bears it: the lift may not exceed air pressure less vapour
/// pressure less velocity head and losses up to the crest less the reserve.
/// Codes: bore_, roughness_, length_, loss_, level_, reserve_, temperature_, altitude_out_of_range,
/// crest_below_outlet (no siphon: a plain line).
Result<SiphonFlow> siphonFlow(const Siphon& siphon);

/// Speed that carries air bubbles down a pipe [m/s], sqrt(gD) (0.825 + 0.25 sqrt(sin a)). @source sanks_air
double clearingVelocity(double diameter_m, double sine_of_fall);

}  // namespace core::hydraulics
