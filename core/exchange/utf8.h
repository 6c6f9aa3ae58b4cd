#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace core::exchange {

/// Place of the first byte that is not UTF-8 (RFC 3629); nothing when all is well.
std::optional<std::size_t> notUtf8At(std::string_view text);

/// Place of a byte as "line:column", both from 1, columns in bytes.
std::string placeOf(std::string_view text, std::size_t at);

}  // namespace core::exchange
