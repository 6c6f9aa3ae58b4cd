#pragma once

#include "core/cost/bill_lines.h"
#include "core/cost/cubic.h"
#include "core/cost/drawn_works.h"
#include "core/cost/factor_draws.h"

#include <vector>

namespace core::cost {

/// The order of materials under factors on thickness, unevenness, dry-to-wet and cement density: volumes and
/// faces by a cubic of the thickness, then as lining::quantities has it.
class DrawnMaterials {
public:
  DrawnMaterials(const RangesInput& input, const std::vector<Thicker>& thicker);
  /// Puts cement_bags, soil, sand, stone, water and sacks in.
  void put(const Factors& factors, KnownQuantities& known);

private:
  struct CoatShape {
    Cubic shell_m3, face_m2;
  };
  Lining lining_;  // its figures change from draw to draw
  double unevenness_percent_, dry_to_wet_, density_;
  std::vector<CoatShape> coats_;
  Cubic stone_m3_;
};

}  // namespace core::cost
