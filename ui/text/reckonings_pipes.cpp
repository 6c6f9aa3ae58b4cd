#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kPipes[]{
    {"profile[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "points of the line, level distance"), QT_TRANSLATE_NOOP("ui::words", "distances of the way from its first point; field line over the rim: inlet, crest, then the way"), "@delivery.field.route[].distance_m", "user"},
    {"profile[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "points of the line, over the finished floor"), QT_TRANSLATE_NOOP("ui::words", "rim + height over the rim; inlet 2 cm under the dead level, crest over the rim"), "tank.depth_m @delivery.field.route[].over_rim_m @delivery.field.crest_over_rim_m", "user"},
    {"fittings[].k", factor, QT_TRANSLATE_NOOP("ui::words", "losses of the fittings, K"), QT_TRANSLATE_NOOP("ui::words", "number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15"), "@delivery.field.pipe.elbows @delivery.field.pipe.valves", "handbook_pipe_tables"},
    {"fittings[].station_m", metre, QT_TRANSLATE_NOOP("ui::words", "where the fittings sit"), QT_TRANSLATE_NOOP("ui::words", "at the inlet; elbows of the field line half at the crest, half at the end"), ".profile[].station_m", "own"},
    {"bore_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "bore"), QT_TRANSLATE_NOOP("ui::words", "measured, else outside diameter − 2 × wall"), ".size.inside_mm", "iso_4427"},
    {"class_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure class that holds"), QT_TRANSLATE_NOOP("ui::words", "class × share for warm water"), ".class_share", "iso_4427_heat"},
    {"class_share", factor, QT_TRANSLATE_NOOP("ui::words", "share of the class that holds in warm water"), QT_TRANSLATE_NOOP("ui::words", "1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between"), "@delivery.water_temperature_c", "iso_4427_heat"},
    {"wanted_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "flow wanted"), QT_TRANSLATE_NOOP("ui::words", "as entered; field line: outlets × usual flow of one"), "@delivery.field.outlets @delivery.field.outlet", "user"},
    {"full_heads.upper_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water over the inlet, tank full"), QT_TRANSLATE_NOOP("ui::words", "source line: inlet + water over it; field line: overflow level"), "tank.full_level_m", "sums"},
    {"low_heads.upper_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "water over the inlet, tank nearly empty"), QT_TRANSLATE_NOOP("ui::words", "source line: inlet + water over it; field line: dead level"), "tank.dead_level_m", "sums"},
};

constexpr ReckoningPlace kPipesPlaces[]{
    {"delivery.field.", QT_TRANSLATE_NOOP("ui::words", "Field line")},
};

constexpr ReckoningEntry kPipes2[]{
    {"outside_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "outside diameter"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), "@delivery.field.pipe.outside_mm", "iso_4427"},
    {"wall_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "least wall"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), ".outside_mm .class_bar", "iso_4427"},
    {"inside_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "bore with the least wall"), QT_TRANSLATE_NOOP("ui::words", "outside diameter − 2 × wall"), ".outside_mm .wall_mm", "iso_4427"},
    {"sdr", factor, QT_TRANSLATE_NOOP("ui::words", "outside diameter over wall"), QT_TRANSLATE_NOOP("ui::words", "size of the table"), ".outside_mm .wall_mm", "iso_4427"},
    {"class_bar", bar, QT_TRANSLATE_NOOP("ui::words", "pressure class"), QT_TRANSLATE_NOOP("ui::words", "size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class"), ".sdr", "iso_4427"},
};

constexpr ReckoningPlace kPipes2Places[]{
    {"delivery.field.size.", QT_TRANSLATE_NOOP("ui::words", "Field line, pipe")},
    {"delivery.field.smallest_pipe.", QT_TRANSLATE_NOOP("ui::words", "Field line, smallest pipe that would do")},
};

constexpr ReckoningEntry kPipes3[]{
    {"flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "its flow"), QT_TRANSLATE_NOOP("ui::words", "like the flow of the line, where that is less"), ".inside_mm delivery.field.wanted_l_per_min", "colebrook_1939"},
};

constexpr ReckoningPlace kPipes3Places[]{
    {"delivery.field.smallest_pipe.", QT_TRANSLATE_NOOP("ui::words", "Field line, smallest pipe that would do")},
};

constexpr ReckoningPlace kPipes4Places[]{
    {"delivery.field.full.", QT_TRANSLATE_NOOP("ui::words", "Field line, tank full")},
    {"delivery.field.low.", QT_TRANSLATE_NOOP("ui::words", "Field line, tank nearly empty")},
};

constexpr ReckoningEntry kPipes5[]{
    {"barometric_m", metre, QT_TRANSLATE_NOOP("ui::words", "air pressure less vapour"), QT_TRANSLATE_NOOP("ui::words", "air pressure at that height − vapour pressure, as water column"), "delivery.altitude_m @delivery.water_temperature_c", "wagner_pruss_2002"},
    {"most_lift_m", metre, QT_TRANSLATE_NOOP("ui::words", "most lift"), QT_TRANSLATE_NOOP("ui::words", "air pressure less vapour − reserve of 2 m"), ".barometric_m", "own"},
    {"lift_m", metre, QT_TRANSLATE_NOOP("ui::words", "lift"), QT_TRANSLATE_NOOP("ui::words", "crest − water"), "tank.depth_m @delivery.field.crest_over_rim_m", "sums"},
    {"lift_left_m", metre, QT_TRANSLATE_NOOP("ui::words", "lift left"), QT_TRANSLATE_NOOP("ui::words", "most lift − lift − loss up to the crest"), ".most_lift_m .lift_m .crest_loss_m", "sums"},
    {"lowest_level_m", metre, QT_TRANSLATE_NOOP("ui::words", "draws down to, at a trickle"), QT_TRANSLATE_NOOP("ui::words", "highest of inlet, outlet and crest − most lift"), ".most_lift_m", "sums"},
    {"primed_with_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "water that fills the pipe"), QT_TRANSLATE_NOOP("ui::words", "π D² ÷ 4 × length"), "delivery.field.bore_mm delivery.field.profile[].station_m", "exact"},
    {"flow_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "flow, valve open"), QT_TRANSLATE_NOOP("ui::words", "found so that water − outlet = (1 + sum of K + f L ÷ D) V² ÷ 2g"), "delivery.field.bore_mm @delivery.water_temperature_c", "colebrook_1939"},
    {"velocity_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "speed"), QT_TRANSLATE_NOOP("ui::words", "flow ÷ (π D² ÷ 4)"), ".flow_l_per_min", "sums"},
    {"crest_loss_m", metre, QT_TRANSLATE_NOOP("ui::words", "loss up to the crest"), QT_TRANSLATE_NOOP("ui::words", "(1 + K up to the crest + f L ÷ D) V² ÷ 2g"), ".velocity_m_s", "colebrook_1939"},
    {"crest_pressure_m", metre, QT_TRANSLATE_NOOP("ui::words", "pressure at the crest"), QT_TRANSLATE_NOOP("ui::words", "− lift − loss up to the crest"), ".lift_m .crest_loss_m", "sums"},
    {"clearing_velocity_m_s", metre_per_second, QT_TRANSLATE_NOOP("ui::words", "speed that carries air down"), QT_TRANSLATE_NOOP("ui::words", "√(g D) × (0.825 + 0.25 √(sine of the fall))"), "delivery.field.bore_mm", "sanks_air"},
    {"throttled_l_per_min", litre_per_minute, QT_TRANSLATE_NOOP("ui::words", "most flow that the crest allows"), QT_TRANSLATE_NOOP("ui::words", "flow whose loss up to the crest uses up the lift"), ".most_lift_m .lift_m", "colebrook_1939"},
};

constexpr ReckoningPlace kPipes5Places[]{
    {"delivery.field.siphon_full.", QT_TRANSLATE_NOOP("ui::words", "Siphon, tank full")},
    {"delivery.field.siphon_low.", QT_TRANSLATE_NOOP("ui::words", "Siphon, tank nearly empty")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> pipesReckonings() {
  return {{"pipes", kPipesPlaces, kPipes},
          {"pipes", kPipes2Places, kPipes2},
          {"pipes", kPipes3Places, kPipes3},
          {"pipes", kPipes4Places, flowReckonings()},
          {"pipes", kPipes5Places, kPipes5}};
}

}  // namespace ui::words
