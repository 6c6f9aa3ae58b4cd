#pragma once

#include "core/exchange/json_reader.h"
#include "core/project/fields.h"

namespace core::exchange {

/// A field's value as it stands in a file.
Json jsonOf(const FieldValue& value);

/// A field's value from a plain JSON value; -0 comes out as 0. @pre not an object and not a list
FieldValue fieldValueOf(const Json& json);

}  // namespace core::exchange
