#pragma once

#include "core/cost/ranges.h"
#include "core/cost/triangular.h"

#include <array>
#include <cstddef>
#include <optional>

namespace core::cost {

/// Days until the tank is full against a factor on the flow of the source: exact at the ends, at 1 and at
/// places between, in a straight line from one to the next, in whole days.
class FillTable {
public:
  /// Nothing when the filling is not known, or the least flow does not fill the tank within a year.
  static std::optional<FillTable> make(const RangesInput& input, const Triangular& flow);
  double operator()(double factor) const;

private:
  static constexpr std::size_t kSteps = 16;  // on either side of 1
  double low_ = 1, high_ = 1;
  std::array<double, 2 * kSteps + 1> days_{};

  double factorAt(std::size_t place) const;
};

}  // namespace core::cost
