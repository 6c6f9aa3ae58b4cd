#pragma once

#include "core/base/unit.h"

#include <string>

namespace core {

/// A figure of a data table: what is usual, how far it ranges and where it comes from.
struct Figure {
  std::string key;  ///< stable, "digging.stiff_clay"
  double low, typical, high;
  Unit unit;
  std::string source;  ///< key
};

}  // namespace core
