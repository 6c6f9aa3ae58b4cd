#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::lining {

/// Loose ingredients of one volume of placed plaster.
struct Mix {
  double soil_m3 = 0, sand_m3 = 0, cement_m3 = 0, cement_kg = 0;
};

/// Ingredients of `placed_m3` of plaster with a coat's parts: placed * dry_to_wet loose, shared out by parts;
/// cement mass = loose volume * loose density. @source dry_to_wet, cpwd_density
Mix mixFor(double placed_m3, const Coat& parts, const Lining& lining);

/// Plaster of one coat (the last coat also holds cove and rim, mixed alike).
struct CoatQuantities {
  int coat;  ///< from 1
  double thickness_m;
  double face_m2;   ///< finished face of the coat
  double shell_m3;  ///< exact shell, with cove and rim for the last coat
  double
      area_times_thickness_m3;  ///< clear inside face times thickness: the paper rule, shown beside the shell
  Mix net;                      ///< from the exact shell
  Mix by_area;                  ///< from area times thickness
  double placed_m3;             ///< to be mixed: shell with unevenness (coat 1) and waste
  Mix to_mix;                   ///< ingredients of placed_m3
  std::optional<double>
      clay_percent;  ///< clay in soil and sand together; absent when the soil's clay is not known
};

struct Material {
  std::string id;    ///< cement, cement_bags, soil, sand, stone, water, mixing_water, curing_water, sacks
  double net;        ///< from geometry and mix alone
  double order;      ///< with unevenness, waste, losses, bulking, whole bags
  std::string unit;  ///< kg, bag, m3, L, piece
};

/// One batch made with `bags` bags of cement.
struct Batch {
  int coat;
  double bags;  ///< 1 or 0.5
  double soil_m3, sand_m3, cement_kg, yield_m3, covers_m2;
  int count;  ///< batches to mix for the coat, unevenness and waste included
  double soil_boxes, sand_boxes, soil_pans, sand_pans, soil_buckets,
      sand_buckets;  ///< in the user's own measures
};

/// One line of the customary bill beside the computed ones.
struct BillLine {
  std::string id;  ///< soil, sand, stone, cement
  std::string unit;
  double customary, shell, by_area;   ///< net, without waste
  double shell_ratio, by_area_ratio;  ///< computed over customary
};

/// The three ways to make cement, thickness and mix agree: trust two, solve for the third. Absent where there
/// is no answer.
struct BillAnswers {
  double cement_kg;                        ///< trust thickness and mix: cement they need, exact shells
  double cement_by_area_kg;                ///< same by area times thickness
  std::optional<double> thickness_factor;  ///< trust cement and mix: all coats times this, exact shells
  std::optional<double> thickness_by_area_factor;
  std::vector<double> thickness_m;  ///< per coat with thickness_factor
  std::vector<double> thickness_by_area_m;
  std::optional<double>
      filler_factor;  ///< trust cement and thickness: soil and sand parts per cement times this
  std::optional<double> filler_by_area_factor;
  std::vector<Coat> mix;  ///< coats with filler_factor applied
  std::vector<Coat> mix_by_area;
};

struct BillComparison {
  std::vector<BillLine> lines;
  std::optional<BillAnswers> cement;         ///< when the bill names cement
  std::optional<double> bill_soil_per_sand;  ///< what the bill says
  double mix_soil_per_sand = 0;              ///< what the mixes need
};

struct Quantities {
  std::vector<CoatQuantities> coats;
  double stone_net_m3 = 0;
  std::vector<Material> materials;
  std::vector<Batch> batches;  ///< for each coat one with a whole bag, one with half a bag
  std::optional<BillComparison> customary;
};

/// @pre geometry was made from the same tank and lining
Quantities quantities(const geometry::TankGeometry& geometry, const Project& project);

/// What is to be bought of one material, in its unit. @throws std::logic_error when there is none of that id
double orderOf(const Quantities& quantities, std::string_view material_id);

}  // namespace core::lining
