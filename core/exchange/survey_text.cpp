#include "core/exchange/survey_text.h"

#include <algorithm>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

string_view firstLine(string_view text) {
  const std::size_t start = text.find_first_not_of("\xEF\xBB\xBF \t\r\n");
  if (start == string_view::npos) return {};
  return text.substr(start, text.find_first_of("\r\n", start) - start);
}

/// Cells parted by blanks, parted by tabs instead.
std::string tabbed(string_view text) {
  std::string parted;
  for (const char c : text) {
    const bool is_end = c == '\n' || c == '\r';
    if (is_end && parted.ends_with('\t')) parted.pop_back();
    const bool parts = !parted.empty() && parted.back() != '\t' && parted.back() != '\n';
    if (c != ' ') {
      parted += c;
    } else if (parts) {
      parted += '\t';
    }
  }
  if (parted.ends_with('\t')) parted.pop_back();
  return parted;
}

}  // namespace

HeadedText headedText(string_view text) {
  const string_view first = firstLine(text);
  const bool has_header = std::any_of(first.begin(), first.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
  });
  std::string own(text.substr(text.starts_with("\xEF\xBB\xBF") ? 3 : 0));
  char separator = ',';
  if (first.find(';') != string_view::npos) separator = ';';
  if (first.find('\t') != string_view::npos) separator = '\t';
  if (first.find_first_of(",;\t") == string_view::npos && first.find(' ') != string_view::npos) {
    separator = '\t';
    own = tabbed(own);
  }
  if (has_header) return {std::move(own), 0};
  return {fmt::format("x{0}y{0}z\n", separator) + own, 1};
}

}  // namespace core::exchange
