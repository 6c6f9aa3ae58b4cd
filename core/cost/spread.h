#pragma once

#include "core/cost/factor_draws.h"

#include <array>
#include <cstddef>
#include <vector>

namespace core::cost {

enum class Outcome : std::size_t { cement_bags, person_days, money, fill_days };
inline constexpr std::size_t kOutcomes = 4;
using Outcomes = std::array<double, kOutcomes>;

/// Sums of products, for the correlation of each outcome with each input. Both are taken from their typical
/// value, so that little is lost to rounding.
class Correlations {
public:
  explicit Correlations(const Outcomes& typical) : typical_(typical) {}
  void add(const Factors& factors, const Outcomes& outcomes);
  /// Pearson's, -1 to 1; 0 when either does not vary.
  double of(Outcome outcome, RangedInput input) const;
  double mean(Outcome outcome) const;

private:
  Outcomes typical_;
  double count_ = 0;
  Factors x_{}, xx_{};
  Outcomes y_{}, yy_{};
  std::array<Factors, kOutcomes> xy_{};
};

/// Least value that a share of all draws does not lie above: one of the draws.
struct Quantiles {
  double least, p10, p50, p90, most;
};
/// @pre not empty; the order is changed
Quantiles quantiles(std::vector<double>& draws);

}  // namespace core::cost
