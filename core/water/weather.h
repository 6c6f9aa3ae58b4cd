#pragma once

#include "core/base/problem.h"
#include "core/project/water.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core::water {

/// Where the weather is: what ET0 needs of the place.
struct WeatherPlace {
  double latitude_deg = 0;
  double elevation_m = 0;
  bool operator==(const WeatherPlace&) const = default;
};

/// Daily weather of whole years, one after another, as columns. A year starts on the first of `first_month`,
/// the month with the most rain, so that no dry season is cut in two; years made from monthly means have 365
/// days.
struct Weather {
  std::vector<float> rain_mm, t_min_c, t_max_c, humidity_percent,
      wind_m_s;                            ///< the last two estimated where absent: see fao56::DayInput
  std::vector<float> et0_mm;               ///< by the method asked for
  std::vector<float> et0_other_mm;         ///< by the other one, to stand beside it
  std::vector<std::uint8_t> month;         ///< 0 to 11
  std::vector<std::uint8_t> day;           ///< of the month, from 1
  std::vector<std::uint16_t> day_of_year;  ///< 1 to 366
  std::vector<std::size_t> year_start;     ///< first day of each year, and the number of days at the end
  int first_month = 0;                     ///< 0 to 11
  // how a record was taken
  std::vector<int> years_left_out;  ///< calendar years in which a year of the record with gaps starts
  std::size_t values_filled = 0;    ///< values put in by the rule for gaps
  std::size_t days_outside = 0;     ///< days before the first and after the last whole year, not used

  std::size_t days() const { return rain_mm.size(); }
  std::size_t years() const { return year_start.empty() ? 0 : year_start.size() - 1; }
};

/// Mean of a column of the weather over all days of each month, January first; 0 for a month without a day.
std::array<double, kMonths> monthlyMeans(const Weather& weather, const std::vector<float>& column);

/// True when rain, wet days and both temperatures are known for all months, or there is a record.
bool isClimateKnown(const Climate& climate);

/// Weather years from a climate: made from its monthly means, or its record cut into whole years.
/// The same input gives the same weather. Empty when nothing can be made (isClimateKnown false, or no whole
/// year in the record).
Weather weatherYears(const Climate& climate, const WeatherPlace& place);

/// Weather years made from monthly means: a two-state chain of wet and dry days with
/// p(wet|dry) = 0.75 f, p(wet|wet) = 0.25 + 0.75 f (f: share of wet days; Geng et al. 1986) and gamma amounts
/// above 0.1 mm whose scale follows Geng et al. and whose mean is the month's rain over its wet days.
/// Temperatures: the month's means, higher maxima on dry days, with noise that averages out. When
/// `rain_cv_percent` is given a yearly factor with mean 1 makes up what the chain lacks of it.
/// Random numbers are drawn per day in the same order whatever the means, so that a small change of a mean is
/// a small change of the weather. At the end the rain of each month is brought to its mean by one
/// factor. @source richardson_1981, geng_1986
Weather generate(const Climate& climate, const WeatherPlace& place, int years);

/// Weather of the record's whole years. Gaps: see GapRule.
Weather fromRecord(const Climate& climate, const WeatherPlace& place);

}  // namespace core::water
