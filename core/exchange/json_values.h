#pragma once

#include "core/exchange/json_reader.h"
#include "core/project/fields.h"

#include <chrono>
#include <optional>
#include <string_view>
#include <vector>

#include <fmt/format.h>

namespace core::exchange {

inline Json number(double value) {
  return jsonNumber(value);
}

inline Json number(const std::optional<double>& value) {
  return value ? jsonNumber(*value) : Json(nullptr);
}

inline Json whole(const std::optional<int>& value) {
  return value ? Json(*value) : Json(nullptr);
}

inline Json date(std::chrono::year_month_day day) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                     static_cast<unsigned>(day.day()));
}

inline Json date(const std::optional<std::chrono::year_month_day>& day) {
  return day ? date(*day) : Json(nullptr);
}

/// Token of a choice as the field with `id` has it in a project file.
template <class Enum>
Json choiceOf(std::string_view id, Enum value) {
  return field(id).choices[static_cast<std::size_t>(value)];
}

inline Json numbers(const std::vector<double>& values) {
  Json list = Json::array();
  for (const double value : values) list.push_back(number(value));
  return list;
}

/// One JSON list from a C++ one; `make` gives the JSON of an element.
template <class Element, class Make>
Json listOf(const std::vector<Element>& elements, Make make) {
  Json list = Json::array();
  for (const Element& element : elements) list.push_back(make(element));
  return list;
}

}  // namespace core::exchange
