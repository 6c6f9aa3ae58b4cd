#pragma once

#include "core/base/problem.h"
#include "core/exchange/json_reader.h"
#include "core/project/options.h"

#include <vector>

namespace core::exchange {

/// The options as they stand in a project file.
Json optionsJson(const std::vector<Option>& options);

/// Options of a file as far as they can be read, with everything that is wrong with their shape: names, lists
/// of changes, values that are no plain ones, a field changed twice. What each field takes is checked by
/// core::checkOptions.
struct ReadOptions {
  std::vector<Option> options;
  Problems problems;
};

/// @param list a JSON list
ReadOptions readOptions(const Json& list);

}  // namespace core::exchange
