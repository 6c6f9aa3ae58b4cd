#include "core/cost/spread.h"

#include <algorithm>
#include <cmath>

namespace core::cost {

void Correlations::add(const Factors& factors, const Outcomes& outcomes) {
  Factors x;
  count_ += 1;
  for (std::size_t i = 0; i < kInputs; ++i) {
    x[i] = factors[i] - 1;
    x_[i] += x[i];
    xx_[i] += x[i] * x[i];
  }
  for (std::size_t o = 0; o < kOutcomes; ++o) {
    const double y = outcomes[o] - typical_[o];
    y_[o] += y;
    yy_[o] += y * y;
    for (std::size_t i = 0; i < kInputs; ++i) xy_[o][i] += x[i] * y;
  }
}

double Correlations::of(Outcome outcome, RangedInput input) const {
  const auto o = static_cast<std::size_t>(outcome);
  const auto i = static_cast<std::size_t>(input);
  const double xx = count_ * xx_[i] - x_[i] * x_[i];
  const double yy = count_ * yy_[o] - y_[o] * y_[o];
  if (xx <= 0 || yy <= 0) return 0;
  return (count_ * xy_[o][i] - x_[i] * y_[o]) / std::sqrt(xx * yy);
}

double Correlations::mean(Outcome outcome) const {
  const auto o = static_cast<std::size_t>(outcome);
  return typical_[o] + y_[o] / count_;
}

Quantiles quantiles(std::vector<double>& draws) {
  auto from = draws.begin();
  const auto ranked = [&](double share) {
    const double rank = std::ceil(share * static_cast<double>(draws.size()) - 1e-9);
    const auto place = draws.begin() + static_cast<std::ptrdiff_t>(rank) - 1;
    std::nth_element(from, place, draws.end());  // what lies before `from` is no larger
    from = place;
    return *place;
  };
  const double p10 = ranked(0.1), p50 = ranked(0.5), p90 = ranked(0.9);
  const auto [least, most] = std::minmax_element(draws.begin(), draws.end());
  return {*least, p10, p50, p90, *most};
}

}  // namespace core::cost
