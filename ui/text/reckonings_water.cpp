#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kWater[]{
    {"water.years", year, QT_TRANSLATE_NOOP("ui::words", "Weather years"), QT_TRANSLATE_NOOP("ui::words", "made from the monthly means (as many as entered), or the whole years of the daily record"), "@water.climate.kind @water.climate.years @water.climate.seed", "richardson_1981"},
    {"water.years_without_dry_day", piece, QT_TRANSLATE_NOOP("ui::words", "Years with water all year"), QT_TRANSLATE_NOOP("ui::words", "years without a day on which less than 99.9 % of the need could be drawn"), "water.each_year[].dry_days", "own"},
    {"water.years_in_ten", factor, QT_TRANSLATE_NOOP("ui::words", "Years in ten with water all year"), QT_TRANSLATE_NOOP("ui::words", "10 × years with water all year ÷ years"), "water.years_without_dry_day water.years", "sums"},
    {"water.days_met_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Days on which the need was met"), QT_TRANSLATE_NOOP("ui::words", "100 × (1 − days short of water ÷ days with a need)"), "water.each_year[].dry_days water.years", "sums"},
    {"water.volume_met_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Share of the need that was met"), QT_TRANSLATE_NOOP("ui::words", "100 × drawn ÷ needed"), "water.year.drawn_m3 water.year.unmet_m3", "sums"},
    {"water.dry_days_mean", factor, QT_TRANSLATE_NOOP("ui::words", "Days short of water in a mean year"), QT_TRANSLATE_NOOP("ui::words", "sum over the years ÷ years"), "water.each_year[].dry_days water.years", "sums"},
    {"water.dry_days_worst", piece, QT_TRANSLATE_NOOP("ui::words", "Days short of water in the worst year"), QT_TRANSLATE_NOOP("ui::words", "largest of the years"), "water.each_year[].dry_days", "sums"},
    {"water.short_mean_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Lacking in a mean year"), QT_TRANSLATE_NOOP("ui::words", "need that could not be drawn, mean of the years"), "water.each_year[].short_m3", "sums"},
    {"water.short_worst_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Lacking in the worst year"), QT_TRANSLATE_NOOP("ui::words", "largest of the years"), "water.each_year[].short_m3", "sums"},
    {"water.spill_mean_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Run over in a mean year"), QT_TRANSLATE_NOOP("ui::words", "mean of the years"), "water.each_year[].spill_m3", "sums"},
    {"water.peak_need_l_day", litre, QT_TRANSLATE_NOOP("ui::words", "Largest need of a day"), QT_TRANSLATE_NOOP("ui::words", "beds + animals + people, largest day of each year, mean of the years"), "water.beds[].peak_l_day @water.animals[].head @water.people @water.l_per_person_day", "sums"},
    {"water.bed_area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Beds together"), QT_TRANSLATE_NOOP("ui::words", "sum of the beds"), "@water.beds[].area_m2", "user"},
    {"water.smallest_full_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Smallest tank that meets the target"), QT_TRANSLATE_NOOP("ui::words", "plan made larger or smaller at the same depth and batter, every size run through all years; least that meets the target"), "@water.target_years_in_ten water.most_tried_m3", "own"},
    {"water.most_tried_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Largest tank tried"), QT_TRANSLATE_NOOP("ui::words", "200 m³, or reach of the curve where that is more"), "tank.full_volume_m3", "own"},
    {"water.largest_bed_area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Largest beds that meet the target"), QT_TRANSLATE_NOOP("ui::words", "all beds grown alike, every area run through all years; largest up to which the target is met"), "@water.target_years_in_ten water.most_tried_area_m2", "own"},
    {"water.most_tried_area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Largest beds tried"), QT_TRANSLATE_NOOP("ui::words", "10 × the beds"), "water.bed_area_m2", "own"},
    {"water.closure", factor, QT_TRANSLATE_NOOP("ui::words", "Error of the water balance"), QT_TRANSLATE_NOOP("ui::words", "(start + supply + rain − evaporation − seepage − drawn − spill − end) ÷ (start + supply + rain)"), "water.year.rain_m3 water.year.evaporation_m3 water.year.drawn_m3", "sums"},
    {"water.weather.first_month", piece, QT_TRANSLATE_NOOP("ui::words", "Weather year begins with month"), QT_TRANSLATE_NOOP("ui::words", "month with most rain, so that no dry season is cut in two"), "@water.climate.months[].rain_mm", "own"},
    {"water.weather.rain_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "Rain in a mean year"), QT_TRANSLATE_NOOP("ui::words", "sum of all days ÷ years"), "@water.climate.months[].rain_mm water.years", "sums"},
    {"water.weather.rain_cv_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Spread of the yearly rain"), QT_TRANSLATE_NOOP("ui::words", "standard deviation ÷ mean of the weather years"), "water.weather.rain_mm @water.climate.rain_cv_percent", "sums"},
    {"water.weather.et0_penman_monteith_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "ET0 of a mean year, Penman-Monteith"), QT_TRANSLATE_NOOP("ui::words", "(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) each day, eq. 6; what was not measured estimated by eq. 48 and 50, wind 2 m/s"), "@site.latitude_deg @site.elevation_m @water.climate.months[].t_min_c @water.climate.months[].t_max_c @water.climate.months[].humidity_percent @water.climate.months[].wind_m_s @water.climate.months[].sun_hours @water.climate.radiation_factor", "fao56"},
    {"water.weather.et0_hargreaves_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "ET0 of a mean year, Hargreaves"), QT_TRANSLATE_NOOP("ui::words", "0.0023 (T + 17.8) √(Tmax − Tmin) Ra each day, eq. 52, Ra in mm"), "@site.latitude_deg @water.climate.months[].t_min_c @water.climate.months[].t_max_c", "hargreaves_1985"},
    {"water.weather.years_left_out[]", none, QT_TRANSLATE_NOOP("ui::words", "Years left out of the record"), QT_TRANSLATE_NOOP("ui::words", "years with gaps, when gaps are left out"), "@water.climate.gaps", "user"},
    {"water.weather.values_filled", piece, QT_TRANSLATE_NOOP("ui::words", "Values put in for gaps"), QT_TRANSLATE_NOOP("ui::words", "taken from the nearest year"), "@water.climate.gaps", "own"},
    {"water.weather.days_outside_whole_years", piece, QT_TRANSLATE_NOOP("ui::words", "Days outside whole years"), QT_TRANSLATE_NOOP("ui::words", "days of the record before the first and after the last whole year"), "@water.climate.kind", "sums"},
    {"water.months[].month", none, QT_TRANSLATE_NOOP("ui::words", "Months"), QT_TRANSLATE_NOOP("ui::words", "January first"), "@water.climate.kind", "sums"},
    {"water.months[].full_lasts_days", piece, QT_TRANSLATE_NOOP("ui::words", "A full tank lasts, from the first of the month, days"), QT_TRANSLATE_NOOP("ui::words", "nothing flows in, no rain on it; days to the first day short of water, middle of all years"), "tank.full_volume_m3 water.peak_need_l_day water.years", "own"},
    {"water.months[].empty_fills_days", piece, QT_TRANSLATE_NOOP("ui::words", "An empty tank fills, from the first of the month, days"), QT_TRANSLATE_NOOP("ui::words", "nothing drawn; days until full, middle of all years"), "tank.full_volume_m3 water.years", "own"},
    {"water.beds[].area_m2", square_metre, QT_TRANSLATE_NOOP("ui::words", "Area of each bed"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@water.beds[].area_m2", "user"},
    {"water.beds[].planted", none, QT_TRANSLATE_NOOP("ui::words", "Planted"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@water.beds[].plant_month @water.beds[].plant_day", "user"},
    {"water.beds[].ends", none, QT_TRANSLATE_NOOP("ui::words", "Season ends"), QT_TRANSLATE_NOOP("ui::words", "planted + lengths of the four stages − 1 day"), "water.beds[].season_days", "fao56_table_11"},
    {"water.beds[].season_days", piece, QT_TRANSLATE_NOOP("ui::words", "Days of the season"), QT_TRANSLATE_NOOP("ui::words", "sum of the four stages of the crop"), "@water.crops[].ini_days @water.crops[].dev_days @water.crops[].mid_days @water.crops[].late_days", "fao56_table_11"},
    {"water.beds[].efficiency_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Share that reaches the roots"), QT_TRANSLATE_NOOP("ui::words", "as entered, else usual for the method"), "@water.beds[].efficiency_percent @water.beds[].method", "user?memory"},
    {"water.beds[].use_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "Use of the crop in a season"), QT_TRANSLATE_NOOP("ui::words", "sum of Kc × ET0, Kc from stage to stage by eq. 66, adjusted to wind and humidity by eq. 62 and 65; mean of the years"), "@water.beds[].crop water.weather.et0_penman_monteith_mm water.weather.et0_hargreaves_mm @water.climate.et0_method", "fao56_table_12"},
    {"water.beds[].net_mm", millimetre, QT_TRANSLATE_NOOP("ui::words", "What rain does not bring"), QT_TRANSLATE_NOOP("ui::words", "root zone as a bucket: dried by the use, wetted by rain; brought back each day to what the crop bears: p × soil water × root depth (eq. 82 to 85)"), "water.beds[].use_mm @water.soil_water_mm_per_m", "fao56_table_22"},
    {"water.beds[].gross_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "To be drawn for each bed in a year"), QT_TRANSLATE_NOOP("ui::words", "net × area ÷ share that reaches the roots"), "water.beds[].net_mm water.beds[].area_m2 water.beds[].efficiency_percent", "sums"},
    {"water.beds[].peak_l_day", litre, QT_TRANSLATE_NOOP("ui::words", "Largest need of a day for each bed"), QT_TRANSLATE_NOOP("ui::words", "largest day of each year, mean of the years"), "water.beds[].net_mm water.beds[].area_m2 water.beds[].efficiency_percent", "sums"},
    {"water.each_year[].dry_days", piece, QT_TRANSLATE_NOOP("ui::words", "Days short of water, year by year"), QT_TRANSLATE_NOOP("ui::words", "days on which less than 99.9 % of the need could be drawn"), "water.years", "own"},
    {"water.each_year[].short_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Lacking, year by year"), QT_TRANSLATE_NOOP("ui::words", "need − drawn"), "water.years", "sums"},
    {"water.each_year[].spill_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Run over, year by year"), QT_TRANSLATE_NOOP("ui::words", "what is above full at the end of a day"), "water.years tank.full_volume_m3", "sums"},
    {"water.levels[].id", none, QT_TRANSLATE_NOOP("ui::words", "Days of the year"), QT_TRANSLATE_NOOP("ui::words", "from the first day of the weather year, 29 February left out"), "water.weather.first_month", "sums"},
    {"water.levels[].least_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by day: least of all years"), QT_TRANSLATE_NOOP("ui::words", "daily balance of all years, sorted"), "water.years", "sums"},
    {"water.levels[].p10_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by day: one year in ten below"), QT_TRANSLATE_NOOP("ui::words", "straight between neighbours of the sorted years"), "water.years", "sums"},
    {"water.levels[].p50_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by day: middle of all years"), QT_TRANSLATE_NOOP("ui::words", "straight between neighbours of the sorted years"), "water.years", "sums"},
    {"water.levels[].p90_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by day: nine years in ten below"), QT_TRANSLATE_NOOP("ui::words", "straight between neighbours of the sorted years"), "water.years", "sums"},
    {"water.levels[].most_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Held by day: most of all years"), QT_TRANSLATE_NOOP("ui::words", "daily balance of all years, sorted"), "water.years", "sums"},
    {"water.storage[].full_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Sizes tried"), QT_TRANSLATE_NOOP("ui::words", "even steps at the same depth and batter"), "tank.full_volume_m3", "own"},
    {"water.storage[].years_in_ten", factor, QT_TRANSLATE_NOOP("ui::words", "Years in ten with water all year, by size"), QT_TRANSLATE_NOOP("ui::words", "every size run through all years"), "water.storage[].full_m3 water.years", "own"},
    {"water.map.full_m3[]", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Map: sizes"), QT_TRANSLATE_NOOP("ui::words", "even steps, up to about 2.5 times this tank; see the map itself"), "tank.full_volume_m3", "own"},
    {"water.map.bed_area_m2[]", square_metre, QT_TRANSLATE_NOOP("ui::words", "Map: beds"), QT_TRANSLATE_NOOP("ui::words", "even steps, up to about 2.5 times these beds; see the map itself"), "water.bed_area_m2", "own"},
    {"water.map.years_in_ten[][]", factor, QT_TRANSLATE_NOOP("ui::words", "Map: years in ten with water all year"), QT_TRANSLATE_NOOP("ui::words", "each size with each area run through all years; see the map itself"), "water.years", "own"},
};

constexpr ReckoningEntry kWater2[]{
    {"source_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "tap or spring"), QT_TRANSLATE_NOOP("ui::words", "flow × hours a day × 60"), "@water.source.months[].flow_l_per_min @water.source.months[].hours_per_day", "user"},
    {"roof_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "runoff of the roof"), QT_TRANSLATE_NOOP("ui::words", "rain × area × share that runs off, less the first flush of a wet spell"), "@water.roof.area_m2 @water.roof.runoff @water.roof.first_flush_mm water.weather.rain_mm", "#water.roof.runoff"},
    {"ground_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "runoff of the ground"), QT_TRANSLATE_NOOP("ui::words", "rain × area × share that runs off, less the first flush of a wet spell"), "@water.ground.area_m2 @water.ground.runoff @water.ground.first_flush_mm water.weather.rain_mm", "#water.ground.runoff"},
    {"rain_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "rain on the tank"), QT_TRANSLATE_NOOP("ui::words", "rain × opening at the rim"), "water.weather.rain_mm tank.brim_area_m2", "sums"},
    {"evaporation_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "evaporation"), QT_TRANSLATE_NOOP("ui::words", "ET0 × open water × (1 − cover) × water surface of the day"), "@water.losses.open_water_kc @water.losses.cover_percent @water.climate.et0_method water.weather.et0_penman_monteith_mm water.weather.et0_hargreaves_mm", "fao56"},
    {"seepage_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "seepage"), QT_TRANSLATE_NOOP("ui::words", "seepage a day × wet face of the day"), "@water.losses.seepage_mm_day tank.floor_m2 tank.wall_m2", "#water.losses.seepage_mm_day"},
    {"spill_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "run over"), QT_TRANSLATE_NOOP("ui::words", "what is above full at the end of a day"), "tank.full_volume_m3", "sums"},
    {"beds_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "need of the beds"), QT_TRANSLATE_NOOP("ui::words", "net need × area ÷ share that reaches the roots"), "water.beds[].net_mm water.beds[].area_m2 water.beds[].efficiency_percent", "fao56"},
    {"animals_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "need of the animals"), QT_TRANSLATE_NOOP("ui::words", "head × litres a day, as entered or usual for the kind"), "@water.animals[].kind @water.animals[].head @water.animals[].l_per_head_day", "livestock_needs"},
    {"people_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "need of people"), QT_TRANSLATE_NOOP("ui::words", "people × litres a day"), "@water.people @water.l_per_person_day", "#water.l_per_person_day"},
    {"drawn_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "drawn"), QT_TRANSLATE_NOOP("ui::words", "need, no more than what is held over the dead depth"), ".beds_m3 .animals_m3 .people_m3 tank.dead_volume_m3", "sums"},
    {"unmet_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "lacking"), QT_TRANSLATE_NOOP("ui::words", "need − drawn"), ".beds_m3 .animals_m3 .people_m3 .drawn_m3", "sums"},
    {"dry_days", factor, QT_TRANSLATE_NOOP("ui::words", "days short of water"), QT_TRANSLATE_NOOP("ui::words", "days on which less than 99.9 % of the need could be drawn, mean of the years"), "water.each_year[].dry_days water.years", "own"},
};

constexpr ReckoningPlace kWater2Places[]{
    {"water.year.", QT_TRANSLATE_NOOP("ui::words", "Mean year")},
    {"water.months[].", QT_TRANSLATE_NOOP("ui::words", "By month")},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> waterReckonings() {
  return {{"water", {}, kWater}, {"water", kWater2Places, kWater2}};
}

}  // namespace ui::words
