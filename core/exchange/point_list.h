#pragma once

#include "core/base/problem.h"
#include "core/exchange/json_reader.h"

#include <span>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace core::exchange {

/// Range of one coordinate [m].
struct Axis {
  double least, most;
};

/// Problem of a value found in a project file; its text is shortened.
Problem problemAt(std::string_view code, std::string path, const Json* found, std::string_view allowed);

/// Coordinates of a list of points, one point after the other [m], or what is wrong with each point.
/// @param list a JSON list; `id` is its path
/// @param axes one range for each coordinate of a point
tl::expected<std::vector<double>, Problems> readPoints(std::string_view id, const Json& list,
                                                       std::span<const Axis> axes);

}  // namespace core::exchange
