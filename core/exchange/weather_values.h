#pragma once

#include "core/exchange/weather_columns.h"

#include <optional>
#include <string>
#include <string_view>

namespace core::exchange {

/// What a cell of a weather table holds.
struct CellValue {
  std::optional<double> value;  ///< absent: not measured, or wrong
  std::string_view code;        ///< of its problem, empty when there is none: wrong_type, out_of_range
};

/// True for a cell that says that nothing was measured: empty, "-" or "NA".
bool isNotMeasured(std::string_view cell);

/// Value of a cell: digits with or without sign and decimal mark, nothing else.
/// @param may_have_comma the decimal mark may be a comma instead of a point
CellValue valueOf(std::string_view cell, bool may_have_comma, const WeatherColumn& column);

/// Shortest text that reads back the same, without an exponent; empty when absent or not finite.
std::string valueText(std::optional<double> value);

}  // namespace core::exchange
