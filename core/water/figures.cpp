#include "core/water/figures.h"

#include <stdexcept>
#include <string>

namespace core::water {
namespace {

std::string_view token(IrrigationMethod method) {
  switch (method) {
    case IrrigationMethod::watering_can:
      return "watering_can";
    case IrrigationMethod::hose:
      return "hose";
    case IrrigationMethod::furrow:
      return "furrow";
    case IrrigationMethod::sprinkler:
      return "sprinkler";
    case IrrigationMethod::drip:
      return "drip";
  }
  throw std::logic_error("no such irrigation method");
}

std::string_view token(Animal kind) {
  switch (kind) {
    case Animal::cattle:
      return "cattle";
    case Animal::dairy_cow:
      return "dairy_cow";
    case Animal::buffalo:
      return "buffalo";
    case Animal::horse_or_mule:
      return "horse_or_mule";
    case Animal::donkey:
      return "donkey";
    case Animal::goat_or_sheep:
      return "goat_or_sheep";
    case Animal::pig:
      return "pig";
    case Animal::poultry:
      return "poultry";
  }
  throw std::logic_error("no such animal");
}

}  // namespace

const std::vector<Figure>& figures() {
  static const std::vector<Figure> table{
      {"runoff.roof_sheet", 0.80, 0.80, 0.85, Unit::factor, "roof_runoff"},
      {"runoff.roof_tile", 0.60, 0.75, 0.90, Unit::factor, "memory"},
      {"runoff.roof_thatch", 0.20, 0.30, 0.50, Unit::factor, "memory"},
      // ground: the rural coefficients are meant for flood peaks, so the typical is taken low in their range
      {"runoff.ground_bare", 0.20, 0.30, 0.50, Unit::factor, "ground_runoff"},
      {"runoff.ground_pasture", 0.10, 0.20, 0.40, Unit::factor, "ground_runoff"},
      {"runoff.ground_cultivated", 0.10, 0.25, 0.50, Unit::factor, "ground_runoff"},
      {"first_flush.roof", 0.5, 1, 2, Unit::millimetre, "memory"},
      {"first_flush.ground", 2, 5, 10, Unit::millimetre, "own"},
      // water less than 2 m deep, or subhumid climates and tropics
      {"open_water_kc", 1.05, 1.05, 1.05, Unit::factor, "fao56_table_12"},
      {"cover.shade_cloth_single", 75, 75, 75, Unit::percent, "shade_cloth"},
      {"cover.shade_cloth_double", 83, 83, 83, Unit::percent, "shade_cloth"},
      {"seepage", 0.5, 1.5, 5, Unit::mm_per_day, "own"},
      // field capacity less wilting point: clay; loam; sand and loamy sand, typical of the paper's example 36
      {"soil_water.stiff_clay", 120, 160, 200, Unit::mm_per_metre, "fao56_table_19"},
      {"soil_water.firm_loam", 130, 155, 180, Unit::mm_per_metre, "fao56_table_19"},
      {"soil_water.sandy", 50, 90, 120, Unit::mm_per_metre, "fao56_table_19"},
      {"soil_water.loose_fill", 60, 110, 150, Unit::mm_per_metre, "own"},
      {"soil_water.soft_wet", 130, 170, 200, Unit::mm_per_metre, "own"},
      {"soil_water.rock", 10, 30, 60, Unit::mm_per_metre, "own"},
      {"efficiency.watering_can", 70, 80, 90, Unit::percent, "own"},
      {"efficiency.hose", 60, 70, 80, Unit::percent, "own"},
      {"efficiency.furrow", 50, 60, 70, Unit::percent, "memory"},
      {"efficiency.sprinkler", 65, 75, 85, Unit::percent, "memory"},
      {"efficiency.drip", 80, 90, 95, Unit::percent, "memory"},
      {"animal.cattle", 20, 35, 60, Unit::litre_per_day, "livestock_needs"},
      {"animal.dairy_cow", 30, 70, 80, Unit::litre_per_day, "livestock_needs"},
      {"animal.buffalo", 40, 50, 60, Unit::litre_per_day, "memory"},
      {"animal.horse_or_mule", 10, 30, 40, Unit::litre_per_day, "livestock_needs"},
      {"animal.donkey", 10, 15, 25, Unit::litre_per_day, "livestock_needs"},
      {"animal.goat_or_sheep", 4, 5, 6, Unit::litre_per_day, "livestock_needs"},
      {"animal.pig", 15, 20, 25, Unit::litre_per_day, "livestock_needs"},
      {"animal.poultry", 0.1, 0.2, 0.3, Unit::litre_per_day, "livestock_needs"},
      {"person", 7.5, 15, 15, Unit::litre_per_day, "sphere_water"},
  };
  return table;
}

const Figure& figure(std::string_view key) {
  for (const Figure& f : figures()) {
    if (f.key == key) return f;
  }
  throw std::logic_error("no figure with key " + std::string(key));
}

const Figure& efficiency(IrrigationMethod method) {
  return figure("efficiency." + std::string(token(method)));
}

const Figure& need(Animal kind) {
  return figure("animal." + std::string(token(kind)));
}

}  // namespace core::water
