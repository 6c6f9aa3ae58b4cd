#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QString>
#include <string_view>

namespace ui::words {

/// The field that a path of a problem points at, in any row, also one that an option changes; null when it
/// points at none.
const core::Field* fieldAt(std::string_view path);

/// Name of a place without its path: "Coat 2: Thickness"; empty when there is no word for it.
QString placeName(std::string_view path, const Formatter& format);

/// What a field holds, with its unit: "1.50 m", "drip", "not entered".
QString fieldValueText(const core::Field& field, const core::FieldValue& value, const Formatter& format);

}  // namespace ui::words
