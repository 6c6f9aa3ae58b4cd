#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kLining[]{
    {"layers[].thickness_m", metre, QT_TRANSLATE_NOOP("ui::words", "Thickness of each layer"), QT_TRANSLATE_NOOP("ui::words", "square to the face, as entered; of the cove its radius"), "@lining.stone_bed_m @lining.coats[].thickness_m @lining.cove_radius_m @lining.rim_thickness_m", "user"},
    {"layers[].volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Volume of each layer, finished"), QT_TRANSLATE_NOOP("ui::words", "exact shell between its two faces, floor and wall together"), "layers[].thickness_m tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient tank.depth_m @tank.batter", "exact"},
    {"layers[].area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Face of each layer that is worked"), QT_TRANSLATE_NOOP("ui::words", "for a coat its inner face: floor + √(1 + batter²) × height × mean edge; for bed and rim the top"), "layers[].thickness_m tank.floor_m2 tank.floor_perimeter_m tank.depth_m @tank.batter", "exact"},
    {"coats[].thickness_m", metre, QT_TRANSLATE_NOOP("ui::words", "Thickness of each coat"), QT_TRANSLATE_NOOP("ui::words", "square to the face, as entered"), "@lining.coats[].thickness_m", "user"},
    {"coats[].face_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Face of each coat"), QT_TRANSLATE_NOOP("ui::words", "finished inner face, floor and wall"), "layers[].area_m2", "exact"},
    {"coats[].shell_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Plaster of each coat, exact shell"), QT_TRANSLATE_NOOP("ui::words", "volume of the layer; the last coat also holds cove and rim"), "layers[].volume_m3", "exact"},
    {"coats[].area_times_thickness_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Plaster by area × thickness"), QT_TRANSLATE_NOOP("ui::words", "(clear floor + clear wall) × thickness: the rule on paper, to stand beside the exact shell"), "tank.floor_m2 tank.wall_m2 coats[].thickness_m", "common_practice"},
    {"coats[].placed_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Plaster to mix for each coat"), QT_TRANSLATE_NOOP("ui::words", "shell × (1 + waste); coat 1 also × (1 + unevenness)"), "coats[].shell_m3 @lining.waste_percent @lining.unevenness_percent", "#lining.unevenness_percent"},
    {"coats[].clay_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Clay in soil and sand together"), QT_TRANSLATE_NOOP("ui::words", "clay of the soil × soil parts ÷ (soil + sand parts)"), "@site.clay_percent @lining.coats[].soil @lining.coats[].sand", "exact"},
    {"materials[].net", kilogram, QT_TRANSLATE_NOOP("ui::words", "Cement: net weight"), QT_TRANSLATE_NOOP("ui::words", "sum over all coats of the net mix"), "coats[].net.cement_kg", "sums", "cement"},
    {"materials[].order", kilogram, QT_TRANSLATE_NOOP("ui::words", "Cement: to order"), QT_TRANSLATE_NOOP("ui::words", "whole bags × weight of a bag"), "materials[].order/cement_bags @lining.cement_bag_kg", "sums", "cement"},
    {"materials[].net", piece, QT_TRANSLATE_NOOP("ui::words", "Cement bags, net"), QT_TRANSLATE_NOOP("ui::words", "net cement ÷ weight of a bag"), "coats[].net.cement_kg @lining.cement_bag_kg", "sums", "cement_bags"},
    {"materials[].order", piece, QT_TRANSLATE_NOOP("ui::words", "Cement bags to order"), QT_TRANSLATE_NOOP("ui::words", "cement of the plaster to mix ÷ weight of a bag, rounded up to whole bags"), "coats[].to_mix.cement_kg @lining.cement_bag_kg", "sums", "cement_bags"},
    {"materials[].net", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Soil, net"), QT_TRANSLATE_NOOP("ui::words", "sum over all coats of the net mix"), "coats[].net.soil_m3", "sums", "soil"},
    {"materials[].order", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Soil to dig and sieve"), QT_TRANSLATE_NOOP("ui::words", "soil of the plaster to mix ÷ (1 − lost in sieving), rounded up to 0.1 m³"), "coats[].to_mix.soil_m3 @lining.sieving_loss_percent", "#lining.sieving_loss_percent", "soil"},
    {"materials[].net", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Sand, net"), QT_TRANSLATE_NOOP("ui::words", "sum over all coats of the net mix"), "coats[].net.sand_m3", "sums", "sand"},
    {"materials[].order", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Sand to order, damp"), QT_TRANSLATE_NOOP("ui::words", "sand of the plaster to mix ÷ (1 − lost in sieving) × (1 + bulking), rounded up to 0.1 m³"), "coats[].to_mix.sand_m3 @lining.sieving_loss_percent @lining.sand_bulking_percent", "#lining.sand_bulking_percent", "sand"},
    {"materials[].net", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Stone of the bed, net"), QT_TRANSLATE_NOOP("ui::words", "volume of the stone bed"), "layers[].volume_m3/stone_bed", "exact", "stone"},
    {"materials[].order", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Stone to bring, loose"), QT_TRANSLATE_NOOP("ui::words", "bed × (1 + unevenness) × (1 + waste) × loose stone for each m³ of bed, rounded up to 0.1 m³"), "materials[].net/stone @lining.unevenness_percent @lining.waste_percent @lining.stone_loose_factor", "#lining.stone_loose_factor", "stone"},
    {"materials[].net", litre, QT_TRANSLATE_NOOP("ui::words", "Water, net"), QT_TRANSLATE_NOOP("ui::words", "mixing water + curing water"), "materials[].net/mixing_water materials[].net/curing_water", "sums", "water"},
    {"materials[].order", litre, QT_TRANSLATE_NOOP("ui::words", "Water to bring"), QT_TRANSLATE_NOOP("ui::words", "mixing water + curing water, rounded up"), "materials[].order/mixing_water materials[].order/curing_water", "sums", "water"},
    {"materials[].net", litre, QT_TRANSLATE_NOOP("ui::words", "Mixing water, net"), QT_TRANSLATE_NOOP("ui::words", "plaster, exact shells × litres for each m³"), "coats[].shell_m3 @lining.mixing_water_l_per_m3", "#lining.mixing_water_l_per_m3", "mixing_water"},
    {"materials[].order", litre, QT_TRANSLATE_NOOP("ui::words", "Mixing water to bring"), QT_TRANSLATE_NOOP("ui::words", "plaster to mix × litres for each m³, rounded up"), "coats[].placed_m3 @lining.mixing_water_l_per_m3", "#lining.mixing_water_l_per_m3", "mixing_water"},
    {"materials[].net", litre, QT_TRANSLATE_NOOP("ui::words", "Curing water, net"), QT_TRANSLATE_NOOP("ui::words", "face of each coat × litres a day for each m² × its days under wet sacks"), "coats[].face_m2 @lining.curing_water_l_per_m2_day @lining.coats[].cure_days", "#lining.curing_water_l_per_m2_day", "curing_water"},
    {"materials[].order", litre, QT_TRANSLATE_NOOP("ui::words", "Curing water to bring"), QT_TRANSLATE_NOOP("ui::words", "as net, rounded up"), "materials[].net/curing_water", "#lining.curing_water_l_per_m2_day", "curing_water"},
    {"materials[].net", piece, QT_TRANSLATE_NOOP("ui::words", "Wet sacks, net"), QT_TRANSLATE_NOOP("ui::words", "largest face of a coat ÷ what a sack covers; one set is used again for each coat"), "coats[].face_m2 @lining.sack_covers_m2", "#lining.sack_covers_m2", "sacks"},
    {"materials[].order", piece, QT_TRANSLATE_NOOP("ui::words", "Wet sacks to bring"), QT_TRANSLATE_NOOP("ui::words", "net × (1 + spare), rounded up"), "materials[].net/sacks @lining.sack_spare_percent", "#lining.sack_covers_m2", "sacks"},
};

constexpr ReckoningEntry kLining2[]{
    {"soil_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "soil for each coat"), QT_TRANSLATE_NOOP("ui::words", "plaster × dry to wet × soil parts ÷ all parts"), "% @lining.dry_to_wet @lining.coats[].soil @lining.coats[].sand @lining.coats[].cement", "#lining.dry_to_wet"},
    {"sand_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "sand for each coat"), QT_TRANSLATE_NOOP("ui::words", "plaster × dry to wet × sand parts ÷ all parts"), "% @lining.dry_to_wet @lining.coats[].soil @lining.coats[].sand @lining.coats[].cement", "#lining.dry_to_wet"},
    {"cement_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "cement for each coat, loose"), QT_TRANSLATE_NOOP("ui::words", "plaster × dry to wet × cement parts ÷ all parts"), "% @lining.dry_to_wet @lining.coats[].soil @lining.coats[].sand @lining.coats[].cement", "#lining.dry_to_wet"},
    {"cement_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "cement for each coat"), QT_TRANSLATE_NOOP("ui::words", "loose cement × its loose weight"), ".cement_m3 @lining.cement_loose_kg_m3", "#lining.cement_loose_kg_m3"},
};

constexpr ReckoningPlace kLining2Places[]{
    {"coats[].net.", QT_TRANSLATE_NOOP("ui::words", "Exact shells"), "coats[].shell_m3"},
    {"coats[].net_by_area.", QT_TRANSLATE_NOOP("ui::words", "Area × thickness"), "coats[].area_times_thickness_m3"},
    {"coats[].to_mix.", QT_TRANSLATE_NOOP("ui::words", "To mix"), "coats[].placed_m3"},
};

constexpr ReckoningEntry kLining3[]{
    {"coat", piece, QT_TRANSLATE_NOOP("ui::words", "for coat number"), QT_TRANSLATE_NOOP("ui::words", "the coats in order, from the earth"), "@lining.coats[].thickness_m", "user"},
    {"bags", factor, QT_TRANSLATE_NOOP("ui::words", "bags of cement"), QT_TRANSLATE_NOOP("ui::words", "one bag, or half of one"), "@lining.cement_bag_kg", "own"},
    {"soil_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "soil"), QT_TRANSLATE_NOOP("ui::words", "soil parts × cement ÷ its loose weight ÷ cement parts"), ".cement_kg @lining.cement_loose_kg_m3 @lining.coats[].soil @lining.coats[].cement", "#lining.cement_loose_kg_m3"},
    {"sand_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "sand"), QT_TRANSLATE_NOOP("ui::words", "sand parts × cement ÷ its loose weight ÷ cement parts"), ".cement_kg @lining.cement_loose_kg_m3 @lining.coats[].sand @lining.coats[].cement", "#lining.cement_loose_kg_m3"},
    {"cement_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "cement"), QT_TRANSLATE_NOOP("ui::words", "bags × weight of a bag"), ".bags @lining.cement_bag_kg", "sums"},
    {"yield_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "plaster that it yields"), QT_TRANSLATE_NOOP("ui::words", "soil, sand and cement, loose ÷ dry to wet"), ".soil_m3 .sand_m3 .cement_kg @lining.cement_loose_kg_m3 @lining.dry_to_wet", "#lining.dry_to_wet"},
    {"covers_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "face that it covers"), QT_TRANSLATE_NOOP("ui::words", "yield ÷ thickness of the coat"), ".yield_m3 coats[].thickness_m", "sums"},
    {"count", piece, QT_TRANSLATE_NOOP("ui::words", "batches for the coat"), QT_TRANSLATE_NOOP("ui::words", "plaster to mix ÷ yield, rounded up"), "coats[].placed_m3 .yield_m3", "sums"},
    {"soil_boxes", factor, QT_TRANSLATE_NOOP("ui::words", "gauge boxes of soil"), QT_TRANSLATE_NOOP("ui::words", "soil ÷ what the box holds"), ".soil_m3 @lining.gauge_box_l", "sums"},
    {"sand_boxes", factor, QT_TRANSLATE_NOOP("ui::words", "gauge boxes of sand"), QT_TRANSLATE_NOOP("ui::words", "sand ÷ what the box holds"), ".sand_m3 @lining.gauge_box_l", "sums"},
    {"soil_pans", factor, QT_TRANSLATE_NOOP("ui::words", "pans of soil"), QT_TRANSLATE_NOOP("ui::words", "soil ÷ what the pan holds"), ".soil_m3 @lining.pan_l", "sums"},
    {"sand_pans", factor, QT_TRANSLATE_NOOP("ui::words", "pans of sand"), QT_TRANSLATE_NOOP("ui::words", "sand ÷ what the pan holds"), ".sand_m3 @lining.pan_l", "sums"},
    {"soil_buckets", factor, QT_TRANSLATE_NOOP("ui::words", "buckets of soil"), QT_TRANSLATE_NOOP("ui::words", "soil ÷ what the bucket holds"), ".soil_m3 @lining.bucket_l", "sums"},
    {"sand_buckets", factor, QT_TRANSLATE_NOOP("ui::words", "buckets of sand"), QT_TRANSLATE_NOOP("ui::words", "sand ÷ what the bucket holds"), ".sand_m3 @lining.bucket_l", "sums"},
};

constexpr ReckoningPlace kLining3Places[]{
    {"batches[].", QT_TRANSLATE_NOOP("ui::words", "Batch with a whole bag")},
    {"part_bag_batches[].", QT_TRANSLATE_NOOP("ui::words", "Batch with half a bag")},
};

constexpr ReckoningEntry kLining4[]{
    {"coats[].coat", piece, QT_TRANSLATE_NOOP("ui::words", "Numbers of the coats"), QT_TRANSLATE_NOOP("ui::words", "from the earth inward"), "@lining.coats[].thickness_m", "user"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> liningReckonings() {
  return {{"lining", {}, kLining},
          {"lining", kLining2Places, kLining2},
          {"lining", kLining3Places, kLining3},
          {"lining", {}, kLining4}};
}

}  // namespace ui::words
