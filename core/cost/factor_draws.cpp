#include "core/cost/factor_draws.h"

#include <cmath>

namespace core::cost {
namespace {

constexpr std::uint64_t kGolden = 0x9E3779B97F4A7C15U;  // 2^64 over the golden ratio

/// Scrambles a counter. Steele, Lea, Flood: Fast splittable pseudorandom number generators, OOPSLA 2014
constexpr std::uint64_t mixed(std::uint64_t z) {
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
  return z ^ (z >> 31);
}

/// In [0, 1).
double uniform(std::uint64_t bits) {
  return static_cast<double>(static_cast<std::int64_t>(bits >> 11)) * 0x1p-53;
}

}  // namespace

Triangular factorSpread(const InputRange& range) {
  return {1 + range.low_percent / 100, 1, 1 + range.high_percent / 100};
}

FactorDraws::FactorDraws(const Triangular& t, int seed, RangedInput input)
    : low_(t.low),
      high_(t.high),
      split_(t.high > t.low ? (t.mode - t.low) / (t.high - t.low) : 0),
      left_((t.high - t.low) * (t.mode - t.low)),
      right_((t.high - t.low) * (t.high - t.mode)),
      stream_(mixed(mixed(static_cast<std::uint64_t>(seed)) +
                    (static_cast<std::uint64_t>(input) + 1) * kGolden)) {}

void FactorDraws::fill(std::uint64_t first, std::array<double, kBlock>& factors) const {
  for (std::size_t k = 0; k < kBlock; ++k) factors[k] = uniform(mixed(stream_ + (first + k + 1) * kGolden));
  // the quantile of Triangular, written so that the compiler needs no jump
  for (double& u : factors) {
    const bool is_left = u < split_;
    const double root = std::sqrt(is_left ? u * left_ : (1 - u) * right_);
    u = is_left ? low_ + root : high_ - root;
  }
}

}  // namespace core::cost
