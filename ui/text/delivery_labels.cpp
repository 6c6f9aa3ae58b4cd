#include "ui/text/delivery_fields.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kDeliveryLabels{
    Entry{"delivery.water_temperature_c", QT_TRANSLATE_NOOP("ui::words", "Temperature of the water")},
    Entry{"delivery.source.route[].distance_m", QT_TRANSLATE_NOOP("ui::words", "Distance along the line")},
    Entry{"delivery.source.route[].over_rim_m", QT_TRANSLATE_NOOP("ui::words", "Height over the rim")},
    Entry{"delivery.source.water_over_inlet_m", QT_TRANSLATE_NOOP("ui::words", "Water over the inlet")},
    Entry{"delivery.source.wanted_l_per_min", QT_TRANSLATE_NOOP("ui::words", "Flow wanted from the source")},
    Entry{"delivery.source.pipe.grade", QT_TRANSLATE_NOOP("ui::words", "Source pipe: grade")},
    Entry{"delivery.source.pipe.outside_mm", QT_TRANSLATE_NOOP("ui::words", "Source pipe: outside diameter")},
    Entry{"delivery.source.pipe.class_bar", QT_TRANSLATE_NOOP("ui::words", "Source pipe: pressure class")},
    Entry{"delivery.source.pipe.bore_mm", QT_TRANSLATE_NOOP("ui::words", "Source pipe: bore, measured")},
    Entry{"delivery.source.pipe.elbows", QT_TRANSLATE_NOOP("ui::words", "Source pipe: elbows")},
    Entry{"delivery.source.pipe.valves", QT_TRANSLATE_NOOP("ui::words", "Source pipe: valves")},
    Entry{"delivery.field.route[].distance_m", QT_TRANSLATE_NOOP("ui::words", "Distance along the line")},
    Entry{"delivery.field.route[].over_rim_m", QT_TRANSLATE_NOOP("ui::words", "Height over the rim")},
    Entry{"delivery.field.over_rim", QT_TRANSLATE_NOOP("ui::words", "Siphon over the rim")},
    Entry{"delivery.field.crest_over_rim_m",
          QT_TRANSLATE_NOOP("ui::words", "Top of the siphon over the rim")},
    Entry{"delivery.field.outlet", QT_TRANSLATE_NOOP("ui::words", "Water let out through")},
    Entry{"delivery.field.outlets", QT_TRANSLATE_NOOP("ui::words", "Open at a time")},
    Entry{"delivery.field.pipe.grade", QT_TRANSLATE_NOOP("ui::words", "Field pipe: grade")},
    Entry{"delivery.field.pipe.outside_mm", QT_TRANSLATE_NOOP("ui::words", "Field pipe: outside diameter")},
    Entry{"delivery.field.pipe.class_bar", QT_TRANSLATE_NOOP("ui::words", "Field pipe: pressure class")},
    Entry{"delivery.field.pipe.bore_mm", QT_TRANSLATE_NOOP("ui::words", "Field pipe: bore, measured")},
    Entry{"delivery.field.pipe.elbows", QT_TRANSLATE_NOOP("ui::words", "Field pipe: elbows")},
    Entry{"delivery.field.pipe.valves", QT_TRANSLATE_NOOP("ui::words", "Field pipe: valves")},
    Entry{"delivery.overflow.kind", QT_TRANSLATE_NOOP("ui::words", "Overflow through")},
    Entry{"delivery.overflow.width_m", QT_TRANSLATE_NOOP("ui::words", "Width of the notch")},
    Entry{"delivery.overflow.pipe_mm", QT_TRANSLATE_NOOP("ui::words", "Overflow pipe: inside diameter")},
    Entry{"delivery.overflow.pipe_length_m", QT_TRANSLATE_NOOP("ui::words", "Overflow pipe: length")},
    Entry{"delivery.overflow.pipe_fall_m", QT_TRANSLATE_NOOP("ui::words", "Overflow pipe: fall")},
    Entry{"delivery.overflow.storm_mm_h", QT_TRANSLATE_NOOP("ui::words", "Heaviest short rain")},
    Entry{"delivery.overflow.lip_length_m", QT_TRANSLATE_NOOP("ui::words", "Low part of the rim: length")},
    Entry{"delivery.overflow.lip_drop_m", QT_TRANSLATE_NOOP("ui::words", "Low part of the rim: lower by")},
    Entry{"delivery.spill.bottom_width_m", QT_TRANSLATE_NOOP("ui::words", "Spill path: bottom width")},
    Entry{"delivery.spill.depth_m", QT_TRANSLATE_NOOP("ui::words", "Spill path: depth")},
    Entry{"delivery.spill.side_slope", QT_TRANSLATE_NOOP("ui::words", "Spill path: side slope")},
    Entry{"delivery.spill.fall_percent", QT_TRANSLATE_NOOP("ui::words", "Spill path: fall")},
    Entry{"delivery.spill.cover", QT_TRANSLATE_NOOP("ui::words", "Spill path: bed")},
    Entry{"delivery.silt_trap.grain_mm", QT_TRANSLATE_NOOP("ui::words", "Smallest grain to keep back")},
    Entry{"delivery.silt_trap.flow_l_per_min", QT_TRANSLATE_NOOP("ui::words", "Flow through the silt trap")},
    Entry{"delivery.silt_trap.silt_kg_m3", QT_TRANSLATE_NOOP("ui::words", "Silt in the water")},
    Entry{"delivery.silt_trap.cleaning_days", QT_TRANSLATE_NOOP("ui::words", "Silt trap cleaned every")},
    Entry{"delivery.silt_trap.length_m", QT_TRANSLATE_NOOP("ui::words", "Silt trap as it is: length")},
    Entry{"delivery.silt_trap.width_m", QT_TRANSLATE_NOOP("ui::words", "Silt trap as it is: width")},
    Entry{"delivery.silt_trap.depth_m", QT_TRANSLATE_NOOP("ui::words", "Silt trap as it is: water depth")},
    Entry{"delivery.leak_test.level_m", QT_TRANSLATE_NOOP("ui::words", "Water in the tank during the test")},
    Entry{"delivery.leak_test.tank_drop_mm", QT_TRANSLATE_NOOP("ui::words", "Drop in the tank")},
    Entry{"delivery.leak_test.bucket_drop_mm", QT_TRANSLATE_NOOP("ui::words", "Drop in the bucket")},
    Entry{"delivery.leak_test.hours", QT_TRANSLATE_NOOP("ui::words", "Time between the readings")},
    Entry{"delivery.leak_test.reading_error_mm", QT_TRANSLATE_NOOP("ui::words", "Error of one reading")},
};

}  // namespace

std::span<const Entry> deliveryLabels() {
  return kDeliveryLabels;
}

}  // namespace ui::words
