#pragma once

#include <string>
#include <variant>

namespace core {

/// A field's value: absent, flag, number, or text (also tokens of choices and dates).
using FieldValue = std::variant<std::monostate, bool, double, std::string>;

}  // namespace core
