#include "core/site/uplift.h"

#include "core/site/thresholds.h"

#include <algorithm>
#include <cmath>

namespace core::site {
namespace {

/// Volume of tank and lining together from the floor's underside up to a level above the finished floor [m3];
/// straight walls, so the prismoidal formula of Outline::volume is exact. The rim collar is left out.
double envelope(const geometry::TankGeometry& tank, double level_m) {
  const double bottom = -tank.liningThickness();
  const double top = std::clamp(level_m, bottom, tank.depth());
  return tank.outline().volume(tank.pitOffset(bottom), tank.pitOffset(top), top - bottom);
}

double liningVolume(const geometry::TankGeometry& tank) {
  double sum = 0;
  for (const geometry::Layer& layer : tank.layers()) {
    if (layer.id != "stone_bed") sum += layer.volume_m3;
  }
  return sum;
}

/// Water level that must be kept, if there is one.
std::optional<double> waterToKeep(const geometry::TankGeometry& tank, const UpliftInput& input,
                                  const Uplift& result) {
  // whole tank: lining + water inside >= factor x displaced
  const double wanted_m3 = (input.factor * result.displaced_kg - result.weight_kg) / input.water_kg_m3;
  // floor: lining + water over a square metre >= factor x head
  const double on_floor =
      input.factor * result.head_m - tank.liningThickness() * input.plaster_kg_m3 / input.water_kg_m3;
  if (wanted_m3 > tank.volumeToLevel(tank.fullLevel()) || on_floor > tank.fullLevel()) return std::nullopt;
  const double by_weight = wanted_m3 > 0 ? tank.levelForVolume(wanted_m3) : 0;
  return std::max({by_weight, on_floor, 0.0});
}

}  // namespace

Uplift uplift(const geometry::TankGeometry& tank, const UpliftInput& input) {
  Uplift result;
  const double level = tank.depth() - input.water_table_m;
  result.weight_kg = liningVolume(tank) * input.plaster_kg_m3;
  result.head_m = std::max(0.0, level + tank.liningThickness());
  result.displaced_kg = envelope(tank, level) * input.water_kg_m3;
  if (!(result.head_m > 0)) return result;
  result.factor = result.weight_kg / result.displaced_kg;
  result.floor_factor = tank.liningThickness() * input.plaster_kg_m3 / (result.head_m * input.water_kg_m3);
  result.keep_water_m = waterToKeep(tank, input, result);
  return result;
}

double frostDepth(const FrostInput& input) {
  constexpr double kLatentHeat_j_kg = 334e3;
  constexpr double kSecondsPerDay = 86400;
  const double latent = kLatentHeat_j_kg * input.dry_density_kg_m3 * input.water_percent / 100;
  // Stefan: X = sqrt(2 k (freezing index) / L)
  return std::sqrt(2 * input.conductivity_w_mk * kSecondsPerDay * std::max(0.0, input.freezing_index_c_days) /
                   latent);
}

Frost frostHeave(double frost_depth_m, std::optional<Soil> soil, std::optional<double> water_below_frost_m) {
  const bool heaves = soil != Soil::sandy && soil != Soil::rock;
  if (!(frost_depth_m > 0) || !heaves) return Frost::none;
  const bool is_near = !water_below_frost_m || *water_below_frost_m < threshold("frost.water_within").value;
  return is_near ? Frost::likely : Frost::possible;
}

Swelling swellingByExtensibility(double percent) {
  if (percent >= threshold("swell.extensibility_very_high").value) return Swelling::very_high;
  if (percent >= threshold("swell.extensibility_high").value) return Swelling::high;
  return percent >= threshold("swell.extensibility_moderate").value ? Swelling::moderate : Swelling::low;
}

Swelling swellingByClay(double clay_percent) {
  return clay_percent >= threshold("swell.clay_share").value ? Swelling::moderate : Swelling::low;
}

}  // namespace core::site
