#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kPipes[]{
    {"delivery.field.outlets", piece, QT_TRANSLATE_NOOP("ui::words", "Outlets open at a time"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@delivery.field.outlets", "user"},
    {"delivery.field.head_full_m", metre, QT_TRANSLATE_NOOP("ui::words", "Head left at the outlets, tank full"), QT_TRANSLATE_NOOP("ui::words", "overflow level − end of the line − losses while the outlets draw their usual flow"), "delivery.field.wanted_l_per_min tank.full_level_m", "colebrook_1939"},
    {"delivery.field.head_low_m", metre, QT_TRANSLATE_NOOP("ui::words", "Head left at the outlets, tank nearly empty"), QT_TRANSLATE_NOOP("ui::words", "dead level − end of the line − losses while the outlets draw their usual flow"), "delivery.field.wanted_l_per_min tank.dead_level_m", "colebrook_1939"},
    {"delivery.field.outlet_check.wanted_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "Head that the outlet usually needs"), QT_TRANSLATE_NOOP("ui::words", "by kind of outlet"), "@delivery.field.outlet", "=outlet.>delivery.field.outlet>.head"},
    {"delivery.field.outlet_check.left_full_m", metre, QT_TRANSLATE_NOOP("ui::words", "Head over that, tank full"), QT_TRANSLATE_NOOP("ui::words", "head left − head needed"), "delivery.field.head_full_m delivery.field.outlet_check.wanted_head_m", "sums"},
    {"delivery.field.outlet_check.left_low_m", metre, QT_TRANSLATE_NOOP("ui::words", "Head over that, tank nearly empty"), QT_TRANSLATE_NOOP("ui::words", "head left − head needed"), "delivery.field.head_low_m delivery.field.outlet_check.wanted_head_m", "sums"},
};

constexpr ReckoningEntry kEmptying[]{
    {"delivery.field.empties_to_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "The line draws down to"), QT_TRANSLATE_NOOP("ui::words", "highest of dead level, end of the line + 2 cm, crest − (air pressure less vapour − reserve)"), "tank.dead_level_m delivery.altitude_m", "own"},
    {"delivery.field.emptying.emptying_hours", hour, QT_TRANSLATE_NOOP("ui::words", "Emptied in, end wide open"), QT_TRANSLATE_NOOP("ui::words", "integral of surface(z) ÷ outflow(z) over the level z, Gauss-Kronrod with 15 points"), "tank.full_level_m delivery.field.empties_to_level_m delivery.field.full.flow_l_per_min", "exact"},
    {"delivery.field.emptying.error_hours", hour, QT_TRANSLATE_NOOP("ui::words", "Error of that time at most"), QT_TRANSLATE_NOOP("ui::words", "sum of the differences of the rules"), "delivery.field.emptying.emptying_hours", "exact"},
    {"delivery.field.emptying.curve[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Levels while it empties"), QT_TRANSLATE_NOOP("ui::words", "even steps from the overflow down"), "tank.full_level_m delivery.field.empties_to_level_m", "own"},
    {"delivery.field.emptying.curve[].hours", hour, QT_TRANSLATE_NOOP("ui::words", "Time at each level"), QT_TRANSLATE_NOOP("ui::words", "integral from the overflow level down to it"), "delivery.field.emptying.curve[].level_m", "exact"},
};

constexpr ReckoningEntry kOverflow[]{
    {"delivery.overflow.storm_mm_h", mm_per_hour, QT_TRANSLATE_NOOP("ui::words", "Storm"), QT_TRANSLATE_NOOP("ui::words", "as entered; 100 mm an hour when it is not known"), "@delivery.overflow.storm_mm_h", "user?own"},
    {"delivery.overflow.storm_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Water of the storm"), QT_TRANSLATE_NOOP("ui::words", "rain × sum of (runoff × area): roof at least 0.9, ground at least 0.5, opening of the tank 1"), "delivery.overflow.storm_mm_h @water.roof.area_m2 @water.roof.runoff @water.ground.area_m2 @water.ground.runoff tank.brim_area_m2", "rational_method"},
    {"delivery.overflow.source_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Water of the source"), QT_TRANSLATE_NOOP("ui::words", "flow of its line to the full tank; without a line the largest of a month"), "delivery.source.full.flow_l_per_min @water.source.months[].flow_l_per_min", "sums"},
    {"delivery.overflow.flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Both together"), QT_TRANSLATE_NOOP("ui::words", "storm + source"), "delivery.overflow.storm_l_per_min delivery.overflow.source_l_per_min", "sums"},
    {"delivery.overflow.sill_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Sill over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "overflow level"), "tank.full_level_m", "sums"},
    {"delivery.overflow.state.head_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water over the sill in the storm"), QT_TRANSLATE_NOOP("ui::words", "notch: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; pipe: largest head of inlet, orifice, even flow and full pipe"), "delivery.overflow.flow_l_per_min @delivery.overflow.kind @delivery.overflow.width_m @delivery.overflow.pipe_mm @delivery.overflow.pipe_length_m @delivery.overflow.pipe_fall_m", "broad_crest"},
    {"delivery.overflow.state.water_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water level in the storm"), QT_TRANSLATE_NOOP("ui::words", "sill + water over it"), "delivery.overflow.sill_level_m delivery.overflow.state.head_m", "sums"},
    {"delivery.overflow.state.freeboard_left_m", metre, QT_TRANSLATE_NOOP("ui::words", "Freeboard left"), QT_TRANSLATE_NOOP("ui::words", "lowest part of the rim − water level"), "delivery.rim_level_m @delivery.overflow.lip_drop_m delivery.overflow.state.water_level_m", "sums"},
    {"delivery.overflow.state.capacity_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Carries with water at the rim"), QT_TRANSLATE_NOOP("ui::words", "same formula with the head up to the lowest part of the rim"), "delivery.rim_level_m delivery.overflow.sill_level_m @delivery.overflow.lip_drop_m", "broad_crest"},
    {"delivery.overflow.wanted_freeboard_m", metre, QT_TRANSLATE_NOOP("ui::words", "Freeboard that should be left"), QT_TRANSLATE_NOOP("ui::words", "5 cm"), "delivery.overflow.flow_l_per_min", "own"},
    {"delivery.overflow.width_that_would_m", metre, QT_TRANSLATE_NOOP("ui::words", "Notch that would leave it"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ flow over 1 m of sill at that head"), "delivery.overflow.flow_l_per_min delivery.overflow.wanted_freeboard_m", "broad_crest"},
    {"delivery.overflow.pipe_that_would_m", metre, QT_TRANSLATE_NOOP("ui::words", "Pipe that would leave it, bore"), QT_TRANSLATE_NOOP("ui::words", "smallest from 20 mm in steps of 5 mm whose head is small enough"), "delivery.overflow.flow_l_per_min delivery.overflow.wanted_freeboard_m", "fhwa_hds5"},
    {"delivery.overflow.blocked.water_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water level, overflow blocked"), QT_TRANSLATE_NOOP("ui::words", "all of the flow over the rim, lowest parts first, each by the formula of the notch"), "delivery.overflow.flow_l_per_min tank.rim_length_m @delivery.overflow.lip_length_m @delivery.overflow.lip_drop_m", "broad_crest"},
    {"delivery.overflow.blocked.deepest_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water over the lowest part then"), QT_TRANSLATE_NOOP("ui::words", "water level − lowest part"), "delivery.overflow.blocked.water_level_m", "sums"},
    {"delivery.overflow.blocked.parts[].depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water over each part then"), QT_TRANSLATE_NOOP("ui::words", "water level − level of the part, 0 where dry"), "delivery.overflow.blocked.water_level_m", "sums"},
    {"delivery.overflow.blocked.parts[].flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Flow over each part then"), QT_TRANSLATE_NOOP("ui::words", "0.9 × (2 ÷ 3)^1.5 √g b H^1.5"), "delivery.overflow.blocked.parts[].depth_m", "broad_crest"},
    {"delivery.overflow.spill_channel_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Spill channel, deep"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@delivery.spill.depth_m", "user"},
    {"delivery.overflow.spill_manning_n", factor, QT_TRANSLATE_NOOP("ui::words", "Spill channel, Manning's n"), QT_TRANSLATE_NOOP("ui::words", "by what it is dug in or covered with"), "@delivery.spill.cover", "memory"},
    {"delivery.overflow.spill.depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water in the spill channel"), QT_TRANSLATE_NOOP("ui::words", "depth of even flow: Q = A R^(2÷3) √S ÷ n"), "delivery.overflow.flow_l_per_min delivery.overflow.spill_manning_n @delivery.spill.bottom_width_m @delivery.spill.side_slope @delivery.spill.fall_percent", "manning"},
    {"delivery.overflow.spill.velocity_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Speed in the spill channel"), QT_TRANSLATE_NOOP("ui::words", "R^(2÷3) √S ÷ n"), "delivery.overflow.spill.depth_m delivery.overflow.spill_manning_n @delivery.spill.fall_percent", "manning"},
    {"delivery.overflow.spill.top_width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Width of the water there"), QT_TRANSLATE_NOOP("ui::words", "bottom width + 2 × side slope × depth"), "delivery.overflow.spill.depth_m @delivery.spill.bottom_width_m @delivery.spill.side_slope", "exact"},
    {"delivery.overflow.spill.froude", factor, QT_TRANSLATE_NOOP("ui::words", "Froude number there"), QT_TRANSLATE_NOOP("ui::words", "V ÷ √(g A ÷ top width)"), "delivery.overflow.spill.velocity_m_s delivery.overflow.spill.top_width_m", "manning"},
    {"delivery.overflow.scour.safe_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Speed that is safe"), QT_TRANSLATE_NOOP("ui::words", "by soil or cover, low figure"), "@delivery.spill.cover @site.soil", "=erosion.>delivery.overflow.scour.key>"},
    {"delivery.overflow.scour.scours_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Speed that scours"), QT_TRANSLATE_NOOP("ui::words", "by soil or cover, high figure"), "@delivery.spill.cover @site.soil", "=erosion.>delivery.overflow.scour.key>"},
};

constexpr ReckoningEntry kTrap[]{
    {"delivery.silt_trap.flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Flow through the trap"), QT_TRANSLATE_NOOP("ui::words", "as entered, else source + storm led in from roof and ground"), "@delivery.silt_trap.flow_l_per_min delivery.overflow.source_l_per_min", "user?sums"},
    {"delivery.silt_trap.grain_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "Smallest grain that must stay"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@delivery.silt_trap.grain_mm", "user"},
    {"delivery.silt_trap.planned.settling_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Speed at which that grain falls"), QT_TRANSLATE_NOOP("ui::words", "R g d² ÷ (18 ν + √(0.75 R g d³)), R = density over water − 1, 2650 kg/m³"), "delivery.silt_trap.grain_mm @delivery.water_temperature_c", "ferguson_church_2004"},
    {"delivery.silt_trap.planned.ideal_area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Least area"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ settling speed"), "delivery.silt_trap.flow_l_per_min delivery.silt_trap.planned.settling_m_s", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Area with reserve"), QT_TRANSLATE_NOOP("ui::words", "2 × least area"), "delivery.silt_trap.planned.ideal_area_m2", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Length of the trap"), QT_TRANSLATE_NOOP("ui::words", "area ÷ width"), "delivery.silt_trap.planned.area_m2 delivery.silt_trap.planned.width_m", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Width of the trap"), QT_TRANSLATE_NOOP("ui::words", "√(area ÷ 6): six times as long as wide"), "delivery.silt_trap.planned.area_m2", "memory"},
    {"delivery.silt_trap.planned.depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Depth of the trap"), QT_TRANSLATE_NOOP("ui::words", "10 cm freeboard + settling depth + depth of mud"), "delivery.silt_trap.planned.settling_depth_m delivery.silt_trap.planned.deposit_depth_m", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.speed_limit_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Greatest forward speed"), QT_TRANSLATE_NOOP("ui::words", "0.44 × √(grain in mm)"), "delivery.silt_trap.grain_mm", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.surface_loading_m_per_day", metre, QT_TRANSLATE_NOOP("ui::words", "Flow over area, a day"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ area × 86 400 s"), "delivery.silt_trap.flow_l_per_min delivery.silt_trap.planned.area_m2", "sums"},
    {"delivery.silt_trap.planned.settling_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Settling depth"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ (width × greatest forward speed)"), "delivery.silt_trap.flow_l_per_min delivery.silt_trap.planned.width_m delivery.silt_trap.planned.speed_limit_m_s", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.deposit_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "Mud between two cleanings"), QT_TRANSLATE_NOOP("ui::words", "flow × silt in it × days; the storm counts for one hour"), "delivery.silt_trap.flow_l_per_min @delivery.silt_trap.silt_kg_m3 @delivery.silt_trap.cleaning_days", "own"},
    {"delivery.silt_trap.planned.deposit_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Room for it"), QT_TRANSLATE_NOOP("ui::words", "mud ÷ (2600 kg/m³ × 0.5)"), "delivery.silt_trap.planned.deposit_kg", "micro_hydro_civil_works"},
    {"delivery.silt_trap.planned.deposit_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Depth of mud"), QT_TRANSLATE_NOOP("ui::words", "room ÷ area"), "delivery.silt_trap.planned.deposit_m3 delivery.silt_trap.planned.area_m2", "sums"},
    {"delivery.silt_trap.planned.detention_s", second, QT_TRANSLATE_NOOP("ui::words", "Time in the trap"), QT_TRANSLATE_NOOP("ui::words", "area × settling depth ÷ flow"), "delivery.silt_trap.planned.area_m2 delivery.silt_trap.planned.settling_depth_m delivery.silt_trap.flow_l_per_min", "sums"},
    {"delivery.silt_trap.standing.kept_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "Smallest grain that the entered trap keeps"), QT_TRANSLATE_NOOP("ui::words", "grain that falls at 2 × flow ÷ (length × width)"), "delivery.silt_trap.flow_l_per_min @delivery.silt_trap.length_m @delivery.silt_trap.width_m", "ferguson_church_2004"},
    {"delivery.silt_trap.standing.forward_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Forward speed in it"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ (width × depth)"), "delivery.silt_trap.flow_l_per_min @delivery.silt_trap.width_m @delivery.silt_trap.depth_m", "sums"},
    {"delivery.silt_trap.standing.speed_limit_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "Greatest forward speed for that grain"), QT_TRANSLATE_NOOP("ui::words", "0.44 × √(grain in mm)"), "delivery.silt_trap.standing.kept_mm", "micro_hydro_civil_works"},
};

constexpr ReckoningEntry kLeak[]{
    {"delivery.leak_test.tank_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Tank drops"), QT_TRANSLATE_NOOP("ui::words", "drop ÷ hours × 24"), "@delivery.leak_test.tank_drop_mm @delivery.leak_test.hours", "user"},
    {"delivery.leak_test.evaporation_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Evaporates"), QT_TRANSLATE_NOOP("ui::words", "drop of the bucket ÷ hours × 24"), "@delivery.leak_test.bucket_drop_mm @delivery.leak_test.hours", "user"},
    {"delivery.leak_test.leak_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Leaks"), QT_TRANSLATE_NOOP("ui::words", "tank − bucket"), "delivery.leak_test.tank_mm_per_day delivery.leak_test.evaporation_mm_per_day", "sums"},
    {"delivery.leak_test.error_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Error of the leak"), QT_TRANSLATE_NOOP("ui::words", "√2 × error of a reading ÷ hours × 24"), "@delivery.leak_test.reading_error_mm @delivery.leak_test.hours", "sums"},
    {"delivery.leak_test.leak_l_per_day", litre_per_day, QT_TRANSLATE_NOOP("ui::words", "Leaks, litres"), QT_TRANSLATE_NOOP("ui::words", "leak × water surface at that level: 1 mm on 1 m² is 1 litre"), "delivery.leak_test.leak_mm_per_day delivery.leak_test.level_m", "exact"},
    {"delivery.leak_test.share_percent_per_day", percent, QT_TRANSLATE_NOOP("ui::words", "Leaks, share of what is held"), QT_TRANSLATE_NOOP("ui::words", "leak ÷ volume at that level"), "delivery.leak_test.leak_l_per_day delivery.leak_test.level_m", "exact"},
    {"delivery.leak_test.level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Level in the test"), QT_TRANSLATE_NOOP("ui::words", "as entered; else overflow − half of the drop"), "@delivery.leak_test.level_m tank.full_level_m @delivery.leak_test.tank_drop_mm", "user?own"},
    {"delivery.leak_test.by_drop.allowed_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Allowed by drop"), QT_TRANSLATE_NOOP("ui::words", "10 mm in 7 days"), "delivery.leak_test.leak_mm_per_day", "water_tightness_drop"},
    {"delivery.leak_test.by_volume.allowed_mm_per_day", mm_per_day, QT_TRANSLATE_NOOP("ui::words", "Allowed by volume"), QT_TRANSLATE_NOOP("ui::words", "0.1 % of the volume a day ÷ water surface"), "delivery.leak_test.level_m delivery.leak_test.leak_mm_per_day", "water_tightness_share"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> deliveryReckonings() {
  return {{"pipes", {}, kPipes},
          {"emptying", {}, kEmptying},
          {"overflow", {}, kOverflow},
          {"trap", {}, kTrap},
          {"leak", {}, kLeak}};
}

}  // namespace ui::words
