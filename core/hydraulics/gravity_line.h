#pragma once

#include "core/hydraulics/pipe_friction.h"
#include "core/hydraulics/pipes.h"
#include "core/hydraulics/result.h"
#include "core/hydraulics/water_properties.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace core::hydraulics {

/// A point of the pipe's axis.
struct PipePoint {
  double station_m = 0;  ///< level distance along the line from the inlet on
  double level_m = 0;    ///< above the same zero as the water levels
};

/// Anything that costs head besides the wall: the entrance, bends, valves. The outflow's own velocity head is
/// counted by itself and is no fitting.
struct Fitting {
  std::string key;       ///< as in figures, "minor.entrance_sharp"; only carried along
  double k = 0;          ///< loss over V^2/2g, at least 0
  double station_m = 0;  ///< where it sits; at the inlet when not known, the careful side for pressures
};

/// A pipe of one bore from an inlet under water to an outlet.
struct Line {
  std::vector<PipePoint> profile;  ///< inlet first, outlet last; stations grow
  Bore bore;
  std::vector<Fitting> fittings;
  double hazen_williams_c = 140;             ///< of the cross-check
  std::optional<double> pressure_class_bar;  ///< what the pipe may bear, already lessened for heat
};

/// Between which levels the line runs.
struct LineHeads {
  double upper_level_m = 0;               ///< water over the inlet
  std::optional<double> lower_level_m{};  ///< water that the outlet dips into; absent: a free outlet
  double required_head_m = 0;             ///< pressure head that must be left at the outlet
};

struct LineClimate {
  double temperature_c = 15;  ///< of the water
  double altitude_m = 0;
  double reserve_m = 2;  ///< kept between the lowest pressure and vapour; figure pipe.reserve
};

/// Heads at one point of the line while it flows. A fitting gives two points at one station, before and
/// after.
struct LinePoint {
  double station_m, level_m;
  double length_m;           ///< along the pipe
  double energy_m;           ///< level of the energy line
  double head_line_m;        ///< energy less velocity head: where water would stand in a riser
  double pressure_m;         ///< head line less pipe level; under 0 the pipe sucks
  double static_pressure_m;  ///< with the outlet shut
};

/// Part of a line where the pressure head lies under a bound.
struct Stretch {
  double from_m, to_m;  ///< stations
  double worst_m;       ///< lowest pressure head
  double worst_station_m;
};

/// A high point between inlet and outlet, where air gathers.
struct Hump {
  double station_m, level_m;
  double rise_m;           ///< over the lowest point since the inlet or the hump before
  double fall_m;           ///< to the lowest point before the next hump or the outlet
  double over_straight_m;  ///< over the straight line from inlet to outlet; may be under 0
  double pressure_m;       ///< at the flow solved
};

/// The line as it flows.
struct LineFlow {
  double flow_m3_s = 0;
  double hazen_williams_m3_s = 0;  ///< cross-check: the same heads and fittings, the wall by Hazen-Williams
  double head_m = 0;               ///< that drives the flow
  double length_m = 0;             ///< along the pipe
  double velocity_m_s = 0, velocity_head_m = 0;
  double reynolds = 0, friction_factor = 0;
  Regime regime = Regime::turbulent;
  double friction_head_m = 0, minor_head_m = 0;
  double residual_head_m = 0;  ///< pressure head at the outlet: required_head_m, or the depth it dips in
  std::vector<LinePoint> points;
  std::vector<Stretch> above_head_line;  ///< pressure under that of the air
  std::vector<Stretch> near_vapour;      ///< pressure under vapour and reserve: the flow does not come about
  double lowest_allowed_m = 0;           ///< that bound as a pressure head
  std::vector<Hump> humps;
  double air_lock_head_m = 0;  ///< falls after all humps together: what air can hold back at worst
  double static_head_m = 0, static_bar = 0;  ///< at the lowest point of the pipe with the outlet shut
  std::optional<double> class_left_bar;      ///< pressure class less static pressure
};

/// Flow for given heads: upper - lower - required = (1 + sum of K + f L/D) V^2/2g, solved to the last bits.
/// Codes: profile_too_short, profile_not_onward, fitting_off_the_line, bore_, roughness_, loss_, level_,
/// head_, reserve_, temperature_, altitude_, coefficient_ and reynolds_out_of_range, inlet_dry (water under
/// the pipe's axis at the inlet), no_head. A flow that near_vapour contradicts is returned with it, not
/// lessened.
Result<LineFlow> solveLine(const Line& line, const LineHeads& heads, const LineClimate& climate);

/// Pressure head left at a free outlet when `flow_m3_s` is drawn [m]; under 0: it cannot be drawn.
/// required_head_m is not taken off.
Result<double> residualHead(const Line& line, double upper_level_m, double flow_m3_s,
                            const LineClimate& climate);

/// High points of a profile, without pressures. A level stretch counts at its first point.
std::vector<Hump> humpsOf(const std::vector<PipePoint>& profile);

struct PipeChoice {
  PipeSize size;
  LineFlow flow;
};

/// The smallest outside diameter, and of it the weakest class, that bears the static pressure and brings at
/// least `wanted_m3_s`. The line's bore diameter and class are those of the size; its roughness stays.
/// Codes: as solveLine; no_pipe_strong_enough, no_pipe_large_enough.
/// @param share of the pressure class that holds, see pressureShare
Result<PipeChoice> smallestPipe(const Line& line, const LineHeads& heads, const LineClimate& climate,
                                double wanted_m3_s, std::span<const PipeSize> sizes, double share = 1);

}  // namespace core::hydraulics
