#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kLabour[]{
    {"person_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Work, all tasks together"), QT_TRANSLATE_NOOP("ui::words", "sum of the person-days"), "labour[].days", "sums"},
    {"mason_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Skilled person-days among them"), QT_TRANSLATE_NOOP("ui::words", "sum of the masons' share"), "labour[].mason_days", "sums"},
    {"labour[].days", person_day, QT_TRANSLATE_NOOP("ui::words", "Person-days of each task"), QT_TRANSLATE_NOOP("ui::words", "quantity × rate"), "labour[].quantity labour[].rate", "sums"},
    {"labour[].low_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Person-days at the low rate"), QT_TRANSLATE_NOOP("ui::words", "quantity × low rate of the table, or of the district"), "labour[].quantity", "@"},
    {"labour[].high_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Person-days at the high rate"), QT_TRANSLATE_NOOP("ui::words", "quantity × high rate of the table, or of the district"), "labour[].quantity", "@"},
    {"labour[].mason_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Skilled share of each task"), QT_TRANSLATE_NOOP("ui::words", "person-days × 0.074 ÷ 0.260 for coats, × 1 ÷ 4.5 for stone bed, trap and overflow"), "labour[].days", "cpwd_plaster"},
    {"labour[].rate", none, QT_TRANSLATE_NOOP("ui::words", "Person-days for each unit of work"), QT_TRANSLATE_NOOP("ui::words", "table of rates, the district's own rate or the rate entered; below 1.5 m × the factor for deep digging; a coat: spreading + mixing × plaster ÷ face; carrying: less what the digging rate includes; wetting: × rounds a day ÷ 3 × people"), "@site.soil @works.digging_person_day_per_m3 @works.deep_digging_factor @works.bed_person_day_per_m3 @works.plaster_person_day_per_m2 @works.mixing_person_day_per_m3 @works.spoil_lead_m @works.wetting_people @works.wettings_per_day", "@"},
    {"digging_days.by_norm", person_day, QT_TRANSLATE_NOOP("ui::words", "Digging by the district norm"), QT_TRANSLATE_NOOP("ui::words", "pit × 0.8 person-days for each m³"), "earthwork.pit_volume_m3", "rate_norms_2073"},
    {"digging_days.by_practice", person_day, QT_TRANSLATE_NOOP("ui::words", "Digging by what people report"), QT_TRANSLATE_NOOP("ui::words", "pit × 0.62 person-days for each m³"), "earthwork.pit_volume_m3", "common_practice"},
};

constexpr ReckoningEntry kLabour2[]{
    {"quantity", square_metre, QT_TRANSLATE_NOOP("ui::words", "ground to clear"), QT_TRANSLATE_NOOP("ui::words", "outline of the pit at the ground, walkway and 1 m more all round"), "earthwork.pit_top_length_m earthwork.pit_top_width_m @site.platform.walkway_m", "own", "clear"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "setting out"), QT_TRANSLATE_NOOP("ui::words", "the job"), "earthwork.pit_top_length_m", "own", "set_out"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "topsoil to strip"), QT_TRANSLATE_NOOP("ui::words", "topsoil stripped first"), "earthwork.topsoil_m3", "exact", "strip_topsoil"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "platform to cut"), QT_TRANSLATE_NOOP("ui::words", "cut for the platform"), "earthwork.bench_cut_m3", "exact", "platform_cut"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "platform to ram"), QT_TRANSLATE_NOOP("ui::words", "fill for the platform"), "earthwork.bench_fill_m3", "exact", "platform_fill"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "digging to 1.5 m"), QT_TRANSLATE_NOOP("ui::words", "pit less what lies deeper than 1.5 m"), "earthwork.pit_volume_m3 earthwork.pit_depth_m", "exact", "excavate"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "digging below 1.5 m"), QT_TRANSLATE_NOOP("ui::words", "pit below 1.5 m under the ground, same formula as for the pit"), "earthwork.pit_depth_m earthwork.pit_floor_length_m earthwork.pit_floor_width_m @tank.batter", "hand_output_tables", "excavate_deep"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "spoil to carry"), QT_TRANSLATE_NOOP("ui::words", "spoil left over, as it lies"), "earthwork.spoil_bank_m3 @works.spoil_lead_m", "exact", "carry_spoil"},
    {"quantity", square_metre, QT_TRANSLATE_NOOP("ui::words", "pit faces to trim"), QT_TRANSLATE_NOOP("ui::words", "pit floor + edge half way down × pit depth × √(1 + batter²)"), "earthwork.pit_floor_length_m earthwork.pit_floor_width_m earthwork.pit_depth_m @tank.batter", "exact", "trim"},
    {"quantity", metre, QT_TRANSLATE_NOOP("ui::words", "pipes to lay"), QT_TRANSLATE_NOOP("ui::words", "level length of both ways"), "@delivery.source.route[].distance_m @delivery.field.route[].distance_m", "user", "pipes"},
    {"quantity", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "stone bed"), QT_TRANSLATE_NOOP("ui::words", "volume of the bed, net"), "materials[].net/stone", "exact", "stone_bed"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "wetting, days"), QT_TRANSLATE_NOOP("ui::words", "days under wet sacks of all coats, and days that sacks stay wet outside of them"), "@lining.coats[].cure_days people_by_day[].wetting_l", "own", "curing"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "silt trap"), QT_TRANSLATE_NOOP("ui::words", "the job"), "@site.silt_trap_planned", "own", "silt_trap"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "overflow"), QT_TRANSLATE_NOOP("ui::words", "the job"), "@delivery.overflow.kind", "own", "overflow"},
    {"quantity", metre, QT_TRANSLATE_NOOP("ui::words", "fence"), QT_TRANSLATE_NOOP("ui::words", "all round, 1 m outside the clear opening"), "tank.rim_length_m @site.fence_planned", "own", "fence"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "filling, days"), QT_TRANSLATE_NOOP("ui::words", "days of the first filling"), "filling.full_on", "own", "fill"},
    {"quantity", none, QT_TRANSLATE_NOOP("ui::words", "leak test"), QT_TRANSLATE_NOOP("ui::words", "the job"), "filling.full_on", "own", "leak_test"},
    {"quantity", square_metre, QT_TRANSLATE_NOOP("ui::words", "beds to plant"), QT_TRANSLATE_NOOP("ui::words", "sum of the beds"), "@water.beds[].area_m2", "user", "planting"},
    {"quantity", square_metre, QT_TRANSLATE_NOOP("ui::words", "faces of the coats"), QT_TRANSLATE_NOOP("ui::words", "face of the coat"), "coats[].face_m2", "exact", "coat_*"},
};

constexpr ReckoningPlace kLabour2Places[]{
    {"labour[].", QT_TRANSLATE_NOOP("ui::words", "Quantity of work")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> labourReckonings() {
  return {{"labour", {}, kLabour}, {"labour", kLabour2Places, kLabour2}};
}

}  // namespace ui::words
