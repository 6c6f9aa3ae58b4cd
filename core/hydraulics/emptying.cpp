#include "core/hydraulics/emptying.h"

#include <array>
#include <cmath>
#include <optional>

namespace core::hydraulics {
namespace {

constexpr int kMostDepth = 45;

// Gauss-Kronrod rule of 7 and 15 points (Piessens et al., QUADPACK, 1983): half of the nodes, from the
// outside in
constexpr std::array kNode{0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
                           0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
                           0.586087235467691130294144691693013, 0.405845151377397166906606412076961,
                           0.207784955007898467600689403773245, 0.0};
constexpr std::array kKronrod{0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
                              0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
                              0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
                              0.204432940075298892414161999234649, 0.209482141084727828012999174891714};
constexpr std::array kGauss{
    0.0, 0.129484966168869693270611432679082, 0.0, 0.279705391489276667901467771423780,
    0.0, 0.381830050505118944950369775488975, 0.0, 0.417959183673469387755102040816327};

struct Part {
  double value = 0, error = 0;
};

/// Integral of surface/outflow over u, with z = last + span u^2: the root at the end of the outflow is taken
/// out.
class FallingWater {
public:
  FallingWater(const water::TankCurve& tank, const OutflowAt& outflow, double last_m, double span_m)
      : tank_(tank), outflow_(outflow), last_m_(last_m), span_m_(span_m) {}

  /// Seconds between two u, each part within `error_s`; nothing when the outflow stops or the time does not
  /// settle.
  std::optional<Part> between(double a, double b, double error_s, int depth = 0) {
    const Part whole = rule(a, b);
    if (stopped_) return std::nullopt;
    if (whole.error <= error_s) return whole;
    if (depth == kMostDepth) return std::nullopt;
    const double middle = (a + b) / 2;
    const auto left = between(a, middle, error_s, depth + 1);
    if (!left) return std::nullopt;
    const auto right = between(middle, b, error_s, depth + 1);
    if (!right) return std::nullopt;
    return Part{left->value + right->value, left->error + right->error};
  }

  /// First guess of the seconds between two u, for the size of the error allowed.
  double guess(double a, double b) { return rule(a, b).value; }

  bool stopped() const { return stopped_; }
  int evaluations() const { return evaluations_; }

private:
  double integrand(double u) {
    ++evaluations_;
    const double z = last_m_ + span_m_ * u * u;
    const double q = outflow_(z);
    if (!(q > 0)) stopped_ = true;
    return stopped_ ? 0 : tank_.surface(z) / q * 2 * span_m_ * u;
  }

  Part rule(double a, double b) {
    const double middle = (a + b) / 2, half = (b - a) / 2;
    double kronrod = 0, gauss = 0;
    for (std::size_t i = 0; i < kNode.size(); ++i) {
      double sum = integrand(middle - half * kNode[i]);
      if (kNode[i] > 0) sum += integrand(middle + half * kNode[i]);
      kronrod += kKronrod[i] * sum;
      gauss += kGauss[i] * sum;
    }
    return {half * kronrod, half * std::abs(kronrod - gauss)};
  }

  const water::TankCurve& tank_;
  const OutflowAt& outflow_;
  double last_m_, span_m_;
  bool stopped_ = false;
  int evaluations_ = 0;
};

}  // namespace

Result<Emptying> emptyingTime(const water::TankCurve& tank, double from_level_m, double to_level_m,
                              const OutflowAt& outflow, double tolerance, int curve_points) {
  if (!(to_level_m >= 0 && from_level_m > to_level_m && from_level_m <= tank.rim_level_m) || curve_points < 2)
    return fault("level_out_of_range");
  const double span = from_level_m - to_level_m;
  FallingWater water(tank, outflow, to_level_m, span);
  Emptying result;
  result.curve.push_back({from_level_m, 0});
  const int pieces = curve_points - 1;
  const double error_s = tolerance * water.guess(0, 1);
  for (int i = 1; i <= pieces; ++i) {
    const double high = std::sqrt(static_cast<double>(pieces - i + 1) / pieces);
    const double low = std::sqrt(static_cast<double>(pieces - i) / pieces);
    const auto part = water.between(low, high, error_s);
    if (!part) return fault(water.stopped() ? "outflow_stops" : "does_not_empty");
    result.seconds += part->value;
    result.error_s += part->error;
    result.curve.push_back({to_level_m + span * (pieces - i) / pieces, result.seconds});
  }
  result.evaluations = water.evaluations();
  return result;
}

Result<double> orificeFlow(double area_m2, double coefficient, double head_m) {
  if (!(area_m2 > 0)) return fault("area_out_of_range");
  if (!(coefficient > 0 && coefficient <= 1)) return fault("coefficient_out_of_range");
  if (!(head_m >= 0)) return fault("head_out_of_range");
  return coefficient * area_m2 * std::sqrt(2 * kGravity_m_s2 * head_m);  // Torricelli
}

}  // namespace core::hydraulics
