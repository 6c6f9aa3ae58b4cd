#pragma once

#include "core/project/project.h"

#include <algorithm>
#include <vector>

namespace support {

/// Names the usual items that the price list lacks, with a price of 0. @pre the project has prices
inline void addRestFree(core::Project& project) {
  std::vector<core::PriceItem>& items = project.prices->items;
  for (core::PriceItem& usual : core::usualItems()) {
    const auto isSame = [&](const core::PriceItem& item) { return item.item == usual.item; };
    if (std::any_of(items.begin(), items.end(), isSame)) continue;
    usual.price = 0;
    items.push_back(usual);
  }
}

}  // namespace support
