#pragma once

#include "core/exchange/json_reader.h"
#include "core/site/field_tests.h"

namespace core::exchange {

/// What the field notes say of the site; null when nothing was noted.
Json fieldTestsJson(const site::FieldTests& tests);

}  // namespace core::exchange
