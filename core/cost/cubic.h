#pragma once

#include <array>

namespace core::cost {

/// A cubic of a factor, written about 1: its value there is kept to the last bit.
class Cubic {
public:
  /// Factors at which the cubic is met, besides 1.
  static constexpr std::array<double, 3> kAt{0.9, 1.1, 1.2};

  Cubic() = default;
  /// @param at_one value at 1
  /// @param values values at kAt
  Cubic(double at_one, const std::array<double, 3>& values) : base_(at_one) {
    // Newton's divided differences of (value - at_one) / (factor - 1)
    std::array<double, 3> x{}, s{};
    for (std::size_t k = 0; k < 3; ++k) {
      x[k] = kAt[k] - 1;
      s[k] = (values[k] - at_one) / x[k];
    }
    const double first = (s[1] - s[0]) / (x[1] - x[0]);
    const double second = (s[2] - s[1]) / (x[2] - x[1]);
    c3_ = (second - first) / (x[2] - x[0]);
    c2_ = first - c3_ * (x[0] + x[1]);
    c1_ = s[0] - first * x[0] + c3_ * x[0] * x[1];
  }

  /// @param over the factor less 1
  double operator()(double over) const { return base_ + over * (c1_ + over * (c2_ + over * c3_)); }

private:
  double base_ = 0, c1_ = 0, c2_ = 0, c3_ = 0;
};

}  // namespace core::cost
