#pragma once

#include "ui/handouts/handout.h"
#include "ui/handouts/sheet.h"

namespace ui::handouts {

/// How far bags, days and money are spread, and what drives each; a sentence when that was not drawn.
void addRanges(Sheet& sheet, const Content& content);

}  // namespace ui::handouts
