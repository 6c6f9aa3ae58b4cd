#include "core/hydraulics/delivery_parts.h"
#include "core/hydraulics/figures.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>

namespace core::hydraulics {
namespace {

constexpr double kInletUnder_m = 0.02;  // own: axis of the inlet under the dead level
constexpr double kOffWall_m = 0.1;      // own: level distance of the hanging pipe from the wall
constexpr double kTrickle_m = 0.02;     // own: head at which emptying is said to be over
constexpr double kEmptyingTolerance = 1e-5;
constexpr int kEmptyingPoints = 11;

/// The same fitting several times over, as one.
void addFitting(Line& line, const std::string& name, int count, double station_m) {
  const std::string key = "minor." + name;
  if (count > 0) line.fittings.push_back({key, count * typical(key), station_m});
}

/// The pipe's size in the table. @pre check(delivery) is empty
std::optional<PipeSize> sizeOf(const Pipe& pipe) {
  if (pipe.bore_mm) return std::nullopt;
  for (const PipeSize& size : pipeSizes(pipe.grade, pipe.outside_mm)) {
    if (size.pressure_bar == pipe.class_bar) return size;
  }
  return std::nullopt;
}

/// A line plan whose line lacks only its profile and fittings.
LinePlan planOf(const Pipe& pipe, const LineClimate& climate) {
  LinePlan plan;
  plan.size = sizeOf(pipe);
  plan.share = pressureShare(climate.temperature_c).value_or(1);  // the engine refuses such water itself
  const double bore_mm = plan.size ? plan.size->insideMm() : pipe.bore_mm.value_or(0);
  plan.line.bore = {bore_mm / 1000, typical("roughness.plastic") / 1000};
  plan.line.hazen_williams_c = typical("hazen_williams.plastic");
  plan.line.pressure_class_bar = pipe.class_bar * plan.share;
  return plan;
}

void solve(LinePlan& plan, const LineClimate& climate) {
  plan.full = solveLine(plan.line, plan.full_heads, climate);
  plan.low = solveLine(plan.line, plan.low_heads, climate);
}

bool isLowWorse(const LinePlan& plan) {
  if (!plan.full || !plan.low) return plan.full.has_value();
  return plan.low->flow_m3_s < plan.full->flow_m3_s;
}

/// Of each outside diameter the weakest class that bears the pressure: no other can be the smallest pipe.
std::vector<PipeSize> strongEnough(PipeGrade grade, double static_bar, double share) {
  std::vector<PipeSize> sizes;
  for (const PipeSize& size : pipeSizes(grade)) {
    const bool is_next = sizes.empty() || sizes.back().outside_mm != size.outside_mm;
    if (is_next && size.pressure_bar * share >= static_bar) sizes.push_back(size);
  }
  return sizes;
}

/// The pipe for what is wanted, in the worse of the two cases; it bears the pressure of both.
Result<PipeChoice> smallestFor(const LinePlan& plan, PipeGrade grade, const LineClimate& climate,
                               double required_head_m) {
  const Result<LineFlow>& worse = isLowWorse(plan) ? plan.low : plan.full;
  if (!worse) return fault(worse.error());
  LineHeads heads = isLowWorse(plan) ? plan.low_heads : plan.full_heads;
  heads.required_head_m = required_head_m;
  const double static_bar = std::max(plan.full->static_bar, plan.low->static_bar);
  const std::vector<PipeSize> sizes = strongEnough(grade, static_bar, plan.share);
  return smallestPipe(plan.line, heads, climate, *plan.wanted_m3_s, sizes, plan.share);
}

LineHeads sourceHeads(double upper_m, double end_m, double water_m) {
  LineHeads heads;
  heads.upper_level_m = upper_m;
  if (end_m < water_m) heads.lower_level_m = water_m;
  return heads;
}

/// Level of the field line's inlet.
double inletLevel(const geometry::TankGeometry& tank) {
  return tank.deadLevel() - std::min(kInletUnder_m, tank.deadLevel() / 2);
}

std::vector<PipePoint> fieldProfile(const DeliveryTask& task) {
  const FieldLine& field = task.delivery.field;
  const geometry::TankGeometry& tank = task.tank;
  const double inlet_m = inletLevel(tank);
  std::vector<PipePoint> profile{{0, inlet_m}};
  double first_m = 0;
  if (field.over_rim) {
    first_m = kOffWall_m + tank.batter() * (tank.depth() - inlet_m);
    profile.push_back({first_m, tank.depth() + field.crest_over_rim_m});
  }
  const std::vector<RoutePoint>& route = field.route;
  for (std::size_t i = 1; i < route.size(); ++i) {
    const double on_m = route[i].distance_m - route.front().distance_m;
    profile.push_back({first_m + on_m, levelOf(route[i], tank)});
  }
  return profile;
}

void addFieldFittings(Line& line, const FieldLine& field) {
  const double crest_m = field.over_rim ? line.profile[1].station_m : 0;
  const double end_m = line.profile.back().station_m;
  const int first_elbows = (field.pipe.elbows + 1) / 2;
  addFitting(line, "screen", 1, 0);
  addFitting(line, "entrance_sharp", 1, 0);
  addFitting(line, "elbow_90", first_elbows, crest_m);
  addFitting(line, "elbow_90", field.pipe.elbows - first_elbows, end_m);
  addFitting(line, "gate_valve", field.pipe.valves, end_m);
}

LinePlan fieldPipe(const DeliveryTask& task) {
  const FieldLine& field = task.delivery.field;
  LinePlan plan = planOf(field.pipe, task.climate);
  plan.line.profile = fieldProfile(task);
  addFieldFittings(plan.line, field);
  plan.full_heads.upper_level_m = task.tank.fullLevel();
  plan.low_heads.upper_level_m = task.tank.deadLevel();
  plan.wanted_m3_s = field.outlets * outletFlow(field.outlet).typical * kLitrePerMinute_m3_s;
  solve(plan, task.climate);
  plan.smallest = smallestFor(plan, field.pipe.grade, task.climate, requiredHead(field.outlet).typical);
  return plan;
}

std::size_t highestOf(const std::vector<PipePoint>& profile) {
  const auto top =
      std::max_element(profile.begin(), profile.end(),
                       [](const PipePoint& a, const PipePoint& b) { return a.level_m < b.level_m; });
  return static_cast<std::size_t>(top - profile.begin());
}

double lengthBetween(const std::vector<PipePoint>& profile, std::size_t from, std::size_t to) {
  double length = 0;
  for (std::size_t i = from + 1; i <= to; ++i) {
    length += std::hypot(profile[i].station_m - profile[i - 1].station_m,
                         profile[i].level_m - profile[i - 1].level_m);
  }
  return length;
}

/// The line as a siphon whose crest is its highest point; fittings up to there belong to the rising leg.
Siphon siphonOf(const Line& line, double water_level_m, const LineClimate& climate) {
  const std::size_t top = highestOf(line.profile);
  Siphon siphon;
  siphon.water_level_m = water_level_m;
  siphon.inlet_level_m = line.profile.front().level_m;
  siphon.crest_level_m = line.profile[top].level_m;
  siphon.outlet_level_m = line.profile.back().level_m;
  siphon.rising_length_m = lengthBetween(line.profile, 0, top);
  siphon.falling_length_m = lengthBetween(line.profile, top, line.profile.size() - 1);
  siphon.bore = line.bore;
  siphon.rising_k = 0;
  for (const Fitting& f : line.fittings) {
    (f.station_m <= line.profile[top].station_m ? siphon.rising_k : siphon.falling_k) += f.k;
  }
  siphon.temperature_c = climate.temperature_c;
  siphon.altitude_m = climate.altitude_m;
  siphon.reserve_m = typical("siphon.reserve");
  return siphon;
}

/// Lowest level that the line draws down to.
Result<double> drawnDownTo(const FieldPlan& plan, const DeliveryTask& task) {
  const Result<double> air = barometricHeight(task.climate.altitude_m, task.climate.temperature_c);
  if (!air) return air;
  const double reserve_m =
      plan.over_rim ? std::max(task.climate.reserve_m, typical("siphon.reserve")) : task.climate.reserve_m;
  const std::vector<PipePoint>& profile = plan.pipe.line.profile;
  const double top_m = profile[highestOf(profile)].level_m;
  return std::max({task.tank.deadLevel(), profile.back().level_m + kTrickle_m, top_m - (*air - reserve_m)});
}

Result<Emptying> emptyingOf(const FieldPlan& plan, const DeliveryTask& task) {
  const auto outflow = [&](double level_m) {
    const Result<LineFlow> flow = solveLine(plan.pipe.line, {.upper_level_m = level_m}, task.climate);
    return flow ? flow->flow_m3_s : 0;
  };
  return emptyingTime(water::curveOf(task.tank), task.tank.fullLevel(), plan.empty_to_level_m, outflow,
                      kEmptyingTolerance, kEmptyingPoints);
}

/// A siphon that the air does not hold up with its end wide open, not even with the tank full.
bool breaksWhenOpen(const FieldPlan& plan) {
  if (!plan.siphon_full || !*plan.siphon_full) return false;
  const SiphonState state = (*plan.siphon_full)->state;
  return state == SiphonState::crest_too_high || state == SiphonState::parts_when_open;
}

/// An outlet on a siphon that only the full tank starts works while the tank is rather full.
void stopsWhenLow(FieldPlan& plan) {
  const bool is_stopped =
      plan.siphon_low && *plan.siphon_low && (*plan.siphon_low)->state == SiphonState::crest_too_high;
  if (!plan.check || !is_stopped) return;
  OutletVerdict& verdict = plan.check->verdict;
  if (verdict == OutletVerdict::works || verdict == OutletVerdict::works_poorly)
    verdict = OutletVerdict::works_full;
}

void fillEmptying(FieldPlan& plan, const DeliveryTask& task) {
  const Result<double> lowest = drawnDownTo(plan, task);
  plan.empty_to_level_m = lowest.value_or(task.tank.fullLevel());
  if (breaksWhenOpen(plan)) {
    plan.emptying = fault("siphon_does_not_run");
    plan.check = fault("siphon_does_not_run");
  } else {
    plan.emptying = lowest ? emptyingOf(plan, task) : fault(lowest.error());
  }
}

void fillHeads(FieldPlan& plan, const DeliveryTask& task) {
  const LinePlan& pipe = plan.pipe;
  plan.head_full_m = residualHead(pipe.line, task.tank.fullLevel(), *pipe.wanted_m3_s, task.climate);
  plan.head_low_m = residualHead(pipe.line, task.tank.deadLevel(), *pipe.wanted_m3_s, task.climate);
  if (!plan.head_full_m) {
    plan.check = fault(plan.head_full_m.error());
  } else if (!plan.head_low_m) {
    plan.check = fault(plan.head_low_m.error());
  } else {
    plan.check = checkOutlet(plan.outlet, *plan.head_full_m, *plan.head_low_m);
  }
}

}  // namespace

std::optional<LinePlan> sourceLine(const DeliveryTask& task) {
  const SourceLine& source = task.delivery.source;
  if (source.route.size() < 2) return std::nullopt;
  LinePlan plan = planOf(source.pipe, task.climate);
  Line& line = plan.line;
  for (const RoutePoint& point : source.route) {
    line.profile.push_back({point.distance_m - source.route.front().distance_m, levelOf(point, task.tank)});
  }
  addFitting(line, "screen", 1, 0);
  addFitting(line, "entrance_sharp", 1, 0);
  addFitting(line, "elbow_90", source.pipe.elbows, 0);
  addFitting(line, "gate_valve", source.pipe.valves, 0);
  const double upper_m = line.profile.front().level_m + source.water_over_inlet_m;
  const double end_m = line.profile.back().level_m;
  plan.full_heads = sourceHeads(upper_m, end_m, task.tank.fullLevel());
  plan.low_heads = sourceHeads(upper_m, end_m, task.tank.deadLevel());
  solve(plan, task.climate);
  if (source.wanted_l_per_min) {
    plan.wanted_m3_s = *source.wanted_l_per_min * kLitrePerMinute_m3_s;
    plan.smallest = smallestFor(plan, source.pipe.grade, task.climate, 0);
  }
  return plan;
}

std::optional<FieldPlan> fieldLine(const DeliveryTask& task) {
  const FieldLine& field = task.delivery.field;
  if (field.route.size() < 2) return std::nullopt;
  FieldPlan plan;
  plan.pipe = fieldPipe(task);
  plan.over_rim = field.over_rim;
  plan.outlet = field.outlet;
  plan.outlets = field.outlets;
  if (field.over_rim) {
    plan.siphon_full = siphonFlow(siphonOf(plan.pipe.line, task.tank.fullLevel(), task.climate));
    plan.siphon_low = siphonFlow(siphonOf(plan.pipe.line, task.tank.deadLevel(), task.climate));
  }
  fillHeads(plan, task);
  fillEmptying(plan, task);
  stopsWhenLow(plan);
  return plan;
}

}  // namespace core::hydraulics
