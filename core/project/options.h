#pragma once

#include "core/base/field_value.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// One field of the project and the value it has instead.
struct FieldChange {
  std::string path;  ///< "tank.depth_m", "lining.coats[1].thickness_m"
  FieldValue value;
  bool operator==(const FieldChange&) const = default;
};

/// Another way to build: the project with a few fields changed. The project itself is option A.
struct Option {
  std::string name;
  std::vector<FieldChange> changes;
  bool operator==(const Option&) const = default;
};

/// What the search for sizes may try. Sizes are those of the finished floor or rim, as the tank is entered.
struct SearchLimits {
  double least_length_m = 2;  ///< the diameter of a round tank
  double most_length_m = 10;
  double least_width_m = 2;
  double most_width_m = 6;
  double least_depth_m = 1;
  double most_depth_m = 2;
  double step_m = 0.1;
  std::optional<double> most_cost;
  std::optional<double> most_bags;
  std::optional<int> most_people;  ///< on a coat
  bool operator==(const SearchLimits&) const = default;
};

}  // namespace core
