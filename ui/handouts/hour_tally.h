#pragma once

#include "ui/handouts/sheet.h"
#include "ui/text/formatter.h"

#include <vector>

namespace ui::handouts {

/// Boxes to tick, a row for each hour of a coat.
struct HourTally {
  std::vector<int> boxes;  ///< in each hour
  int each = 1;            ///< batches that a box stands for
};

/// Batches spread evenly over the hours, the last of which may be a part of one; as many to a box as makes
/// the rows fit the width.
HourTally hourTally(int batches, double hours, double width_mm);

void addHourTally(Sheet& sheet, const HourTally& tally, const Formatter& format);

}  // namespace ui::handouts
