#pragma once

#include "core/project/fields.h"

#include <string_view>

namespace ui::words {

/// The field that a path of a problem points at, in any row; null when it points at none.
const core::Field* fieldAt(std::string_view path);

}  // namespace ui::words
