#include "core/site/field_tests.h"

#include "core/base/median.h"
#include "core/geometry/tank_geometry.h"
#include "core/project/fields.h"

#include <algorithm>

#include <fmt/format.h>

namespace core::site {
namespace {

constexpr double kPercent = 100;

void readJars(const FieldNotes& notes, FieldTests& out) {
  std::vector<double> clay;
  for (std::size_t row = 0; row < notes.jars.size(); ++row) {
    const JarTest& jar = notes.jars[row];
    const double all_mm = jar.sand_mm + jar.silt_mm + jar.clay_mm;
    if (all_mm <= 0) continue;
    const SoilShares shares{kPercent * jar.sand_mm / all_mm, kPercent * jar.silt_mm / all_mm,
                            kPercent * jar.clay_mm / all_mm};
    out.jars.push_back({row, jar.place, shares, textureOf(shares)});
    clay.push_back(shares.clay_percent);
  }
  if (!clay.empty()) out.clay_percent = medianOf(clay);
}

void readFeel(const FieldNotes& notes, FieldTests& out) {
  for (std::size_t row = 0; row < notes.feel.size(); ++row) {
    if (const auto texture = textureOf(notes.feel[row]))
      out.feel.push_back({row, notes.feel[row].place, *texture});
  }
}

void takeWeaker(Soil soil, std::optional<Soil>& weakest) {
  if (!weakest || strengthOrder(soil) < strengthOrder(*weakest)) weakest = soil;
}

/// What the samples in the hand, or else in the jars, say of the soil.
void judgeTexture(FieldTests& out) {
  std::vector<Texture> samples;
  for (const FeelReading& feel : out.feel) samples.push_back(feel.texture);
  if (samples.empty()) {
    for (const JarReading& jar : out.jars) samples.push_back(jar.texture);
  }
  for (const Texture texture : samples) {
    const std::optional<Soil> soil = soilOf(texture);
    if (soil) takeWeaker(*soil, out.texture_soil);
    out.has_clay_sample = out.has_clay_sample || !soil;
  }
  if (out.has_clay_sample && out.texture_soil != Soil::sandy) out.texture_soil.reset();
}

void readPits(const FieldNotes& notes, FieldTests& out) {
  if (notes.pit_layers.empty()) return;
  PitSoils& pits = out.pits.emplace();
  for (const PitLayer& layer : notes.pit_layers) {
    pits.down_to_m = std::max(pits.down_to_m, layer.to_m);
    if (layer.has_water) out.water_depth_m = std::min(out.water_depth_m.value_or(layer.from_m), layer.from_m);
    if (layer.from_m >= out.pit_depth_m) continue;
    ++pits.layers;
    if (layer.soil)
      takeWeaker(*layer.soil, pits.weakest);
    else
      ++pits.unknown;
  }
}

void readSlope(const FieldNotes& notes, FieldTests& out) {
  for (std::size_t row = 0; row < notes.slope.size(); ++row) {
    const SlopeSetting& setting = notes.slope[row];
    if (setting.run_m <= 0) continue;
    out.slope.push_back({row, kPercent * setting.drop_m / setting.run_m});
    out.run_m += setting.run_m;
    out.drop_m += setting.drop_m;
  }
  if (out.run_m > 0) out.fall_percent = kPercent * out.drop_m / out.run_m;
}

void adoptFall(double fall_percent, Ground& ground) {
  const bool is_taken = fall_percent >= 0 && fall_percent <= field("site.ground.fall_percent").most;
  if (!is_taken || ground.kind == GroundKind::spot_heights) return;
  ground.kind = fall_percent > 0 ? GroundKind::slope : GroundKind::level;
  ground.fall_percent = fall_percent;
}

}  // namespace

Problems check(const FieldNotes& notes) {
  Problems out;
  for (std::size_t k = 0; k < notes.pit_layers.size(); ++k) {
    const PitLayer& layer = notes.pit_layers[k];
    if (layer.to_m > layer.from_m) continue;
    out.push_back({"layer_not_below_its_top", fmt::format("notes.pit_layers[{}].to_m", k),
                   jsonText(layer.to_m), layer.from_m, field("notes.pit_layers[].to_m").most, Unit::metre,
                   "number"});
  }
  return out;
}

FieldTests fieldTests(const FieldNotes& notes, double pit_depth_m) {
  FieldTests out;
  out.pit_depth_m = pit_depth_m;
  readJars(notes, out);
  readFeel(notes, out);
  judgeTexture(out);
  readPits(notes, out);
  readSlope(notes, out);
  if (!out.pits || out.pits->layers == 0)
    out.soil = out.texture_soil;
  else if (out.pits->unknown == 0)
    out.soil = out.pits->weakest;
  return out;
}

Project adopted(const Project& project) {
  const geometry::TankGeometry tank(project.tank, project.lining);
  const FieldTests tests = fieldTests(project.notes, tank.pitDepth());
  Project result = project;
  Site& site = result.site;
  if (tests.clay_percent) site.clay_percent = tests.clay_percent;
  if (tests.soil) site.soil = tests.soil;
  if (tests.water_depth_m) site.water_table_depth_m = tests.water_depth_m;
  if (tests.fall_percent) adoptFall(*tests.fall_percent, site.ground);
  return result;
}

}  // namespace core::site
