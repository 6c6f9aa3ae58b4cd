#include "core/site/stability.h"

#include <array>
#include <cstddef>

namespace core::site {

const SoilStrengthRange& soilStrength(Soil soil) {
  // cohesion kPa, friction degrees, unit weight kN/m3; in the order of Soil. Figures for moist ground met in
  // farm pits; cohesion of sand and fill is what damp sand shows for some days and dries or soaks away.
  static const std::array<SoilStrengthRange, 6> table{{
      {{20, 10, 17}, {40, 15, 19}, {75, 20, 21}, "soil_strength"},
      {{5, 18, 16}, {15, 22, 18}, {25, 28, 20}, "soil_strength"},
      {{0, 28, 16}, {2, 32, 17.5}, {5, 36, 19}, "soil_strength"},
      {{0, 22, 14}, {2, 26, 16}, {5, 30, 18}, "soil_strength"},
      {{5, 0, 15}, {10, 5, 17}, {20, 10, 18.5}, "soil_strength"},
      {{50, 30, 21}, {100, 35, 23}, {300, 45, 26}, "soil_strength"},
  }};
  return table.at(static_cast<std::size_t>(soil));
}

}  // namespace core::site
