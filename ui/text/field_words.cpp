#include "ui/text/delivery_fields.h"
#include "ui/text/ground_words.h"
#include "ui/text/money_words.h"
#include "ui/text/notes_words.h"
#include "ui/text/water_fields.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kLabels{
    Entry{"title", QT_TRANSLATE_NOOP("ui::words", "Title")},
    Entry{"place", QT_TRANSLATE_NOOP("ui::words", "Place")},
    Entry{"prepared_by", QT_TRANSLATE_NOOP("ui::words", "Prepared by")},
    Entry{"currency", QT_TRANSLATE_NOOP("ui::words", "Currency")},
    Entry{"site.latitude_deg", QT_TRANSLATE_NOOP("ui::words", "Latitude")},
    Entry{"site.elevation_m", QT_TRANSLATE_NOOP("ui::words", "Height above sea level")},
    Entry{"site.ground.kind", QT_TRANSLATE_NOOP("ui::words", "Ground")},
    Entry{"site.ground.fall_percent", QT_TRANSLATE_NOOP("ui::words", "Fall of the ground")},
    Entry{"site.ground.downhill_azimuth_deg", QT_TRANSLATE_NOOP("ui::words", "Downhill direction")},
    Entry{"site.soil", QT_TRANSLATE_NOOP("ui::words", "Soil of the pit")},
    Entry{"site.clay_percent", QT_TRANSLATE_NOOP("ui::words", "Clay in the soil")},
    Entry{"site.water_table_depth_m", QT_TRANSLATE_NOOP("ui::words", "Depth to ground water")},
    Entry{"site.edge.distance_m", QT_TRANSLATE_NOOP("ui::words", "Distance to the terrace edge")},
    Entry{"site.edge.height_m", QT_TRANSLATE_NOOP("ui::words", "Height of the terrace edge")},
    Entry{"site.rock_floor", QT_TRANSLATE_NOOP("ui::words", "Rock in the pit floor")},
    Entry{"site.house_downhill_m", QT_TRANSLATE_NOOP("ui::words", "Distance to the nearest house downhill")},
    Entry{"site.toddlers_within_20_m", QT_TRANSLATE_NOOP("ui::words", "Small children live within 20 m")},
    Entry{"site.fence_planned", QT_TRANSLATE_NOOP("ui::words", "Fence, gate and ladder planned")},
    Entry{"site.silt_trap_planned", QT_TRANSLATE_NOOP("ui::words", "Silt trap planned")},
    Entry{"site.override.engineer", QT_TRANSLATE_NOOP("ui::words", "Override: engineer")},
    Entry{"site.override.licence", QT_TRANSLATE_NOOP("ui::words", "Override: licence")},
    Entry{"site.override.reason", QT_TRANSLATE_NOOP("ui::words", "Override: reason")},
    Entry{"site.override.date", QT_TRANSLATE_NOOP("ui::words", "Override: date")},
    Entry{"tank.shape", QT_TRANSLATE_NOOP("ui::words", "Shape")},
    Entry{"tank.measured_at", QT_TRANSLATE_NOOP("ui::words", "Clear size measured at")},
    Entry{"tank.length_m", QT_TRANSLATE_NOOP("ui::words", "Clear length")},
    Entry{"tank.width_m", QT_TRANSLATE_NOOP("ui::words", "Clear width")},
    Entry{"tank.diameter_m", QT_TRANSLATE_NOOP("ui::words", "Clear diameter")},
    Entry{"tank.outline_m", QT_TRANSLATE_NOOP("ui::words", "Clear outline")},
    Entry{"tank.depth_m", QT_TRANSLATE_NOOP("ui::words", "Clear depth, floor to rim")},
    Entry{"tank.batter", QT_TRANSLATE_NOOP("ui::words", "Batter of the walls")},
    Entry{"tank.corner_radius_m", QT_TRANSLATE_NOOP("ui::words", "Corner radius, clear floor")},
    Entry{"tank.freeboard_m", QT_TRANSLATE_NOOP("ui::words", "Freeboard")},
    Entry{"tank.dead_depth_m", QT_TRANSLATE_NOOP("ui::words", "Dead depth")},
    Entry{"lining.stone_bed_m", QT_TRANSLATE_NOOP("ui::words", "Stone bed, compacted")},
    Entry{"lining.dry_to_wet", QT_TRANSLATE_NOOP("ui::words", "Loose ingredients per placed plaster")},
    Entry{"lining.waste_percent", QT_TRANSLATE_NOOP("ui::words", "Waste")},
    Entry{"lining.unevenness_percent", QT_TRANSLATE_NOOP("ui::words", "Unevenness of dug faces")},
    Entry{"lining.cement_bag_kg", QT_TRANSLATE_NOOP("ui::words", "Cement in a bag")},
    Entry{"lining.cement_loose_kg_m3", QT_TRANSLATE_NOOP("ui::words", "Loose weight of cement")},
    Entry{"lining.coats[].thickness_m", QT_TRANSLATE_NOOP("ui::words", "Thickness")},
    Entry{"lining.coats[].soil", QT_TRANSLATE_NOOP("ui::words", "Soil")},
    Entry{"lining.coats[].sand", QT_TRANSLATE_NOOP("ui::words", "Sand")},
    Entry{"lining.coats[].cement", QT_TRANSLATE_NOOP("ui::words", "Cement")},
    Entry{"lining.coats[].cure_days", QT_TRANSLATE_NOOP("ui::words", "Days under wet sacks")},
    Entry{"lining.cove_radius_m", QT_TRANSLATE_NOOP("ui::words", "Cove radius, floor to wall")},
    Entry{"lining.rim_width_m", QT_TRANSLATE_NOOP("ui::words", "Rim collar, width")},
    Entry{"lining.rim_thickness_m", QT_TRANSLATE_NOOP("ui::words", "Rim collar, thickness")},
    Entry{"lining.sieving_loss_percent", QT_TRANSLATE_NOOP("ui::words", "Loss in sieving")},
    Entry{"lining.sand_bulking_percent", QT_TRANSLATE_NOOP("ui::words", "Bulking of damp sand")},
    Entry{"lining.stone_loose_factor", QT_TRANSLATE_NOOP("ui::words", "Loose stone per compacted bed")},
    Entry{"lining.mixing_water_l_per_m3", QT_TRANSLATE_NOOP("ui::words", "Mixing water")},
    Entry{"lining.curing_water_l_per_m2_day", QT_TRANSLATE_NOOP("ui::words", "Curing water")},
    Entry{"lining.sack_covers_m2", QT_TRANSLATE_NOOP("ui::words", "Face covered by one sack")},
    Entry{"lining.sack_spare_percent", QT_TRANSLATE_NOOP("ui::words", "Spare sacks")},
    Entry{"lining.gauge_box_l", QT_TRANSLATE_NOOP("ui::words", "Gauge box holds")},
    Entry{"lining.pan_l", QT_TRANSLATE_NOOP("ui::words", "Pan holds")},
    Entry{"lining.bucket_l", QT_TRANSLATE_NOOP("ui::words", "Bucket holds")},
    Entry{"lining.customary_bill.soil_m3", QT_TRANSLATE_NOOP("ui::words", "Customary bill: soil")},
    Entry{"lining.customary_bill.sand_m3", QT_TRANSLATE_NOOP("ui::words", "Customary bill: sand")},
    Entry{"lining.customary_bill.stone_m3", QT_TRANSLATE_NOOP("ui::words", "Customary bill: stone")},
    Entry{"lining.customary_bill.cement_kg", QT_TRANSLATE_NOOP("ui::words", "Customary bill: cement")},
    Entry{"practice.smallest_length_m", QT_TRANSLATE_NOOP("ui::words", "Smallest recommended clear length")},
    Entry{"practice.smallest_width_m", QT_TRANSLATE_NOOP("ui::words", "Smallest recommended clear width")},
    Entry{"practice.smallest_depth_m", QT_TRANSLATE_NOOP("ui::words", "Smallest recommended clear depth")},
};

}  // namespace

QString fieldLabel(std::string_view field_id) {
  if (field_id.starts_with("water.")) return lookUp(waterLabels(), field_id, "label of field");
  if (field_id.starts_with("delivery.")) return lookUp(deliveryLabels(), field_id, "label of field");
  for (const auto& table : {groundLabels(), worksLabels(), notesLabels(), moneyLabels()}) {
    if (has(table, field_id)) return lookUp(table, field_id, "label of field");
  }
  return lookUp(kLabels, field_id, "label of field");
}

}  // namespace ui::words
