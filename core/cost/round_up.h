#pragma once

#include <cstdint>

namespace core::cost {

/// Share of a bag or load that is not worth another one.
inline constexpr double kSlack = 1e-9;

/// Least whole number that is not below `value` by more than kSlack, as whole bags and loads are counted.
/// @pre 0 <= value < 9e18
inline double roundUp(double value) {
  const double wanted = value - kSlack;
  const auto whole = static_cast<double>(static_cast<std::int64_t>(wanted));
  return whole < wanted ? whole + 1 : whole;
}

}  // namespace core::cost
