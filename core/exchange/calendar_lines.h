#pragma once

#include <string>
#include <string_view>

namespace core::exchange {

/// A value of type TEXT: backslash, semicolon and comma escaped, a line break as \n, other control characters
/// but the tab as a blank. @source rfc_5545, section 3.3.11
std::string escapedText(std::string_view text);

/// A content line with its break: folded so that no line has more than 75 octets without the break, between
/// two characters of UTF-8. @source rfc_5545, section 3.1
std::string contentLine(std::string_view line);

}  // namespace core::exchange
