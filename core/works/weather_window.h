#pragma once

#include "core/project/project.h"
#include "core/water/weather.h"
#include "core/works/calendar.h"

#include <vector>

namespace core::works {

inline constexpr int kWeeks = 52;

/// How often coats put on in a week of the year stay undisturbed.
struct WeekChance {
  int month, day;      ///< first day of the week; weeks count from 1 January, the last one has eight days
  double undisturbed;  ///< share of start days and years, 0 to 1, on which nothing below happens
  double rain;         ///< share with heavy rain on a coat's day or the day after
  double frost;        ///< share with a night at or below 0 C before a coat or in the 7 days after it
  double heat;         ///< share with a mean below 5 C or a maximum above 35 C on a coat's day
};

/// Evaporation of fresh plaster in the warmest hours of a coat's day, in the mean weather of that week: the
/// air at the mean maximum, the plaster as warm as the air, humidity from the vapour pressure of the day.
struct Drying {
  int coat;
  double air_c, humidity_percent, wind_km_h;
  double kg_m2_h;
};

/// Weeks of the year against the weather years of the site.
struct WeatherWindow {
  std::size_t years = 0;
  std::vector<WeekChance> weeks;  ///< kWeeks
  int chosen = 0;                 ///< week of the first coat as planned
  int best = 0;      ///< week with the best chance: the planned one when none is better, of equal
                     ///< ones the next after it
  Day best_coat{};   ///< first day of that week, the next after the planned coat; the planned coat
                     ///< when it lies in that week
  Day best_start{};  ///< planned start moved by as many days as the first coat
  double heavy_rain_mm = 10;
  std::vector<Drying> drying;  ///< one a coat; no entry where wind is not known
};

/// The pattern of coats moved to every day of the weather years; after the last day comes the first.
/// 29 February lies in the week of 1 March.
/// @param coats days of the coats as planned, in order
/// @param climate that the weather was made from: it tells where wind was measured and not estimated; null:
/// not known
/// @pre there are weather years and coats, else std::logic_error
WeatherWindow weatherWindow(const water::Weather& weather, const core::Works& works,
                            const std::vector<Day>& coats, const Climate* climate = nullptr);

/// Evaporation of water from fresh plaster [kg/m2/h]: E = 5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5) (V + 4) 1e-6,
/// temperatures in C, at or below -18 C their term is 0; humidity 0 to 1, wind in km/h; not below 0.
/// @source uno_1998
double evaporationRate(double plaster_c, double air_c, double humidity, double wind_km_h);

}  // namespace core::works
