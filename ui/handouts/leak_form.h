#pragma once

#include "ui/handouts/sheet.h"
#include "ui/text/formatter.h"

namespace ui::handouts {

/// Table of what a leak means and what to do in each band; the bands are our own proposal and say so.
void addLeakBands(Sheet& sheet, const Formatter& format);

}  // namespace ui::handouts
