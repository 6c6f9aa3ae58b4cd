#pragma once

#include "core/water/water_plan.h"
#include "ui/text/formatter.h"

#include <QString>

namespace ui::words {

/// A size that meets the target, rounded to the safe side for every page that tells it.
struct MetSize {
  enum class Kind {
    none,      ///< no size does; text: the largest one tried
    any,       ///< almost any size does; no text
    size,      ///< text: the size
    all_tried  ///< every size tried does; text: the largest one tried
  } kind;
  QString text;
};

/// Smallest tank, in litres rounded up. What is under a hundredth of the present tank is no answer to build
/// by.
MetSize smallestTank(const core::water::WaterPlan& plan, const Formatter& format);
/// Largest beds, rounded down; under one unit of area they are none.
MetSize largestBeds(const core::water::WaterPlan& plan, const Formatter& format);

}  // namespace ui::words
