#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kBill[]{
    {"cost.total", money, QT_TRANSLATE_NOOP("ui::words", "Cost, all together"), QT_TRANSLATE_NOOP("ui::words", "materials + labour + other + carriage + contingency"), "cost.materials cost.labour cost.other cost.carriage cost.contingency", "sums"},
    {"cost.materials", money, QT_TRANSLATE_NOOP("ui::words", "Materials"), QT_TRANSLATE_NOOP("ui::words", "sum of their amounts"), "cost.lines[].amount", "sums"},
    {"cost.labour", money, QT_TRANSLATE_NOOP("ui::words", "Labour"), QT_TRANSLATE_NOOP("ui::words", "sum of the amounts of labourers and masons"), "cost.lines[].amount", "sums"},
    {"cost.other", money, QT_TRANSLATE_NOOP("ui::words", "Other"), QT_TRANSLATE_NOOP("ui::words", "sum of the amounts of own items"), "cost.lines[].amount", "sums"},
    {"cost.carriage", money, QT_TRANSLATE_NOOP("ui::words", "Carriage"), QT_TRANSLATE_NOOP("ui::words", "sum of all trips"), "cost.lines[].carriage.amount", "sums"},
    {"cost.contingency", money, QT_TRANSLATE_NOOP("ui::words", "Contingency"), QT_TRANSLATE_NOOP("ui::words", "share of all before it"), "cost.materials cost.labour cost.other cost.carriage @prices.contingency_percent", "user"},
    {"cost.own", money, QT_TRANSLATE_NOOP("ui::words", "Given by the household or group"), QT_TRANSLATE_NOOP("ui::words", "sum of the shares given"), "cost.lines[].own", "sums"},
    {"cost.cash", money, QT_TRANSLATE_NOOP("ui::words", "Paid in money"), QT_TRANSLATE_NOOP("ui::words", "total − given"), "cost.total cost.own", "sums"},
    {"cost.per_m3_stored", money, QT_TRANSLATE_NOOP("ui::words", "Cost for each m³ held"), QT_TRANSLATE_NOOP("ui::words", "total ÷ held up to the overflow"), "cost.total tank.full_volume_m3", "sums"},
    {"cost.delivered_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Drawn in the dry months of a mean year"), QT_TRANSLATE_NOOP("ui::words", "sum of what is drawn in those months"), "water.months[].drawn_m3 cost.dry_months[]", "sums"},
    {"cost.dry_months[]", none, QT_TRANSLATE_NOOP("ui::words", "Dry months"), QT_TRANSLATE_NOOP("ui::words", "mean rain below half of ET0"), "water.weather.rain_mm water.weather.et0_penman_monteith_mm", "fao_growing_period"},
    {"cost.annual", money, QT_TRANSLATE_NOOP("ui::words", "Cost a year of the whole tank"), QT_TRANSLATE_NOOP("ui::words", "total × capital recovery factor + upkeep of soil-cement"), "cost.total cost.linings[].recovery_factor cost.linings[].upkeep_year", "capital_recovery"},
    {"cost.per_m3_delivered", money, QT_TRANSLATE_NOOP("ui::words", "Cost a year for each m³ drawn in dry months"), QT_TRANSLATE_NOOP("ui::words", "cost a year ÷ drawn in dry months"), "cost.annual cost.delivered_m3", "sums"},
    {"cost.lines[].quantity", factor, QT_TRANSLATE_NOOP("ui::words", "Quantity of each line"), QT_TRANSLATE_NOOP("ui::words", "as entered; else: what is to be ordered, person-days of labourers and masons, lengths of pipe and fence"), "@prices.items[].quantity materials[].order/cement_bags materials[].order/soil materials[].order/sand materials[].order/stone person_days mason_days", "sums"},
    {"cost.lines[].price", money, QT_TRANSLATE_NOOP("ui::words", "Price of each line"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@prices.items[].price", "user"},
    {"cost.lines[].amount", money, QT_TRANSLATE_NOOP("ui::words", "Amount of each line"), QT_TRANSLATE_NOOP("ui::words", "quantity × price"), "cost.lines[].quantity cost.lines[].price", "sums"},
    {"cost.lines[].own", money, QT_TRANSLATE_NOOP("ui::words", "Given, of each line"), QT_TRANSLATE_NOOP("ui::words", "amount × share given"), "cost.lines[].amount @prices.items[].own_percent", "user"},
    {"cost.lines[].cash", money, QT_TRANSLATE_NOOP("ui::words", "Paid, of each line"), QT_TRANSLATE_NOOP("ui::words", "amount − given"), "cost.lines[].amount cost.lines[].own", "sums"},
    {"cost.lines[].carriage.weight_kg", kilogram, QT_TRANSLATE_NOOP("ui::words", "Weight to carry"), QT_TRANSLATE_NOOP("ui::words", "quantity × weight of one, as entered or usual"), "cost.lines[].quantity @prices.items[].kg_each", "own"},
    {"cost.lines[].carriage.loads", piece, QT_TRANSLATE_NOOP("ui::words", "Loads"), QT_TRANSLATE_NOOP("ui::words", "weight ÷ load, rounded up; bags and sacks carried whole"), "cost.lines[].carriage.weight_kg @prices.porter.load_kg @prices.mule.load_kg @prices.trolley.load_kg", "#prices.mule.load_kg"},
    {"cost.lines[].carriage.loads_per_piece", piece, QT_TRANSLATE_NOOP("ui::words", "Loads for one piece"), QT_TRANSLATE_NOOP("ui::words", "weight of one ÷ load, rounded up: heavier pieces are split"), "@prices.items[].kg_each @prices.porter.load_kg @prices.mule.load_kg @prices.trolley.load_kg", "#prices.porter.load_kg"},
    {"cost.lines[].carriage.days", day, QT_TRANSLATE_NOOP("ui::words", "Days of one carrier"), QT_TRANSLATE_NOOP("ui::words", "loads ÷ trips a day"), "cost.lines[].carriage.loads @prices.porter.trips_per_day @prices.mule.trips_per_day @prices.trolley.trips_per_day", "own"},
    {"cost.lines[].carriage.amount", money, QT_TRANSLATE_NOOP("ui::words", "Cost of the trips"), QT_TRANSLATE_NOOP("ui::words", "loads × price of a trip"), "cost.lines[].carriage.loads @prices.porter.price_per_trip @prices.mule.price_per_trip @prices.trolley.price_per_trip", "user"},
    {"cost.days[].date", none, QT_TRANSLATE_NOOP("ui::words", "Days on which money is needed"), QT_TRANSLATE_NOOP("ui::words", "goods: start of the first task that uses them; wages: days of each task"), "schedule[].start schedule[].finish", "own"},
    {"cost.days[].goods", money, QT_TRANSLATE_NOOP("ui::words", "Money for goods by day"), QT_TRANSLATE_NOOP("ui::words", "cash of goods and their carriage; own items on the first day"), "cost.lines[].cash cost.lines[].carriage.amount", "own"},
    {"cost.days[].wages", money, QT_TRANSLATE_NOOP("ui::words", "Money for wages by day"), QT_TRANSLATE_NOOP("ui::words", "cash of each task's person-days, spread evenly over its days"), "labour[].days cost.lines[].cash", "own"},
    {"cost.days[].together", money, QT_TRANSLATE_NOOP("ui::words", "Money so far"), QT_TRANSLATE_NOOP("ui::words", "sum up to and with the day, without contingency"), "cost.days[].goods cost.days[].wages", "sums"},
};

constexpr ReckoningEntry kLinings[]{
    {"cost.linings[].price", money, QT_TRANSLATE_NOOP("ui::words", "Price of each lining alone"), QT_TRANSLATE_NOOP("ui::words", "offer × 1, face or volume held; soil-cement without an offer: its materials, carriage and person-days × (1 + contingency)"), "@prices.linings[].price @prices.linings[].per tank.floor_m2 tank.wall_m2 tank.full_volume_m3 @prices.contingency_percent", "user"},
    {"cost.linings[].earth", money, QT_TRANSLATE_NOOP("ui::words", "Digging and platform for it"), QT_TRANSLATE_NOOP("ui::words", "person-days of topsoil, platform, pit, spoil and trimming × price of a labourer × (1 + contingency); none for a moulded tank"), "labour[].days cost.lines[].price @prices.contingency_percent", "sums"},
    {"cost.linings[].capital", money, QT_TRANSLATE_NOOP("ui::words", "Capital"), QT_TRANSLATE_NOOP("ui::words", "price + digging and platform"), "cost.linings[].price cost.linings[].earth", "sums"},
    {"cost.linings[].life_years", year, QT_TRANSLATE_NOOP("ui::words", "Life"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@prices.linings[].life_years", "user"},
    {"cost.linings[].recovery_factor", factor, QT_TRANSLATE_NOOP("ui::words", "Capital recovery factor"), QT_TRANSLATE_NOOP("ui::words", "i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n without interest"), "@prices.discount_percent cost.linings[].life_years", "capital_recovery"},
    {"cost.linings[].upkeep_year", money, QT_TRANSLATE_NOOP("ui::words", "Upkeep a year"), QT_TRANSLATE_NOOP("ui::words", "share of the price"), "cost.linings[].price @prices.linings[].upkeep_percent", "user"},
    {"cost.linings[].annual", money, QT_TRANSLATE_NOOP("ui::words", "Cost a year"), QT_TRANSLATE_NOOP("ui::words", "capital × factor + upkeep"), "cost.linings[].capital cost.linings[].recovery_factor cost.linings[].upkeep_year", "capital_recovery"},
    {"cost.linings[].annual_per_m3", money, QT_TRANSLATE_NOOP("ui::words", "Cost a year for each m³ held"), QT_TRANSLATE_NOOP("ui::words", "cost a year ÷ held up to the overflow"), "cost.linings[].annual tank.full_volume_m3", "sums"},
};

constexpr ReckoningEntry kRanges[]{
    {"ranges.draws", piece, QT_TRANSLATE_NOOP("ui::words", "Draws"), QT_TRANSLATE_NOOP("ui::words", "as entered"), "@ranges.draws @ranges.seed", "user"},
    {"ranges.spreads[].typical", none, QT_TRANSLATE_NOOP("ui::words", "With every input as it stands"), QT_TRANSLATE_NOOP("ui::words", "as in the plan"), "person_days cost.total materials[].order/cement_bags", "sums"},
    {"ranges.spreads[].p10", none, QT_TRANSLATE_NOOP("ui::words", "One draw in ten below (P10)"), QT_TRANSLATE_NOOP("ui::words", "each input triangular between low, 0 and high about its value; draws sorted, least that a tenth does not exceed"), "@ranges.inputs[].low_percent @ranges.inputs[].high_percent ranges.draws", "own"},
    {"ranges.spreads[].p50", none, QT_TRANSLATE_NOOP("ui::words", "Middle of the draws (P50)"), QT_TRANSLATE_NOOP("ui::words", "draws sorted, least that half does not exceed"), "ranges.draws", "own"},
    {"ranges.spreads[].p90", none, QT_TRANSLATE_NOOP("ui::words", "Nine draws in ten below (P90)"), QT_TRANSLATE_NOOP("ui::words", "draws sorted, least that nine tenths do not exceed"), "ranges.draws", "own"},
    {"ranges.spreads[].mean", none, QT_TRANSLATE_NOOP("ui::words", "Mean of the draws"), QT_TRANSLATE_NOOP("ui::words", "sum ÷ draws"), "ranges.draws", "sums"},
    {"ranges.spreads[].least", none, QT_TRANSLATE_NOOP("ui::words", "Least of the draws"), QT_TRANSLATE_NOOP("ui::words", "smallest"), "ranges.draws", "sums"},
    {"ranges.spreads[].most", none, QT_TRANSLATE_NOOP("ui::words", "Most of the draws"), QT_TRANSLATE_NOOP("ui::words", "largest"), "ranges.draws", "sums"},
    {"ranges.spreads[].drivers[].share", factor, QT_TRANSLATE_NOOP("ui::words", "Share of the spread that each input drives"), QT_TRANSLATE_NOOP("ui::words", "squared correlation ÷ sum of the squares"), "ranges.spreads[].drivers[].correlation", "own"},
    {"ranges.spreads[].drivers[].correlation", factor, QT_TRANSLATE_NOOP("ui::words", "Correlation with each input"), QT_TRANSLATE_NOOP("ui::words", "Pearson's, over all draws"), "ranges.draws", "own"},
};

constexpr ReckoningEntry kOptions[]{
    {"options[].full_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Holds, filled to the overflow"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "options[].length_m options[].width_m options[].depth_m", "exact"},
    {"options[].usable_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Usable water"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "options[].full_volume_m3 @tank.dead_depth_m", "exact"},
    {"options[].pit_volume_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Pit to dig"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "options[].length_m options[].width_m options[].depth_m", "exact"},
    {"options[].length_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear length at the floor"), QT_TRANSLATE_NOOP("ui::words", "as the option has it"), "@tank.length_m", "user"},
    {"options[].width_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear width at the floor"), QT_TRANSLATE_NOOP("ui::words", "as the option has it"), "@tank.width_m", "user"},
    {"options[].depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Clear depth"), QT_TRANSLATE_NOOP("ui::words", "as the option has it"), "@tank.depth_m", "user"},
    {"options[].cement_bags", piece, QT_TRANSLATE_NOOP("ui::words", "Bags of cement"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "materials[].order/cement_bags", "sums"},
    {"options[].sand_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Sand to order"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "materials[].order/sand", "sums"},
    {"options[].soil_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Soil to dig and sieve"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "materials[].order/soil", "sums"},
    {"options[].stone_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Stone to bring"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "materials[].order/stone", "sums"},
    {"options[].person_days", person_day, QT_TRANSLATE_NOOP("ui::words", "Work"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "person_days", "sums"},
    {"options[].people_on_coat", piece, QT_TRANSLATE_NOOP("ui::words", "People on a coat, at most"), QT_TRANSLATE_NOOP("ui::words", "largest need of the coats"), "coat_crews[].needed", "own"},
    {"options[].start", none, QT_TRANSLATE_NOOP("ui::words", "Works begin"), QT_TRANSLATE_NOOP("ui::words", "earliest start of a task"), "schedule[].start", "kelley_walker_1959"},
    {"options[].finish", none, QT_TRANSLATE_NOOP("ui::words", "Works end"), QT_TRANSLATE_NOOP("ui::words", "latest end of a task, planting left out"), "schedule[].finish", "kelley_walker_1959"},
    {"options[].cost", money, QT_TRANSLATE_NOOP("ui::words", "Cost, all together"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank; none while prices are missing"), "cost.total", "sums"},
    {"options[].cash", money, QT_TRANSLATE_NOOP("ui::words", "Paid in money"), QT_TRANSLATE_NOOP("ui::words", "planned like this tank"), "cost.cash", "sums"},
    {"options[].per_m3_stored", money, QT_TRANSLATE_NOOP("ui::words", "Cost for each m³ held"), QT_TRANSLATE_NOOP("ui::words", "cost ÷ held up to the overflow"), "options[].cost options[].full_volume_m3", "sums"},
    {"options[].years_in_ten", factor, QT_TRANSLATE_NOOP("ui::words", "Years in ten with water all year"), QT_TRANSLATE_NOOP("ui::words", "same weather years"), "water.years", "own"},
    {"options[].dry_days_mean", factor, QT_TRANSLATE_NOOP("ui::words", "Days short of water in a mean year"), QT_TRANSLATE_NOOP("ui::words", "same weather years"), "water.years", "own"},
    {"options[].delivered_m3", cubic_metre, QT_TRANSLATE_NOOP("ui::words", "Drawn in the dry months of a mean year"), QT_TRANSLATE_NOOP("ui::words", "same weather years"), "cost.dry_months[] water.years", "sums"},
    {"options[].stops", piece, QT_TRANSLATE_NOOP("ui::words", "Findings that say stop"), QT_TRANSLATE_NOOP("ui::words", "counted"), "@tank.depth_m", "sums"},
    {"options[].cautions", piece, QT_TRANSLATE_NOOP("ui::words", "Findings that ask for caution"), QT_TRANSLATE_NOOP("ui::words", "counted"), "@tank.depth_m", "sums"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> moneyReckonings() {
  return {{"bill", {}, kBill}, {"linings", {}, kLinings}, {"ranges", {}, kRanges}, {"options", {}, kOptions}};
}

}  // namespace ui::words
