#pragma once

#include "core/base/problem.h"
#include "core/project/water.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace core::exchange {

inline constexpr std::size_t kMostCsvBytes = std::size_t{16} << 20;

/// Days of a daily weather table, dates rising.
struct ReadWeather {
  std::vector<DailyWeather> days;
  Problems notes;  ///< unknown_key (a column that is not used), csv_days_missing; at most 100
};

/// Weather from a table with a header row. Columns in any order, capital or small letters: date
/// (YYYY-MM-DD), rain_mm, t_min_c, t_max_c and, where measured, wind_m_s, humidity_percent, sun_hours.
/// Comma, semicolon or tab between cells; a decimal comma where cells are not parted by commas; quotes as in
/// RFC 4180; UTF-8. An empty cell, "-" or "NA" was not measured. Days that are not there are noted, not
/// filled.
/// @return at most 100 problems: too_large, not_utf8, csv_no_header, csv_column_missing, duplicate_key,
/// csv_row_cells, missing (date), bad_date, wrong_type (also of quotes not closed), out_of_range,
/// csv_max_below_min, csv_date_repeated, csv_date_backwards, too_few, too_many (rows). Their path is
/// "row:17:rain_mm" or "row:17", counting lines of the text from 1. Never throws.
tl::expected<ReadWeather, Problems> parseWeatherCsv(std::string_view text);

/// The same days as a table: all columns, comma between them, lines ending with CRLF (RFC 4180).
std::string weatherCsvText(const std::vector<DailyWeather>& days);

}  // namespace core::exchange
