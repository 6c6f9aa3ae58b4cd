#include "ui/text/delivery_fields.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kDeliveryHelp{
    Entry{"delivery.water_temperature_c",
          QT_TRANSLATE_NOOP("ui::words",
                            "Of the water in the line, by thermometer; cold water flows a little slower, and "
                            "over 20 °C plastic pipe bears less.")},
    Entry{"delivery.source.route[].distance_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Level distance along the pipe's way from its inlet at the source to this point; "
                            "measure with a tape held level.")},
    Entry{"delivery.source.route[].over_rim_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Height of the pipe at this point over the rim of the tank, by water level tube; "
                            "a point lower than the rim is negative.")},
    Entry{"delivery.source.water_over_inlet_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Depth of water over the middle of the pipe's inlet at the source when it is "
                            "lowest.")},
    Entry{"delivery.source.wanted_l_per_min",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the line shall bring, at most what the source gives. Leave empty if "
                            "anything will do.")},
    Entry{"delivery.source.pipe.grade",
          QT_TRANSLATE_NOOP("ui::words",
                            "Strength of the polyethylene, printed along the pipe from the source.")},
    Entry{"delivery.source.pipe.outside_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the shop calls the size of the pipe from the source; it is printed along "
                            "it.")},
    Entry{"delivery.source.pipe.class_bar",
          QT_TRANSLATE_NOOP("ui::words",
                            "Pressure that the pipe from the source is made for, printed on it as PN.")},
    Entry{"delivery.source.pipe.bore_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Inside diameter of the pipe from the source, measured at a clean cut. Leave "
                            "empty to take it from the table of pipes.")},
    Entry{"delivery.source.pipe.elbows",
          QT_TRANSLATE_NOOP("ui::words",
                            "Sharp bends with a fitting between source and tank; the pipe's own wide curves "
                            "do not count.")},
    Entry{"delivery.source.pipe.valves",
          QT_TRANSLATE_NOOP("ui::words", "Valves between source and tank, reckoned wide open.")},
    Entry{"delivery.field.route[].distance_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Level distance along the pipe's way from where it leaves the tank to this "
                            "point; measure with a tape held level.")},
    Entry{"delivery.field.route[].over_rim_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Height of the field pipe at this point over the rim of the tank, by water level "
                            "tube; most points lie lower and are negative.")},
    Entry{"delivery.field.over_rim",
          QT_TRANSLATE_NOOP("ui::words",
                            "Whether the pipe climbs over the rim and works as a siphon; else it goes "
                            "through the lining, where tanks leak first.")},
    Entry{"delivery.field.crest_over_rim_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Height of the middle of the pipe over the rim where it is highest; the lower, "
                            "the better it runs.")},
    Entry{"delivery.field.outlet",
          QT_TRANSLATE_NOOP("ui::words",
                            "What stands at the end of the line; each kind needs its own head of water.")},
    Entry{"delivery.field.outlets", QT_TRANSLATE_NOOP("ui::words", "How many of them run at the same time.")},
    Entry{
        "delivery.field.pipe.grade",
        QT_TRANSLATE_NOOP("ui::words", "Strength of the polyethylene, printed along the pipe to the field.")},
    Entry{"delivery.field.pipe.outside_mm",
          QT_TRANSLATE_NOOP(
              "ui::words", "What the shop calls the size of the pipe to the field; it is printed along it.")},
    Entry{"delivery.field.pipe.class_bar",
          QT_TRANSLATE_NOOP("ui::words",
                            "Pressure that the pipe to the field is made for, printed on it as PN.")},
    Entry{"delivery.field.pipe.bore_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Inside diameter of the pipe to the field, measured at a clean cut. Leave empty "
                            "to take it from the table of pipes.")},
    Entry{"delivery.field.pipe.elbows",
          QT_TRANSLATE_NOOP("ui::words",
                            "Sharp bends with a fitting between tank and field, those at the rim counted; "
                            "the pipe's own wide curves do not count.")},
    Entry{"delivery.field.pipe.valves",
          QT_TRANSLATE_NOOP("ui::words", "Valves between tank and field, reckoned wide open.")},
    Entry{
        "delivery.overflow.kind",
        QT_TRANSLATE_NOOP("ui::words", "Where spare water leaves: a notch in the rim, or a pipe below it.")},
    Entry{"delivery.overflow.width_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Clear width of the notch along the rim; its sill lies at the overflow level.")},
    Entry{"delivery.overflow.pipe_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Inside diameter of the overflow pipe; its inside bottom lies at the overflow "
                            "level.")},
    Entry{"delivery.overflow.pipe_length_m",
          QT_TRANSLATE_NOOP("ui::words", "From its inlet in the tank to where it ends over the spill path.")},
    Entry{"delivery.overflow.pipe_fall_m",
          QT_TRANSLATE_NOOP("ui::words", "How much lower the end of the overflow pipe lies than its inlet.")},
    Entry{"delivery.overflow.storm_mm_h",
          QT_TRANSLATE_NOOP("ui::words",
                            "Heaviest rain that falls here in some minutes, counted for an hour; ask the "
                            "weather station. Leave empty if not known.")},
    Entry{"delivery.overflow.lip_length_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Length of rim laid a little lower, so that water leaves there and nowhere else "
                            "when the overflow is blocked; 0 for none.")},
    Entry{"delivery.overflow.lip_drop_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "How much lower this part of the rim is laid; check it with water in a clear "
                            "tube.")},
    Entry{"delivery.spill.bottom_width_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Width of the bed of the channel that leads spare water away from the tank.")},
    Entry{"delivery.spill.depth_m",
          QT_TRANSLATE_NOOP("ui::words", "Depth of this channel from its edge down to its bed.")},
    Entry{"delivery.spill.side_slope",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far each side of the channel leans outward for each unit of height; 0 is "
                            "upright.")},
    Entry{"delivery.spill.fall_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Drop of the bed over 100 of length where it is steepest; measure it with a "
                            "water level tube.")},
    Entry{"delivery.spill.cover",
          QT_TRANSLATE_NOOP("ui::words", "What the water of the spill path runs over.")},
    Entry{"delivery.silt_trap.grain_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "The trap is made long enough for this grain to sink; 0.1 mm is fine sand that "
                            "can just be felt between the fingers.")},
    Entry{"delivery.silt_trap.flow_l_per_min",
          QT_TRANSLATE_NOOP("ui::words",
                            "Most water that passes the trap at a time. Leave empty to take what source line "
                            "and storm bring.")},
    Entry{"delivery.silt_trap.silt_kg_m3",
          QT_TRANSLATE_NOOP("ui::words",
                            "Dry weight of what settles overnight from muddy water as it comes in; let a "
                            "full bucket stand, dry the mud and weigh it.")},
    Entry{"delivery.silt_trap.cleaning_days",
          QT_TRANSLATE_NOOP("ui::words", "Time in the wet season after which someone empties the trap.")},
    Entry{"delivery.silt_trap.length_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Inside length, along the water, of a trap that stands or is planned by eye. "
                            "Leave empty if there is none.")},
    Entry{"delivery.silt_trap.width_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Inside width, across the water, of that trap. Leave empty if there is none.")},
    Entry{"delivery.silt_trap.depth_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water over the mud in that trap just before it is cleaned. Leave empty if there "
                            "is none.")},
    Entry{"delivery.leak_test.level_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water over the finished floor while the test runs. Leave empty if the tank is "
                            "full.")},
    Entry{"delivery.leak_test.tank_drop_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far the water in the tank sank between the two readings, on a scale fixed "
                            "to the wall; nothing may flow in or out.")},
    Entry{"delivery.leak_test.bucket_drop_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far the water sank in a light bucket that floats deep in the tank, only a "
                            "hand's breadth of it dry: this much evaporated.")},
    Entry{"delivery.leak_test.hours",
          QT_TRANSLATE_NOOP("ui::words",
                            "From the first reading to the second; a day or longer, without rain.")},
    Entry{"delivery.leak_test.reading_error_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far one reading of the scale may be wrong; read it twice and see.")},
};

}  // namespace

std::span<const Entry> deliveryHelp() {
  return kDeliveryHelp;
}

}  // namespace ui::words
