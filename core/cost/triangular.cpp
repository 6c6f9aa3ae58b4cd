#include "core/cost/triangular.h"

#include <cmath>

namespace core::cost {

double Triangular::quantile(double p) const {
  if (low >= high) return low;
  const double split = (mode - low) / (high - low);
  return p < split ? low + std::sqrt(p * (high - low) * (mode - low))
                   : high - std::sqrt((1 - p) * (high - low) * (high - mode));
}

}  // namespace core::cost
