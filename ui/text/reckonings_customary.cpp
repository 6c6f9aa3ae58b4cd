#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kCustomary[]{
    {"customary.lines[].customary", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Customary bill"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@lining.customary_bill.soil_m3 @lining.customary_bill.sand_m3 @lining.customary_bill.stone_m3 @lining.customary_bill.cement_kg", "user", "soil"},
    {"customary.lines[].customary", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Customary bill"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@lining.customary_bill.soil_m3 @lining.customary_bill.sand_m3 @lining.customary_bill.stone_m3 @lining.customary_bill.cement_kg", "user", "sand"},
    {"customary.lines[].customary", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Customary bill"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@lining.customary_bill.soil_m3 @lining.customary_bill.sand_m3 @lining.customary_bill.stone_m3 @lining.customary_bill.cement_kg", "user", "stone"},
    {"customary.lines[].customary", kilogram, QT_TRANSLATE_NOOP("ui::words", "Customary bill"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@lining.customary_bill.soil_m3 @lining.customary_bill.sand_m3 @lining.customary_bill.stone_m3 @lining.customary_bill.cement_kg", "user", "cement"},
    {"customary.lines[].shell", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned with exact shells, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the net mixes; stone: the bed"), "coats[].net.soil_m3 coats[].net.sand_m3 coats[].net.cement_kg materials[].net/stone", "sums", "soil"},
    {"customary.lines[].shell", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned with exact shells, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the net mixes; stone: the bed"), "coats[].net.soil_m3 coats[].net.sand_m3 coats[].net.cement_kg materials[].net/stone", "sums", "sand"},
    {"customary.lines[].shell", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned with exact shells, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the net mixes; stone: the bed"), "coats[].net.soil_m3 coats[].net.sand_m3 coats[].net.cement_kg materials[].net/stone", "sums", "stone"},
    {"customary.lines[].shell", kilogram, QT_TRANSLATE_NOOP("ui::words", "Reckoned with exact shells, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the net mixes; stone: the bed"), "coats[].net.soil_m3 coats[].net.sand_m3 coats[].net.cement_kg materials[].net/stone", "sums", "cement"},
    {"customary.lines[].by_area", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned by area × thickness, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the mixes by area × thickness; stone: floor × bed"), "coats[].net_by_area.soil_m3 coats[].net_by_area.sand_m3 coats[].net_by_area.cement_kg", "sums", "soil"},
    {"customary.lines[].by_area", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned by area × thickness, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the mixes by area × thickness; stone: floor × bed"), "coats[].net_by_area.soil_m3 coats[].net_by_area.sand_m3 coats[].net_by_area.cement_kg", "sums", "sand"},
    {"customary.lines[].by_area", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Reckoned by area × thickness, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the mixes by area × thickness; stone: floor × bed"), "coats[].net_by_area.soil_m3 coats[].net_by_area.sand_m3 coats[].net_by_area.cement_kg", "sums", "stone"},
    {"customary.lines[].by_area", kilogram, QT_TRANSLATE_NOOP("ui::words", "Reckoned by area × thickness, net"), QT_TRANSLATE_NOOP("ui::words", "sums of the mixes by area × thickness; stone: floor × bed"), "coats[].net_by_area.soil_m3 coats[].net_by_area.sand_m3 coats[].net_by_area.cement_kg", "sums", "cement"},
    {"customary.lines[].shell_ratio", factor, QT_TRANSLATE_NOOP("ui::words", "Exact shells over the bill"), QT_TRANSLATE_NOOP("ui::words", "reckoned ÷ customary"), "customary.lines[].shell customary.lines[].customary", "sums"},
    {"customary.lines[].by_area_ratio", factor, QT_TRANSLATE_NOOP("ui::words", "Area × thickness over the bill"), QT_TRANSLATE_NOOP("ui::words", "reckoned ÷ customary"), "customary.lines[].by_area customary.lines[].customary", "sums"},
    {"customary.bill_soil_per_sand", factor, QT_TRANSLATE_NOOP("ui::words", "Soil for each sand in the bill"), QT_TRANSLATE_NOOP("ui::words", "soil ÷ sand"), "@lining.customary_bill.soil_m3 @lining.customary_bill.sand_m3", "sums"},
    {"customary.mix_soil_per_sand", factor, QT_TRANSLATE_NOOP("ui::words", "Soil for each sand in the mixes"), QT_TRANSLATE_NOOP("ui::words", "net soil ÷ net sand"), "coats[].net.soil_m3 coats[].net.sand_m3", "sums"},
    {"customary.cement.cement_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "Cement that thickness and mix need"), QT_TRANSLATE_NOOP("ui::words", "sum of the net mixes, exact shells"), "coats[].net.cement_kg", "sums"},
    {"customary.cement.cement_by_area_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "The same by area × thickness"), QT_TRANSLATE_NOOP("ui::words", "sum of the mixes by area × thickness"), "coats[].net_by_area.cement_kg", "sums"},
    {"customary.cement.thickness_factor", factor, QT_TRANSLATE_NOOP("ui::words", "All coats times this would use the bill's cement"), QT_TRANSLATE_NOOP("ui::words", "found by halving: cement of the exact shells with all coats × factor = cement of the bill"), "@lining.customary_bill.cement_kg customary.cement.cement_kg", "exact"},
    {"customary.cement.thickness_by_area_factor", factor, QT_TRANSLATE_NOOP("ui::words", "The same by area × thickness"), QT_TRANSLATE_NOOP("ui::words", "cement of the bill ÷ cement by area × thickness"), "@lining.customary_bill.cement_kg customary.cement.cement_by_area_kg", "sums"},
    {"customary.cement.thickness_m[]", metre, QT_TRANSLATE_NOOP("ui::words", "Coats as thick as that"), QT_TRANSLATE_NOOP("ui::words", "thickness × factor"), "coats[].thickness_m customary.cement.thickness_factor", "sums"},
    {"customary.cement.thickness_by_area_m[]", metre, QT_TRANSLATE_NOOP("ui::words", "Coats as thick as that, by area"), QT_TRANSLATE_NOOP("ui::words", "thickness × factor"), "coats[].thickness_m customary.cement.thickness_by_area_factor", "sums"},
    {"customary.cement.filler_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Soil and sand times this would use the bill's cement"), QT_TRANSLATE_NOOP("ui::words", "found by halving: cement of the exact shells with soil and sand parts × factor = cement of the bill"), "@lining.customary_bill.cement_kg customary.cement.cement_kg", "exact"},
    {"customary.cement.filler_by_area_factor", factor, QT_TRANSLATE_NOOP("ui::words", "The same by area × thickness"), QT_TRANSLATE_NOOP("ui::words", "found by halving, volumes by area × thickness"), "@lining.customary_bill.cement_kg customary.cement.cement_by_area_kg", "exact"},
};

constexpr ReckoningEntry kCustomary2[]{
    {"soil", part, QT_TRANSLATE_NOOP("ui::words", "soil"), QT_TRANSLATE_NOOP("ui::words", "soil parts × factor"), "@lining.coats[].soil customary.cement.filler_factor customary.cement.filler_by_area_factor", "sums"},
    {"sand", part, QT_TRANSLATE_NOOP("ui::words", "sand"), QT_TRANSLATE_NOOP("ui::words", "sand parts × factor"), "@lining.coats[].sand customary.cement.filler_factor customary.cement.filler_by_area_factor", "sums"},
    {"cement", part, QT_TRANSLATE_NOOP("ui::words", "cement"), QT_TRANSLATE_NOOP("ui::words", "cement parts, as entered"), "@lining.coats[].cement", "user"},
};

constexpr ReckoningPlace kCustomary2Places[]{
    {"customary.cement.mix[].", QT_TRANSLATE_NOOP("ui::words", "Mix that would use the bill's cement")},
    {"customary.cement.mix_by_area[].", QT_TRANSLATE_NOOP("ui::words", "The same by area × thickness")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> customaryReckonings() {
  return {{"customary", {}, kCustomary}, {"customary", kCustomary2Places, kCustomary2}};
}

}  // namespace ui::words
