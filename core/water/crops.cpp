#include "core/water/crops.h"

#include <algorithm>
#include <cmath>

namespace core::water {
namespace {

constexpr Range3 same(double value) {
  return {value, value, value};
}

/// Initial, development, mid-season and late stage of one row [days].
struct Stages {
  double initial, development, mid, late;
};

/// Least and most of each stage over the rows of a crop, and one row of the table as the typical one.
constexpr std::array<Range3, 4> stages(Stages least, Stages row, Stages most) {
  return {Range3{least.initial, row.initial, most.initial},
          Range3{least.development, row.development, most.development}, Range3{least.mid, row.mid, most.mid},
          Range3{least.late, row.late, most.late}};
}

/// Table 22 gives a range; its smaller depth is the one for scheduling irrigation (footnote 1).
constexpr Range3 roots(double least_m, double most_m) {
  return {least_m, least_m, most_m};
}

constexpr CropFigures row(std::string_view id, Range3 kc_ini, Range3 kc_mid, Range3 kc_end, double height_m,
                          const std::array<Range3, 4>& stage_days, Range3 root_depth_m, double depletion,
                          std::string_view stage_source = "fao56_table_11") {
  return {id,           kc_ini,    kc_mid,           kc_end,       height_m,        stage_days,
          root_depth_m, depletion, "fao56_table_12", stage_source, "fao56_table_22"};
}

// Three groups: Kc, height; stages; roots. Cabbage, cauliflower and broccoli range over the rows of their own
// and of the crucifers. Where Kc ranges, the typical is: tomato, the group's; maize and wheat, the larger one
// (cobs harvested moist, ears by hand), which asks for more water; wheat, soil that does not freeze; trees,
// bare ground without frost, citrus with 70 % canopy. Least and most: the other rows of the table.
constexpr std::array kCrops{
    row("tomato", same(0.6), same(1.15), Range3{0.70, 0.80, 0.90}, 0.6,
        stages({25, 40, 40, 25}, {30, 40, 45, 30}, {35, 45, 70, 30}), roots(0.7, 1.5), 0.40),
    row("sweet_pepper", same(0.6), same(1.05), same(0.90), 0.7,
        stages({25, 35, 40, 20}, {30, 35, 40, 20}, {30, 40, 110, 30}), roots(0.5, 1.0), 0.30),
    row("eggplant", same(0.6), same(1.05), same(0.90), 0.8,
        stages({30, 40, 40, 20}, {30, 40, 40, 20}, {30, 45, 40, 25}), roots(0.7, 1.2), 0.45),
    row("potato", same(0.5), same(1.15), Range3{0.40, 0.75, 0.75}, 0.6,
        stages({25, 30, 30, 20}, {25, 30, 45, 30}, {45, 35, 70, 30}), roots(0.4, 0.6), 0.35),
    row("onion_dry", same(0.7), same(1.05), same(0.75), 0.4,
        stages({15, 25, 70, 40}, {15, 25, 70, 40}, {20, 35, 110, 45}), roots(0.3, 0.6), 0.30),
    row("onion_green", same(0.7), same(1.00), same(1.00), 0.3,
        stages({20, 30, 10, 5}, {25, 30, 10, 5}, {30, 55, 55, 40}), roots(0.3, 0.6), 0.30),
    // garlic stands in no row of table 11: stages as for dry onions
    row("garlic", same(0.7), same(1.00), same(0.70), 0.3,
        stages({15, 25, 70, 40}, {15, 25, 70, 40}, {20, 35, 110, 45}), roots(0.3, 0.5), 0.30, "own"),
    row("cabbage", same(0.7), same(1.05), same(0.95), 0.4,
        stages({20, 30, 20, 10}, {40, 60, 50, 15}, {40, 60, 90, 40}), roots(0.5, 0.8), 0.45),
    row("cauliflower", same(0.7), same(1.05), same(0.95), 0.4,
        stages({20, 30, 20, 10}, {35, 50, 40, 15}, {35, 50, 90, 40}), roots(0.4, 0.7), 0.45),
    row("broccoli", same(0.7), same(1.05), same(0.95), 0.3,
        stages({20, 30, 20, 10}, {35, 45, 40, 15}, {35, 45, 90, 40}), roots(0.4, 0.6), 0.45),
    row("carrot", same(0.7), same(1.05), same(0.95), 0.3,
        stages({20, 30, 30, 20}, {30, 40, 60, 20}, {30, 50, 90, 30}), roots(0.5, 1.0), 0.35),
    row("lettuce", same(0.7), same(1.00), same(0.95), 0.3,
        stages({20, 30, 15, 10}, {25, 35, 30, 10}, {35, 50, 45, 10}), roots(0.3, 0.5), 0.30),
    row("spinach", same(0.7), same(1.00), same(0.95), 0.3,
        stages({20, 20, 15, 5}, {20, 30, 40, 10}, {20, 30, 40, 10}), roots(0.3, 0.5), 0.20),
    row("radish", same(0.7), same(0.90), same(0.85), 0.3,
        stages({5, 10, 15, 5}, {5, 10, 15, 5}, {10, 10, 15, 5}), roots(0.3, 0.5), 0.30),
    row("cucumber", same(0.6), same(1.00), same(0.75), 0.3,
        stages({20, 30, 40, 15}, {20, 30, 40, 15}, {25, 35, 50, 20}), roots(0.7, 1.2), 0.50),
    row("beans_green", same(0.5), same(1.05), same(0.90), 0.4,
        stages({15, 25, 25, 10}, {20, 30, 30, 10}, {20, 30, 30, 10}), roots(0.5, 0.7), 0.45),
    row("beans_dry", same(0.4), same(1.15), same(0.35), 0.4,
        stages({15, 25, 30, 20}, {20, 30, 40, 20}, {25, 30, 40, 20}), roots(0.6, 0.9), 0.45),
    row("peas", same(0.5), same(1.15), same(1.10), 0.5,
        stages({15, 25, 30, 15}, {20, 30, 35, 15}, {35, 30, 35, 20}), roots(0.6, 1.0), 0.35),
    row("lentil", same(0.4), same(1.10), same(0.30), 0.5,
        stages({20, 30, 60, 40}, {20, 30, 60, 40}, {25, 35, 70, 40}), roots(0.6, 0.8), 0.50),
    row("maize_grain", same(0.3), same(1.20), Range3{0.35, 0.60, 0.60}, 2.0,
        stages({20, 35, 40, 30}, {20, 35, 40, 30}, {30, 50, 60, 50}), roots(1.0, 1.7), 0.55),
    row("maize_sweet", same(0.3), same(1.15), same(1.05), 1.5,
        stages({20, 20, 25, 10}, {20, 25, 25, 10}, {30, 40, 70, 10}), roots(0.8, 1.2), 0.50),
    row("winter_wheat", Range3{0.4, 0.7, 0.7}, same(1.15), Range3{0.25, 0.40, 0.40}, 1.0,
        stages({20, 60, 40, 25}, {20, 60, 70, 30}, {160, 140, 75, 30}), roots(1.5, 1.8), 0.55),
    row("barley", same(0.3), same(1.15), same(0.25), 1.0,
        stages({15, 25, 40, 20}, {15, 25, 50, 30}, {40, 60, 65, 40}), roots(1.0, 1.5), 0.55),
    row("millet", same(0.3), same(1.00), same(0.30), 1.5,
        stages({15, 25, 40, 25}, {15, 25, 40, 25}, {20, 30, 55, 35}), roots(1.0, 2.0), 0.55),
    row("citrus", Range3{0.50, 0.70, 0.85}, Range3{0.45, 0.65, 0.85}, Range3{0.55, 0.70, 0.85}, 4.0,
        stages({60, 90, 120, 95}, {60, 90, 120, 95}, {60, 90, 120, 95}), Range3{0.8, 1.2, 1.5}, 0.50),
    row("deciduous_fruit", Range3{0.45, 0.60, 0.80}, Range3{0.95, 0.95, 1.20}, Range3{0.70, 0.75, 0.95}, 4.0,
        stages({20, 50, 90, 30}, {20, 70, 120, 60}, {30, 70, 130, 60}), roots(1.0, 2.0), 0.50),
};

int wholeDays(const Range3& days) {
  return static_cast<int>(std::lround(days.typical));
}

Crop typical(const CropFigures& f) {
  Crop crop{std::string(f.id),      f.kc_ini.typical, f.kc_mid.typical, f.kc_end.typical, f.height_m, {},
            f.root_depth_m.typical, f.depletion};
  std::transform(f.stage_days.begin(), f.stage_days.end(), crop.stage_days.begin(), wholeDays);
  return crop;
}

Crop fromOwn(const OwnCrop& own) {
  return {own.name,         own.kc_ini,   own.kc_mid,
          own.kc_end,       own.height_m, {own.ini_days, own.dev_days, own.mid_days, own.late_days},
          own.root_depth_m, own.depletion};
}

}  // namespace

std::span<const CropFigures> crops() {
  return kCrops;
}

std::optional<Crop> findCrop(std::string_view name, const std::vector<OwnCrop>& own) {
  const auto mine = std::find_if(own.begin(), own.end(), [&](const OwnCrop& c) { return c.name == name; });
  if (mine != own.end()) return fromOwn(*mine);
  const auto listed =
      std::find_if(kCrops.begin(), kCrops.end(), [&](const CropFigures& c) { return c.id == name; });
  if (listed != kCrops.end()) return typical(*listed);
  return {};
}

}  // namespace core::water
