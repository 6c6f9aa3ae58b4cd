#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace core::exchange {

inline constexpr std::string_view kFormat = "tankwright-project";
inline constexpr int kVersion = 1;
inline constexpr std::string_view kVersionText = "1";
inline constexpr std::string_view kOutline = "tank.outline_m";
inline constexpr std::string_view kSpotHeights = "site.ground.points_m";
inline constexpr std::string_view kWeatherDays = "water.climate.daily";

enum class Need { required, optional };

/// What a key of the project file stands for.
enum class Role {
  value,       ///< a field, a list of points, format or version
  section,     ///< an object that holds fields
  rows,        ///< a list of objects that hold fields
  later_part,  ///< a part of the job that this version does not plan: prices, options
  unknown,
};

/// Role of `key` in the object whose fields' ids start with `prefix` ("" for the whole file,
/// "lining.coats[].").
Role roleOf(std::string_view prefix, std::string_view key);

/// RFC 6901 pointer to a field's place: "/lining/coats/1/soil".
std::string pointerText(std::string_view id, std::size_t row);

}  // namespace core::exchange
