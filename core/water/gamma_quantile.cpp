#include "core/water/gamma_quantile.h"

#include <cmath>
#include <cstddef>

#include <boost/math/policies/policy.hpp>
#include <boost/math/special_functions/gamma.hpp>

namespace core::water {
namespace {

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

constexpr double kReach = 14;  // logit at which the table ends: u = 8e-7
constexpr double kStep = 0.25;
constexpr std::size_t kNodes = static_cast<std::size_t>(2 * kReach / kStep) + 1;

double quantile(double shape, double u, double one_less_u) {
  return u < 0.5 ? boost::math::gamma_p_inv(shape, u, Policy())
                 : boost::math::gamma_q_inv(shape, one_less_u, Policy());
}

}  // namespace

GammaQuantile::GammaQuantile(double shape) : shape_(shape) {
  nodes_.reserve(kNodes);
  for (std::size_t k = 0; k < kNodes; ++k) {
    nodes_.push_back(nodeAt(shape, static_cast<double>(k) * kStep - kReach));
  }
}

GammaQuantile::Node GammaQuantile::nodeAt(double shape, double logit) {
  const double u = 1 / (1 + std::exp(-logit));
  const double rest = 1 / (1 + std::exp(logit));
  const double x = quantile(shape, u, rest);
  const double density = boost::math::gamma_p_derivative(shape, x, Policy());
  return {std::log(x), u * rest / (x * density)};
}

double GammaQuantile::operator()(double u) const {
  const double place = (std::log(u / (1 - u)) + kReach) / kStep;
  if (!(place >= 0 && place < static_cast<double>(kNodes - 1))) return quantile(shape_, u, 1 - u);
  const auto k = static_cast<std::size_t>(place);
  const Node& a = nodes_[k];
  const Node& b = nodes_[k + 1];
  const double t = place - static_cast<double>(k);
  const double s = 1 - t;
  // cubic Hermite
  return std::exp(s * s * ((1 + 2 * t) * a.log_x + t * kStep * a.slope) +
                  t * t * ((1 + 2 * s) * b.log_x - s * kStep * b.slope));
}

}  // namespace core::water
