#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kFlow[]{
    {"flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "flow"), QT_TRANSLATE_NOOP("ui::words", "found so that the head = (1 + sum of K + f L ÷ D) V² ÷ 2g"), ".head_m .length_m .friction_factor @delivery.water_temperature_c", "colebrook_1939"},
    {"hazen_williams_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "flow by Hazen-Williams, to check"), QT_TRANSLATE_NOOP("ui::words", "same heads and fittings, wall by 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140"), ".head_m .length_m", "hazen_williams"},
    {"velocity_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "speed"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ (π D² ÷ 4)"), ".flow_l_per_min", "sums"},
    {"reynolds", factor, QT_TRANSLATE_NOOP("ui::words", "Reynolds number"), QT_TRANSLATE_NOOP("ui::words", "V D ÷ kinematic viscosity of the water"), ".velocity_m_s @delivery.water_temperature_c", "huber_2009"},
    {"friction_factor", factor, QT_TRANSLATE_NOOP("ui::words", "friction factor"), QT_TRANSLATE_NOOP("ui::words", "Re under 2 000: 64 ÷ Re; over 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; straight between"), ".reynolds", "colebrook_1939"},
    {"head_m", metre, QT_TRANSLATE_NOOP("ui::words", "head that drives the flow"), QT_TRANSLATE_NOOP("ui::words", "water over the inlet − end of the line, or the water it dips into − head wanted there"), "delivery.rim_level_m .residual_head_m", "sums"},
    {"length_m", metre, QT_TRANSLATE_NOOP("ui::words", "length along the pipe"), QT_TRANSLATE_NOOP("ui::words", "sum over the pieces of √(level² + rise²)"), ".points[].station_m .points[].level_m", "exact"},
    {"friction_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "head lost to the wall"), QT_TRANSLATE_NOOP("ui::words", "f L ÷ D × V² ÷ 2g"), ".friction_factor .length_m .velocity_head_m", "colebrook_1939"},
    {"minor_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "head lost in fittings"), QT_TRANSLATE_NOOP("ui::words", "sum of K × V² ÷ 2g"), ".velocity_head_m", "handbook_pipe_tables"},
    {"velocity_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "velocity head"), QT_TRANSLATE_NOOP("ui::words", "V² ÷ 2g"), ".velocity_m_s", "sums"},
    {"residual_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "pressure head at the outlet"), QT_TRANSLATE_NOOP("ui::words", "head wanted there, or the depth that it dips in"), ".head_m", "sums"},
    {"static_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "head at the lowest point, outlet shut"), QT_TRANSLATE_NOOP("ui::words", "water over the inlet − lowest point of the pipe"), ".points[].level_m", "sums"},
    {"static_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure at the lowest point, outlet shut"), QT_TRANSLATE_NOOP("ui::words", "density × g × head"), ".static_head_m @delivery.water_temperature_c", "kell_1975"},
    {"class_left_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure class left"), QT_TRANSLATE_NOOP("ui::words", "class that holds − pressure with the outlet shut"), ".static_bar", "iso_4427"},
    {"lowest_allowed_m", metre, QT_TRANSLATE_NOOP("ui::words", "lowest pressure head allowed"), QT_TRANSLATE_NOOP("ui::words", "vapour pressure + reserve of 2 m − air pressure of the place, as water column"), "delivery.altitude_m @delivery.water_temperature_c", "wagner_pruss_2002"},
    {"air_lock_head_m", metre, QT_TRANSLATE_NOOP("ui::words", "head that air can hold back at worst"), QT_TRANSLATE_NOOP("ui::words", "sum of the falls after all humps"), ".humps[].fall_m", "own"},
    {"points[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: place"), QT_TRANSLATE_NOOP("ui::words", "where the line bends and where fittings sit"), ".length_m", "sums"},
    {"points[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: pipe"), QT_TRANSLATE_NOOP("ui::words", "straight between the points of the line"), ".points[].station_m", "exact"},
    {"points[].length_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: length so far"), QT_TRANSLATE_NOOP("ui::words", "along the pipe"), ".points[].station_m", "exact"},
    {"points[].energy_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: energy"), QT_TRANSLATE_NOOP("ui::words", "water over the inlet − lost to the wall so far − fittings so far"), ".friction_head_m .minor_head_m", "sums"},
    {"points[].head_line_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: head line"), QT_TRANSLATE_NOOP("ui::words", "energy − velocity head"), ".points[].energy_m .velocity_head_m", "sums"},
    {"points[].pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: pressure"), QT_TRANSLATE_NOOP("ui::words", "head line − pipe"), ".points[].head_line_m .points[].level_m", "sums"},
    {"points[].static_pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "heads along the line: pressure with the outlet shut"), QT_TRANSLATE_NOOP("ui::words", "water over the inlet − pipe"), ".points[].level_m", "sums"},
    {"above_head_line[].from_m", metre, QT_TRANSLATE_NOOP("ui::words", "sucking stretch: from"), QT_TRANSLATE_NOOP("ui::words", "where the pressure passes 0"), ".points[].pressure_m", "sums"},
    {"above_head_line[].to_m", metre, QT_TRANSLATE_NOOP("ui::words", "sucking stretch: to"), QT_TRANSLATE_NOOP("ui::words", "where the pressure passes 0"), ".points[].pressure_m", "sums"},
    {"above_head_line[].lowest_pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "sucking stretch: lowest pressure"), QT_TRANSLATE_NOOP("ui::words", "lowest of its points"), ".points[].pressure_m", "sums"},
    {"above_head_line[].lowest_station_m", metre, QT_TRANSLATE_NOOP("ui::words", "sucking stretch: where it is lowest"), QT_TRANSLATE_NOOP("ui::words", "place of that point"), ".points[].station_m", "sums"},
    {"near_vapour[].from_m", metre, QT_TRANSLATE_NOOP("ui::words", "stretch near boiling: from"), QT_TRANSLATE_NOOP("ui::words", "where the pressure passes the lowest allowed"), ".points[].pressure_m .lowest_allowed_m", "sums"},
    {"near_vapour[].to_m", metre, QT_TRANSLATE_NOOP("ui::words", "stretch near boiling: to"), QT_TRANSLATE_NOOP("ui::words", "where the pressure passes the lowest allowed"), ".points[].pressure_m .lowest_allowed_m", "sums"},
    {"near_vapour[].lowest_pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "stretch near boiling: lowest pressure"), QT_TRANSLATE_NOOP("ui::words", "lowest of its points"), ".points[].pressure_m", "sums"},
    {"near_vapour[].lowest_station_m", metre, QT_TRANSLATE_NOOP("ui::words", "stretch near boiling: where it is lowest"), QT_TRANSLATE_NOOP("ui::words", "place of that point"), ".points[].station_m", "sums"},
    {"humps[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: place"), QT_TRANSLATE_NOOP("ui::words", "high points between inlet and outlet"), ".points[].level_m", "exact"},
    {"humps[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "level of the pipe there"), ".points[].level_m", "exact"},
    {"humps[].rise_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: rise"), QT_TRANSLATE_NOOP("ui::words", "over the lowest point since the inlet or the hump before"), ".points[].level_m", "sums"},
    {"humps[].fall_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: fall"), QT_TRANSLATE_NOOP("ui::words", "to the lowest point before the next hump or the outlet"), ".points[].level_m", "sums"},
    {"humps[].over_straight_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: over the straight line"), QT_TRANSLATE_NOOP("ui::words", "over the line from inlet to outlet"), ".points[].level_m", "sums"},
    {"humps[].pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "humps: pressure"), QT_TRANSLATE_NOOP("ui::words", "head line − pipe at the flow found"), ".points[].pressure_m", "sums"},
};
// clang-format on

}  // namespace

std::span<const ReckoningEntry> flowReckonings() {
  return kFlow;
}

}  // namespace ui::words
