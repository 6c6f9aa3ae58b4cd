#pragma once

#include "ui/text/words_table.h"

#include <span>

namespace ui::words {

/// Labels and help of the fields of Water, behind fieldLabel() and fieldHelp().
std::span<const Entry> waterLabels();
std::span<const Entry> waterHelp();

}  // namespace ui::words
