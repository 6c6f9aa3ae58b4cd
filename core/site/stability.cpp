#include "core/site/stability.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace core::site {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

// Taylor (1937), toe circles; rows by face, columns by friction angle. As tabulated in textbooks, from
// memory.
constexpr std::array kFace_deg{30.0, 45.0, 60.0, 75.0, 90.0};
constexpr std::array kFriction_deg{0.0, 5.0, 10.0, 15.0, 20.0, 25.0};
constexpr double kNumber[5][6] = {{0.156, 0.110, 0.075, 0.046, 0.025, 0.009},
                                  {0.170, 0.136, 0.108, 0.083, 0.062, 0.044},
                                  {0.191, 0.162, 0.138, 0.116, 0.097, 0.079},
                                  {0.219, 0.195, 0.173, 0.152, 0.134, 0.117},
                                  {0.261, 0.239, 0.218, 0.199, 0.182, 0.166}};
constexpr double kDeepNumber = 0.181;
constexpr double kDeepBelow_deg = 53;

bool isSound(const SoilStrength& soil, double factor) {
  return soil.unit_weight_kn_m3 > 0 && soil.cohesion_kpa >= 0 && soil.friction_deg >= 0 &&
         soil.friction_deg < 90 && factor > 0;
}

/// Place in a table column: the entry below and the share of the way to the next.
template <std::size_t N>
std::pair<std::size_t, double> between(const std::array<double, N>& column, double value) {
  std::size_t k = 0;
  while (k + 2 < N && value > column[k + 1]) ++k;
  return {k, (value - column[k]) / (column[k + 1] - column[k])};
}

/// Unit weights that drive the slip and that press on it.
struct Weights {
  double driving, pressing;
};

Weights weights(const InfiniteSlope& slope) {
  const double whole = slope.soil.unit_weight_kn_m3;
  const double buoyant = whole - slope.water_kn_m3;
  switch (slope.water) {
    case SlopeWater::dry:
      return {whole, whole};
    case SlopeWater::seepage:
      return {whole, buoyant};
    case SlopeWater::submerged:
      break;
  }
  return {buoyant, buoyant};
}

bool isSound(const InfiniteSlope& slope) {
  return isSound(slope.soil, 1) && slope.slope_deg > 0 && slope.slope_deg < 90 && weights(slope).pressing > 0;
}

}  // namespace

SoilStrength mobilised(const SoilStrength& soil, double factor) {
  const double friction = std::atan(std::tan(soil.friction_deg * kDegree) / factor) / kDegree;
  return {soil.cohesion_kpa / factor, friction, soil.unit_weight_kn_m3};
}

StabilityNumber verticalCutHeight(const SoilStrength& soil, double factor) {
  return culmannHeight(soil, 90, factor);
}

StabilityNumber culmannHeight(const SoilStrength& soil, double face_deg, double factor) {
  if (!isSound(soil, factor) || face_deg <= 0 || face_deg > 90)
    return tl::unexpected(StabilityFault::bad_input);
  const SoilStrength held = mobilised(soil, factor);
  if (face_deg <= held.friction_deg + 1e-9) return tl::unexpected(StabilityFault::stands_at_any_height);
  const double b = face_deg * kDegree;
  const double phi = held.friction_deg * kDegree;
  // Culmann (1875): H = (4 c / gamma) sin b cos phi / (1 - cos(b - phi))
  return 4 * held.cohesion_kpa / held.unit_weight_kn_m3 * std::sin(b) * std::cos(phi) /
         (1 - std::cos(b - phi));
}

StabilityNumber taylorNumber(double face_deg, double friction_deg) {
  const bool is_inside = face_deg >= kFace_deg.front() && face_deg <= kFace_deg.back() &&
                         friction_deg >= kFriction_deg.front() && friction_deg <= kFriction_deg.back();
  if (!is_inside) return tl::unexpected(StabilityFault::outside_table);
  const auto [row, down] = between(kFace_deg, face_deg);
  const auto [column, across] = between(kFriction_deg, friction_deg);
  const auto inRow = [&, c = column, a = across](std::size_t r) {
    return kNumber[r][c] + a * (kNumber[r][c + 1] - kNumber[r][c]);
  };
  return inRow(row) + down * (inRow(row + 1) - inRow(row));
}

StabilityNumber deepTaylorNumber(double face_deg) {
  if (face_deg > 0 && face_deg < kDeepBelow_deg) return kDeepNumber;
  return taylorNumber(face_deg, 0).map([](double n) { return std::max(n, kDeepNumber); });
}

StabilityNumber taylorHeight(const SoilStrength& soil, double face_deg, double factor) {
  if (!isSound(soil, factor)) return tl::unexpected(StabilityFault::bad_input);
  const SoilStrength held = mobilised(soil, factor);
  return taylorNumber(face_deg, held.friction_deg).map([&](double n) {
    return held.cohesion_kpa / (held.unit_weight_kn_m3 * n);
  });
}

StabilityNumber taylorFactor(const SoilStrength& soil, double face_deg, double height_m) {
  if (!isSound(soil, 1) || !(height_m > 0) || !(soil.cohesion_kpa > 0))
    return tl::unexpected(StabilityFault::bad_input);
  // the height that just stands falls as the factor rises
  double low = 1e-3;
  double high = 1e3;
  for (int i = 0; i < 200; ++i) {
    const double factor = std::sqrt(low * high);
    const SoilStrength held = mobilised(soil, factor);
    // below the factor that brings friction into the table the slope counts as standing
    const bool stands = held.friction_deg > kFriction_deg.back() ||
                        taylorHeight(soil, face_deg, factor).value_or(0) >= height_m;
    (stands ? low : high) = factor;
  }
  if (!taylorHeight(soil, face_deg, high)) return tl::unexpected(StabilityFault::outside_table);
  if (mobilised(soil, low).friction_deg > kFriction_deg.back() - 1e-9)
    return tl::unexpected(StabilityFault::outside_table);
  return low;
}

StabilityNumber infiniteSlopeFactor(const InfiniteSlope& slope) {
  if (!isSound(slope) || !(slope.depth_m > 0)) return tl::unexpected(StabilityFault::bad_input);
  const auto [driving, pressing] = weights(slope);
  const double b = slope.slope_deg * kDegree;
  const double cos2 = std::cos(b) * std::cos(b);
  return slope.soil.cohesion_kpa / (driving * slope.depth_m * cos2 * std::tan(b)) +
         pressing / driving * std::tan(slope.soil.friction_deg * kDegree) / std::tan(b);
}

StabilityNumber infiniteSlopeCriticalDepth(const InfiniteSlope& slope) {
  if (!isSound(slope)) return tl::unexpected(StabilityFault::bad_input);
  const auto [driving, pressing] = weights(slope);
  const double b = slope.slope_deg * kDegree;
  const double excess = driving * std::tan(b) - pressing * std::tan(slope.soil.friction_deg * kDegree);
  if (excess <= 0) return tl::unexpected(StabilityFault::stands_at_any_height);
  return slope.soil.cohesion_kpa / (std::cos(b) * std::cos(b) * excess);
}

}  // namespace core::site
