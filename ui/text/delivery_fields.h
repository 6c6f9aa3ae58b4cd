#pragma once

#include "ui/text/words_table.h"

#include <span>

namespace ui::words {

/// Labels and help of the fields of Delivery, behind fieldLabel() and fieldHelp().
std::span<const Entry> deliveryLabels();
std::span<const Entry> deliveryHelp();

}  // namespace ui::words
