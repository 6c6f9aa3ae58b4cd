#include "core/hydraulics/siphon.h"

#include "core/hydraulics/root.h"
#include "core/hydraulics/water_properties.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace core::hydraulics {
namespace {

bool finite(const Siphon& s) {
  return std::isfinite(s.water_level_m) && std::isfinite(s.inlet_level_m) && std::isfinite(s.crest_level_m) &&
         std::isfinite(s.outlet_level_m);
}

/// A leg is at least as long as it is high.
bool longEnough(double length_m, double from_m, double to_m) {
  return std::isfinite(length_m) && length_m > 0 && length_m >= std::abs(to_m - from_m) - 1e-9;
}

std::string_view siphonFault(const Siphon& s) {
  if (!finite(s)) return "level_out_of_range";
  if (!(s.crest_level_m > s.outlet_level_m && s.crest_level_m > s.inlet_level_m)) return "crest_below_outlet";
  if (!longEnough(s.rising_length_m, s.inlet_level_m, s.crest_level_m)) return "length_out_of_range";
  if (!longEnough(s.falling_length_m, s.crest_level_m, s.outlet_level_m)) return "length_out_of_range";
  if (!(s.rising_k >= 0 && s.falling_k >= 0 && std::isfinite(s.rising_k + s.falling_k)))
    return "loss_out_of_range";
  return s.reserve_m >= 0 && std::isfinite(s.reserve_m) ? "" : "reserve_out_of_range";
}

double area(const Siphon& s) {
  return std::numbers::pi / 4 * s.bore.diameter_m * s.bore.diameter_m;
}

/// Velocity head and losses up to the crest [m].
Result<double> crestLoss(const Siphon& s, double flow_m3_s, double viscosity_m2_s) {
  const Result<double> wall = frictionHead(s.bore, s.rising_length_m, flow_m3_s, viscosity_m2_s);
  if (!wall) return wall;
  return *wall + (1 + s.rising_k) * velocityHead(meanVelocity(flow_m3_s, s.bore.diameter_m));
}

Result<double> wholeLoss(const Siphon& s, double flow_m3_s, double viscosity_m2_s) {
  const Result<double> wall =
      frictionHead(s.bore, s.rising_length_m + s.falling_length_m, flow_m3_s, viscosity_m2_s);
  if (!wall) return wall;
  const double k = 1 + s.rising_k + s.falling_k;
  return *wall + k * velocityHead(meanVelocity(flow_m3_s, s.bore.diameter_m));
}

double fall(const Siphon& s) {
  return std::max(0.0, s.water_level_m - s.outlet_level_m);
}

/// Flow whose outflow alone costs the fall.
double mostFlow(const Siphon& s) {
  return area(s) * std::sqrt(2 * kGravity_m_s2 * fall(s));
}

/// Flow that costs the fall over the whole pipe.
double fullFlow(const Siphon& s, double viscosity_m2_s) {
  return rootBetween([&](double q) { return *wholeLoss(s, q, viscosity_m2_s) - fall(s); }, 0, mostFlow(s));
}

void fillRest(SiphonFlow& f, const Siphon& s, double barometric_m) {
  f.barometric_m = barometric_m;
  f.most_lift_m = barometric_m - s.reserve_m;
  f.lift_m = s.crest_level_m - s.water_level_m;
  f.lowest_level_m = std::max({s.inlet_level_m, s.outlet_level_m, s.crest_level_m - f.most_lift_m});
  f.primed_with_m3 = area(s) * (s.rising_length_m + s.falling_length_m);
}

void fillFlow(SiphonFlow& f, const Siphon& s, double viscosity_m2_s) {
  f.flow_m3_s = fullFlow(s, viscosity_m2_s);
  f.velocity_m_s = f.flow_m3_s / area(s);
  f.crest_loss_m = *crestLoss(s, f.flow_m3_s, viscosity_m2_s);
  f.crest_pressure_m = -f.lift_m - f.crest_loss_m;
  f.lift_left_m = f.most_lift_m - f.lift_m - f.crest_loss_m;
  const double sine = std::min(1.0, (s.crest_level_m - s.outlet_level_m) / s.falling_length_m);
  f.clearing_velocity_m_s = clearingVelocity(s.bore.diameter_m, sine);
  f.clears_air = f.velocity_m_s >= f.clearing_velocity_m_s;
}

/// The flow at which what is left of the lift is used up.
double throttled(const SiphonFlow& f, const Siphon& s, double viscosity_m2_s) {
  const double spare = f.most_lift_m - f.lift_m;
  return rootBetween([&](double q) { return *crestLoss(s, q, viscosity_m2_s) - spare; }, 0, f.flow_m3_s);
}

SiphonState stateOf(const SiphonFlow& f, const Siphon& s) {
  if (s.water_level_m <= s.inlet_level_m) return SiphonState::inlet_dry;
  if (s.water_level_m <= s.outlet_level_m) return SiphonState::no_fall;
  if (f.lift_m >= f.most_lift_m) return SiphonState::crest_too_high;
  return f.lift_left_m < 0 ? SiphonState::parts_when_open : SiphonState::runs;
}

}  // namespace

double clearingVelocity(double diameter_m, double sine_of_fall) {
  return std::sqrt(kGravity_m_s2 * diameter_m) * (0.825 + 0.25 * std::sqrt(sine_of_fall));  // sanks_air
}

Result<SiphonFlow> siphonFlow(const Siphon& siphon) {
  const std::string_view wrong = siphonFault(siphon);
  if (!wrong.empty()) return fault(wrong);
  const Result<double> barometric = barometricHeight(siphon.altitude_m, siphon.temperature_c);
  if (!barometric) return fault(barometric.error());
  const double viscosity = waterAt(siphon.temperature_c)->kinematicViscosity();
  const Result<double> most = wholeLoss(siphon, mostFlow(siphon), viscosity);
  if (!most) return fault(most.error());
  SiphonFlow f;
  fillRest(f, siphon, *barometric);
  if (siphon.water_level_m > std::max(siphon.inlet_level_m, siphon.outlet_level_m))
    fillFlow(f, siphon, viscosity);
  f.state = stateOf(f, siphon);
  if (f.state == SiphonState::parts_when_open) f.throttled_m3_s = throttled(f, siphon, viscosity);
  return f;
}

}  // namespace core::hydraulics
