#pragma once

#include "core/exchange/json_reader.h"
#include "core/project/water.h"

#include <vector>

namespace core::exchange {

/// Days of a weather record from JSON rows ["2001-06-30", rain_mm, t_min_c, t_max_c, wind_m_s,
/// humidity_percent, sun_hours]; null and what a short row leaves out were not measured. Dates rise.
tl::expected<std::vector<DailyWeather>, Problems> daysFromJson(const Json& rows);

/// The same rows; measurements missing at the end of a row are left out.
Json jsonFromDays(const std::vector<DailyWeather>& days);

}  // namespace core::exchange
