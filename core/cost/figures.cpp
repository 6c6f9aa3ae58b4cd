#include "core/cost/cost_plan.h"

#include <stdexcept>
#include <string>

namespace core::cost {

const std::vector<Figure>& figures() {
  static const std::vector<Figure> table{
      {"weight.soil", 1200, 1300, 1400, Unit::kg_per_m3, "memory"},   // loose, from the heap
      {"weight.sand", 1300, 1550, 1700, Unit::kg_per_m3, "memory"},   // damp and loose to dry
      {"weight.stone", 1400, 1500, 1600, Unit::kg_per_m3, "memory"},  // broken or gathered, loose
      {"weight.water", 996, 1000, 1000, Unit::kg_per_m3, "kell_1975"},
      {"weight.sack", 0.5, 0.7, 1.2, Unit::kilogram, "memory"},  // of jute, empty and dry
      // kg for each metre, of polyethylene at 950 kg/m3: 20, 32 and 63 mm outside, 2.0, 3.0 and 5.8 mm of
      // wall
      {"weight.pipe", 0.1, 0.26, 1.0, Unit::kilogram, "iso_4427"},
      // kg for each metre: mesh or barbed wire and light posts
      {"weight.fence", 2, 5, 10, Unit::kilogram, "own"},
  };
  return table;
}

const Figure& figure(std::string_view key) {
  for (const Figure& f : figures()) {
    if (f.key == key) return f;
  }
  throw std::logic_error("no figure with key " + std::string(key));
}

}  // namespace core::cost
