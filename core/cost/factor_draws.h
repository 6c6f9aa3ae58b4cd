#pragma once

#include "core/cost/triangular.h"
#include "core/project/prices.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace core::cost {

inline constexpr std::size_t kInputs = 9;  ///< of RangedInput
inline constexpr std::size_t kBlock = 256;

/// Factors on all inputs for one draw, in the order of RangedInput; 1 is the value in force.
using Factors = std::array<double, kInputs>;

/// Spread of the factor on one input.
Triangular factorSpread(const InputRange& range);

/// Random factors of one input. Draw k depends on seed, input and k alone: it stays when others are added.
class FactorDraws {
public:
  FactorDraws(const Triangular& spread, int seed, RangedInput input);

  /// Draws number `first` and on.
  void fill(std::uint64_t first, std::array<double, kBlock>& factors) const;

private:
  double low_, high_, split_, left_, right_;
  std::uint64_t stream_;
};

}  // namespace core::cost
