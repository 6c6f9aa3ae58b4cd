#include "core/exchange/short_form_text.h"

#include "core/exchange/short_form.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

/// Characters beyond ASCII, one after the other from the last byte `first` on, and what they stand for.
struct Run {
  string_view before;  // their first bytes of UTF-8
  unsigned char first;
  string_view plain;
};

constexpr std::array<Run, 8> kRuns{{
    {"\xD9", 0xA0, "0123456789"},      // U+0660, Arabic-Indic digits
    {"\xDB", 0xB0, "0123456789"},      // U+06F0, the same as written for Persian and Urdu
    {"\xE0\xA5", 0xA6, "0123456789"},  // U+0966, Devanagari digits
    {"\xD9", 0xAB, "."},               // U+066B, Arabic decimal separator
    {"\xC2", 0xA0, " "},               // U+00A0, no-break space
    {"\xE2\x80", 0x8E, "  "},          // U+200E, marks of direction
    {"\xE2\x88", 0x92, "-"},           // U+2212, minus sign
    {"\xEF\xBB", 0xBF, " "},           // U+FEFF, byte order mark
}};
constexpr char kUnknown = '?';

char plainAscii(char c) {
  if (c >= 'a' && c <= 'z') return static_cast<char>(c - 'a' + 'A');
  if (c == '\t' || c == '\r' || c == '\n') return ' ';
  if (c == ',') return '.';
  return static_cast<unsigned char>(c) < 0x80 ? c : kUnknown;
}

struct PlainCharacter {
  char plain;
  std::size_t bytes;
};

PlainCharacter plainAt(string_view rest) {
  for (const Run& run : kRuns) {
    const std::size_t at = run.before.size();
    if (rest.size() <= at || !rest.starts_with(run.before)) continue;
    const auto last = static_cast<unsigned char>(rest[at]);
    if (last >= run.first && last < run.first + run.plain.size())
      return {run.plain[static_cast<std::size_t>(last - run.first)], at + 1};
  }
  return {plainAscii(rest.front()), 1};
}

std::string plainText(string_view text) {
  std::string plain;
  while (!text.empty()) {
    const PlainCharacter next = plainAt(text);
    plain += next.plain;
    text.remove_prefix(next.bytes);
  }
  return plain;
}

bool isLetter(char c) {
  return c >= 'A' && c <= 'Z';
}

bool mayBeDigit(char letter) {
  return letter == 'I' || letter == 'L' || letter == 'O';
}

std::string withDigits(string_view text) {
  std::string digits(text);
  for (char& c : digits) {
    if (mayBeDigit(c)) c = c == 'O' ? '0' : '1';
  }
  return digits;
}

/// A part whose value is a number has digits only; a word after ':' stays as it is.
std::string plainPart(const std::string& part) {
  const string_view token = tokenOf(part);
  const string_view value = string_view(part).substr(token.size());
  return value.starts_with(':') ? part : std::string(token) + withDigits(value);
}

std::vector<std::string> partsOf(string_view plain) {
  std::vector<std::string> parts;
  bool after_blank = true;
  for (const char c : plain) {
    const bool is_open = parts.empty() || parts.back().ends_with(':') || parts.back().ends_with('/');
    if (c != ' ') {
      if (parts.empty() || (after_blank && isLetter(c) && !is_open)) parts.emplace_back();
      parts.back() += c;
    }
    after_blank = c == ' ';
  }
  for (std::string& part : parts) part = plainPart(part);
  return parts;
}

}  // namespace

string_view tokenOf(string_view part) {
  if (part.empty() || !isLetter(part.front())) return {};
  const bool has_two = part.size() > 1 && isLetter(part[1]) && !mayBeDigit(part[1]);
  return part.substr(0, has_two ? 2 : 1);
}

TypedForm typedForm(string_view text) {
  const std::string plain = plainText(text);
  const std::size_t star = std::min(plain.rfind('*'), plain.size());
  std::string check = withDigits(plain.substr(std::min(star + 1, plain.size())));
  std::erase(check, ' ');
  return {partsOf(string_view(plain).substr(0, star)), std::move(check)};
}

std::string joinedParts(const std::vector<std::string>& parts) {
  return fmt::format("{}", fmt::join(parts, " "));
}

std::uint16_t crc16(string_view bytes) {
  constexpr unsigned kPolynomial = 0x1021, kStart = 0xFFFF, kTop = 0x8000;
  unsigned remainder = kStart;
  for (const char c : bytes) {
    remainder ^= static_cast<unsigned>(static_cast<unsigned char>(c)) << 8;
    for (int bit = 0; bit < 8; ++bit) {
      const bool takes = (remainder & kTop) != 0;
      remainder = (remainder << 1) & 0xFFFF;
      if (takes) remainder ^= kPolynomial;
    }
  }
  return static_cast<std::uint16_t>(remainder);
}

std::string checkGroup(string_view text) {
  return fmt::format("{:04X}", crc16(text));
}

bool beginsAsShortForm(string_view text) {
  constexpr std::size_t kMostLead = 64;  // blanks before it
  const std::string plain = plainText(text.substr(0, kMostLead));
  const std::size_t first = std::min(plain.find_first_not_of(' '), plain.size());
  const string_view begin = string_view(plain).substr(first);
  return begin.starts_with("TW") && (begin.size() == 2 || !isLetter(begin[2]) || mayBeDigit(begin[2]));
}

}  // namespace core::exchange
