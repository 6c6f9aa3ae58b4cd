#pragma once

#include "core/base/unit.h"
#include "core/project/water.h"
#include "core/water/record_limits.h"

#include <array>
#include <optional>
#include <string_view>

namespace core::exchange {

/// One measured thing of a weather record: a column of the daily table after the date.
struct WeatherColumn {
  std::string_view name;
  water::RecordRange range;  ///< [unit]
  Unit unit;
  bool required;
  std::optional<double> DailyWeather::*value;
};

/// All columns in the order in which they are written.
inline constexpr std::array kWeatherColumns{
    WeatherColumn{"rain_mm", water::kRain_mm, Unit::millimetre, true, &DailyWeather::rain_mm},
    WeatherColumn{"t_min_c", water::kTemperature_c, Unit::celsius, true, &DailyWeather::t_min_c},
    WeatherColumn{"t_max_c", water::kTemperature_c, Unit::celsius, true, &DailyWeather::t_max_c},
    WeatherColumn{"wind_m_s", water::kWind_m_s, Unit::metre_per_second, false, &DailyWeather::wind_m_s},
    WeatherColumn{"humidity_percent", water::kHumidity_percent, Unit::percent, false,
                  &DailyWeather::humidity_percent},
    WeatherColumn{"sun_hours", water::kSun_h, Unit::hour, false, &DailyWeather::sun_hours},
};

}  // namespace core::exchange
