#include "core/water/temperature_maker.h"

#include <algorithm>
#include <cmath>

namespace core::water {

TemperatureMaker::TemperatureMaker(Uniform& uniform) : uniform_(&uniform), noise_(twoNormals(uniform)) {}

TemperatureRange TemperatureMaker::next(const TemperatureRange& means, double wet_share, bool is_wet) {
  // so that minimum and maximum have kNoise_c and kMinMaxTogether
  const double middle_noise = kNoise_c * std::sqrt((1 + kMinMaxTogether) / 2);
  const double half_noise = kNoise_c * std::sqrt((1 - kMinMaxTogether) / 2);
  carryNoise();
  const double range = means.max_c - means.min_c;
  const double least = std::min(kLeastRange_c, range);
  const double dry_share = 1 - wet_share;
  const double warmer = dry_share * kDryWarmer_c > range - least ? (range - least) / dry_share : kDryWarmer_c;
  const double max_c = means.max_c + (is_wet ? -warmer * dry_share : warmer * wet_share);
  const double reach = std::max(0.0, (max_c - means.min_c - least) / 2);
  const double middle = (max_c + means.min_c) / 2 + middle_noise * noise_.first;
  const double half = (max_c - means.min_c) / 2 + std::clamp(half_noise * noise_.second, -reach, reach);
  return {middle - half, middle + half};
}

void TemperatureMaker::carryNoise() {
  const double fresh = std::sqrt(1 - kNoiseCarried * kNoiseCarried);
  const TwoNormals normal = twoNormals(*uniform_);
  noise_.first = kNoiseCarried * noise_.first + fresh * normal.first;
  noise_.second = kNoiseCarried * noise_.second + fresh * normal.second;
}

}  // namespace core::water
