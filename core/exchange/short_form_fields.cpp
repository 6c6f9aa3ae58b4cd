#include "core/exchange/short_form_fields.h"

#include <algorithm>
#include <charconv>
#include <iterator>
#include <system_error>

namespace core::exchange {
namespace {

using std::string_view;

constexpr std::size_t kLeastLetters = 2;

bool isNumber(const Field& field) {
  return field.kind == FieldKind::number || field.kind == FieldKind::whole;
}

std::string inCapitals(string_view word) {
  std::string out(word);
  std::ranges::transform(out, out.begin(),
                         [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  return out;
}

std::string inSmallLetters(string_view word) {
  std::string out(word);
  std::ranges::transform(out, out.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

auto choicesWith(const Field& field, string_view first_letters) {
  return std::ranges::count_if(field.choices,
                               [=](string_view choice) { return choice.starts_with(first_letters); });
}

std::string lettersOf(const Field& field, string_view choice) {
  std::size_t length = kLeastLetters;
  while (length < choice.size() && choicesWith(field, choice.substr(0, length)) > 1) ++length;
  return inCapitals(choice.substr(0, length));
}

/// The one choice that begins with these letters; the letters when there is none or more than one.
std::string choiceOf(const Field& field, string_view capitals) {
  std::string letters = inSmallLetters(capitals);
  if (letters.empty() || choicesWith(field, letters) != 1) return letters;
  return std::string(*std::ranges::find_if(
      field.choices, [&letters](string_view choice) { return choice.starts_with(letters); }));
}

}  // namespace

std::span<const ShortField> shortFieldsOf(string_view token) {
  if (token == kSamePart) return {};
  const auto first = std::ranges::find(kShortFields, token, &ShortField::token);
  if (first == kShortFields.end()) return {};
  const auto last = std::find_if(std::next(first), kShortFields.end(),
                                 [](const ShortField& next) { return next.token != kSamePart; });
  return {first, last};
}

std::string shortNumber(double value) {
  constexpr std::size_t kMostDigits = 1100;  // the smallest double has 1,074 decimals
  constexpr double kPositiveZero = 0.0;      // added to a number it turns -0 into 0
  std::array<char, kMostDigits> digits;
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value + kPositiveZero,
                                 std::chars_format::fixed);
  return {digits.data(), end.ptr};
}

FieldValue numberOfShort(string_view text) {
  double value = 0;
  const char* const end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, value, std::chars_format::fixed);
  if (read.ec == std::errc{} && read.ptr == end) return value;
  return std::string(text);
}

std::string shortValue(const Field& field, const FieldValue& value) {
  if (isNumber(field)) return shortNumber(std::get<double>(value));
  const std::string& text = std::get<std::string>(value);
  return field.kind == FieldKind::choice ? ':' + lettersOf(field, text) : text;
}

FieldValue valueOfShort(const Field& field, string_view text) {
  if (isNumber(field)) return numberOfShort(text);
  if (field.kind == FieldKind::choice && text.starts_with(':')) return choiceOf(field, text.substr(1));
  return std::string(text);
}

}  // namespace core::exchange
