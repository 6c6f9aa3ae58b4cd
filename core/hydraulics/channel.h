#pragma once

#include "core/base/figure.h"
#include "core/hydraulics/result.h"

#include <string_view>

namespace core::hydraulics {

/// A straight earth or lined channel, rectangle to triangle.
struct Channel {
  double bottom_width_m = 0;  ///< may be 0 with a side slope
  double side_slope = 0;      ///< level run per unit height, each side
  double fall = 0;            ///< of the bed along the channel [m/m]
  double manning_n = 0.025;   ///< [s/m^(1/3)]
};

/// A round pipe that need not run full.
struct RoundChannel {
  double diameter_m = 0;
  double fall = 0;  ///< [m/m]
  double manning_n = 0.010;
};

/// Steady even flow.
struct ChannelFlow {
  double flow_m3_s = 0;
  double depth_m = 0, area_m2 = 0, hydraulic_radius_m = 0, top_width_m = 0;
  double velocity_m_s = 0;
  double froude = 0;  ///< V / sqrt(g A/T); over 1 shooting
};

/// Mean velocity [m/s], R^(2/3) S^(1/2) / n. @source manning
double manningVelocity(double hydraulic_radius_m, double fall, double manning_n);

/// Flow at a depth. Codes: width_, slope_ (fall over 0, side slope at least 0), coefficient_ (n 0.005 to
/// 0.2), depth_out_of_range.
Result<ChannelFlow> flowAtDepth(const Channel& channel, double depth_m);
/// Depth of even flow. As flowAtDepth; flow_out_of_range.
Result<ChannelFlow> evenFlow(const Channel& channel, double flow_m3_s);

/// Flow at a depth up to the diameter. Codes: bore_, slope_, coefficient_, depth_out_of_range.
Result<ChannelFlow> flowAtDepth(const RoundChannel& pipe, double depth_m);
/// Most the pipe carries without pressure, at about 0.938 of its diameter.
Result<ChannelFlow> mostFlow(const RoundChannel& pipe);
/// Depth of even flow, the lower where there are two. flow_out_of_range when it is more than mostFlow.
Result<ChannelFlow> evenFlow(const RoundChannel& pipe, double flow_m3_s);
/// Depth at which Q^2 T = g A^3 in a round pipe [m]; slope and roughness do not matter.
Result<double> criticalDepth(double diameter_m, double flow_m3_s);

enum class Scour { safe, doubtful, scours };

struct ScourCheck {
  Scour verdict;
  Figure limit;  ///< erosion.<soil or cover>
};

/// Velocity against the soil's or cover's limit: safe up to its low, scours over its high. Code: unknown_key.
/// @param soil what follows "erosion." in the table of figures
Result<ScourCheck> checkScour(double velocity_m_s, std::string_view soil);

}  // namespace core::hydraulics
