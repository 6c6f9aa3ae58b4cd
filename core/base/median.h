#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace core {

/// The middle of the values, or the mean of the two in the middle. @pre values is not empty
inline double medianOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

}  // namespace core
