#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kOneGo[]{
    {"coat_crews[].coat", piece, QT_TRANSLATE_NOOP("ui::words", "Coats in order"), QT_TRANSLATE_NOOP("ui::words", "from the earth inward"), "@lining.coats[].thickness_m", "user"},
    {"coat_crews[].person_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Work of each coat"), QT_TRANSLATE_NOOP("ui::words", "face × spreading + plaster × mixing"), "labour[].days coats[].face_m2 coats[].placed_m3 @works.plaster_person_day_per_m2 @works.mixing_person_day_per_m3", "cpwd_plaster"},
    {"coat_crews[].hours", hour, QT_TRANSLATE_NOOP("ui::words", "In which a coat must be on"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@works.coat_hours", "user"},
    {"coat_crews[].people", piece, QT_TRANSLATE_NOOP("ui::words", "People on each coat"), QT_TRANSLATE_NOOP("ui::words", "as entered, or as wished for the coat"), "@works.plasterers @works.wishes[].people", "user"},
    {"coat_crews[].needed", piece, QT_TRANSLATE_NOOP("ui::words", "People needed"), QT_TRANSLATE_NOOP("ui::words", "work × hours of a person-day ÷ hours for the coat, rounded up"), "coat_crews[].person_days @works.hours_per_day @works.coat_hours", "own"},
    {"coat_crews[].masons", piece, QT_TRANSLATE_NOOP("ui::words", "Masons on each coat"), QT_TRANSLATE_NOOP("ui::words", "as entered, no more than people on the coat"), "@works.masons", "user"},
    {"coat_crews[].masons_needed", piece, QT_TRANSLATE_NOOP("ui::words", "Masons needed"), QT_TRANSLATE_NOOP("ui::words", "people needed × 0.074 ÷ 0.260, rounded up"), "coat_crews[].needed", "cpwd_plaster"},
    {"coat_crews[].batches", piece, QT_TRANSLATE_NOOP("ui::words", "Batches with a whole bag"), QT_TRANSLATE_NOOP("ui::words", "plaster to mix ÷ yield of a batch, rounded up"), "batches[].count", "sums"},
    {"coat_crews[].batches_per_hour_needed", factor, QT_TRANSLATE_NOOP("ui::words", "Batches an hour needed"), QT_TRANSLATE_NOOP("ui::words", "batches ÷ hours for the coat"), "coat_crews[].batches @works.coat_hours", "sums"},
    {"coat_crews[].batches_per_hour_possible", factor, QT_TRANSLATE_NOOP("ui::words", "Batches an hour possible"), QT_TRANSLATE_NOOP("ui::words", "mixing places × 60 ÷ minutes for a batch"), "@works.mixing_places @works.minutes_per_batch", "sums"},
    {"coat_crews[].mixing_places_needed", piece, QT_TRANSLATE_NOOP("ui::words", "Mixing places needed"), QT_TRANSLATE_NOOP("ui::words", "batches an hour × minutes for a batch ÷ 60, rounded up"), "coat_crews[].batches_per_hour_needed @works.minutes_per_batch", "sums"},
    {"coat_crews[].minutes_to_place_batch", minute, QT_TRANSLATE_NOOP("ui::words", "Minutes to put a batch on"), QT_TRANSLATE_NOOP("ui::words", "face that it covers × spreading × hours of a person-day × 60 ÷ people who spread: their share of the work"), "batches[].covers_m2 @works.plaster_person_day_per_m2 @works.mixing_person_day_per_m3 @works.hours_per_day coat_crews[].people", "own"},
    {"coat_crews[].minutes_to_place_half_batch", minute, QT_TRANSLATE_NOOP("ui::words", "Minutes for a batch with half a bag"), QT_TRANSLATE_NOOP("ui::words", "as for a whole bag"), "part_bag_batches[].covers_m2 @works.plaster_person_day_per_m2 @works.hours_per_day coat_crews[].people", "own"},
    {"coat_crews[].placing_minutes", minute, QT_TRANSLATE_NOOP("ui::words", "In which a batch must be on the wall"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@works.placing_minutes", "user"},
    {"coat_crews[].bags", factor, QT_TRANSLATE_NOOP("ui::words", "Bags of cement for each coat"), QT_TRANSLATE_NOOP("ui::words", "cement to mix ÷ weight of a bag, not rounded"), "coats[].to_mix.cement_kg @lining.cement_bag_kg", "sums"},
    {"coat_crews[].water_l", litre, QT_TRANSLATE_NOOP("ui::words", "Mixing water for each coat"), QT_TRANSLATE_NOOP("ui::words", "plaster to mix × litres for each m³"), "coats[].placed_m3 @lining.mixing_water_l_per_m3", "#lining.mixing_water_l_per_m3"},
    {"coat_crews[].sacks", piece, QT_TRANSLATE_NOOP("ui::words", "Sacks to cover each coat"), QT_TRANSLATE_NOOP("ui::words", "face ÷ what a sack covers × (1 + spare), rounded up"), "coats[].face_m2 @lining.sack_covers_m2 @lining.sack_spare_percent", "#lining.sack_covers_m2"},
    {"coat_crews[].size.plan_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Length and width times this, this crew could plaster"), QT_TRANSLATE_NOOP("ui::words", "found by halving: largest plan, same depth, batter and lining, whose coat the crew can put on"), "coat_crews[].people coat_crews[].masons @works.coat_hours", "own"},
    {"coat_crews[].size.length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear length of that tank"), QT_TRANSLATE_NOOP("ui::words", "length × factor"), "tank.clear_floor_length_m coat_crews[].size.plan_factor", "exact"},
    {"coat_crews[].size.width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear width of that tank"), QT_TRANSLATE_NOOP("ui::words", "width × factor"), "tank.clear_floor_width_m coat_crews[].size.plan_factor", "exact"},
    {"coat_crews[].size.full_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by that tank, filled to the overflow"), QT_TRANSLATE_NOOP("ui::words", "V(h) with its own floor"), "coat_crews[].size.length_m coat_crews[].size.width_m tank.full_level_m @tank.batter", "exact"},
};

constexpr ReckoningEntry kFilling[]{
    {"filling.inflow_m3_day", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Inflow on the first day"), QT_TRANSLATE_NOOP("ui::words", "as entered, else flow × hours of the source in that month"), "@works.fill_inflow_l_per_day @water.source.months[].flow_l_per_min @water.source.months[].hours_per_day", "user"},
    {"filling.start", none, QT_TRANSLATE_NOOP("ui::words", "Filling starts"), QT_TRANSLATE_NOOP("ui::words", "as in the dates: last day of curing or of the days within which it must start, whichever comes first"), "schedule[].start", "wocat_5684"},
    {"filling.latest_start", none, QT_TRANSLATE_NOOP("ui::words", "Latest start of filling"), QT_TRANSLATE_NOOP("ui::words", "last coat + days within which filling must start"), "schedule[].start @works.fill_within_days", "wocat_5684"},
    {"filling.full_on", none, QT_TRANSLATE_NOOP("ui::words", "Tank full"), QT_TRANSLATE_NOOP("ui::words", "first day on which it holds what it can up to the overflow"), "filling.days[].volume_m3 tank.full_volume_m3", "sums"},
    {"filling.wetting_after_cure_l", litre, QT_TRANSLATE_NOOP("ui::words", "Water for sacks after curing"), QT_TRANSLATE_NOOP("ui::words", "sum over the days of wall still to be wet × litres a day for each m²"), "filling.bands[].area_m2 filling.bands[].wet_until @lining.curing_water_l_per_m2_day", "#lining.curing_water_l_per_m2_day"},
    {"filling.carried_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Water to bring by hand"), QT_TRANSLATE_NOOP("ui::words", "held if the water covered the walls by the latest start + curing, as far as the limit on the rise lets it − held then"), "filling.latest_start @lining.coats[].cure_days @works.fill_most_rise_m_per_day filling.days[].volume_m3", "own"},
    {"filling.bands[].from_m", metre, QT_TRANSLATE_NOOP("ui::words", "Bands of the wall: lower edge"), QT_TRANSLATE_NOOP("ui::words", "even steps up from the floor"), "@works.wall_band_m", "own"},
    {"filling.bands[].to_m", metre, QT_TRANSLATE_NOOP("ui::words", "Bands of the wall: upper edge"), QT_TRANSLATE_NOOP("ui::words", "even steps up to the overflow, then the rim"), "@works.wall_band_m tank.full_level_m tank.depth_m", "own"},
    {"filling.bands[].area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Bands of the wall: area"), QT_TRANSLATE_NOOP("ui::words", "wet face up to the upper edge − up to the lower; wet face = floor + √(1 + batter²) × h × mean edge"), "filling.bands[].from_m filling.bands[].to_m tank.floor_perimeter_m tank.floor_m2 @tank.batter", "exact"},
    {"filling.bands[].wet_from", none, QT_TRANSLATE_NOOP("ui::words", "Bands: sacks wet from"), QT_TRANSLATE_NOOP("ui::words", "day after the last coat"), "schedule[].start", "wocat_5684"},
    {"filling.bands[].covered_on", none, QT_TRANSLATE_NOOP("ui::words", "Bands: covered by water on"), QT_TRANSLATE_NOOP("ui::words", "first day at whose end the level is at the upper edge"), "filling.days[].level_m filling.bands[].to_m", "sums"},
    {"filling.bands[].wet_until", none, QT_TRANSLATE_NOOP("ui::words", "Bands: sacks wet until"), QT_TRANSLATE_NOOP("ui::words", "day before it is covered, not before the end of curing"), "filling.bands[].covered_on", "is456_curing"},
    {"filling.bands[].days", piece, QT_TRANSLATE_NOOP("ui::words", "Bands: days of wetting"), QT_TRANSLATE_NOOP("ui::words", "from the first to the last, both counted"), "filling.bands[].wet_from filling.bands[].wet_until", "sums"},
    {"filling.days[].date", none, QT_TRANSLATE_NOOP("ui::words", "Days of filling"), QT_TRANSLATE_NOOP("ui::words", "from the start until full, 366 at most"), "filling.start", "sums"},
    {"filling.days[].inflow_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Let in each day"), QT_TRANSLATE_NOOP("ui::words", "inflow, held to what raises the level by no more than the limit"), "filling.inflow_m3_day @works.fill_most_rise_m_per_day", "own"},
    {"filling.days[].lost_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Lost each day"), QT_TRANSLATE_NOOP("ui::words", "ET0 of the month × open water × (1 − cover) × surface + seepage × wet face, no more than there is"), "@water.losses.open_water_kc @water.losses.cover_percent @water.losses.seepage_mm_day", "fao56"},
    {"filling.days[].volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held at the end of each day"), QT_TRANSLATE_NOOP("ui::words", "held before + let in − lost"), "filling.days[].inflow_m3 filling.days[].lost_m3", "sums"},
    {"filling.days[].level_m", metre, QT_TRANSLATE_NOOP("ui::words", "Level at the end of each day"), QT_TRANSLATE_NOOP("ui::words", "h at which V(h) is what is held"), "filling.days[].volume_m3", "exact"},
    {"filling.days[].bare_wall_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Wall above the water each day"), QT_TRANSLATE_NOOP("ui::words", "floor + wall − wet face up to the level"), "tank.wall_m2 filling.days[].level_m", "exact"},
    {"filling.days[].wetting_l", litre, QT_TRANSLATE_NOOP("ui::words", "Water for sacks each day"), QT_TRANSLATE_NOOP("ui::words", "wall above the water still to be wet × litres a day for each m²"), "filling.bands[].area_m2 filling.bands[].wet_until @lining.curing_water_l_per_m2_day", "#lining.curing_water_l_per_m2_day"},
};

constexpr ReckoningEntry kWeather[]{
    {"weather_window.years", year, QT_TRANSLATE_NOOP("ui::words", "Weather years looked at"), QT_TRANSLATE_NOOP("ui::words", "all that there are"), "water.years", "richardson_1981"},
    {"weather_window.heavy_rain_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "Rain in a day that spoils a fresh coat"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@works.heavy_rain_mm", "user"},
    {"weather_window.chosen_week", none, QT_TRANSLATE_NOOP("ui::words", "Week of the first coat, as planned"), QT_TRANSLATE_NOOP("ui::words", "week of its day; weeks count from 1 January"), "schedule[].start", "sums"},
    {"weather_window.best_week", none, QT_TRANSLATE_NOOP("ui::words", "Week with the best chance"), QT_TRANSLATE_NOOP("ui::words", "largest share of undisturbed starts; of equal ones the planned one, else the next after it"), "weather_window.weeks[].undisturbed_share", "own"},
    {"weather_window.best_coat", none, QT_TRANSLATE_NOOP("ui::words", "First coat in that week"), QT_TRANSLATE_NOOP("ui::words", "works begun so that it falls there, with rest days and closed days"), "weather_window.best_week @works.rest_day", "own"},
    {"weather_window.best_start", none, QT_TRANSLATE_NOOP("ui::words", "Start of the works for it"), QT_TRANSLATE_NOOP("ui::words", "planned start moved by as many days as the first coat, then until the coat falls in the week"), "weather_window.best_coat @works.start_date", "own"},
    {"weather_window.weeks[].id", none, QT_TRANSLATE_NOOP("ui::words", "Weeks of the year"), QT_TRANSLATE_NOOP("ui::words", "first day of each"), "weather_window.years", "sums"},
    {"weather_window.weeks[].undisturbed_share", factor, QT_TRANSLATE_NOOP("ui::words", "Share undisturbed, by week"), QT_TRANSLATE_NOOP("ui::words", "start days of the week in all years on which none of the three below happens ÷ all"), "weather_window.weeks[].rain_share weather_window.weeks[].frost_share weather_window.weeks[].heat_share", "own"},
    {"weather_window.weeks[].rain_share", factor, QT_TRANSLATE_NOOP("ui::words", "Share with heavy rain, by week"), QT_TRANSLATE_NOOP("ui::words", "heavy rain on a coat's day or the day after ÷ all"), "weather_window.heavy_rain_mm weather_window.years", "own"},
    {"weather_window.weeks[].frost_share", factor, QT_TRANSLATE_NOOP("ui::words", "Share with frost, by week"), QT_TRANSLATE_NOOP("ui::words", "night at or below 0 °C before a coat or in the 7 days after ÷ all"), "weather_window.years", "own"},
    {"weather_window.weeks[].heat_share", factor, QT_TRANSLATE_NOOP("ui::words", "Share too cold or too hot, by week"), QT_TRANSLATE_NOOP("ui::words", "mean below 5 °C or maximum above 35 °C on a coat's day ÷ all"), "weather_window.years", "own"},
    {"weather_window.drying[].coat", piece, QT_TRANSLATE_NOOP("ui::words", "Coats whose drying is reckoned"), QT_TRANSLATE_NOOP("ui::words", "those in whose month wind was measured"), "@water.climate.months[].wind_m_s", "user"},
    {"weather_window.drying[].air_c", celsius, QT_TRANSLATE_NOOP("ui::words", "Air in the warmest hours"), QT_TRANSLATE_NOOP("ui::words", "mean maximum of the days on which the coat falls"), "weather_window.years weather_window.chosen_week", "richardson_1981"},
    {"weather_window.drying[].humidity_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Humidity in the warmest hours"), QT_TRANSLATE_NOOP("ui::words", "vapour pressure of the day ÷ saturation pressure at the maximum, eq. 11 and 19"), "weather_window.drying[].air_c", "fao56"},
    {"weather_window.drying[].wind_km_h", none, QT_TRANSLATE_NOOP("ui::words", "Wind, km an hour"), QT_TRANSLATE_NOOP("ui::words", "mean wind × 3.6"), "@water.climate.months[].wind_m_s", "user"},
    {"weather_window.drying[].water_lost_kg_m2_h", kg_per_m2_h, QT_TRANSLATE_NOOP("ui::words", "Water lost by the fresh plaster"), QT_TRANSLATE_NOOP("ui::words", "5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T air and plaster in °C, r humidity from 0 to 1, V wind in km an hour"), "weather_window.drying[].air_c weather_window.drying[].humidity_percent weather_window.drying[].wind_km_h", "uno_1998"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> coatsReckonings() {
  return {{"one_go", {}, kOneGo}, {"filling", {}, kFilling}, {"weather", {}, kWeather}};
}

}  // namespace ui::words
