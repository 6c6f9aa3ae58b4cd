#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace core::hydraulics {

/// Where `f` crosses zero between `low` and `high`, to the last bits of a double. Inverse quadratic
/// interpolation where it is safe, halving where it is not (Chandrupatla, Advances in Engineering Software
/// 28, 1997). Ends at a jump through zero, too.
/// @pre f(low) and f(high) differ in sign, else std::logic_error
template <typename Function>
double rootBetween(Function f, double low, double high) {
  double a = high, b = low, fa = f(a), fb = f(b);
  if (fb == 0) return b;
  if (fa == 0) return a;
  if ((fa > 0) == (fb > 0)) throw std::logic_error("no root between the bounds");
  double share = 0.5;
  for (int step = 0; step < 2000; ++step) {
    const double x = a + share * (b - a);
    const double fx = f(x);
    const bool like_a = (fx > 0) == (fa > 0);
    const double c = like_a ? a : b;
    const double fc = like_a ? fa : fb;
    if (!like_a) b = a, fb = fa;
    a = x, fa = fx;
    const double best = std::abs(fa) < std::abs(fb) ? a : b;
    const double least =
        (2 * std::numeric_limits<double>::epsilon() * std::abs(best) + 1e-300) / std::abs(b - a);
    if (fx == 0 || least > 0.5) return fx == 0 ? x : best;
    const double xi = (a - b) / (c - b);
    const double phi = (fa - fb) / (fc - fb);
    const bool smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    share =
        smooth ? fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb) : 0.5;
    share = std::clamp(share, least, 1 - least);
  }
  return a;
}

}  // namespace core::hydraulics
