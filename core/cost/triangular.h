#pragma once

namespace core::cost {

/// Triangular distribution. @pre low <= mode <= high; low == high is a fixed value
struct Triangular {
  double low, mode, high;
  double mean() const { return (low + mode + high) / 3; }
  double variance() const {
    return (low * low + mode * mode + high * high - low * mode - low * high - mode * high) / 18;
  }
  /// Value that a share `p` of the draws, 0 to 1, lies below.
  double quantile(double p) const;
};

}  // namespace core::cost
