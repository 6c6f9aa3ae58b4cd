#include "core/hydraulics/pipe_friction.h"

#include <cmath>
#include <limits>
#include <numbers>
#include <string_view>

namespace core::hydraulics {
namespace {

constexpr double kMostReynolds = 1e8;
constexpr double kMostRoughness = 0.05;
constexpr double kMostBore_m = 2;
constexpr int kMostSteps = 50;

// Hazen-Williams in SI units
constexpr double kHazenWilliams = 10.67;
constexpr double kFlowExponent = 1.852;
constexpr double kBoreExponent = 4.87;

bool goodRoughness(double relative) {
  return relative >= 0 && relative <= kMostRoughness;
}

std::string_view turbulentFault(double reynolds, double relative_roughness) {
  if (!(reynolds >= kTurbulentFrom && reynolds <= kMostReynolds)) return "reynolds_out_of_range";
  return goodRoughness(relative_roughness) ? "" : "roughness_out_of_range";
}

std::string_view pipeFault(double diameter_m, double length_m) {
  if (!(diameter_m > 0 && diameter_m <= kMostBore_m)) return "bore_out_of_range";
  return length_m >= 0 && std::isfinite(length_m) ? "" : "length_out_of_range";
}

std::string_view hazenFault(double diameter_m, double length_m, double c) {
  if (!(c >= 60 && c <= 160)) return "coefficient_out_of_range";
  return pipeFault(diameter_m, length_m);
}

double swameeJainFactor(double re, double relative) {
  const double log = std::log10(relative / 3.7 + 5.74 / std::pow(re, 0.9));  // Swamee, Jain 1976
  return 0.25 / (log * log);
}

/// Newton on x = 1/sqrt(f), x + 2 log10(k/3.7D + 2.51 x/Re) = 0: convex, so it comes from one side and stays.
double colebrookFactor(double re, double relative) {
  double x = 1 / std::sqrt(swameeJainFactor(re, relative));
  const double slope = 2.51 / re;
  for (int step = 0; step < kMostSteps; ++step) {
    const double inside = relative / 3.7 + slope * x;
    const double excess = x + 2 * std::log10(inside);  // Colebrook 1939
    const double change = excess / (1 + 2 / std::numbers::ln10 * slope / inside);
    x -= change;
    if (std::abs(change) <= 2 * std::numeric_limits<double>::epsilon() * x) break;
  }
  return 1 / (x * x);
}

double transitionFactor(double re, double relative) {
  const double laminar = 64 / kLaminarBelow;
  const double share = (re - kLaminarBelow) / (kTurbulentFrom - kLaminarBelow);
  return laminar + share * (colebrookFactor(kTurbulentFrom, relative) - laminar);
}

double factorIn(Regime regime, double re, double relative) {
  if (regime == Regime::laminar) return 64 / re;  // Hagen-Poiseuille
  return regime == Regime::transition ? transitionFactor(re, relative) : colebrookFactor(re, relative);
}

}  // namespace

Regime regimeOf(double reynolds) {
  if (reynolds < kLaminarBelow) return Regime::laminar;
  return reynolds < kTurbulentFrom ? Regime::transition : Regime::turbulent;
}

double reynolds(double velocity_m_s, double diameter_m, double viscosity_m2_s) {
  return velocity_m_s * diameter_m / viscosity_m2_s;
}

double meanVelocity(double flow_m3_s, double diameter_m) {
  return flow_m3_s / (std::numbers::pi / 4 * diameter_m * diameter_m);
}

double velocityHead(double velocity_m_s) {
  return velocity_m_s * velocity_m_s / (2 * kGravity_m_s2);
}

Result<double> colebrookWhite(double reynolds, double relative_roughness) {
  const std::string_view wrong = turbulentFault(reynolds, relative_roughness);
  if (!wrong.empty()) return fault(wrong);
  return colebrookFactor(reynolds, relative_roughness);
}

Result<double> swameeJain(double reynolds, double relative_roughness) {
  const std::string_view wrong = turbulentFault(reynolds, relative_roughness);
  if (!wrong.empty()) return fault(wrong);
  return swameeJainFactor(reynolds, relative_roughness);
}

Result<double> frictionFactor(double reynolds, double relative_roughness) {
  if (!(reynolds > 0 && reynolds <= kMostReynolds)) return fault("reynolds_out_of_range");
  if (!goodRoughness(relative_roughness)) return fault("roughness_out_of_range");
  return factorIn(regimeOf(reynolds), reynolds, relative_roughness);
}

Result<double> frictionHead(const Bore& bore, double length_m, double flow_m3_s, double viscosity_m2_s) {
  const std::string_view wrong = pipeFault(bore.diameter_m, length_m);
  if (!wrong.empty()) return fault(wrong);
  if (!goodRoughness(bore.roughness_m / bore.diameter_m)) return fault("roughness_out_of_range");
  if (flow_m3_s == 0) return 0.0;
  if (!(flow_m3_s > 0)) return fault("flow_out_of_range");
  const double v = meanVelocity(flow_m3_s, bore.diameter_m);
  const Result<double> f =
      frictionFactor(reynolds(v, bore.diameter_m, viscosity_m2_s), bore.roughness_m / bore.diameter_m);
  if (!f) return f;
  return *f * length_m / bore.diameter_m * velocityHead(v);  // Darcy-Weisbach
}

Result<double> hazenWilliamsHead(double diameter_m, double length_m, double flow_m3_s, double c) {
  const std::string_view wrong = hazenFault(diameter_m, length_m, c);
  if (!wrong.empty()) return fault(wrong);
  if (!(flow_m3_s >= 0)) return fault("flow_out_of_range");
  return kHazenWilliams * length_m * std::pow(flow_m3_s / c, kFlowExponent) /
         std::pow(diameter_m, kBoreExponent);
}

Result<double> hazenWilliamsFlow(double diameter_m, double length_m, double head_m, double c) {
  const std::string_view wrong = hazenFault(diameter_m, length_m, c);
  if (!wrong.empty()) return fault(wrong);
  if (!(length_m > 0)) return fault("length_out_of_range");
  if (!(head_m >= 0)) return fault("head_out_of_range");
  return c * std::pow(head_m * std::pow(diameter_m, kBoreExponent) / (kHazenWilliams * length_m),
                      1 / kFlowExponent);
}

}  // namespace core::hydraulics
