#pragma once

#include "core/project/project.h"
#include "core/water/balance.h"
#include "core/water/flow.h"
#include "core/water/weather.h"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace core::water {

/// Days of the year that charts and bands show; 29 February is left out of them.
inline constexpr std::size_t kYearDays = 365;

/// Means over all years of what one month brings, takes and needs [m3].
struct MonthFlows {
  double source = 0, roof = 0, ground = 0, rain = 0;  ///< brought; rain: onto the tank itself
  double evaporation = 0, seepage = 0, spill = 0;     ///< lost
  double beds = 0, animals = 0, people = 0;           ///< needed
  double drawn = 0, unmet = 0;                        ///< drawn + unmet = needed
  double dry_days = 0;                                ///< days with need not met, a year

  double supply() const { return source + roof + ground + rain; }
  double need() const { return beds + animals + people; }
};

/// How much the tank holds at the end of one day of the year, over all years [m3].
struct BandDay {
  int month = 0;  ///< 0 to 11
  int day = 1;    ///< of the month
  double least = 0, p10 = 0, p50 = 0, p90 = 0, most = 0;
};

/// One weather year.
struct YearResult {
  int dry_days = 0;
  double short_m3 = 0;
  double spill_m3 = 0;
};

/// From the first of a month on: how many days, middle of all years. Absent: not within a year.
struct DaysFrom {
  int month = 0;  ///< 0 to 11
  std::optional<int> days;
};

/// One bed's season and need.
struct BedNeed {
  std::string crop;
  double area_m2 = 0;
  int plant_month = 1, plant_day = 1;  ///< from 1
  int end_month = 1, end_day = 1;      ///< last day of the season
  int season_days = 0;
  double efficiency_percent = 0;
  double use_mm = 0;      ///< Kc ET0 of a season, mean of the years
  double net_mm = 0;      ///< what rain does not bring
  double gross_m3 = 0;    ///< to be drawn from the tank, net over efficiency, a year
  double peak_l_day = 0;  ///< largest need of a day, mean of the years
};

/// Storage against reliability at the beds as entered.
struct StoragePoint {
  double full_m3 = 0;
  double years_in_ten = 0;
};

/// Will the water last? Everything computed from Water, the tank and the weather years.
struct WaterPlan {
  std::size_t years = 0;
  double years_in_ten = 0;  ///< years without a dry day, out of ten
  int years_without_dry_day = 0;
  double days_met_percent = 0;                   ///< share of the days with a need on which it was met
  double volume_met_percent = 0;                 ///< drawn over needed
  double dry_days_mean = 0;                      ///< a year
  int dry_days_worst = 0;                        ///< in the worst year
  double short_mean_m3 = 0, short_worst_m3 = 0;  ///< a year
  double spill_mean_m3 = 0;                      ///< a year
  MonthFlows year;                               ///< sums of a mean year
  std::array<MonthFlows, kMonths> months{};      ///< January first
  std::vector<BandDay> band;                     ///< kYearDays, from the first day of the weather year on
  std::vector<YearResult> each_year;
  std::vector<DaysFrom> lasts;  ///< full tank, nothing flows in: days until the first dry day, January first
  std::vector<DaysFrom> fills;  ///< empty tank, nothing drawn: days until full
  double peak_need_l_day = 0;   ///< largest need of a day, mean of the years
  double et0_penman_mm = 0, et0_hargreaves_mm = 0;  ///< a mean year by each method
  double et0_mm = 0;                                ///< by the method asked for
  double rain_mm = 0;                               ///< a mean year
  double rain_cv_percent = 0;                       ///< of the weather years
  std::vector<BedNeed> beds;
  double bed_area_m2 = 0;
  std::optional<double> smallest_full_m3;  ///< smallest tank, same depth and batter, that meets the target;
                                           ///< absent: none up to most_tried_m3
  double most_tried_m3 = 0;
  std::optional<double> largest_bed_area_m2;  ///< largest area, shared as entered, at which the target is
                                              ///< met; absent without beds or when none is
  double most_tried_area_m2 = 0;
  std::vector<StoragePoint> storage;  ///< rising
  std::vector<MonthReadings> readings;
  double closure = 0;  ///< error of the mass balance over throughput

  // what charts and the map go on reckoning with
  TankCurve curve;
  std::shared_ptr<const Weather> weather;
  std::shared_ptr<const DaySeries> series;
  Climate made_from;  ///< climate and place of `weather`, to know when it can be used again
  WeatherPlace made_at;
};

/// The answers for a tank at its site; nothing when latitude or climate are not known or no weather year can
/// be made. @param before an earlier answer whose weather is used again when climate and place are the same;
/// the outcome does not depend on it
std::optional<WaterPlan> waterPlan(const geometry::TankGeometry& tank, const Site& site, const Water& water,
                                   const WaterPlan* before);

}  // namespace core::water
