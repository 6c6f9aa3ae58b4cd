#include "core/hydraulics/figures.h"

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <string>

namespace core::hydraulics {
namespace {

std::vector<Figure> pipeTable() {
  return {
      // handbooks print "smooth" (0) for plastic, 0.0015 mm for drawn tubing; the high end is an old pipe
      {"roughness.plastic", 0, 0.0015, 0.01, Unit::millimetre, "handbook_pipe_tables"},
      {"roughness.steel", 0.045, 0.045, 0.15, Unit::millimetre, "handbook_pipe_tables"},
      {"roughness.galvanised", 0.15, 0.15, 0.3, Unit::millimetre, "handbook_pipe_tables"},
      {"roughness.cast_iron", 0.26, 0.26, 1, Unit::millimetre, "handbook_pipe_tables"},
      {"roughness.concrete", 0.3, 1, 3, Unit::millimetre, "handbook_pipe_tables"},
      {"hazen_williams.plastic", 140, 140, 150, Unit::none, "handbook_pipe_tables"},
      {"hazen_williams.galvanised", 100, 120, 120, Unit::none, "memory"},
      {"minor.entrance_sharp", 0.5, 0.5, 0.5, Unit::factor, "sanks_minor_losses"},
      {"minor.entrance_projecting", 0.8, 0.8, 1.0, Unit::factor, "sanks_minor_losses"},
      {"minor.entrance_bell", 0.04, 0.05, 0.05, Unit::factor, "sanks_minor_losses"},
      {"minor.foot_valve", 11.4, 11.4, 11.4, Unit::factor, "sanks_minor_losses"},
      {"minor.elbow_90", 0.25, 0.9, 1.5, Unit::factor, "handbook_pipe_tables"},
      {"minor.elbow_90_long", 0.18, 0.5, 0.7, Unit::factor, "handbook_pipe_tables"},
      {"minor.elbow_45", 0.18, 0.4, 0.4, Unit::factor, "handbook_pipe_tables"},
      {"minor.tee_through", 0.2, 0.6, 0.9, Unit::factor, "handbook_pipe_tables"},
      {"minor.tee_branch", 0.75, 1.5, 2.0, Unit::factor, "handbook_pipe_tables"},
      {"minor.gate_valve", 0.1, 0.15, 0.2, Unit::factor, "sanks_minor_losses"},
      {"minor.gate_valve_half_closed", 2.1, 2.1, 2.1, Unit::factor, "handbook_pipe_tables"},
      {"minor.globe_valve", 4, 10, 10, Unit::factor, "handbook_pipe_tables"},
      {"minor.ball_valve", 0.04, 0.05, 0.05, Unit::factor, "handbook_pipe_tables"},
      {"minor.check_valve", 0.6, 2, 2.2, Unit::factor, "handbook_pipe_tables"},
      {"minor.water_meter", 7, 7, 7, Unit::factor, "handbook_pipe_tables"},
      {"minor.screen", 0.5, 1, 3, Unit::factor, "own"},
      {"pipe.reserve", 1, 2, 3, Unit::metre, "own"},
      {"siphon.reserve", 1.5, 2, 3, Unit::metre, "own"},
  };
}

std::vector<Figure> channelTable() {
  return {
      {"manning.plastic_pipe", 0.009, 0.010, 0.011, Unit::none, "memory"},
      {"manning.plaster", 0.011, 0.014, 0.017, Unit::none, "memory"},
      {"manning.earth", 0.018, 0.025, 0.033, Unit::none, "memory"},
      {"manning.short_grass", 0.025, 0.035, 0.050, Unit::none, "memory"},
      {"manning.stone_pitching", 0.025, 0.035, 0.040, Unit::none, "memory"},
      // low: the softest soil of that name (sandy clay, silt, fine sand, shale), high: the firmest; plaster:
      // own, half of what the same tables give concrete
      {"erosion.stiff_clay", 0.90, 0.90, 1.25, Unit::metre_per_second, "chow_ditch_speeds"},
      {"erosion.firm_loam", 0.45, 0.60, 0.76, Unit::metre_per_second, "fortier_scobey_1926"},
      {"erosion.sandy", 0.45, 0.45, 0.53, Unit::metre_per_second, "fortier_scobey_1926"},
      {"erosion.loose_fill", 0.30, 0.40, 0.45, Unit::metre_per_second, "own"},
      {"erosion.soft_wet", 0.30, 0.40, 0.45, Unit::metre_per_second, "own"},
      {"erosion.rock", 1.80, 1.80, 3.00, Unit::metre_per_second, "chow_ditch_speeds"},
      {"erosion.grass", 0.90, 1.20, 1.80, Unit::metre_per_second, "memory"},
      {"erosion.stone_pitching", 1.80, 2.40, 3.00, Unit::metre_per_second, "own"},
      {"erosion.plaster", 1.50, 2.00, 3.00, Unit::metre_per_second, "own"},
      {"weir.broad_crest_theory", 1, 1, 1, Unit::factor, "broad_crest"},
      {"weir.broad_crest", 0.85, 0.90, 1, Unit::factor, "memory"},
      {"orifice.sharp", 0.60, 0.60, 0.62, Unit::factor, "memory"},
      // rational method, low to high: open sandy loam to tight clay, flat to hilly
      {"storm_runoff.roof", 0.75, 0.90, 0.95, Unit::factor, "storm_runoff"},
      {"storm_runoff.woodland", 0.10, 0.35, 0.60, Unit::factor, "storm_runoff"},
      {"storm_runoff.pasture", 0.10, 0.36, 0.60, Unit::factor, "storm_runoff"},
      {"storm_runoff.cultivated", 0.30, 0.60, 0.82, Unit::factor, "storm_runoff"},
      {"storm_runoff.bare_packed", 0.20, 0.50, 0.60, Unit::factor, "storm_runoff"},
      {"storm_runoff.open_water", 1, 1, 1, Unit::factor, "exact"},
  };
}

std::vector<Figure> siltAndLeakTable() {
  return {
      {"silt.reserve", 1.2, 2, 2, Unit::factor, "micro_hydro_civil_works"},
      {"silt.speed", 0.44, 0.44, 0.44, Unit::none, "micro_hydro_civil_works"},
      {"silt.grain_density", 2600, 2650, 2700, Unit::kg_per_m3, "memory"},
      {"silt.deposit_grain_density", 2600, 2600, 2600, Unit::kg_per_m3, "micro_hydro_civil_works"},
      {"silt.packing", 0.5, 0.5, 0.5, Unit::factor, "micro_hydro_civil_works"},
      {"silt.length_over_width", 4, 6, 10, Unit::factor, "memory"},
      {"leak.tight", 1.5, 2, 3, Unit::mm_per_day, "own"},
      {"leak.watch", 4, 5, 6, Unit::mm_per_day, "own"},
      {"leak.repair", 8, 10, 15, Unit::mm_per_day, "own"},
      {"leak.published_drop", 10, 10, 10, Unit::millimetre, "water_tightness_drop"},
      {"leak.published_drop_days", 7, 7, 7, Unit::day, "water_tightness_drop"},
      {"leak.published_share", 0.1, 0.1, 0.1, Unit::percent, "water_tightness_share"},
  };
}

std::vector<Figure> outletTable() {
  return {
      // head: low just works, typical is what to plan with; flow: of one tap, hose, sprinkler or kit
      {"outlet.open_pipe.head", 0, 0, 0.2, Unit::metre, "own"},
      {"outlet.open_pipe.flow", 10, 30, 60, Unit::litre_per_minute, "own"},
      {"outlet.tap.head", 0.5, 1, 2, Unit::metre, "memory"},
      {"outlet.tap.flow", 6, 10, 15, Unit::litre_per_minute, "memory"},
      {"outlet.hose.head", 0.5, 1, 2, Unit::metre, "own"},
      {"outlet.hose.flow", 8, 15, 25, Unit::litre_per_minute, "own"},
      {"outlet.drip_low_cost.head", 1, 1, 1.5, Unit::metre, "iwmi_low_cost_drip"},
      {"outlet.drip_low_cost.flow", 2, 4, 10, Unit::litre_per_minute, "own"},
      {"outlet.drip_standard.head", 7, 10, 15, Unit::metre, "memory"},
      {"outlet.drip_standard.flow", 5, 10, 30, Unit::litre_per_minute, "memory"},
      {"outlet.micro_sprinkler.head", 7, 10, 20, Unit::metre, "memory"},
      {"outlet.micro_sprinkler.flow", 0.5, 1, 2, Unit::litre_per_minute, "memory"},
      {"outlet.sprinkler.head", 10, 20, 35, Unit::metre, "memory"},
      {"outlet.sprinkler.flow", 5, 12, 25, Unit::litre_per_minute, "memory"},
  };
}

std::vector<Figure> joined() {
  std::vector<Figure> all = pipeTable();
  for (std::vector<Figure> part : {channelTable(), siltAndLeakTable(), outletTable()}) {
    all.insert(all.end(), std::make_move_iterator(part.begin()), std::make_move_iterator(part.end()));
  }
  return all;
}

}  // namespace

const std::vector<Figure>& figures() {
  static const std::vector<Figure> table = joined();
  return table;
}

Result<Figure> figure(std::string_view key) {
  const auto& all = figures();
  const auto it = std::find_if(all.begin(), all.end(), [&](const Figure& f) { return f.key == key; });
  if (it == all.end()) return fault("unknown_key");
  return *it;
}

double typical(std::string_view key) {
  const Result<Figure> found = figure(key);
  if (!found) throw std::logic_error("no figure with key " + std::string(key));
  return found->typical;
}

std::vector<Figure> figuresOf(std::string_view prefix) {
  std::vector<Figure> found;
  std::copy_if(figures().begin(), figures().end(), std::back_inserter(found),
               [&](const Figure& f) { return f.key.rfind(prefix, 0) == 0; });
  return found;
}

}  // namespace core::hydraulics
