#pragma once

#include "core/hydraulics/delivery_plan.h"

namespace core::hydraulics {

/// The parts of deliveryPlan. They share what is known of the tank and its place.
struct DeliveryTask {
  const geometry::TankGeometry& tank;
  const core::Site& site;
  const std::optional<core::Water>& water;
  const Delivery& delivery;
  LineClimate climate;
};

inline constexpr double kLitrePerMinute_m3_s = 1e-3 / 60;

/// Level of a point of a pipe's way above the finished floor [m].
inline double levelOf(const RoutePoint& point, const geometry::TankGeometry& tank) {
  return tank.depth() + point.over_rim_m;
}

/// The line from the source; absent when its way has fewer than two points.
///
/// Upper water is the inlet's level and the water over it. An end under the tank's water runs against that
/// water, any other end is free. Where elbows and valves sit is not known, so all lie at the inlet: the
/// careful side for the pressures behind it.
std::optional<LinePlan> sourceLine(const DeliveryTask& task);

/// The line to the field; absent when its way has fewer than two points.
///
/// Over the rim: the inlet hangs a little under the dead level, at most half the dead depth, so that it is
/// covered down to it (with no dead depth it is dry there). The pipe lies a hand from the wall, rises to the
/// crest at the first point of the way, whose own level does not count, and follows the others. Through the
/// lining: it leaves the tank at that same level at the first point, whose own level again does not count.
/// Stations begin at the inlet. Screen and entrance sit at the inlet, half of the elbows (the odd one with
/// them) at the crest or, through the lining, at the inlet, the others and the valves at the end.
///
/// The line is solved with its end wide open. `smallest` keeps the outlets' usual head while it brings their
/// usual flow. The lowest level it draws down to is the highest of: the dead level; a little over the end,
/// where the flow would die away in endless time; every point of the pipe less the lift that air allows.
std::optional<FieldPlan> fieldLine(const DeliveryTask& task);

/// Storm, source, overflow, the blocked overflow and the spill path.
///
/// Short heavy rain runs off more than the mean of a year that the water balance uses. So roof and ground
/// count with the larger of the share entered there and the typical storm_runoff.roof and
/// storm_runoff.bare_packed (own choice of the two figures); the opening of the tank with 1. The source
/// brings what its line carries into the full tank, or without a line the flow of its largest month. A soil
/// that is not known scours like the softest, erosion.loose_fill.
OverflowPlan overflowPlan(const DeliveryTask& task, double source_m3_s);

/// Flow of roof and ground in the storm [m3/s].
Result<double> ledInStorm(const DeliveryTask& task);

/// Flow of the source in its largest month [m3/s].
double largestSourceFlow(const std::optional<core::Water>& water);

}  // namespace core::hydraulics
