#pragma once

#include "core/water/evapotranspiration.h"
#include "core/water/weather.h"

#include <array>
#include <cstddef>
#include <vector>

namespace core::water {

/// Month of the year in which weather years start: the one with the most rain; of several the first after
/// the driest. 0 to 11.
int wettestMonth(const std::array<double, kMonths>& rain_mm);

/// Place of a day in its year.
struct DayOfYear {
  int month = 0;   ///< 0 to 11
  int day = 1;     ///< of the month, from 1
  int number = 1;  ///< 1 to 366
};

/// Puts weather together day by day and works out its ET0: the same as fao56::et0PenmanMonteith and
/// et0Hargreaves, but what the sky gives on a day of the year is reckoned once.
class WeatherBuilder {
public:
  WeatherBuilder(const Climate& climate, const WeatherPlace& place, std::size_t days);

  void startYear();
  void add(const DayOfYear& date, double rain_mm, const fao56::DayInput& day);
  /// The weather so far, its last year ended.
  Weather take(int first_month);

private:
  struct Sky {
    double ra, daylight_h, clear_sky;  // radiation [MJ m-2 day-1]
  };

  double penmanMonteith(const fao56::DayInput& day, const Sky& sky) const;  // [mm/day]
  double netRadiation(const fao56::DayInput& day, double ea_kpa, const Sky& sky) const;

  fao56::Place place_;
  double gamma_kpa_;
  bool hargreaves_first_;
  std::vector<Sky> skies_;  // of day 1 to 366 of the year
  Weather weather_;
};

}  // namespace core::water
