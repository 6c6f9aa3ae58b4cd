#include "core/exchange/notes_json.h"

#include "core/exchange/json_values.h"

namespace core::exchange {
namespace {

Json soilName(const std::optional<Soil>& soil) {
  return soil ? choiceOf("site.soil", *soil) : Json(nullptr);
}

Json jar(const site::JarReading& j) {
  return {{"row", j.row + 1},
          {"place", j.place},
          {"sand_percent", number(j.shares.sand_percent)},
          {"silt_percent", number(j.shares.silt_percent)},
          {"clay_percent", number(j.shares.clay_percent)},
          {"texture", site::tokenOf(j.texture)}};
}

Json feel(const site::FeelReading& f) {
  return {{"row", f.row + 1}, {"place", f.place}, {"texture", site::tokenOf(f.texture)}};
}

Json slope(const site::SlopeReading& s) {
  return {{"row", s.row + 1}, {"fall_percent", number(s.fall_percent)}};
}

Json pits(const std::optional<site::PitSoils>& p) {
  if (!p) return nullptr;
  return {{"weakest_soil", soilName(p->weakest)},
          {"layers", p->layers},
          {"layers_unknown", p->unknown},
          {"down_to_m", number(p->down_to_m)}};
}

}  // namespace

Json fieldTestsJson(const site::FieldTests& t) {
  if (t.isEmpty()) return nullptr;
  return {{"jars", listOf(t.jars, jar)},
          {"clay_percent", number(t.clay_percent)},
          {"feel", listOf(t.feel, feel)},
          {"texture_soil", soilName(t.texture_soil)},
          {"pits", pits(t.pits)},
          {"water_depth_m", number(t.water_depth_m)},
          {"slope", listOf(t.slope, slope)},
          {"run_m", number(t.run_m)},
          {"drop_m", number(t.drop_m)},
          {"fall_percent", number(t.fall_percent)},
          {"soil", soilName(t.soil)}};
}

}  // namespace core::exchange
