#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

inline constexpr std::string_view kFormat = "tankwright-project";
inline constexpr int kVersion = 1;
inline constexpr std::string_view kVersionText = "1";
inline constexpr std::string_view kOutline = "tank.outline_m";
inline constexpr std::string_view kSpotHeights = "site.ground.points_m";
inline constexpr std::string_view kWeatherDays = "water.climate.daily";
inline constexpr std::string_view kOptions = "options";
inline constexpr std::size_t kMostNameBytes = 200;  ///< of an option or a district

enum class Need { required, optional };

/// What a key of the project file stands for.
enum class Role {
  value,    ///< a field, a list of points, format or version, name or changes of an option
  section,  ///< an object that holds fields
  rows,     ///< a list of objects that hold fields; the options
  unknown,
};

/// Role of `key` in the object whose fields' ids start with `prefix` ("" for the whole file,
/// "lining.coats[].").
Role roleOf(std::string_view prefix, std::string_view key);

/// Ids of all objects that hold fields, rows of lists left out: "site", "site.ground", ...
std::vector<std::string_view> sections();

/// RFC 6901 pointer to a field's place: "/lining/coats/1/soil".
std::string pointerText(std::string_view id, std::size_t row);

}  // namespace core::exchange
