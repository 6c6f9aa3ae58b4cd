#include "core/exchange/utf8.h"

#include <algorithm>
#include <array>

namespace core::exchange {
namespace {

using std::string_view;

/// Lead bytes of one form of character and the range of the byte after them; later bytes are 80 to BF.
struct Form {
  unsigned char first_lead, last_lead, first_second, last_second;
  std::size_t length;
};

// RFC 3629, section 4
constexpr std::array<Form, 8> kForms{{
    {0xC2, 0xDF, 0x80, 0xBF, 2},
    {0xE0, 0xE0, 0xA0, 0xBF, 3},
    {0xE1, 0xEC, 0x80, 0xBF, 3},
    {0xED, 0xED, 0x80, 0x9F, 3},
    {0xEE, 0xEF, 0x80, 0xBF, 3},
    {0xF0, 0xF0, 0x90, 0xBF, 4},
    {0xF1, 0xF3, 0x80, 0xBF, 4},
    {0xF4, 0xF4, 0x80, 0x8F, 4},
}};

/// Bytes of the character at the start of `text`, 0 when there is none.
std::size_t lengthOf(string_view text) {
  const auto byte = [text](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  if (byte(0) < 0x80) return 1;
  for (const Form& form : kForms) {
    if (byte(0) < form.first_lead || byte(0) > form.last_lead) continue;
    if (text.size() < form.length || byte(1) < form.first_second || byte(1) > form.last_second) return 0;
    for (std::size_t k = 2; k < form.length; ++k) {
      if ((byte(k) & 0xC0) != 0x80) return 0;
    }
    return form.length;
  }
  return 0;
}

}  // namespace

std::optional<std::size_t> notUtf8At(string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = lengthOf(text.substr(at));
    if (length == 0) return at;
    at += length;
  }
  return std::nullopt;
}

std::string placeOf(string_view text, std::size_t at) {
  at = std::min(at, text.size());
  const string_view before = text.substr(0, at);
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t newline = before.rfind('\n');
  const std::size_t column = newline == string_view::npos ? at : at - newline - 1;
  return std::to_string(line) + ':' + std::to_string(column + 1);
}

}  // namespace core::exchange
