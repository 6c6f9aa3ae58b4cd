#pragma once

#include <vector>

namespace core::water {

/// Quantile of the gamma distribution with scale 1 from a table: at most 1e-5 off (relative), exact in the
/// tails beyond 1e-6. Moves smoothly with the shape.
class GammaQuantile {
public:
  explicit GammaQuantile(double shape);

  /// The value that is not exceeded with probability `u`, 0 <= u < 1.
  double operator()(double u) const;

private:
  struct Node {
    double log_x, slope;  // of log x over the logit of u
  };
  static Node nodeAt(double shape, double logit);

  double shape_;
  std::vector<Node> nodes_;
};

}  // namespace core::water
