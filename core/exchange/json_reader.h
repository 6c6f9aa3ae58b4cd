#pragma once

#include "core/base/problem.h"

#include <cstddef>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>
#include <tl/expected.hpp>

namespace core::exchange {

/// JSON with object keys in the order in which they stand.
using Json = nlohmann::ordered_json;

inline constexpr std::size_t kMostBytes = std::size_t{16} << 20;
inline constexpr std::size_t kMostDepth = 64;   ///< nested objects and lists
inline constexpr std::size_t kMostKeys = 1000;  ///< of one object

/// JSON value of a text, or what is wrong with it: too_large, not_utf8, not_json (value: "line:column"),
/// not_finite, too_deep, duplicate_key, too_many (keys of one object). Never throws.
tl::expected<Json, Problems> parseJson(std::string_view text);

/// Number for writing: a whole number without a decimal point, negative zero as 0, otherwise the shortest
/// text that reads back the same.
Json jsonNumber(double value);

/// JSON text with two-space indent and a newline at the end; a list of plain values stands on one line.
std::string prettyText(const Json& json);

/// JSON text on one line.
std::string compactText(const Json& json);

/// Place as in Problem::path from an RFC 6901 pointer's parts: "lining.coats[1].soil".
std::string dottedPath(const Json::json_pointer& pointer);

}  // namespace core::exchange
