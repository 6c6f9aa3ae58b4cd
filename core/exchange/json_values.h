#pragma once

#include "core/exchange/json_reader.h"

#include <optional>
#include <vector>

namespace core::exchange {

inline Json number(double value) {
  return jsonNumber(value);
}

inline Json number(const std::optional<double>& value) {
  return value ? jsonNumber(*value) : Json(nullptr);
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
