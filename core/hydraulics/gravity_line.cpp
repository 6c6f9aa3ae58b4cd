#include "core/hydraulics/gravity_line.h"

#include "core/hydraulics/head_line.h"
#include "core/hydraulics/root.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace core::hydraulics {
namespace {

std::string_view profileFault(const std::vector<PipePoint>& profile) {
  if (profile.size() < 2) return "profile_too_short";
  for (std::size_t i = 0; i < profile.size(); ++i) {
    if (!std::isfinite(profile[i].level_m)) return "level_out_of_range";
    if (!std::isfinite(profile[i].station_m)) return "profile_not_onward";
    if (i > 0 && !(profile[i].station_m > profile[i - 1].station_m)) return "profile_not_onward";
  }
  return "";
}

std::string_view fittingFault(const Line& line) {
  for (const Fitting& f : line.fittings) {
    if (!(f.k >= 0 && std::isfinite(f.k))) return "loss_out_of_range";
    if (!(f.station_m >= line.profile.front().station_m && f.station_m <= line.profile.back().station_m))
      return "fitting_off_the_line";
  }
  return "";
}

std::string_view lineFault(const Line& line, const LineClimate& climate) {
  const std::string_view wrong = profileFault(line.profile);
  if (!wrong.empty()) return wrong;
  if (!(climate.reserve_m >= 0 && std::isfinite(climate.reserve_m))) return "reserve_out_of_range";
  return fittingFault(line);
}

/// Sum of K with the outflow's own velocity head.
double lossSum(const Line& line) {
  double sum = 1;
  for (const Fitting& f : line.fittings) sum += f.k;
  return sum;
}

/// Head that a flow costs from the upper water to the outlet, its velocity head with it [m].
Result<double> costOf(const Line& line, double length_m, double flow_m3_s, double viscosity_m2_s) {
  const Result<double> wall = frictionHead(line.bore, length_m, flow_m3_s, viscosity_m2_s);
  if (!wall) return wall;
  return *wall + lossSum(line) * velocityHead(meanVelocity(flow_m3_s, line.bore.diameter_m));
}

/// The flow at which `cost`, which grows with it, comes to `head_m`.
template <typename Cost>
Result<double> flowFor(const Cost& cost, double head_m, double most_m3_s) {
  const Result<double> last = cost(most_m3_s);
  if (!last) return last;
  if (*last < head_m) return fault("reynolds_out_of_range");
  return rootBetween([&](double q) { return *cost(q) - head_m; }, 0, most_m3_s);
}

/// No flow can be faster than with the fittings alone [m3/s].
double mostFlow(const Line& line, double head_m) {
  const double d = line.bore.diameter_m;
  return std::sqrt(2 * kGravity_m_s2 * head_m / lossSum(line)) * std::numbers::pi / 4 * d * d;
}

Result<double> hazenWilliamsOf(const Line& line, double length_m, double head_m) {
  const auto cost = [&](double q) -> Result<double> {
    const Result<double> wall = hazenWilliamsHead(line.bore.diameter_m, length_m, q, line.hazen_williams_c);
    if (!wall) return wall;
    return *wall + lossSum(line) * velocityHead(meanVelocity(q, line.bore.diameter_m));
  };
  return flowFor(cost, head_m, mostFlow(line, head_m));
}

Result<double> darcyOf(const Line& line, double length_m, double head_m, double viscosity_m2_s) {
  const auto cost = [&](double q) { return costOf(line, length_m, q, viscosity_m2_s); };
  return flowFor(cost, head_m, mostFlow(line, head_m));
}

/// Where the water goes to: the lower water, or the outlet where that lies higher.
double lowerLevel(const Line& line, const LineHeads& heads) {
  return std::max(line.profile.back().level_m, heads.lower_level_m.value_or(line.profile.back().level_m));
}

Result<double> drivingHead(const Line& line, const LineHeads& heads) {
  if (!std::isfinite(heads.upper_level_m) || !std::isfinite(heads.lower_level_m.value_or(0)))
    return fault("level_out_of_range");
  if (!(heads.required_head_m >= 0 && std::isfinite(heads.required_head_m)))
    return fault("head_out_of_range");
  if (!(heads.upper_level_m > line.profile.front().level_m)) return fault("inlet_dry");
  const double head = heads.upper_level_m - lowerLevel(line, heads) - heads.required_head_m;
  if (!(head > 0)) return fault("no_head");
  return head;
}

void fillLosses(LineFlow& flow, const Line& line, const Water& water) {
  flow.velocity_m_s = meanVelocity(flow.flow_m3_s, line.bore.diameter_m);
  flow.velocity_head_m = velocityHead(flow.velocity_m_s);
  flow.reynolds = reynolds(flow.velocity_m_s, line.bore.diameter_m, water.kinematicViscosity());
  flow.regime = regimeOf(flow.reynolds);
  flow.friction_factor = *frictionFactor(flow.reynolds, line.bore.roughness_m / line.bore.diameter_m);
  flow.friction_head_m = flow.friction_factor * flow.length_m / line.bore.diameter_m * flow.velocity_head_m;
  flow.minor_head_m = (lossSum(line) - 1) * flow.velocity_head_m;
}

}  // namespace

Result<LineFlow> solveLine(const Line& line, const LineHeads& heads, const LineClimate& climate) {
  const std::string_view wrong = lineFault(line, climate);
  if (!wrong.empty()) return fault(wrong);
  const Result<Water> water = waterAt(climate.temperature_c);
  if (!water) return fault(water.error());
  const Result<double> air = barometricHeight(climate.altitude_m, climate.temperature_c);
  if (!air) return fault(air.error());
  const Result<double> head = drivingHead(line, heads);
  if (!head) return fault(head.error());
  LineFlow flow;
  flow.head_m = *head;
  flow.length_m = pipeLength(line.profile);
  const Result<double> darcy = darcyOf(line, flow.length_m, *head, water->kinematicViscosity());
  if (!darcy) return fault(darcy.error());
  const Result<double> hazen = hazenWilliamsOf(line, flow.length_m, *head);
  if (!hazen) return fault(hazen.error());
  flow.flow_m3_s = *darcy;
  flow.hazen_williams_m3_s = *hazen;
  fillLosses(flow, line, *water);
  flow.residual_head_m = heads.required_head_m + lowerLevel(line, heads) - line.profile.back().level_m;
  flow.lowest_allowed_m = climate.reserve_m - *air;
  fillHeadLine(flow, line, heads.upper_level_m);
  fillStatic(flow, line, heads.upper_level_m, *water);
  return flow;
}

Result<double> residualHead(const Line& line, double upper_level_m, double flow_m3_s,
                            const LineClimate& climate) {
  const std::string_view wrong = lineFault(line, climate);
  if (!wrong.empty()) return fault(wrong);
  const Result<Water> water = waterAt(climate.temperature_c);
  if (!water) return fault(water.error());
  if (!(upper_level_m > line.profile.front().level_m)) return fault("inlet_dry");
  const Result<double> cost = costOf(line, pipeLength(line.profile), flow_m3_s, water->kinematicViscosity());
  if (!cost) return cost;
  return upper_level_m - line.profile.back().level_m - *cost;
}

}  // namespace core::hydraulics
