#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kTank[]{
    {"tank.full_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Holds, filled to the overflow"), QT_TRANSLATE_NOOP("ui::words", "V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 less the cove, with h up to the overflow; A floor, P its edge, b batter, C corner coefficient"), "tank.full_level_m tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient @tank.batter", "exact"},
    {"tank.brim_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Holds, filled to the rim"), QT_TRANSLATE_NOOP("ui::words", "V(h) as above, with h up to the rim"), "tank.depth_m tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient @tank.batter", "exact"},
    {"tank.dead_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Cannot be drawn"), QT_TRANSLATE_NOOP("ui::words", "V(h) as above, with h the dead depth"), "tank.dead_level_m tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient @tank.batter", "exact"},
    {"tank.usable_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Usable water"), QT_TRANSLATE_NOOP("ui::words", "held up to the overflow − what cannot be drawn"), "tank.full_volume_m3 tank.dead_volume_m3", "sums"},
    {"tank.full_surface_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Water surface when full"), QT_TRANSLATE_NOOP("ui::words", "A + P d + C d² with d = batter × height up to the overflow"), "tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient tank.full_level_m @tank.batter", "exact"},
    {"tank.floor_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Clear floor"), QT_TRANSLATE_NOOP("ui::words", "area of the clear floor, cove left out"), "tank.clear_floor_length_m tank.clear_floor_width_m @tank.corner_radius_m", "exact"},
    {"tank.floor_perimeter_m", metre, QT_TRANSLATE_NOOP("ui::words", "Edge of the clear floor"), QT_TRANSLATE_NOOP("ui::words", "length all round the clear floor"), "tank.clear_floor_length_m tank.clear_floor_width_m @tank.corner_radius_m", "exact"},
    {"tank.corner_coefficient", factor, QT_TRANSLATE_NOOP("ui::words", "Corner coefficient"), QT_TRANSLATE_NOOP("ui::words", "C in: an outline moved out by d has the area A + P d + C d²; sum of cot(half the inside angle) of sharp corners; π for round ones"), "@tank.shape @tank.corner_radius_m", "exact"},
    {"tank.wall_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Clear wall, along the slope"), QT_TRANSLATE_NOOP("ui::words", "√(1 + batter²) × depth × half of (edge of the floor + edge at the rim)"), "tank.floor_perimeter_m tank.rim_length_m tank.depth_m @tank.batter", "exact"},
    {"tank.rim_length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Length round the clear top"), QT_TRANSLATE_NOOP("ui::words", "edge of the floor + 2 C × batter × depth"), "tank.floor_perimeter_m tank.corner_coefficient tank.depth_m @tank.batter", "exact"},
    {"tank.brim_area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Clear opening at the rim"), QT_TRANSLATE_NOOP("ui::words", "A + P d + C d² with d = batter × depth"), "tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient tank.depth_m @tank.batter", "exact"},
    {"tank.clear_floor_length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear length at the floor"), QT_TRANSLATE_NOOP("ui::words", "as entered at the floor; entered at the rim: less 2 × batter × depth"), "@tank.measured_at @tank.length_m @tank.diameter_m @tank.depth_m @tank.batter", "user"},
    {"tank.clear_floor_width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear width at the floor"), QT_TRANSLATE_NOOP("ui::words", "as entered at the floor; entered at the rim: less 2 × batter × depth"), "@tank.measured_at @tank.width_m @tank.diameter_m @tank.depth_m @tank.batter", "user"},
    {"tank.clear_rim_length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear length at the rim"), QT_TRANSLATE_NOOP("ui::words", "length at the floor + 2 × batter × depth"), "tank.clear_floor_length_m tank.depth_m @tank.batter", "exact"},
    {"tank.clear_rim_width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear width at the rim"), QT_TRANSLATE_NOOP("ui::words", "width at the floor + 2 × batter × depth"), "tank.clear_floor_width_m tank.depth_m @tank.batter", "exact"},
    {"tank.depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear depth"), QT_TRANSLATE_NOOP("ui::words", "finished floor to rim, as entered"), "@tank.depth_m", "user"},
    {"tank.full_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Overflow over the floor"), QT_TRANSLATE_NOOP("ui::words", "depth − freeboard"), "@tank.depth_m @tank.freeboard_m", "sums"},
    {"tank.dead_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Dead depth"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@tank.dead_depth_m", "user"},
    {"dip_stick[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Marks of the dip-stick"), QT_TRANSLATE_NOOP("ui::words", "every 5 cm from the finished floor, the overflow and the rim"), "tank.depth_m tank.full_level_m", "own"},
    {"dip_stick[].volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held at each mark"), QT_TRANSLATE_NOOP("ui::words", "V(h) as above, with h the mark"), "tank.floor_m2 tank.floor_perimeter_m tank.corner_coefficient @tank.batter", "exact"},
};

constexpr ReckoningEntry kEarthwork[]{
    {"earthwork.pit_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Pit to dig"), QT_TRANSLATE_NOOP("ui::words", "outline grown by all coats square to their faces, from the pit floor to the ground, same formula as for the tank; with the ledge of the rim collar"), "earthwork.pit_depth_m earthwork.pit_floor_length_m earthwork.pit_floor_width_m earthwork.pit_top_length_m earthwork.pit_top_width_m @tank.batter @lining.rim_width_m @lining.rim_thickness_m", "exact"},
    {"earthwork.pit_top_length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit length at the ground"), QT_TRANSLATE_NOOP("ui::words", "clear length at the rim + 2 × all coats × √(1 + batter²)"), "tank.clear_rim_length_m @lining.coats[].thickness_m @tank.batter", "exact"},
    {"earthwork.pit_top_width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit width at the ground"), QT_TRANSLATE_NOOP("ui::words", "clear width at the rim + 2 × all coats × √(1 + batter²)"), "tank.clear_rim_width_m @lining.coats[].thickness_m @tank.batter", "exact"},
    {"earthwork.pit_floor_length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit length at its floor"), QT_TRANSLATE_NOOP("ui::words", "length at the ground − 2 × batter × pit depth"), "earthwork.pit_top_length_m earthwork.pit_depth_m @tank.batter", "exact"},
    {"earthwork.pit_floor_width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit width at its floor"), QT_TRANSLATE_NOOP("ui::words", "width at the ground − 2 × batter × pit depth"), "earthwork.pit_top_width_m earthwork.pit_depth_m @tank.batter", "exact"},
    {"earthwork.pit_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit depth"), QT_TRANSLATE_NOOP("ui::words", "clear depth + all coats + stone bed"), "tank.depth_m @lining.coats[].thickness_m @lining.stone_bed_m", "sums"},
    {"earthwork.bench_cut_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Cut for the platform, as it lies"), QT_TRANSLATE_NOOP("ui::words", "ground above platform and cut faces, every triangle of the survey cut along their edges; even slope in closed form"), "site.platform_m2 site.over_middle_m site.fall_percent @site.platform.cut_batter", "exact"},
    {"earthwork.bench_fill_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Fill for the platform, as rammed"), QT_TRANSLATE_NOOP("ui::words", "room between the ground and platform and fill faces, reckoned like the cut"), "site.platform_m2 site.over_middle_m site.fall_percent @site.platform.fill_batter", "exact"},
    {"earthwork.topsoil_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Topsoil stripped first"), QT_TRANSLATE_NOOP("ui::words", "all ground that is disturbed × depth of topsoil, on the cut face no deeper than the face"), "site.platform_m2 @site.platform.topsoil_m", "exact"},
    {"earthwork.spoil_bank_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Spoil left over, as it lies"), QT_TRANSLATE_NOOP("ui::words", "pit + cut − fill ÷ (rammed volume of 1 m³ dug); not below 0"), "earthwork.pit_volume_m3 earthwork.bench_cut_m3 earthwork.bench_fill_m3 @site.platform.compacted_per_bank", "sums"},
    {"earthwork.swell_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Swell of the soil"), QT_TRANSLATE_NOOP("ui::words", "by kind of soil: clay and wet ground 40 %, loam and fill 25 %, sand 12 %, rock 65 %"), "@site.soil", "merritt_swell"},
    {"earthwork.spoil_loose_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Spoil, loose"), QT_TRANSLATE_NOOP("ui::words", "spoil as it lies × (1 + swell)"), "earthwork.spoil_bank_m3 earthwork.swell_percent", "merritt_swell"},
    {"setting_out.pegs[].x_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pegs: along the first side"), QT_TRANSLATE_NOOP("ui::words", "corners of the pit at the ground and at its floor, offset pegs 1 m clear of edge and rim collar, 3-4-5 marks; from the first corner, or from the centre"), "earthwork.pit_top_length_m earthwork.pit_floor_length_m @lining.rim_width_m", "exact"},
    {"setting_out.pegs[].y_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pegs: square to the first side"), QT_TRANSLATE_NOOP("ui::words", "as along the first side"), "earthwork.pit_top_width_m earthwork.pit_floor_width_m @lining.rim_width_m", "exact"},
    {"setting_out.pegs[].z_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pegs: over the ground"), QT_TRANSLATE_NOOP("ui::words", "0 at the ground, − pit depth at the pit floor"), "earthwork.pit_depth_m", "exact"},
    {"setting_out.ties[].length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Lengths to check with the tape"), QT_TRANSLATE_NOOP("ui::words", "level distance between two pegs: √(Δx² + Δy²)"), "setting_out.pegs[].x_m setting_out.pegs[].y_m", "exact"},
    {"setting_out.levels[].below_ground_m", metre, QT_TRANSLATE_NOOP("ui::words", "Marks of the depth rod, below the ground"), QT_TRANSLATE_NOOP("ui::words", "pit depth less the layers up to the mark; the overflow: the freeboard"), "earthwork.pit_depth_m layers[].thickness_m @tank.freeboard_m", "sums"},
    {"setting_out.batter[].below_ground_m", metre, QT_TRANSLATE_NOOP("ui::words", "Depths at which the pit wall is checked"), QT_TRANSLATE_NOOP("ui::words", "every 0.5 m, and the pit floor"), "earthwork.pit_depth_m", "own"},
    {"setting_out.batter[].in_from_edge_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit wall in from its edge there"), QT_TRANSLATE_NOOP("ui::words", "batter × depth below the ground"), "setting_out.batter[].below_ground_m @tank.batter", "exact"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> tankReckonings() {
  return {{"tank", {}, kTank}, {"earthwork", {}, kEarthwork}};
}

}  // namespace ui::words
