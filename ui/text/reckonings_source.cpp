#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kSource[]{
    {"water.readings[].month", none, QT_TRANSLATE_NOOP("ui::words", "Months with readings"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@water.source.readings[].month", "user"},
    {"water.readings[].count", piece, QT_TRANSLATE_NOOP("ui::words", "Readings of the month"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@water.source.readings[].month", "user"},
    {"water.readings[].median_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Flow, middle of the readings"), QT_TRANSLATE_NOOP("ui::words", "vessel ÷ seconds × 60; the middle one, or mean of the two middle ones"), "@water.source.readings[].vessel_l @water.source.readings[].seconds", "volumetric_method"},
    {"water.readings[].least_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Flow, smallest reading"), QT_TRANSLATE_NOOP("ui::words", "vessel ÷ seconds × 60"), "@water.source.readings[].vessel_l @water.source.readings[].seconds", "volumetric_method"},
    {"water.readings[].most_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "Flow, largest reading"), QT_TRANSLATE_NOOP("ui::words", "vessel ÷ seconds × 60"), "@water.source.readings[].vessel_l @water.source.readings[].seconds", "volumetric_method"},
    {"water.readings[].spread_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Spread of the readings"), QT_TRANSLATE_NOOP("ui::words", "(largest − smallest) ÷ middle, readings far off left out"), "water.readings[].most_l_per_min water.readings[].least_l_per_min water.readings[].median_l_per_min", "own"},
    {"water.readings[].outlier_rows[]", piece, QT_TRANSLATE_NOOP("ui::words", "Readings far off, by number"), QT_TRANSLATE_NOOP("ui::words", "0.6745 × distance from the middle ÷ middle of those distances over 3.5; counted from 0"), "@water.source.readings[].seconds", "iglewicz_hoaglin"},
    {"water.readings[].too_quick_rows[]", piece, QT_TRANSLATE_NOOP("ui::words", "Readings too quick, by number"), QT_TRANSLATE_NOOP("ui::words", "vessel full in under 3 s; counted from 0"), "@water.source.readings[].seconds", "volumetric_method"},
    {"delivery.water_temperature_c", celsius, QT_TRANSLATE_NOOP("ui::words", "Temperature of the water"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@delivery.water_temperature_c", "user"},
    {"delivery.altitude_m", metre, QT_TRANSLATE_NOOP("ui::words", "Height of the place over the sea"), QT_TRANSLATE_NOOP("ui::words", "as entered; 0 when it is not known"), "@site.elevation_m", "user?own"},
    {"delivery.rim_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Rim over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "clear depth"), "tank.depth_m", "user"},
    {"delivery.full_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Overflow over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "depth − freeboard"), "tank.full_level_m", "sums"},
    {"delivery.dead_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Dead depth"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "tank.dead_level_m", "user"},
    {"delivery.source_fills_hours", hour, QT_TRANSLATE_NOOP("ui::words", "Source line fills the empty tank in"), QT_TRANSLATE_NOOP("ui::words", "held up to the overflow ÷ flow with the tank full, nothing drawn"), "tank.full_volume_m3 delivery.source.full.flow_l_per_min", "sums"},
};

constexpr ReckoningEntry kSource2[]{
    {"profile[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "points of the line, level distance"), QT_TRANSLATE_NOOP("ui::words", "distances of the way from its first point; field line over the rim: inlet, crest, then the way"), "@delivery.source.route[].distance_m", "user"},
    {"profile[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "points of the line, over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "rim + height over the rim; inlet 2 cm under the dead level, crest over the rim"), "tank.depth_m @delivery.source.route[].over_rim_m", "user"},
    {"fittings[].k", factor, QT_TRANSLATE_NOOP("ui::words", "losses of the fittings, K"), QT_TRANSLATE_NOOP("ui::words", "number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15"), "@delivery.source.pipe.elbows @delivery.source.pipe.valves", "handbook_pipe_tables"},
    {"fittings[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "where the fittings sit"), QT_TRANSLATE_NOOP("ui::words", "at the inlet; elbows of the field line half at the crest, half at the end"), ".profile[].station_m", "own"},
    {"bore_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "bore"), QT_TRANSLATE_NOOP("ui::words", "measured, else outside diameter − 2 × wall"), ".size.inside_mm", "iso_4427"},
    {"class_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure class that holds"), QT_TRANSLATE_NOOP("ui::words", "class × share for warm water"), ".class_share", "iso_4427_heat"},
    {"class_share", factor, QT_TRANSLATE_NOOP("ui::words", "share of the class that holds in warm water"), QT_TRANSLATE_NOOP("ui::words", "1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between"), "@delivery.water_temperature_c", "iso_4427_heat"},
    {"wanted_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "flow wanted"), QT_TRANSLATE_NOOP("ui::words", "as entered; field line: outlets × usual flow of one"), "@delivery.source.wanted_l_per_min", "user"},
    {"full_heads.upper_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water over the inlet, tank full"), QT_TRANSLATE_NOOP("ui::words", "source line: inlet + water over it; field line: overflow level"), "tank.full_level_m @delivery.source.water_over_inlet_m", "sums"},
    {"full_heads.lower_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water that the outlet dips into, tank full"), QT_TRANSLATE_NOOP("ui::words", "overflow level where the end lies below it"), "tank.full_level_m", "sums"},
    {"low_heads.upper_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water over the inlet, tank nearly empty"), QT_TRANSLATE_NOOP("ui::words", "source line: inlet + water over it; field line: dead level"), "tank.dead_level_m @delivery.source.water_over_inlet_m", "sums"},
    {"low_heads.lower_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water that the outlet dips into, tank nearly empty"), QT_TRANSLATE_NOOP("ui::words", "dead level where the end lies below it"), "tank.dead_level_m", "sums"},
};

constexpr ReckoningPlace kSource2Places[]{
    {"delivery.source.", QT_TRANSLATE_NOOP("ui::words", "Source line")},
};

constexpr ReckoningEntry kSource3[]{
    {"outside_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "outside diameter"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), "@delivery.source.pipe.outside_mm", "iso_4427"},
    {"wall_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "least wall"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), ".outside_mm .class_bar", "iso_4427"},
    {"inside_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "bore with the least wall"), QT_TRANSLATE_NOOP("ui::words", "outside diameter − 2 × wall"), ".outside_mm .wall_mm", "iso_4427"},
    {"sdr", factor, QT_TRANSLATE_NOOP("ui::words", "outside diameter over wall"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), ".outside_mm .wall_mm", "iso_4427"},
    {"class_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure class"), QT_TRANSLATE_NOOP("ui::words", "size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class"), ".sdr", "iso_4427"},
};

constexpr ReckoningPlace kSource3Places[]{
    {"delivery.source.size.", QT_TRANSLATE_NOOP("ui::words", "Source line, pipe")},
    {"delivery.source.smallest_pipe.", QT_TRANSLATE_NOOP("ui::words", "Source line, smallest pipe that would do")},
};

constexpr ReckoningEntry kSource4[]{
    {"flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "its flow"), QT_TRANSLATE_NOOP("ui::words", "like the flow of the line, where that is less"), ".inside_mm delivery.source.wanted_l_per_min", "colebrook_1939"},
};

constexpr ReckoningPlace kSource4Places[]{
    {"delivery.source.smallest_pipe.", QT_TRANSLATE_NOOP("ui::words", "Source line, smallest pipe that would do")},
};

constexpr ReckoningPlace kSource5Places[]{
    {"delivery.source.full.", QT_TRANSLATE_NOOP("ui::words", "Source line, tank full")},
    {"delivery.source.low.", QT_TRANSLATE_NOOP("ui::words", "Source line, tank nearly empty")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> sourceReckonings() {
  return {{"source", {}, kSource},
          {"source", kSource2Places, kSource2},
          {"source", kSource3Places, kSource3},
          {"source", kSource4Places, kSource4},
          {"source", kSource5Places, flowReckonings()}};
}

}  // namespace ui::words
