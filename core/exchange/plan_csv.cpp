#include "core/exchange/json_reader.h"
#include "core/exchange/plan_json.h"

#include <array>
#include <string>
#include <string_view>
#include <utility>

namespace core::exchange {
namespace {

using std::string_view;

/// Ending of a key and the unit it stands for; longer endings first.
constexpr std::array<std::pair<string_view, string_view>, 19> kEndings{{
    {"_l_day", "L/day"}, {"_l_per_min", "L/min"}, {"_l_per_s", "L/s"}, {"_kn_m3", "kN/m3"},
    {"_m_s", "m/s"},     {"_mm_h", "mm/h"},       {"_m_day", "m/day"}, {"_kpa", "kPa"},
    {"_bar", "bar"},     {"_deg", "degree"},      {"_hours", "h"},     {"years_in_ten", "year"},
    {"_percent", "%"},   {"_days", "day"},        {"_mm", "mm"},       {"_m3", "m3"},
    {"_m2", "m2"},       {"_kg", "kg"},           {"_m", "m"},
}};

constexpr std::array<string_view, 4> kNames{"id", "task", "coat", "month"};

/// Unit that a key ends with, empty when it names none.
string_view unitEnding(string_view key) {
  for (const auto& [ending, unit] : kEndings) {
    if (key.ends_with(ending)) return unit;
  }
  return "";
}

/// Unit of a number under a key; `held` is what stands beside it or above it.
string_view unitOf(string_view section, string_view key, string_view held) {
  if (key == "person_days" || (section == "labour" && key.ends_with("days"))) return "person_day";
  if (const string_view unit = unitEnding(key); !unit.empty()) return unit;
  if (key == "days") return "day";
  if (key == "crew" || key == "people" || key == "needed") return "person";
  return key.ends_with("_ratio") || key.ends_with("_factor") ? "1" : held;
}

/// RFC 4180: a field with a comma, a quote or a line break stands in quotes, its quotes doubled.
std::string csvField(string_view text) {
  if (text.find_first_of(",\"\r\n") == string_view::npos) return std::string(text);
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"') out += '"';
    out += c;
  }
  return out + '"';
}

std::string plain(const Json& json) {
  if (json.is_null()) return {};
  return json.is_string() ? json.get<std::string>() : compactText(json);
}

/// What an element of a list is called: its id, or its number from 1.
std::string nameOf(const Json& element, std::size_t index) {
  for (const string_view name : kNames) {
    if (element.is_object() && element.contains(name)) return plain(element.at(std::string(name)));
  }
  return std::to_string(index + 1);
}

class Table {
public:
  std::string take() { return std::move(text_); }

  void row(string_view section, string_view item, string_view value, string_view unit) {
    text_ += csvField(section) + ',' + csvField(item) + ',' + csvField(value) + ',' + csvField(unit) + "\r\n";
  }

  /// Rows of everything in `json`. @param unit of a number
  void add(string_view section, const std::string& item, const Json& json, string_view unit) {
    if (json.is_object()) {
      addObject(section, item, json, unit);
    } else if (json.is_array()) {
      addList(section, item, json, unit);
    } else {
      row(section, item, plain(json), json.is_string() ? "" : unit);
    }
  }

private:
  static std::string below(const std::string& item, string_view name) {
    return item.empty() ? std::string(name) : item + '.' + std::string(name);
  }

  void addObject(string_view section, const std::string& item, const Json& json, string_view unit) {
    const std::string held = json.contains("unit") ? plain(json.at("unit")) : std::string(unit);
    for (const auto& member : json.items()) {
      if (member.key() == "unit") continue;
      add(section, below(item, member.key()), member.value(), unitOf(section, member.key(), held));
    }
  }

  void addList(string_view section, const std::string& item, const Json& list, string_view unit) {
    for (std::size_t k = 0; k < list.size(); ++k)
      add(section, below(item, nameOf(list[k], k)), list[k], unit);
  }

  std::string text_;
};

}  // namespace

std::string planCsv(const Plan& plan) {
  const Json root = Json::parse(planText(plan));
  Table table;
  table.row("section", "item", "value", "unit");
  for (const auto& section : root.items()) {
    table.add(section.key(), "", section.value(), unitOf("", section.key(), ""));
  }
  return table.take();
}

}  // namespace core::exchange
