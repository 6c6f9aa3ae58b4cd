#pragma once

#include "core/project/water.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core::water {

/// low, typical and high of one figure of a crop.
struct Range3 {
  double low, typical, high;
};

/// One crop of the table. Coefficients hold for RHmin 45 %, wind 2 m/s.
struct CropFigures {
  std::string_view id;  ///< "tomato"
  Range3 kc_ini, kc_mid, kc_end;
  double height_m;
  std::array<Range3, 4> stage_days;  ///< initial, development, mid-season, late
  Range3 root_depth_m;
  double depletion;  ///< p of FAO-56 table 22
  std::string_view kc_source, stage_source, root_source;
};

/// The table of crops. @source fao56_table_12 (Kc), fao56_table_11 (stages), fao56_table_22 (roots)
std::span<const CropFigures> crops();

/// What the balance needs of a crop, from the table or the user's own.
struct Crop {
  std::string name;  ///< id of the table, or the user's own name
  double kc_ini, kc_mid, kc_end, height_m;
  std::array<int, 4> stage_days;
  double root_depth_m, depletion;
  int seasonDays() const { return stage_days[0] + stage_days[1] + stage_days[2] + stage_days[3]; }
  bool operator==(const Crop&) const = default;
};

/// The crop a bed names: the user's own first, then the table's typical figures; nothing when there is none.
std::optional<Crop> findCrop(std::string_view name, const std::vector<OwnCrop>& own);

}  // namespace core::water
