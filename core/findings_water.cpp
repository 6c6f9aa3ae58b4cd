#include "core/finding_list.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace core {
namespace {

// Thresholds; sources stand beside the findings they raise.
constexpr int kWantedYears = 10;              // own: fewer weather years say little of one bad year in ten
constexpr double kFlowAgreesWithin = 0.1;     // own: share by which entered flow and readings may differ
constexpr double kSpreadAgreesWithin = 0.25;  // own: share by which the spread of made years may differ
constexpr double kEt0AgreesWithin = 0.05;     // own: share by which the two methods may differ in a year

bool hasSupply(const Water& water) {
  const auto& months = water.source.months;
  return std::any_of(months.begin(), months.end(),
                     [](const SourceMonth& m) { return m.flow_l_per_min > 0 && m.hours_per_day > 0; }) ||
         water.roof.area_m2 * water.roof.runoff > 0 || water.ground.area_m2 * water.ground.runoff > 0;
}

void inputs(const Project& project, FindingList& out) {
  const Water& water = *project.water;
  if (!project.site.latitude_deg) out.caution("water_latitude_unknown", {}, "fao56", "site.latitude_deg");
  if (!water::isClimateKnown(water.climate))
    out.caution("water_climate_unknown", {}, "user", "water.climate.months[0].rain_mm");
  if (!project.site.elevation_m) out.note("water_elevation_unknown", {}, "fao56", "site.elevation_m");
  if (!hasSupply(water)) out.caution("water_no_supply", {}, "user", "water.source.months[0].flow_l_per_min");
  if (water.people > 0)
    out.caution("water_not_for_drinking", {value("people", water.people, Unit::person)}, "own",
                "water.people");
}

void readings(const Water& water, FindingList& out) {
  for (const water::MonthReadings& month : water::readingsByMonth(water.source.readings)) {
    const auto field = [](std::size_t row) { return fmt::format("water.source.readings[{}].seconds", row); };
    if (!month.enough)
      out.note("water_readings_few",
               {value("month", month.month), value("count", static_cast<double>(month.rows.size()))},
               "volumetric_method", field(month.rows.front()));
    for (const std::size_t row : month.outliers)
      out.note("water_reading_outlier",
               {value("row", static_cast<double>(row)),
                value("flow_l_per_min", water::flowOf(water.source.readings[row]), Unit::litre_per_minute),
                value("median_l_per_min", month.median_l_per_min, Unit::litre_per_minute)},
               "iglewicz_hoaglin", field(row));
    for (const std::size_t row : month.too_quick)
      out.note("water_reading_too_quick",
               {value("row", static_cast<double>(row)),
                value("seconds", water.source.readings[row].seconds, Unit::second)},
               "volumetric_method", field(row));
    const auto at = static_cast<std::size_t>(month.month - 1);
    const double entered = water.source.months[at].flow_l_per_min;
    if (std::abs(entered - month.median_l_per_min) > kFlowAgreesWithin * month.median_l_per_min)
      out.caution("water_flow_differs_from_readings",
                  {value("month", month.month), value("flow_l_per_min", entered, Unit::litre_per_minute),
                   value("median_l_per_min", month.median_l_per_min, Unit::litre_per_minute)},
                  "user", fmt::format("water.source.months[{}].flow_l_per_min", at));
  }
}

void record(const Water& water, const water::WaterPlan& plan, FindingList& out) {
  const water::Weather& weather = *plan.weather;
  const bool is_record = water.climate.kind == ClimateKind::daily;
  if (static_cast<int>(plan.years) < kWantedYears)
    out.caution(is_record ? "water_record_short" : "water_years_few",
                {value("years", static_cast<double>(plan.years)), value("wanted", kWantedYears)}, "own",
                is_record ? "water.climate.kind" : "water.climate.years");
  if (!weather.years_left_out.empty())
    out.note("water_record_years_left_out",
             {value("years", static_cast<double>(weather.years_left_out.size())),
              value("first", weather.years_left_out.front())},
             "user", "water.climate.gaps");
  if (weather.values_filled > 0)
    out.note("water_record_filled", {value("values", static_cast<double>(weather.values_filled))}, "own",
             "water.climate.gaps");
  if (!is_record && water.climate.rain_cv_percent &&
      std::abs(plan.rain_cv_percent - *water.climate.rain_cv_percent) >
          kSpreadAgreesWithin * *water.climate.rain_cv_percent)
    out.note("water_rain_spread_differs",
             {value("rain_cv_percent", *water.climate.rain_cv_percent, Unit::percent),
              value("made_percent", plan.rain_cv_percent, Unit::percent)},
             "richardson_1981", "water.climate.rain_cv_percent");
  if (!is_record && !water.climate.rain_cv_percent)
    out.note("water_rain_spread_unknown", {value("rain_cv_percent", plan.rain_cv_percent, Unit::percent)},
             "richardson_1981", "water.climate.rain_cv_percent");
}

void target(const Water& water, const water::WaterPlan& plan, FindingList& out) {
  if (plan.years_in_ten >= water.target_years_in_ten) return;
  std::vector values{value("years_in_ten", plan.years_in_ten), value("target", water.target_years_in_ten),
                     value("most_tried_m3", plan.most_tried_m3, Unit::cubic_metre)};
  if (plan.smallest_full_m3)
    values.push_back(value("smallest_full_m3", *plan.smallest_full_m3, Unit::cubic_metre));
  if (plan.largest_bed_area_m2)
    values.push_back(value("largest_bed_area_m2", *plan.largest_bed_area_m2, Unit::square_metre));
  out.caution("water_target_missed", std::move(values), "own", "water.target_years_in_ten");
}

void answers(const Water& water, const water::WaterPlan& plan, FindingList& out) {
  if (plan.year.need() <= 0 && plan.bed_area_m2 <= 0) out.note("water_no_need", {}, "user", "water.people");
  target(water, plan, out);
  double most = 0;
  for (const water::BandDay& day : plan.band) most = std::max(most, day.most);
  constexpr double kFull = 0.999;
  if (most < kFull * plan.curve.full_m3)
    out.caution(
        "water_never_full",
        {value("full_m3", plan.curve.full_m3, Unit::cubic_metre), value("most_m3", most, Unit::cubic_metre)},
        "exact", "tank.depth_m");
  const double penman = plan.et0_penman_mm;
  if (std::abs(plan.et0_hargreaves_mm - penman) > kEt0AgreesWithin * penman)
    out.note("water_et0_methods_differ",
             {value("penman_monteith_mm", penman, Unit::millimetre),
              value("hargreaves_mm", plan.et0_hargreaves_mm, Unit::millimetre)},
             "fao56", "water.climate.et0_method");
}

}  // namespace

void waterFindings(const Project& project, const Plan& plan, FindingList& out) {
  if (!project.water) return;
  inputs(project, out);
  readings(*project.water, out);
  if (!plan.water && project.site.latitude_deg && water::isClimateKnown(project.water->climate))
    out.caution("water_record_no_whole_year", {}, "user", "water.climate.gaps");
  if (!plan.water) return;
  record(*project.water, *plan.water, out);
  answers(*project.water, *plan.water, out);
}

}  // namespace core
