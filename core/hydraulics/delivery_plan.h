#pragma once

#include "core/base/problem.h"
#include "core/geometry/tank_geometry.h"
#include "core/hydraulics/channel.h"
#include "core/hydraulics/emptying.h"
#include "core/hydraulics/gravity_line.h"
#include "core/hydraulics/leak_test.h"
#include "core/hydraulics/outlets.h"
#include "core/hydraulics/overflow.h"
#include "core/hydraulics/pipes.h"
#include "core/hydraulics/silt_trap.h"
#include "core/hydraulics/siphon.h"
#include "core/project/project.h"

#include <optional>
#include <vector>

namespace core::hydraulics {

// All levels are above the finished floor of the tank [m].

/// A line with its heads, once with the tank full and once nearly empty (at the dead depth). The source line
/// ends over the water or dips into it; the field line begins in it.
struct LinePlan {
  Line line;
  std::optional<PipeSize> size;  ///< absent: the bore was measured
  double share = 1;              ///< of the pressure class that holds at this temperature
  LineHeads full_heads, low_heads;
  Result<LineFlow> full, low;
  std::optional<double> wanted_m3_s;
  std::optional<Result<PipeChoice>>
      smallest;  ///< that brings what is wanted, nearly empty where that is less
};

struct FieldPlan {
  LinePlan pipe;
  bool over_rim = true;
  OutletKind outlet = OutletKind::tap;
  int outlets = 1;
  std::optional<Result<SiphonFlow>> siphon_full, siphon_low;  ///< only over the rim
  Result<double> head_full_m, head_low_m;  ///< left at the outlets while they draw their usual flow
  Result<OutletCheck> check;
  double empty_to_level_m = 0;  ///< lowest level that the line draws down to
  Result<Emptying> emptying;    ///< from full to that level, the end wide open
};

struct OverflowPlan {
  double storm_mm_h = 0;
  bool is_storm_known = false;  ///< else a planning value stands in
  double storm_m3_s = 0;        ///< of roof, ground and the tank's own opening
  double source_m3_s = 0;
  double flow_m3_s = 0;    ///< both together
  Overflow overflow;       ///< its rim is the lip where there is one
  double rim_level_m = 0;  ///< of the rim beside the lip
  Result<OverflowState> state;
  double wanted_freeboard_m = 0;             ///< that should be left in the storm
  std::optional<double> width_that_would_m;  ///< notch that leaves it; absent for a pipe or when none does
  std::optional<double> pipe_that_would_m;   ///< pipe likewise
  std::optional<double> head_m;              ///< over the sill in the storm
  std::optional<double> lip_that_would_m;  ///< length of the lip that keeps the rest of the rim dry when all
                                           ///< is blocked; absent without a lip
  Result<BlockedState> blocked;            ///< everything over the rim: parts lip, rim
  Channel channel;
  double channel_depth_m = 0;
  Result<ChannelFlow> spill;
  std::optional<ScourCheck> scour;
};

struct TrapPlan {
  double flow_m3_s = 0;
  bool is_flow_given = false;
  Grain grain;
  Result<SiltTrap> trap;
  std::optional<Result<SiltTrapCheck>> check;  ///< of a trap as it stands
};

/// Everything computed from Delivery.
struct DeliveryPlan {
  LineClimate climate;
  bool is_altitude_known = false;
  double rim_level_m = 0, full_level_m = 0, dead_level_m = 0;
  std::optional<LinePlan> source;        ///< absent: no way was entered
  std::optional<double> source_fills_s;  ///< the empty tank to the overflow level, nothing drawn
  std::optional<FieldPlan> field;
  OverflowPlan overflow;
  TrapPlan trap;
  double leak_level_m = 0;
  std::optional<Result<LeakTest>> leak;  ///< absent: no readings yet
};

/// Planning value for the storm where the local one is not known [mm/h] (own).
inline constexpr double kStorm_mm_h = 100;
/// Freeboard that the storm should leave [m] (own).
inline constexpr double kStormFreeboard_m = 0.05;

/// Problems across the fields of Delivery. Codes: route_not_onward (a distance not over the one before; least
/// the distance before), unknown_pipe (no such class in the table; allowed the classes that there are).
Problems check(const Delivery& delivery);

/// @pre check(delivery) is empty
/// @param water roof and ground whose runoff comes to the tank; absent: only the tank's own opening
DeliveryPlan deliveryPlan(const geometry::TankGeometry& tank, const core::Site& site,
                          const std::optional<core::Water>& water, const Delivery& delivery);

}  // namespace core::hydraulics
