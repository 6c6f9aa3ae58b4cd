#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace core::exchange {

/// Table of spot heights that surely has a header row.
struct HeadedText {
  std::string text;
  std::size_t lines_before = 0;  ///< put before the text as given
};

/// Text with its own header row, or with x, y, z put before it, parted as its first row is. Where the first
/// row has neither comma, semicolon nor tab, cells parted by blanks come out parted by tabs.
HeadedText headedText(std::string_view text);

}  // namespace core::exchange
