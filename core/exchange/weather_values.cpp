#include "core/exchange/weather_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <system_error>

namespace core::exchange {
namespace {

using std::string_view;

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

/// The number with a decimal point and without "+"; empty when it is none.
std::string plainNumber(string_view cell, bool may_have_comma) {
  std::string text(cell.substr(cell.starts_with('+') ? 1 : 0));
  if (may_have_comma) std::replace(text.begin(), text.end(), ',', '.');
  const string_view digits = string_view(text).substr(text.starts_with('-') && text.size() == cell.size());
  const auto points = std::count(digits.begin(), digits.end(), '.');
  const auto figures = std::count_if(digits.begin(), digits.end(), isDigit);
  const bool is_number =
      figures > 0 && points <= 1 && figures + points == static_cast<std::ptrdiff_t>(digits.size());
  return is_number ? text : std::string();
}

}  // namespace

bool isNotMeasured(string_view cell) {
  return cell.empty() || cell == "-" || cell == "NA" || cell == "na";
}

CellValue valueOf(string_view cell, bool may_have_comma, const WeatherColumn& column) {
  if (isNotMeasured(cell)) return {};
  const std::string text = plainNumber(cell, may_have_comma);
  if (text.empty()) return {{}, "wrong_type"};
  constexpr double kPositiveZero = 0.0;  // added to a number it turns -0 into 0
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  const bool is_read = read.ec == std::errc() && read.ptr == text.data() + text.size();
  if (!is_read || !column.range.holds(value)) return {{}, "out_of_range"};
  return {value + kPositiveZero, {}};
}

std::string valueText(std::optional<double> value) {
  if (!value || !std::isfinite(*value)) return {};
  std::array<char, 400>
      text{};  // the longest double has 309 digits before the point or 342 characters below 1
  const auto end = std::to_chars(text.data(), text.data() + text.size(), *value, std::chars_format::fixed);
  return {text.data(), end.ptr};
}

}  // namespace core::exchange
