#include "core/exchange/water_json.h"

#include "core/exchange/json_values.h"
#include "core/water/map.h"

#include <atomic>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using water::WaterPlan;

constexpr std::size_t kMapCells = 16;

std::string monthDay(int month, int day) {
  return fmt::format("{:02}-{:02}", month, day);
}

Json days(const std::optional<int>& count) {
  return count ? Json(*count) : Json(nullptr);
}

Json flows(const water::MonthFlows& f) {
  return {{"source_m3", number(f.source)},
          {"roof_m3", number(f.roof)},
          {"ground_m3", number(f.ground)},
          {"rain_m3", number(f.rain)},
          {"evaporation_m3", number(f.evaporation)},
          {"seepage_m3", number(f.seepage)},
          {"spill_m3", number(f.spill)},
          {"beds_m3", number(f.beds)},
          {"animals_m3", number(f.animals)},
          {"people_m3", number(f.people)},
          {"drawn_m3", number(f.drawn)},
          {"unmet_m3", number(f.unmet)},
          {"dry_days", number(f.dry_days)}};
}

Json months(const WaterPlan& plan) {
  Json list = Json::array();
  for (std::size_t m = 0; m < kMonths; ++m) {
    Json month = {{"month", m + 1}};
    month.update(flows(plan.months[m]));
    month["full_lasts_days"] = days(plan.lasts[m].days);
    month["empty_fills_days"] = days(plan.fills[m].days);
    list.push_back(std::move(month));
  }
  return list;
}

Json bed(const water::BedNeed& b) {
  return {{"crop", b.crop},
          {"area_m2", number(b.area_m2)},
          {"planted", monthDay(b.plant_month, b.plant_day)},
          {"ends", monthDay(b.end_month, b.end_day)},
          {"season_days", b.season_days},
          {"efficiency_percent", number(b.efficiency_percent)},
          {"use_mm", number(b.use_mm)},
          {"net_mm", number(b.net_mm)},
          {"gross_m3", number(b.gross_m3)},
          {"peak_l_day", number(b.peak_l_day)}};
}

Json bandDay(const water::BandDay& d) {
  return {{"id", monthDay(d.month + 1, d.day)},
          {"least_m3", number(d.least)},
          {"p10_m3", number(d.p10)},
          {"p50_m3", number(d.p50)},
          {"p90_m3", number(d.p90)},
          {"most_m3", number(d.most)}};
}

Json year(const water::YearResult& y) {
  return {{"dry_days", y.dry_days}, {"short_m3", number(y.short_m3)}, {"spill_m3", number(y.spill_m3)}};
}

Json storage(const water::StoragePoint& p) {
  return {{"full_m3", number(p.full_m3)}, {"years_in_ten", number(p.years_in_ten)}};
}

Json readings(const water::MonthReadings& r) {
  return {{"month", r.month},
          {"count", r.rows.size()},
          {"median_l_per_min", number(r.median_l_per_min)},
          {"least_l_per_min", number(r.least_l_per_min)},
          {"most_l_per_min", number(r.most_l_per_min)},
          {"spread_percent", number(r.spread_percent)},
          {"outlier_rows", r.outliers},
          {"too_quick_rows", r.too_quick}};
}

Json weather(const WaterPlan& plan) {
  return {{"first_month", plan.weather->first_month + 1},
          {"rain_mm", number(plan.rain_mm)},
          {"rain_cv_percent", number(plan.rain_cv_percent)},
          {"et0_penman_monteith_mm", number(plan.et0_penman_mm)},
          {"et0_hargreaves_mm", number(plan.et0_hargreaves_mm)},
          {"years_left_out", plan.weather->years_left_out},
          {"values_filled", plan.weather->values_filled},
          {"days_outside_whole_years", plan.weather->days_outside}};
}

}  // namespace

Json waterJson(const WaterPlan& plan) {
  return {{"years", plan.years},
          {"years_without_dry_day", plan.years_without_dry_day},
          {"years_in_ten", number(plan.years_in_ten)},
          {"days_met_percent", number(plan.days_met_percent)},
          {"volume_met_percent", number(plan.volume_met_percent)},
          {"dry_days_mean", number(plan.dry_days_mean)},
          {"dry_days_worst", plan.dry_days_worst},
          {"short_mean_m3", number(plan.short_mean_m3)},
          {"short_worst_m3", number(plan.short_worst_m3)},
          {"spill_mean_m3", number(plan.spill_mean_m3)},
          {"peak_need_l_day", number(plan.peak_need_l_day)},
          {"bed_area_m2", number(plan.bed_area_m2)},
          {"smallest_full_m3", number(plan.smallest_full_m3)},
          {"most_tried_m3", number(plan.most_tried_m3)},
          {"largest_bed_area_m2", number(plan.largest_bed_area_m2)},
          {"most_tried_area_m2", number(plan.most_tried_area_m2)},
          {"closure", number(plan.closure)},
          {"weather", weather(plan)},
          {"year", flows(plan.year)},
          {"months", months(plan)},
          {"beds", listOf(plan.beds, bed)},
          {"readings", listOf(plan.readings, readings)},
          {"each_year", listOf(plan.each_year, year)},
          {"levels", listOf(plan.band, bandDay)},
          {"storage", listOf(plan.storage, storage)}};
}

Json waterMapJson(const WaterPlan& plan) {
  const std::atomic<bool> never{false};
  const water::ReliabilityMap map =
      water::reliabilityMap(plan.curve, *plan.series, plan.bed_area_m2,
                            water::mapReach(plan.curve.full_m3, plan.bed_area_m2), kMapCells, 1, never);
  Json rows = Json::array();
  for (std::size_t r = 0; r < map.bed_area_m2.size(); ++r) {
    std::vector<double> row;
    for (std::size_t c = 0; c < map.full_m3.size(); ++c) row.push_back(map.at(c, r));
    rows.push_back(numbers(row));
  }
  return {
      {"full_m3", numbers(map.full_m3)}, {"bed_area_m2", numbers(map.bed_area_m2)}, {"years_in_ten", rows}};
}

}  // namespace core::exchange
