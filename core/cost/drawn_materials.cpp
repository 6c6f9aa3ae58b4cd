#include "core/cost/drawn_materials.h"

#include "core/cost/round_up.h"

#include <algorithm>
#include <cmath>

namespace core::cost {
namespace {

constexpr double kLitresPerM3 = 1000;

double plus(double percent) {
  return 1 + percent / 100;
}

double factor(const Factors& factors, RangedInput input) {
  return factors[static_cast<std::size_t>(input)];
}

/// As the order of lining::quantities: up to the next tenth.
double upToTenth(double value) {
  return roundUp(value * 10) / 10;
}

}  // namespace

DrawnMaterials::DrawnMaterials(const RangesInput& input, const std::vector<Thicker>& thicker)
    : lining_(input.project.lining),
      unevenness_percent_(lining_.unevenness_percent),
      dry_to_wet_(lining_.dry_to_wet),
      density_(lining_.cement_loose_kg_m3) {
  const auto cubic = [&](auto value) {
    return Cubic(value(input.quantities),
                 {value(thicker[0].quantities), value(thicker[1].quantities), value(thicker[2].quantities)});
  };
  for (std::size_t k = 0; k < input.quantities.coats.size(); ++k) {
    coats_.push_back({cubic([k](const lining::Quantities& q) { return q.coats[k].shell_m3; }),
                      cubic([k](const lining::Quantities& q) { return q.coats[k].face_m2; })});
  }
  stone_m3_ = cubic([](const lining::Quantities& q) { return q.stone_net_m3; });
}

void DrawnMaterials::put(const Factors& factors, KnownQuantities& known) {
  Lining& l = lining_;
  l.unevenness_percent = unevenness_percent_ * factor(factors, RangedInput::unevenness);
  l.dry_to_wet = dry_to_wet_ * factor(factors, RangedInput::dry_to_wet);
  l.cement_loose_kg_m3 = density_ * factor(factors, RangedInput::cement_density);
  const double over = factor(factors, RangedInput::thickness) - 1;

  double soil = 0, sand = 0, cement_kg = 0, mixing = 0, curing = 0, face = 0;
  for (std::size_t k = 0; k < coats_.size(); ++k) {
    const double uneven = k == 0 ? plus(l.unevenness_percent) : 1;
    const double placed = coats_[k].shell_m3(over) * uneven * plus(l.waste_percent);
    const double face_m2 = coats_[k].face_m2(over);
    const lining::Mix mix = lining::mixFor(placed, l.coats[k], l);
    soil += mix.soil_m3;
    sand += mix.sand_m3;
    cement_kg += mix.cement_kg;
    mixing += placed * l.mixing_water_l_per_m3;
    curing += face_m2 * l.curing_water_l_per_m2_day * l.coats[k].cure_days;
    face = std::max(face, face_m2);
  }
  const double sieved = 1 / (1 - l.sieving_loss_percent / 100);
  const double stone =
      stone_m3_(over) * plus(l.unevenness_percent) * plus(l.waste_percent) * l.stone_loose_factor;
  known[Known::cement_bags] = roundUp(cement_kg / l.cement_bag_kg);
  known[Known::soil] = upToTenth(soil * sieved);
  known[Known::sand] = upToTenth(sand * sieved * plus(l.sand_bulking_percent));
  known[Known::stone] = upToTenth(stone);
  known[Known::water] = std::ceil(mixing + curing) / kLitresPerM3;
  known[Known::sacks] = roundUp(face / l.sack_covers_m2 * plus(l.sack_spare_percent));
}

}  // namespace core::cost
