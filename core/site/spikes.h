#pragma once

#include "core/site/survey.h"

#include <cstdint>
#include <vector>

namespace core::site {

/// A point that stands off the plane of its neighbours.
struct Spike {
  std::uint32_t point;
  double plane_m;      ///< height of the neighbours' plane there
  double tolerance_m;  ///< how far off it would not be called a spike
};

/// Spikes, the worst first, at most `most`. Points must lie at different places.
std::vector<Spike> spikes(const std::vector<Eigen::Vector3d>& points_m, const SurveyLimits& limits,
                          std::size_t most, const std::atomic<bool>* cancel);

}  // namespace core::site
