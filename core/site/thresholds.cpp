#include "core/site/thresholds.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string>

namespace core::site {
namespace {

constexpr std::array kThresholds{
    // 1926.651(c)(2): 4 ft; 1926.652(a)(1): 5 ft; 1926.651(j)(2): 2 ft; appendix B: 20 ft; all rounded down
    Threshold{"pit.ladder_from", 1.2, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"pit.cave_in_from", 1.5, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"pit.deepest_by_hand", 2.5, Unit::metre, "own", Tag::own},
    Threshold{"pit.batter_table_to", 6.1, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"pit.type_a_short_term_to", 3.67, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"pit.ladder_travel", 7.6, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"spoil.setback", 0.6, Unit::metre, "osha_1926p", Tag::pub},
    Threshold{"spoil.most_height", 1.5, Unit::metre, "own", Tag::own},
    Threshold{"spoil.off_fall", 45, Unit::degree, "own", Tag::own},
    Threshold{"spoil.repose", 35, Unit::degree, "own", Tag::own},
    Threshold{"slope.caution", 15, Unit::degree, "own", Tag::own},
    Threshold{"slope.stop", 25, Unit::degree, "own", Tag::own},
    Threshold{"slope.least_factor", 1.5, Unit::factor, "common_practice", Tag::cp},
    Threshold{"cut.least_factor", 1.5, Unit::factor, "own", Tag::own},
    Threshold{"bench.walkway", 0.6, Unit::metre, "own", Tag::own},
    Threshold{"bench.cut_batter", 1, Unit::batter, "own", Tag::own},
    Threshold{"bench.fill_batter", 1.5, Unit::batter, "common_practice", Tag::cp},
    Threshold{"bench.topsoil", 0.15, Unit::metre, "common_practice", Tag::cp},
    Threshold{"bench.compacted_per_bank", 0.9, Unit::factor, "own", Tag::own},
    Threshold{"cover.least", 0, Unit::metre, "own", Tag::own},
    Threshold{"edge.footing_setback_share", 1.0 / 3, Unit::factor, "ibc_1808_7", Tag::mem},
    Threshold{"edge.footing_setback_most", 12.2, Unit::metre, "ibc_1808_7", Tag::mem},
    Threshold{"house.flow_path", 100, Unit::metre, "own", Tag::own},
    Threshold{"uplift.least_factor", 1.2, Unit::factor, "own", Tag::own},
    Threshold{"frost.water_within", 1.5, Unit::metre, "own", Tag::own},
    Threshold{"swell.extensibility_moderate", 3, Unit::percent, "nssh_shrink_swell", Tag::pub},
    Threshold{"swell.extensibility_high", 6, Unit::percent, "nssh_shrink_swell", Tag::pub},
    Threshold{"swell.extensibility_very_high", 9, Unit::percent, "nssh_shrink_swell", Tag::pub},
    Threshold{"swell.clay_share", 35, Unit::percent, "own", Tag::own},
};

double value(std::string_view key) {
  return threshold(key).value;
}

}  // namespace

std::span<const Threshold> thresholds() {
  return kThresholds;
}

const Threshold& threshold(std::string_view key) {
  for (const Threshold& t : kThresholds) {
    if (t.key == key) return t;
  }
  throw std::logic_error("no threshold with key " + std::string(key));
}

ExcavationSoil excavationSoil(std::optional<Soil> soil) {
  if (!soil) return ExcavationSoil::type_c;
  switch (*soil) {
    case Soil::stiff_clay:
    case Soil::firm_loam:
    case Soil::rock:
      return ExcavationSoil::type_b;
    case Soil::sandy:
    case Soil::loose_fill:
    case Soil::soft_wet:
      break;
  }
  return ExcavationSoil::type_c;
}

double steepestBatter(ExcavationSoil soil) {
  switch (soil) {  // appendix B, table B-1
    case ExcavationSoil::stable_rock:
      return 0;
    case ExcavationSoil::type_a:
      return 0.75;
    case ExcavationSoil::type_b:
      return 1;
    case ExcavationSoil::type_c:
      break;
  }
  return 1.5;
}

EdgeDistance edgeDistance(double edge_height_m, double pit_depth_m) {
  return {edge_height_m + pit_depth_m,
          std::min(edge_height_m * value("edge.footing_setback_share"), value("edge.footing_setback_most"))};
}

}  // namespace core::site
