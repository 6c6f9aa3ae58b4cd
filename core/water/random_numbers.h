#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

namespace core::water {

/// Uniform random numbers, the same with every standard library.
class Uniform {
public:
  explicit Uniform(std::uint64_t seed) : engine_(seed) {}
  double operator()() { return static_cast<double>(engine_() >> 11) * 0x1p-53; }  // [0, 1)

private:
  std::mt19937_64 engine_;
};

/// Two independent numbers of the standard normal distribution.
struct TwoNormals {
  double first, second;
};

inline TwoNormals twoNormals(Uniform& uniform) {
  // Box, Muller: Annals of Mathematical Statistics 29, 1958
  const double radius = std::sqrt(-2 * std::log(1 - uniform()));
  const double angle = 2 * std::numbers::pi * uniform();
  return {radius * std::cos(angle), radius * std::sin(angle)};
}

}  // namespace core::water
