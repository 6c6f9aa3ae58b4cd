#pragma once

#include "core/hydraulics/result.h"

#include <span>
#include <string>
#include <variant>
#include <vector>

namespace core::hydraulics {

/// Ground or roof whose storm water comes to the tank.
struct StormArea {
  double runoff_coefficient = 1;  ///< 0 to 1; figures storm_runoff; 1 for the tank's own opening
  double area_m2 = 0;
};

/// Peak of a storm by the rational method [m3/s], Q = i sum of C A. For small catchments (under about 80 ha)
/// and an intensity over the time the water needs to come together.
/// Codes: intensity_, coefficient_, area_out_of_range. @source rational_method
Result<double> stormPeak(std::span<const StormArea> areas, double intensity_mm_h);

/// A notch in the rim with a flat sill: a broad-crested weir.
struct Notch {
  double width_m = 0;
  double share = 0.9;  ///< of the theoretical flow, weir.broad_crest; over 0 to 1
};

/// Theoretical coefficient of a broad crest, (2/3)^1.5 sqrt(g) [m^0.5/s]; about 1.705. @source broad_crest
double broadCrest();

/// Flow over a flat sill under a head [m3/s], share (2/3)^1.5 g^0.5 b H^1.5. Velocity of approach left out.
Result<double> notchFlow(const Notch& notch, double head_m);
/// Head over the sill that a flow needs [m].
Result<double> notchHead(const Notch& notch, double flow_m3_s);

/// A straight pipe through or under the rim, free at its end. Its sill is the inside bottom at the inlet.
struct OverflowPipe {
  double diameter_m = 0;
  double length_m = 0;
  double fall_m = 0;  ///< from inlet to outlet, over 0
  double manning_n = 0.010;
  double entrance_k = 0.5;
  double orifice_coefficient = 0.6;  ///< 0.5 to 1
};

/// What sets the water level before a pipe.
enum class PipeControl {
  entrance,   ///< critical depth at a free inlet
  orifice,    ///< a drowned inlet
  barrel,     ///< even flow in the pipe, partly full
  full_pipe,  ///< the pipe runs full
};

struct PipeHead {
  double head_m = 0;  ///< over the inside bottom at the inlet: the greater of the two below
  PipeControl control = PipeControl::entrance;
  double entrance_head_m = 0;  ///< by the inlet alone
  double barrel_head_m = 0;    ///< by the pipe behind it; 0 where it runs freer than the inlet
};

/// Head that a flow needs before an overflow pipe, whichever governs:
/// inlet free, critical energy and entrance loss; inlet drowned, orifice h = D/2 + (Q/cA)^2/2g once it covers
/// the pipe; barrel on a mild slope, even flow by Manning with velocity head and entrance loss; full pipe, h
/// = (1 + Ke + 2g n^2 L/R^(4/3)) V^2/2g + (yc + D)/2 - fall. Never falls as flow grows. @source fhwa_hds5,
/// manning Codes: pipe_without_fall, bore_, length_, slope_, coefficient_, loss_, flow_out_of_range.
Result<PipeHead> pipeHead(const OverflowPipe& pipe, double flow_m3_s);

/// Flow at which the water stands `head_m` over the pipe's sill [m3/s]. Codes: as pipeHead; head_out_of_range
/// for less than 1e-4 of the diameter.
Result<double> pipeCapacity(const OverflowPipe& pipe, double head_m);

/// An overflow of a tank; levels above the finished floor.
struct Overflow {
  std::variant<Notch, OverflowPipe> way;
  double sill_level_m = 0;  ///< the full supply level
  double rim_level_m = 0;
};

struct OverflowState {
  double head_m = 0;  ///< over the sill
  double water_level_m = 0;
  double freeboard_left_m = 0;                  ///< rim less water; under 0 the rim is overtopped
  double capacity_m3_s = 0;                     ///< with water just at the rim
  PipeControl control = PipeControl::entrance;  ///< of a pipe only
};

/// Storm and source together through the overflow. @param flow_m3_s over 0
/// Codes: as notchHead or pipeHead; level_out_of_range unless the rim lies over the sill.
Result<OverflowState> overflowState(const Overflow& overflow, double flow_m3_s);

/// A length of rim at one level.
struct RimPart {
  std::string key;  ///< which side; only carried along
  double length_m = 0;
  double level_m = 0;
};

struct RimPartFlow {
  std::string key;
  double depth_m = 0;  ///< 0 where it stays dry
  double flow_m3_s = 0;
};

struct BlockedState {
  double water_level_m = 0;
  double deepest_m = 0;            ///< over the lowest part
  std::vector<RimPartFlow> parts;  ///< as given
};

/// The overflow is blocked: all of the flow goes over the rim, the lowest parts first, each a broad-crested
/// weir. Codes: no_rim, length_, level_, coefficient_, flow_out_of_range.
Result<BlockedState> overRim(std::span<const RimPart> rim, double flow_m3_s, double share = 0.9);

}  // namespace core::hydraulics
