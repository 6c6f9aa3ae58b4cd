#include "core/water/water_plan.h"

#include "core/water/answers.h"
#include "core/water/day_parts.h"
#include "core/water/spells.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace core::water {
namespace {

constexpr double kYears = 10;
constexpr double kPercent = 100;
constexpr double kLitresPerM3 = 1000;

using Years = std::vector<std::size_t>;

/// Calls `day(d, year)` for each day of each year.
template <class Visit>
void eachDay(const Years& year_start, Visit day) {
  for (std::size_t y = 0; y + 1 < year_start.size(); ++y) {
    for (std::size_t d = year_start[y]; d < year_start[y + 1]; ++d) day(d, y);
  }
}

double sum(const std::vector<float>& column) {
  return std::accumulate(column.begin(), column.end(), 0.0);
}

std::vector<YearResult> eachYear(const Run& run, const Years& year_start) {
  std::vector<YearResult> years(year_start.size() - 1);
  eachDay(year_start, [&](std::size_t d, std::size_t y) {
    years[y].dry_days += run.dry[d];
    years[y].short_m3 += run.unmet_m3[d];
    years[y].spill_m3 += run.spill_m3[d];
  });
  return years;
}

void addYears(WaterPlan& plan, const Run& run) {
  plan.each_year = eachYear(run, plan.series->year_start);
  const auto years = static_cast<double>(plan.each_year.size());
  for (const YearResult& year : plan.each_year) {
    plan.years_without_dry_day += year.dry_days == 0 ? 1 : 0;
    plan.dry_days_mean += year.dry_days / years;
    plan.dry_days_worst = std::max(plan.dry_days_worst, year.dry_days);
    plan.short_mean_m3 += year.short_m3 / years;
    plan.short_worst_m3 = std::max(plan.short_worst_m3, year.short_m3);
    plan.spill_mean_m3 += year.spill_m3 / years;
  }
  plan.years_in_ten = kYears * plan.years_without_dry_day / years;
}

/// Shares of the days and of the volume needed that were met; all of them when nothing is needed.
void addShares(WaterPlan& plan, const Run& run) {
  const DaySeries& series = *plan.series;
  double needing = 0;
  double dry = 0;
  std::vector<float> need(series.days());
  for (std::size_t d = 0; d < need.size(); ++d) {
    need[d] = series.beds_m3[d] + series.household_m3[d];
    needing += need[d] > 0 ? 1 : 0;
    dry += run.dry[d];
  }
  const double needed = run.totals.drawn + run.totals.unmet;
  plan.days_met_percent = needing > 0 ? kPercent * (1 - dry / needing) : kPercent;
  plan.volume_met_percent = needed > 0 ? kPercent * run.totals.drawn / needed : kPercent;
  plan.peak_need_l_day = kLitresPerM3 * meanPeak(need, series.year_start);
}

MonthFlows dayFlows(const Run& run, const DayParts& parts, std::size_t d) {
  return {.source = parts.source[d],
          .roof = parts.roof[d],
          .ground = parts.ground[d],
          .rain = run.rain_m3[d],
          .evaporation = run.evaporation_m3[d],
          .seepage = run.seepage_m3[d],
          .spill = run.spill_m3[d],
          .beds = parts.beds[d],
          .animals = parts.animals,
          .people = parts.people,
          .drawn = run.drawn_m3[d],
          .unmet = run.unmet_m3[d],
          .dry_days = static_cast<double>(run.dry[d])};
}

void add(MonthFlows& to, const MonthFlows& from, double share) {
  for (double MonthFlows::*member :
       {&MonthFlows::source, &MonthFlows::roof, &MonthFlows::ground, &MonthFlows::rain,
        &MonthFlows::evaporation, &MonthFlows::seepage, &MonthFlows::spill, &MonthFlows::beds,
        &MonthFlows::animals, &MonthFlows::people, &MonthFlows::drawn, &MonthFlows::unmet,
        &MonthFlows::dry_days})
    to.*member += from.*member * share;
}

void addMonths(WaterPlan& plan, const Run& run, const DayParts& parts) {
  const double share = 1 / static_cast<double>(plan.years);
  for (std::size_t d = 0; d < plan.weather->days(); ++d)
    add(plan.months.at(plan.weather->month[d]), dayFlows(run, parts, d), share);
  for (const MonthFlows& month : plan.months) add(plan.year, month, 1);
}

/// Value below which a share of the sorted values lies, straight between neighbours.
double quantile(const std::vector<float>& sorted, double share) {
  const double at = share * static_cast<double>(sorted.size() - 1);
  const auto k = static_cast<std::size_t>(at);
  const double rest = at - static_cast<double>(k);
  return k + 1 < sorted.size() ? sorted[k] * (1 - rest) + sorted[k + 1] * rest : sorted[k];
}

bool isLeapDay(const Weather& weather, std::size_t d) {
  return weather.month[d] == 1 && weather.day[d] == 29;
}

/// Water at the end of each day of the year, over all years, leap days left out.
void addBand(WaterPlan& plan, const Run& run) {
  const Weather& weather = *plan.weather;
  std::vector<std::vector<float>> held(kYearDays);
  plan.band.resize(kYearDays);
  std::size_t in_year = 0;
  eachDay(weather.year_start, [&](std::size_t d, std::size_t y) {
    if (d == weather.year_start[y]) in_year = 0;
    if (isLeapDay(weather, d) || in_year >= kYearDays) return;
    plan.band[in_year].month = weather.month[d];
    plan.band[in_year].day = weather.day[d];
    held[in_year++].push_back(run.volume_m3[d]);
  });
  for (std::size_t k = 0; k < kYearDays; ++k) {
    std::sort(held[k].begin(), held[k].end());
    BandDay& day = plan.band[k];
    day.least = held[k].front();
    day.p10 = quantile(held[k], 0.1);
    day.p50 = quantile(held[k], 0.5);
    day.p90 = quantile(held[k], 0.9);
    day.most = held[k].back();
  }
}

void addWeatherFigures(WaterPlan& plan) {
  const Weather& weather = *plan.weather;
  const auto years = static_cast<double>(weather.years());
  plan.et0_mm = sum(weather.et0_mm) / years;
  plan.et0_penman_mm = plan.et0_mm;
  plan.et0_hargreaves_mm = sum(weather.et0_other_mm) / years;
  if (plan.made_from.et0_method == Et0Method::hargreaves)
    std::swap(plan.et0_penman_mm, plan.et0_hargreaves_mm);
  plan.rain_mm = sum(weather.rain_mm) / years;
  std::vector<double> yearly(weather.years());
  eachDay(weather.year_start, [&](std::size_t d, std::size_t y) { yearly[y] += weather.rain_mm[d]; });
  double squares = 0;
  for (const double rain : yearly) squares += (rain - plan.rain_mm) * (rain - plan.rain_mm);
  if (years > 1 && plan.rain_mm > 0)
    plan.rain_cv_percent = kPercent * std::sqrt(squares / (years - 1)) / plan.rain_mm;
}

double closureOf(const Totals& t) {
  const double throughput = t.start + t.supply + t.rain;
  const double error = t.start + t.supply + t.rain - t.evaporation - t.seepage - t.drawn - t.spill - t.end;
  return throughput > 0 ? std::abs(error) / throughput : 0;
}

std::shared_ptr<const Weather> weatherFor(const Climate& climate, const WeatherPlace& place,
                                          const WaterPlan* before) {
  if (before && before->made_at == place && before->made_from == climate) return before->weather;
  return std::make_shared<const Weather>(weatherYears(climate, place));
}

}  // namespace

std::optional<WaterPlan> waterPlan(const geometry::TankGeometry& tank, const Site& site, const Water& water,
                                   const WaterPlan* before) {
  if (!site.latitude_deg || !isClimateKnown(water.climate)) return std::nullopt;
  WaterPlan plan;
  plan.made_from = water.climate;
  plan.made_at = {*site.latitude_deg, site.elevation_m.value_or(0)};
  plan.weather = weatherFor(plan.made_from, plan.made_at, before);
  plan.years = plan.weather->years();
  if (plan.years == 0) return std::nullopt;
  const DayParts parts = dayParts(water, *plan.weather, plan.beds);
  plan.series = std::make_shared<const DaySeries>(daySeries(water, *plan.weather, parts));
  plan.curve = curveOf(tank);
  for (const Bed& bed : water.beds) plan.bed_area_m2 += bed.area_m2;
  const Run all = run(plan.curve, *plan.series, startVolume(plan.curve, *plan.series));
  plan.closure = closureOf(all.totals);
  addYears(plan, all);
  addShares(plan, all);
  addMonths(plan, all, parts);
  addBand(plan, all);
  addWeatherFigures(plan);
  plan.lasts = lasting(plan.curve, *plan.series, *plan.weather);
  plan.fills = filling(plan.curve, *plan.series, *plan.weather);
  plan.readings = readingsByMonth(water.source.readings);
  addSizes(plan, water.target_years_in_ten);
  return plan;
}

}  // namespace core::water
