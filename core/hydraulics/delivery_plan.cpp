#include "core/hydraulics/delivery_plan.h"

#include "core/hydraulics/delivery_parts.h"
#include "core/hydraulics/figures.h"

#include <algorithm>
#include <cstddef>
#include <set>
#include <string>

#include <fmt/format.h>

namespace core::hydraulics {
namespace {

constexpr double kMmPerMetre = 1000;
constexpr double kMostDistance_m = 5000;  // range of the field

void checkRoute(const std::string& line, const std::vector<RoutePoint>& route, Problems& out) {
  for (std::size_t i = 1; i < route.size(); ++i) {
    const double before = route[i - 1].distance_m;
    if (route[i].distance_m > before) continue;
    out.push_back({"route_not_onward", fmt::format("delivery.{}.route[{}].distance_m", line, i),
                   fmt::format("{}", route[i].distance_m), before, kMostDistance_m, Unit::metre, "number"});
  }
}

std::string listed(const std::set<double>& numbers) {
  return fmt::format("{}", fmt::join(numbers, "|"));
}

/// A measured bore stands in for the table. Otherwise the outside diameter must be in it, then the class.
void checkPipe(const std::string& line, const Pipe& pipe, Problems& out) {
  if (pipe.bore_mm) return;
  std::set<double> outsides, classes;
  for (const PipeSize& size : pipeSizes(pipe.grade)) {
    outsides.insert(size.outside_mm);
    if (size.outside_mm == pipe.outside_mm) classes.insert(size.pressure_bar);
  }
  const std::string path = "delivery." + line + ".pipe.";
  if (classes.empty()) {
    out.push_back({"unknown_pipe",
                   path + "outside_mm",
                   fmt::format("{}", pipe.outside_mm),
                   {},
                   {},
                   Unit::millimetre,
                   listed(outsides)});
  } else if (!classes.contains(pipe.class_bar)) {
    out.push_back({"unknown_pipe",
                   path + "class_bar",
                   fmt::format("{}", pipe.class_bar),
                   {},
                   {},
                   Unit::bar,
                   listed(classes)});
  }
}

SiltTrapTask trapTask(const TrapPlan& plan, const SiltTrapWish& wish, double temperature_c) {
  SiltTrapTask task;
  task.flow_m3_s = plan.flow_m3_s;
  task.grain = plan.grain;
  task.temperature_c = temperature_c;
  task.area_reserve = typical("silt.reserve");
  task.length_over_width = typical("silt.length_over_width");
  task.silt_kg_m3 = wish.silt_kg_m3;
  task.cleaning_interval_days = wish.cleaning_days;
  task.deposit_grain_kg_m3 = typical("silt.deposit_grain_density");
  task.packing = typical("silt.packing");
  return task;
}

/// Flow that brings the mud between two cleanings: the source all the time, the storm for one hour (own).
double meanFlow(double source_m3_s, double storm_m3_s, double days) {
  constexpr double kStormHours = 1;
  constexpr double kHoursPerDay = 24;
  return source_m3_s + storm_m3_s * std::min(1.0, kStormHours / (days * kHoursPerDay));
}

/// @param storm_m3_s that roof and ground lead in
TrapPlan trapPlan(const DeliveryTask& task, double source_m3_s, double storm_m3_s) {
  const SiltTrapWish& wish = task.delivery.silt_trap;
  TrapPlan plan;
  plan.is_flow_given = wish.flow_l_per_min.has_value();
  plan.flow_m3_s =
      plan.is_flow_given ? *wish.flow_l_per_min * kLitrePerMinute_m3_s : source_m3_s + storm_m3_s;
  plan.grain = {wish.grain_mm, typical("silt.grain_density"), GrainShape::natural};
  SiltTrapTask trap = trapTask(plan, wish, task.climate.temperature_c);
  if (!plan.is_flow_given && plan.flow_m3_s > 0)
    trap.silt_kg_m3 *= meanFlow(source_m3_s, storm_m3_s, wish.cleaning_days) / plan.flow_m3_s;
  plan.trap = siltTrap(trap);
  if (wish.length_m && wish.width_m && wish.depth_m)
    plan.check = checkSiltTrap({*wish.length_m, *wish.width_m, *wish.depth_m}, plan.flow_m3_s, plan.grain,
                               trap.temperature_c, trap.area_reserve);
  return plan;
}

/// The level entered holds for the whole test; a tank that was full at its start has sunk by half of the drop
/// in the mean.
void fillLeak(DeliveryPlan& plan, const DeliveryTask& task) {
  const LeakReadings& read = task.delivery.leak_test;
  const double sunk_m = read.tank_drop_mm.value_or(0) / kMmPerMetre / 2;
  plan.leak_level_m = read.level_m.value_or(task.tank.fullLevel() - sunk_m);
  if (!read.tank_drop_mm || !read.bucket_drop_mm) return;
  plan.leak = leakTest(water::curveOf(task.tank), plan.leak_level_m,
                       {*read.tank_drop_mm, *read.bucket_drop_mm, read.hours, read.reading_error_mm});
}

/// The most that the source can bring: what its line brings to the full tank, nothing when that has no fall;
/// without a line, or with one that cannot be reckoned, the largest flow of a month.
double sourceFlow(const std::optional<LinePlan>& line, const std::optional<core::Water>& water) {
  if (line && line->full) return line->full->flow_m3_s;
  if (line && line->full.error() == "no_head") return 0;
  return largestSourceFlow(water);
}

}  // namespace

Problems check(const Delivery& delivery) {
  Problems problems;
  checkRoute("source", delivery.source.route, problems);
  checkPipe("source", delivery.source.pipe, problems);
  checkRoute("field", delivery.field.route, problems);
  checkPipe("field", delivery.field.pipe, problems);
  return problems;
}

DeliveryPlan deliveryPlan(const geometry::TankGeometry& tank, const core::Site& site,
                          const std::optional<core::Water>& water, const Delivery& delivery) {
  DeliveryPlan plan;
  plan.climate = {delivery.water_temperature_c, site.elevation_m.value_or(0), typical("pipe.reserve")};
  plan.is_altitude_known = site.elevation_m.has_value();
  plan.rim_level_m = tank.depth();
  plan.full_level_m = tank.fullLevel();
  plan.dead_level_m = tank.deadLevel();
  const DeliveryTask task{tank, site, water, delivery, plan.climate};
  plan.source = sourceLine(task);
  if (plan.source && plan.source->full && plan.source->full->near_vapour.empty())
    plan.source_fills_s = tank.volumeToLevel(tank.fullLevel()) / plan.source->full->flow_m3_s;
  plan.field = fieldLine(task);
  const double source_m3_s = sourceFlow(plan.source, water);
  plan.overflow = overflowPlan(task, source_m3_s);
  plan.trap = trapPlan(task, source_m3_s, ledInStorm(task).value());
  fillLeak(plan, task);
  return plan;
}

}  // namespace core::hydraulics
