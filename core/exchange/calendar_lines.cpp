#include "core/exchange/calendar_lines.h"

#include <cstddef>

namespace core::exchange {
namespace {

constexpr std::size_t kMostOctets = 75;

bool isInsideCharacter(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

bool isControl(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return (byte < 0x20 && c != '\t') || byte == 0x7F;
}

}  // namespace

std::string escapedText(std::string_view text) {
  std::string out;
  for (std::size_t k = 0; k < text.size(); ++k) {
    const char c = text[k];
    if (c == '\r' && text.substr(k + 1).starts_with('\n')) continue;
    if (c == '\n' || c == '\r') {
      out += "\\n";
    } else if (isControl(c)) {
      out += ' ';
    } else {
      if (c == '\\' || c == ';' || c == ',') out += '\\';
      out += c;
    }
  }
  return out;
}

std::string contentLine(std::string_view line) {
  std::string out;
  std::size_t room = kMostOctets;
  while (line.size() > room) {
    std::size_t end = room;
    while (end > 0 && isInsideCharacter(line[end])) --end;
    if (end == 0) end = room;  // no UTF-8
    out.append(line.substr(0, end)).append("\r\n ");
    line.remove_prefix(end);
    room = kMostOctets - 1;
  }
  return out.append(line).append("\r\n");
}

}  // namespace core::exchange
