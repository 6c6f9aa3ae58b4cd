#pragma once

#include "core/cost/cubic.h"
#include "core/cost/factor_draws.h"
#include "core/cost/ranges.h"

#include <array>
#include <cstddef>
#include <vector>

namespace core::cost {

/// The tank with its coats thicker or thinner, at the factors that a cubic is made from: those of Cubic::kAt.
struct Thicker {
  Project project;
  geometry::TankGeometry geometry;
  lining::Quantities quantities;
};
std::vector<Thicker> atThicknesses(const Project& project);

/// Person-days and skilled ones among them.
struct DrawnDays {
  double person = 0, mason = 0;
};

/// Labour of the works under factors on thickness, unevenness, digging and plastering. The platform stays as
/// it is. Digging: pit and platform cut; plastering: the coats, mixing included.
class DrawnLabour {
public:
  DrawnLabour(const RangesInput& input, const std::vector<Thicker>& thicker);
  DrawnDays operator()(const Factors& factors) const;

private:
  static constexpr std::size_t kKinds = 3;  // digging, plastering, all else
  /// Days of one kind: a cubic of the thickness, rising evenly with the unevenness.
  struct Days {
    double typical = 0;
    Cubic days, per_percent;
  };
  double typical_person_ = 0, typical_mason_ = 0, unevenness_percent_ = 0;
  std::array<Days, kKinds> person_, mason_;

  double sum(const std::array<Days, kKinds>& kinds, double typical, const Factors& factors) const;
};

}  // namespace core::cost
