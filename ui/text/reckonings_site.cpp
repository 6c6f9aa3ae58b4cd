#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kSite[]{
    {"site.fall_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Fall of the ground"), QT_TRANSLATE_NOOP("ui::words", "of the even slope as entered, or of the plane laid through the survey under the platform"), "@site.ground.kind @site.ground.fall_percent", "qhull_1996"},
    {"site.downhill_azimuth_deg", degree, QT_TRANSLATE_NOOP("ui::words", "Downhill, from north by east"), QT_TRANSLATE_NOOP("ui::words", "as entered, or of that plane"), "@site.ground.kind @site.ground.downhill_azimuth_deg", "qhull_1996"},
    {"site.platform_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Platform"), QT_TRANSLATE_NOOP("ui::words", "outline of the pit at the ground with rim collar and walkway all round"), "earthwork.pit_top_length_m earthwork.pit_top_width_m @lining.rim_width_m @site.platform.walkway_m", "exact"},
    {"site.over_middle_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform over the ground at the middle of the tank"), QT_TRANSLATE_NOOP("ui::words", "as wished: whole pit in natural ground, cut and fill balanced, or as entered"), "@site.platform.level_by @site.platform.level_m", "exact"},
    {"site.lacking_bank_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Ground to be brought for the fill"), QT_TRANSLATE_NOOP("ui::words", "fill ÷ (rammed volume of 1 m³ dug) − pit − cut, where that is over 0"), "earthwork.pit_volume_m3 earthwork.bench_cut_m3 earthwork.bench_fill_m3 @site.platform.compacted_per_bank", "sums"},
    {"site.cover_m", metre, QT_TRANSLATE_NOOP("ui::words", "Natural ground over the pit, least"), QT_TRANSLATE_NOOP("ui::words", "natural ground less topsoil − floor or wall of the pit, where that is least; below 0 it stands on fill"), "site.over_middle_m @site.platform.topsoil_m earthwork.pit_depth_m", "exact"},
    {"site.choices[].over_middle_m", metre, QT_TRANSLATE_NOOP("ui::words", "Each way to find the level: over the ground at the middle"), QT_TRANSLATE_NOOP("ui::words", "highest with the whole pit in natural ground; (cut × rammed volume of 1 m³) = fill; as entered"), "@site.platform.compacted_per_bank @site.platform.level_m", "exact"},
    {"site.choices[].cut_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Each way: cut"), QT_TRANSLATE_NOOP("ui::words", "like the cut for the platform"), "@site.platform.cut_batter site.choices[].over_middle_m", "exact"},
    {"site.choices[].fill_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Each way: fill"), QT_TRANSLATE_NOOP("ui::words", "like the fill for the platform"), "@site.platform.fill_batter site.choices[].over_middle_m", "exact"},
    {"site.choices[].cover_m", metre, QT_TRANSLATE_NOOP("ui::words", "Each way: natural ground over the pit, least"), QT_TRANSLATE_NOOP("ui::words", "like the cover of the pit"), "site.choices[].over_middle_m", "exact"},
    {"site.pegs[].east_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: east"), QT_TRANSLATE_NOOP("ui::words", "corner of the platform, or where cut and fill come out of the ground on the line out from it"), "site.platform_m2 @site.position.east_m @site.position.turn_deg", "exact"},
    {"site.pegs[].north_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: north"), QT_TRANSLATE_NOOP("ui::words", "corner of the platform, or where cut and fill come out of the ground on the line out from it"), "site.platform_m2 @site.position.north_m @site.position.turn_deg", "exact"},
    {"site.pegs[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: level"), QT_TRANSLATE_NOOP("ui::words", "of the platform; out from it of the ground"), "site.over_middle_m", "exact"},
    {"site.pegs[].ground_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: natural ground"), QT_TRANSLATE_NOOP("ui::words", "height of the survey's triangle, or of the slope, at the peg"), "@site.ground.kind", "exact"},
    {"site.pegs[].dig_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: dig, below 0 fill"), QT_TRANSLATE_NOOP("ui::words", "ground − finished surface"), "site.pegs[].ground_m site.pegs[].level_m", "sums"},
    {"site.pegs[].from_corner_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: from the corner"), QT_TRANSLATE_NOOP("ui::words", "level distance"), "site.pegs[].east_m site.pegs[].north_m", "exact"},
    {"site.pegs[].over_platform_m", metre, QT_TRANSLATE_NOOP("ui::words", "Platform pegs: over the platform"), QT_TRANSLATE_NOOP("ui::words", "peg − platform"), "site.pegs[].level_m", "sums"},
};

constexpr ReckoningEntry kSite2[]{
    {"site.heap.loose_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Heap of spoil, loose"), QT_TRANSLATE_NOOP("ui::words", "spoil as it lies × (1 + swell)"), "earthwork.spoil_bank_m3 earthwork.swell_percent", "merritt_swell"},
    {"site.heap.height_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height of the heap"), QT_TRANSLATE_NOOP("ui::words", "cone with sides at 35°, cut off level at 1.5 m where it would be higher"), "site.heap.loose_m3", "own"},
    {"site.heap.base_radius_m", metre, QT_TRANSLATE_NOOP("ui::words", "Radius of the heap's foot"), QT_TRANSLATE_NOOP("ui::words", "cone: height ÷ tan 35°; cut off: from the volume"), "site.heap.loose_m3 site.heap.height_m", "exact"},
    {"site.heap.azimuth_deg", degree, QT_TRANSLATE_NOOP("ui::words", "Direction of the heap, from north by east"), QT_TRANSLATE_NOOP("ui::words", "as entered; else across the fall, east on level ground"), "@site.spoil_azimuth_deg site.downhill_azimuth_deg", "user?own"},
    {"site.heap.toe_to_edge_m", metre, QT_TRANSLATE_NOOP("ui::words", "Foot of the heap from the pit edge"), QT_TRANSLATE_NOOP("ui::words", "at least 0.6 m, and clear of platform, cut and fill"), "site.heap.base_radius_m site.platform_m2", "osha_1926p"},
    {"site.heap.east_m", metre, QT_TRANSLATE_NOOP("ui::words", "Middle of the heap, east"), QT_TRANSLATE_NOOP("ui::words", "in its direction, as near as its foot may come"), "site.heap.azimuth_deg site.heap.base_radius_m site.heap.toe_to_edge_m", "exact"},
    {"site.heap.north_m", metre, QT_TRANSLATE_NOOP("ui::words", "Middle of the heap, north"), QT_TRANSLATE_NOOP("ui::words", "in its direction, as near as its foot may come"), "site.heap.azimuth_deg site.heap.base_radius_m site.heap.toe_to_edge_m", "exact"},
};

constexpr ReckoningEntry kStability[]{
    {"site.stability.face_deg", degree, QT_TRANSLATE_NOOP("ui::words", "Face of the pit wall, from the level"), QT_TRANSLATE_NOOP("ui::words", "90° − arctan of the batter"), "@tank.batter", "exact"},
    {"site.stability.pit_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pit depth"), QT_TRANSLATE_NOOP("ui::words", "clear depth + all coats + stone bed"), "earthwork.pit_depth_m", "sums"},
    {"site.stability.wanted_cut_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Factor wanted for the cut"), QT_TRANSLATE_NOOP("ui::words", "fixed"), "site.stability.face_deg", "own"},
    {"site.stability.wanted_slope_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Factor wanted for the downhill side"), QT_TRANSLATE_NOOP("ui::words", "fixed"), "site.fall_percent", "common_practice"},
    {"site.stability.cuts[].cohesion_kpa", kilopascal, QT_TRANSLATE_NOOP("ui::words", "Cohesion c"), QT_TRANSLATE_NOOP("ui::words", "table by kind of soil"), "@site.soil", "soil_strength"},
    {"site.stability.cuts[].friction_deg", degree, QT_TRANSLATE_NOOP("ui::words", "Friction φ"), QT_TRANSLATE_NOOP("ui::words", "table by kind of soil"), "@site.soil", "soil_strength"},
    {"site.stability.cuts[].unit_weight_kn_m3", kn_per_m3, QT_TRANSLATE_NOOP("ui::words", "Unit weight γ"), QT_TRANSLATE_NOOP("ui::words", "table by kind of soil"), "@site.soil", "soil_strength"},
    {"site.stability.cuts[].vertical_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height of a vertical cut that just stands"), QT_TRANSLATE_NOOP("ui::words", "4 c ÷ γ × tan(45° + φ ÷ 2)"), "site.stability.cuts[].cohesion_kpa site.stability.cuts[].friction_deg site.stability.cuts[].unit_weight_kn_m3", "culmann"},
    {"site.stability.cuts[].culmann_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height at which this face just stands"), QT_TRANSLATE_NOOP("ui::words", "4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))"), "site.stability.face_deg site.stability.cuts[].cohesion_kpa site.stability.cuts[].friction_deg site.stability.cuts[].unit_weight_kn_m3", "culmann"},
    {"site.stability.cuts[].culmann_safe_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height of this face with the factor wanted"), QT_TRANSLATE_NOOP("ui::words", "the same with c ÷ F and tan φ ÷ F"), "site.stability.wanted_cut_factor site.stability.cuts[].culmann_m", "culmann"},
    {"site.stability.cuts[].taylor_number", factor, QT_TRANSLATE_NOOP("ui::words", "Stability number N"), QT_TRANSLATE_NOOP("ui::words", "table by face and friction, straight between"), "site.stability.face_deg site.stability.cuts[].friction_deg", "taylor_1937"},
    {"site.stability.cuts[].taylor_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height of this face by it"), QT_TRANSLATE_NOOP("ui::words", "c ÷ (γ N)"), "site.stability.cuts[].taylor_number site.stability.cuts[].cohesion_kpa site.stability.cuts[].unit_weight_kn_m3", "taylor_1937"},
    {"site.stability.cuts[].taylor_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Factor of this cut by it"), QT_TRANSLATE_NOOP("ui::words", "F for which c ÷ F and tan φ ÷ F just hold the pit's depth"), "site.stability.pit_depth_m site.stability.cuts[].cohesion_kpa site.stability.cuts[].friction_deg", "taylor_1937"},
    {"site.stability.slips[].factor", factor, QT_TRANSLATE_NOOP("ui::words", "Lowest factor of the downhill side"), QT_TRANSLATE_NOOP("ui::words", "Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; circle with the lowest of all tried, low strengths"), "site.stability.cuts[].cohesion_kpa site.stability.cuts[].friction_deg site.stability.cuts[].unit_weight_kn_m3 site.fall_percent @site.edge.distance_m @site.edge.height_m @site.water_table_depth_m", "bishop_1955"},
    {"site.stability.slips[].circle.x_m", metre, QT_TRANSLATE_NOOP("ui::words", "Its circle: middle, downhill from the tank"), QT_TRANSLATE_NOOP("ui::words", "place that the search found"), "site.stability.slips[].factor", "bishop_1955"},
    {"site.stability.slips[].circle.z_m", metre, QT_TRANSLATE_NOOP("ui::words", "Its circle: middle, over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "place that the search found"), "site.stability.slips[].factor", "bishop_1955"},
    {"site.stability.slips[].circle.radius_m", metre, QT_TRANSLATE_NOOP("ui::words", "Its circle: radius"), QT_TRANSLATE_NOOP("ui::words", "size that the search found"), "site.stability.slips[].factor", "bishop_1955"},
    {"site.stability.slips[].from_m", metre, QT_TRANSLATE_NOOP("ui::words", "Slip from, downhill from the middle of the tank"), QT_TRANSLATE_NOOP("ui::words", "where the circle meets the ground above"), "site.stability.slips[].circle.x_m site.stability.slips[].circle.radius_m", "exact"},
    {"site.stability.slips[].to_m", metre, QT_TRANSLATE_NOOP("ui::words", "Slip to, downhill from the middle of the tank"), QT_TRANSLATE_NOOP("ui::words", "where the circle meets the ground below"), "site.stability.slips[].circle.x_m site.stability.slips[].circle.radius_m", "exact"},
    {"site.stability.slips[].circles_tried", piece, QT_TRANSLATE_NOOP("ui::words", "Circles tried"), QT_TRANSLATE_NOOP("ui::words", "a coarse grid of ends and depths, then ever smaller steps from the best"), "site.fall_percent", "own"},
    {"site.stability.slips[].crack_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Crack behind the slip"), QT_TRANSLATE_NOOP("ui::words", "as deep as the pit, no deeper than the ground falls away; the lower of the factors with and without counts"), "site.stability.pit_depth_m", "own"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> siteReckonings() {
  return {{"site", {}, kSite}, {"site", {}, kSite2}, {"stability", {}, kStability}};
}

}  // namespace ui::words
