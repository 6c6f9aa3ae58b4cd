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

constexpr std::array kGeneralHelp{
    Entry{"title", QT_TRANSLATE_NOOP("ui::words", "Name of the tank as it shall stand on every sheet.")},
    Entry{"place", QT_TRANSLATE_NOOP("ui::words", "Village and field where the tank is dug.")},
    Entry{"prepared_by",
          QT_TRANSLATE_NOOP("ui::words", "Who made this plan and answers questions about it.")},
    Entry{"currency", QT_TRANSLATE_NOOP("ui::words", "Short name of the money used, for example Rs.")},
    Entry{"site.latitude_deg",
          QT_TRANSLATE_NOOP("ui::words",
                            "Degrees north of the equator; south is negative. Leave empty if not known.")},
    Entry{"site.elevation_m",
          QT_TRANSLATE_NOOP("ui::words", "From a map or a phone, at the tank. Leave empty if not known.")},
    Entry{"site.ground.kind",
          QT_TRANSLATE_NOOP("ui::words",
                            "How the natural ground lies where the tank is dug, before any levelling.")},
    Entry{"site.ground.fall_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Drop of the natural ground straight downhill over 100 of level distance.")},
    Entry{"site.ground.downhill_azimuth_deg",
          QT_TRANSLATE_NOOP("ui::words",
                            "Compass direction in which water would run off: north 0, east 90, south 180.")},
    Entry{
        "site.soil",
        QT_TRANSLATE_NOOP("ui::words",
                          "The weakest soil found in the trial pit down to the pit floor; choose “not known” "
                          "rather than guess.")},
    Entry{"site.clay_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Clay in the soil used for plaster, from a jar test. Leave empty if not known.")},
    Entry{"site.water_table_depth_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "From the ground down to ground water at its highest in the year. Leave empty if "
                            "not known.")},
    Entry{"site.edge.distance_m",
          QT_TRANSLATE_NOOP(
              "ui::words", "Level distance from the pit edge to the nearest terrace edge or bank downhill.")},
    Entry{"site.edge.height_m", QT_TRANSLATE_NOOP("ui::words", "Drop of that terrace edge or bank.")},
    Entry{"site.rock_floor",
          QT_TRANSLATE_NOOP("ui::words", "Whether the pit floor, or part of it, lies on rock.")},
    Entry{"site.house_downhill_m",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Level distance to the nearest house, path or shed that escaping water would reach.")},
    Entry{"site.toddlers_within_20_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Whether children who cannot yet swim or climb out live or play within 20 m.")},
    Entry{"site.fence_planned",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Whether a fence on all four sides, a gate that shuts itself and a ladder or rope to "
              "climb out are part of the work.")},
    Entry{
        "site.silt_trap_planned",
        QT_TRANSLATE_NOOP(
            "ui::words", "Whether runoff from roof or ground passes a silt trap before it enters the tank.")},
    Entry{"site.override.engineer",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Name of the licensed engineer who answers for building although a finding says stop. "
              "Counts only with licence, reason and date, and is printed on the sheets.")},
    Entry{"site.override.licence",
          QT_TRANSLATE_NOOP("ui::words", "Number or register of the engineer's licence.")},
    Entry{"site.override.reason",
          QT_TRANSLATE_NOOP("ui::words", "What the engineer found and asks for, so that it may be built.")},
    Entry{"site.override.date", QT_TRANSLATE_NOOP("ui::words", "Day on which the engineer decided.")},
};

constexpr std::array kPracticeHelp{
    Entry{"practice.smallest_length_m",
          QT_TRANSLATE_NOOP("ui::words", "Clear length of the smallest tank that builders here recommend.")},
    Entry{"practice.smallest_width_m",
          QT_TRANSLATE_NOOP("ui::words", "Clear width of the smallest tank that builders here recommend.")},
    Entry{"practice.smallest_depth_m",
          QT_TRANSLATE_NOOP("ui::words", "Clear depth of the smallest tank that builders here recommend.")},
};

constexpr std::array kTankHelp{
    Entry{"tank.shape", QT_TRANSLATE_NOOP("ui::words", "Shape of the finished floor seen from above.")},
    Entry{"tank.measured_at",
          QT_TRANSLATE_NOOP("ui::words",
                            "Whether the clear sizes below are those of the finished floor or of the opening "
                            "at the rim.")},
    Entry{
        "tank.length_m",
        QT_TRANSLATE_NOOP("ui::words",
                          "Finished inside length that the water touches, plaster to plaster; the pit is dug "
                          "larger.")},
    Entry{
        "tank.width_m",
        QT_TRANSLATE_NOOP("ui::words",
                          "Finished inside width that the water touches, plaster to plaster; the pit is dug "
                          "larger.")},
    Entry{"tank.diameter_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Finished inside diameter that the water touches, plaster to plaster; the pit is "
                            "dug larger.")},
    Entry{"tank.outline_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Corners of the finished inside in plan, anticlockwise, with no corner bent "
                            "inward.")},
    Entry{"tank.depth_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Finished floor straight up to the rim; the pit is deeper by the coats and the "
                            "stone bed.")},
    Entry{"tank.batter",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "How far the wall leans outward for each unit of height: 0 is upright, 0.10 is 1 in "
              "10.")},
    Entry{"tank.corner_radius_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rounding of the corners of the clear floor in plan; 0 leaves them sharp.")},
    Entry{"tank.freeboard_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Height from the overflow level, where water runs out, up to the rim.")},
    Entry{"tank.dead_depth_m",
          QT_TRANSLATE_NOOP("ui::words", "Water left above the finished floor that the outlet cannot draw.")},
};

constexpr std::array kLiningHelp{
    Entry{"lining.stone_bed_m",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Thickness of the compacted stone under the floor; there is none behind the walls.")},
    Entry{"lining.dry_to_wet",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Volume of loose soil, sand and cement that makes one volume of plaster on the wall.")},
    Entry{"lining.waste_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Extra plaster for what falls, sticks to tools or sets before it is placed.")},
    Entry{"lining.unevenness_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Extra for hollows in the dug faces, on the stone bed and on coat 1 alone.")},
    Entry{"lining.cement_bag_kg",
          QT_TRANSLATE_NOOP("ui::words", "Weight printed on the cement bag sold nearby.")},
    Entry{"lining.cement_loose_kg_m3",
          QT_TRANSLATE_NOOP("ui::words", "Weight of cement poured loose into a gauge box.")},
    Entry{"lining.coats[].thickness_m",
          QT_TRANSLATE_NOOP("ui::words", "Finished thickness of the coat, measured square to the face.")},
    Entry{"lining.coats[].soil",
          QT_TRANSLATE_NOOP("ui::words", "Parts of sieved soil in the mix, by loose volume.")},
    Entry{"lining.coats[].sand",
          QT_TRANSLATE_NOOP("ui::words", "Parts of sand in the mix, by loose volume.")},
    Entry{"lining.coats[].cement",
          QT_TRANSLATE_NOOP("ui::words", "Parts of cement in the mix, by loose volume.")},
    Entry{"lining.coats[].cure_days",
          QT_TRANSLATE_NOOP("ui::words", "Days for which the coat is kept under wet sacks, rest days too.")},
    Entry{"lining.cove_radius_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rounded fillet between clear floor and wall; 0 leaves a sharp corner.")},
    Entry{"lining.rim_width_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Width of the plaster collar let into the ground around the top, outward of the "
                            "coats; 0 for none.")},
    Entry{"lining.rim_thickness_m", QT_TRANSLATE_NOOP("ui::words", "Thickness of that collar; 0 for none.")},
    Entry{
        "lining.sieving_loss_percent",
        QT_TRANSLATE_NOOP("ui::words", "Share of soil and sand that stays on the sieve and cannot be used.")},
    Entry{"lining.sand_bulking_percent",
          QT_TRANSLATE_NOOP("ui::words", "How much more room damp sand takes than dry sand.")},
    Entry{"lining.stone_loose_factor",
          QT_TRANSLATE_NOOP("ui::words", "Volume of loose stone to buy for one volume of compacted bed.")},
    Entry{"lining.mixing_water_l_per_m3",
          QT_TRANSLATE_NOOP("ui::words", "Water to mix one volume of mortar.")},
    Entry{"lining.curing_water_l_per_m2_day",
          QT_TRANSLATE_NOOP("ui::words", "Water to keep one unit of plastered face wet for a day.")},
    Entry{"lining.sack_covers_m2",
          QT_TRANSLATE_NOOP("ui::words", "Face that one sack covers once laps are taken off.")},
    Entry{"lining.sack_spare_percent",
          QT_TRANSLATE_NOOP("ui::words", "Sacks beyond those that just cover the face.")},
    Entry{"lining.gauge_box_l",
          QT_TRANSLATE_NOOP("ui::words", "Measure it: fill the box with water from a bottle of known size.")},
    Entry{"lining.pan_l",
          QT_TRANSLATE_NOOP("ui::words",
                            "Measure it: fill the pan level with water from a bottle of known size.")},
    Entry{"lining.bucket_l",
          QT_TRANSLATE_NOOP("ui::words",
                            "Measure it: fill the bucket with water from a bottle of known size.")},
    Entry{"lining.customary_bill.soil_m3",
          QT_TRANSLATE_NOOP("ui::words",
                            "Soil for such a tank as people reckon it today; shown beside the computed soil, "
                            "never mixed with it.")},
    Entry{"lining.customary_bill.sand_m3",
          QT_TRANSLATE_NOOP("ui::words",
                            "Sand for such a tank as people reckon it today; shown beside the computed sand, "
                            "never mixed with it.")},
    Entry{
        "lining.customary_bill.stone_m3",
        QT_TRANSLATE_NOOP("ui::words",
                          "Stone for such a tank as people reckon it today; shown beside the computed stone, "
                          "never mixed with it.")},
    Entry{"lining.customary_bill.cement_kg",
          QT_TRANSLATE_NOOP("ui::words",
                            "Cement for such a tank as people reckon it today; shown beside the computed "
                            "cement, never mixed with it.")},
};

}  // namespace

QString fieldHelp(std::string_view field_id) {
  if (field_id.starts_with("tank.")) return lookUp(kTankHelp, field_id, "help of field");
  if (field_id.starts_with("lining.")) return lookUp(kLiningHelp, field_id, "help of field");
  if (field_id.starts_with("practice.")) return lookUp(kPracticeHelp, field_id, "help of field");
  if (field_id.starts_with("water.")) return lookUp(waterHelp(), field_id, "help of field");
  if (field_id.starts_with("delivery.")) return lookUp(deliveryHelp(), field_id, "help of field");
  for (const auto& table : {groundHelp(), worksHelp(), notesHelp(), moneyHelp()}) {
    if (has(table, field_id)) return lookUp(table, field_id, "help of field");
  }
  return lookUp(kGeneralHelp, field_id, "help of field");
}

}  // namespace ui::words
