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
constexpr std::array<std::pair<string_view, string_view>, 6> kEndings{{
    {"_percent", "%"},
    {"_days", "day"},
    {"_m3", "m3"},
    {"_m2", "m2"},
    {"_kg", "kg"},
    {"_m", "m"},
}};

constexpr std::array<string_view, 4> kNames{"id", "task", "code", "coat"};

/// A key without its unit, and the unit.
std::pair<string_view, string_view> splitUnit(string_view key) {
  for (const auto& [ending, unit] : kEndings) {
    if (key.size() > ending.size() && key.ends_with(ending))
      return {key.substr(0, key.size() - ending.size()), unit};
  }
  return {key, ""};
}

/// Unit of a number whose key does not name one.
string_view unitOf(string_view section, string_view key) {
  if (section == "labour" && key.ends_with("days")) return "person_day";
  if (key == "days") return "day";
  if (key == "crew" || key == "people" || key == "needed") return "person";
  return key.ends_with("_ratio") || key.ends_with("_factor") ? "1" : "";
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

  /// Rows of everything in `json`. @param unit holds for numbers whose key names none
  void add(string_view section, const std::string& item, const Json& json, string_view unit) {
    if (json.is_object()) {
      addObject(section, item, json, unit);
    } else if (json.is_array()) {
      addList(section, item, json, unit);
    } else {
      addValue(section, item, json, unit);
    }
  }

private:
  static std::string below(const std::string& item, string_view name) {
    return item.empty() ? std::string(name) : item + '.' + std::string(name);
  }

  void addValue(string_view section, const std::string& item, const Json& json, string_view unit) {
    const auto [name, own_unit] = splitUnit(item);
    const bool is_person_days = section == "labour" && own_unit == "day";
    const string_view shown = own_unit.empty() || is_person_days ? unit : own_unit;
    row(section, is_person_days ? item : std::string(name), plain(json), json.is_number() ? shown : "");
  }

  void addObject(string_view section, const std::string& item, const Json& json, string_view unit) {
    const std::string own_unit = json.contains("unit") ? plain(json.at("unit")) : std::string(unit);
    for (const auto& member : json.items()) {
      const string_view of_key = unitOf(section, member.key());
      if (member.key() == "unit") continue;
      add(section, below(item, member.key()), member.value(), of_key.empty() ? own_unit : of_key);
    }
  }

  void addList(string_view section, const std::string& item, const Json& list, string_view unit) {
    const bool is_plain = !list.empty() && !list.front().is_structured();
    const auto [name, own_unit] =
        is_plain ? splitUnit(item) : std::pair<string_view, string_view>(item, unit);
    for (std::size_t k = 0; k < list.size(); ++k) {
      add(section, below(std::string(name), nameOf(list[k], k)), list[k], own_unit);
    }
  }

  std::string text_;
};

}  // namespace

std::string planCsv(const Plan& plan) {
  const Json root = Json::parse(planText(plan));
  Table table;
  table.row("section", "item", "value", "unit");
  for (const auto& section : root.items()) table.add(section.key(), "", section.value(), "");
  return table.take();
}

}  // namespace core::exchange
