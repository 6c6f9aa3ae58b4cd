#include "core/water/balance.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace core::water {
namespace {

constexpr double kLevelError_m = 1e-12;
constexpr int kMostSteps = 60;

double integral(const TankCurve& c, double z) {
  return z * (c.a0 + z * (c.a1 / 2 + z * c.a2 / 3));
}

}  // namespace

double TankCurve::volume(double z_m) const {
  return integral(*this, z_m) - cove_m3;
}

double TankCurve::level(double volume_m3) const {
  return level(volume_m3, full_level_m / 2);
}

double TankCurve::level(double volume_m3, double near_m) const {
  double low = 0, high = full_level_m;
  if (volume_m3 >= volume(high)) return high;
  if (volume_m3 <= volume(low)) return low;
  double z = std::clamp(near_m, low, high);
  for (int i = 0; i < kMostSteps; ++i) {  // Newton, kept within the bracket
    const double excess = volume(z) - volume_m3;
    (excess > 0 ? high : low) = z;
    const double next = z - excess / surface(z);
    if (std::abs(next - z) < kLevelError_m) return std::clamp(next, low, high);
    z = next > low && next < high ? next : (low + high) / 2;
  }
  return z;
}

TankCurve curveOf(const geometry::TankGeometry& tank) {
  const double area = tank.outline().area(0);
  const double perimeter = tank.outline().perimeter(0);
  const double corners = tank.outline().cornerCoefficient();
  TankCurve c;
  c.a0 = area;
  c.a1 = perimeter * tank.batter();
  c.a2 = corners * tank.batter() * tank.batter();
  c.w1 = tank.slant() * perimeter;
  c.w2 = tank.slant() * corners * tank.batter();
  c.full_level_m = tank.fullLevel();
  c.dead_level_m = tank.deadLevel();
  c.rim_level_m = tank.depth();
  c.full_m3 = tank.volumeToLevel(c.full_level_m);
  c.dead_m3 = tank.volumeToLevel(c.dead_level_m);
  c.cove_m3 = integral(c, c.full_level_m) - c.full_m3;
  c.catch_m2 = tank.brimArea();
  return c;
}

TankCurve scaled(const TankCurve& curve, double factor) {
  const double cove_below_dead = integral(curve, curve.dead_level_m) - curve.dead_m3;
  TankCurve c = curve;
  c.a0 *= factor * factor;
  c.a1 *= factor;
  c.w1 *= factor;
  c.cove_m3 *= factor;
  c.full_m3 = c.volume(c.full_level_m);
  c.dead_m3 = integral(c, c.dead_level_m) - factor * cove_below_dead;
  c.catch_m2 = c.surface(c.rim_level_m);
  return c;
}

double leastFull(const TankCurve& curve) {
  return curve.a2 * std::pow(curve.full_level_m, 3) / 3;
}

double factorFor(const TankCurve& curve, double full_m3) {
  const double z = curve.full_level_m;
  const double square = curve.a0 * z;
  const double half = (curve.a1 * z * z / 2 - curve.cove_m3) / 2;
  const double rest = full_m3 - leastFull(curve);
  if (!(rest > 0)) throw std::logic_error("no tank of this depth and batter is so small");
  const double root = std::sqrt(half * half + square * rest);  // square k^2 + 2 half k = rest
  return half > 0 ? rest / (half + root) : (root - half) / square;
}

}  // namespace core::water
