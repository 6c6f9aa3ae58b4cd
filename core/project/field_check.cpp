#include "core/project/field_access.h"
#include "core/project/fields.h"

#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>

#include <fmt/format.h>

namespace core {
namespace access {
namespace {

std::optional<int> digits(string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.front() == '-' || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

std::optional<std::chrono::year_month_day> dateFrom(string_view text, int first_year, int last_year) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day || *year < first_year || *year > last_year) return std::nullopt;
  const std::chrono::year_month_day date{std::chrono::year(*year),
                                         std::chrono::month(static_cast<unsigned>(*month)),
                                         std::chrono::day(static_cast<unsigned>(*day))};
  return date.ok() ? std::optional(date) : std::nullopt;
}

std::string dateText(std::chrono::year_month_day date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

}  // namespace access

namespace {

using std::string_view;

std::string quoted(string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (static_cast<unsigned char>(c) < 0x20) {
      out += fmt::format("\\u{:04x}", static_cast<unsigned char>(c));
    } else {
      out += c;
    }
  }
  return out + '"';
}

std::string numberText(double value) {
  if (std::isnan(value)) return "NaN";
  if (std::isinf(value)) return value > 0 ? "Infinity" : "-Infinity";
  return fmt::format("{}", value);
}

Problem problemOf(const Field& field, std::size_t row, const FieldValue& value, string_view code) {
  Problem problem;
  problem.code = code;
  problem.path = pathOf(field, row);
  problem.value = jsonText(value);
  problem.unit = field.unit;
  problem.allowed = allowedText(field);
  if (field.kind == FieldKind::number || field.kind == FieldKind::whole) {
    problem.least = field.least;
    problem.most = field.most;
  }
  if (code == "too_long") problem.most = field.most;
  return problem;
}

/// Code of what is wrong with a number; empty when nothing is.
string_view numberFault(const Field& field, double value) {
  if (!std::isfinite(value)) return "not_finite";
  if (field.kind == FieldKind::whole && value != std::floor(value)) return "wrong_type";
  return value < field.least || value > field.most ? "out_of_range" : "";
}

string_view textFault(const Field& field, const std::string& text) {
  if (field.kind == FieldKind::text) return static_cast<double>(text.size()) > field.most ? "too_long" : "";
  if (field.kind == FieldKind::date) return access::dateFrom(text) ? "" : "bad_date";
  for (const string_view choice : field.choices) {
    if (choice == text) return "";
  }
  return "unknown_choice";
}

string_view faultOf(const Field& field, const FieldValue& value) {
  if (std::holds_alternative<std::monostate>(value)) return field.nullable ? "" : "missing";
  switch (field.kind) {
    case FieldKind::number:
    case FieldKind::whole:
      if (const double* number = std::get_if<double>(&value)) return numberFault(field, *number);
      break;
    case FieldKind::flag:
      if (std::holds_alternative<bool>(value)) return "";
      break;
    case FieldKind::text:
    case FieldKind::choice:
    case FieldKind::date:
      if (const std::string* text = std::get_if<std::string>(&value)) return textFault(field, *text);
      break;
  }
  return "wrong_type";
}

std::string joined(std::span<const string_view> choices) {
  std::string out;
  for (const string_view choice : choices) {
    if (!out.empty()) out += '|';
    out += choice;
  }
  return out;
}

}  // namespace

std::string shortened(string_view text) {
  constexpr std::size_t kMost = 60;
  if (text.size() <= kMost) return std::string(text);
  std::size_t end = kMost;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
    --end;  // continuation bytes of UTF-8
  return std::string(text.substr(0, end)) + "...";
}

std::string jsonText(const FieldValue& value) {
  if (const double* number = std::get_if<double>(&value)) return numberText(*number);
  if (const bool* flag = std::get_if<bool>(&value)) return *flag ? "true" : "false";
  if (const std::string* text = std::get_if<std::string>(&value)) return shortened(quoted(*text));
  return "null";
}

std::string allowedText(const Field& field) {
  switch (field.kind) {
    case FieldKind::number:
      return "number";
    case FieldKind::whole:
      return "whole number";
    case FieldKind::text:
      return "text";
    case FieldKind::flag:
      return "true|false";
    case FieldKind::choice:
      return joined(field.choices);
    case FieldKind::date:
      break;
  }
  return fmt::format("{}-01-01..{}-12-31", access::kFirstYear, access::kLastYear);
}

Problems checkValue(const Field& field, std::size_t row, const FieldValue& value) {
  const string_view fault = faultOf(field, value);
  if (fault.empty()) return {};
  return {problemOf(field, row, value, fault)};
}

}  // namespace core
