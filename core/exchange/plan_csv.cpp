#include "core/exchange/csv_rows.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/plan_json.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace core::exchange {
namespace {

using std::string_view;

using KeyUnit = std::pair<string_view, string_view>;

/// Ending of a key and the unit it stands for; longer endings first.
constexpr std::array kEndings{
    KeyUnit{"_kg_m2_h", "kg/m2/h"},
    KeyUnit{"_l_per_min", "L/min"},
    KeyUnit{"_l_per_s", "L/s"},
    KeyUnit{"_m3_day", "m3/day"},
    KeyUnit{"_l_day", "L/day"},
    KeyUnit{"_kn_m3", "kN/m3"},
    KeyUnit{"_km_h", "km/h"},
    KeyUnit{"_m_s", "m/s"},
    KeyUnit{"_mm_h", "mm/h"},
    KeyUnit{"_m_day", "m/day"},
    KeyUnit{"_kpa", "kPa"},
    KeyUnit{"_bar", "bar"},
    KeyUnit{"_deg", "degree"},
    KeyUnit{"_hours", "h"},
    KeyUnit{"_minutes", "min"},
    KeyUnit{"years_in_ten", "year"},
    KeyUnit{"_years", "year"},
    KeyUnit{"_percent", "%"},
    KeyUnit{"_days", "day"},
    KeyUnit{"_bags", "bag"},
    KeyUnit{"_mm", "mm"},
    KeyUnit{"_m3", "m3"},
    KeyUnit{"_m2", "m2"},
    KeyUnit{"_kg", "kg"},
    KeyUnit{"_m", "m"},
    KeyUnit{"_l", "L"},
    KeyUnit{"_c", "C"},
    KeyUnit{"_ratio", "1"},
    KeyUnit{"_factor", "1"},
    KeyUnit{"_share", "1"},
};

/// Whole keys.
constexpr std::array kKeys{
    KeyUnit{"days", "day"},
    KeyUnit{"hours", "h"},
    KeyUnit{"bags", "bag"},
    KeyUnit{"sacks", "piece"},
    KeyUnit{"loads", "piece"},
    KeyUnit{"loads_per_piece", "1"},
    KeyUnit{"crew", "person"},
    KeyUnit{"people", "person"},
    KeyUnit{"people_on_coat", "person"},
    KeyUnit{"needed", "person"},
    KeyUnit{"labourers", "person"},
    KeyUnit{"masons", "person"},
    KeyUnit{"masons_needed", "person"},
    KeyUnit{"wetters", "person"},
    KeyUnit{"minutes_to_place_batch", "min"},
    KeyUnit{"minutes_to_place_half_batch", "min"},
    KeyUnit{"batches_per_hour_needed", "1/h"},
    KeyUnit{"batches_per_hour_possible", "1/h"},
    KeyUnit{"start_in_day", "day"},
    KeyUnit{"dry_days_mean", "day"},
    KeyUnit{"share", "1"},
    KeyUnit{"correlation", "1"},
};

/// Keys of amounts of money, in the parts that hold some.
constexpr std::array kMoneyParts{string_view("cost"), string_view("options")};
constexpr std::array kMoney{
    KeyUnit{"per_m3_stored", "money/m3"},
    KeyUnit{"per_m3_delivered", "money/m3"},
    KeyUnit{"annual_per_m3", "money/m3"},
    KeyUnit{"price", "money"},
    KeyUnit{"amount", "money"},
    KeyUnit{"own", "money"},
    KeyUnit{"cash", "money"},
    KeyUnit{"materials", "money"},
    KeyUnit{"labour", "money"},
    KeyUnit{"other", "money"},
    KeyUnit{"carriage", "money"},
    KeyUnit{"contingency", "money"},
    KeyUnit{"total", "money"},
    KeyUnit{"earth", "money"},
    KeyUnit{"capital", "money"},
    KeyUnit{"upkeep_year", "money"},
    KeyUnit{"annual", "money"},
    KeyUnit{"goods", "money"},
    KeyUnit{"wages", "money"},
    KeyUnit{"together", "money"},
    KeyUnit{"cost", "money"},
};

constexpr std::array<string_view, 10> kNames{"id",   "task",   "coat",  "month",   "date",
                                             "item", "lining", "input", "outcome", "letter"};

/// Unit of a key in a table; empty when it is not there.
template <std::size_t Count>
string_view wholeKey(const std::array<KeyUnit, Count>& table, string_view key) {
  for (const auto& [name, unit] : table) {
    if (key == name) return unit;
  }
  return "";
}

/// Unit that a key ends with, empty when it names none.
string_view unitEnding(string_view key) {
  for (const auto& [ending, unit] : kEndings) {
    if (key.ends_with(ending)) return unit;
  }
  return "";
}

bool holdsMoney(string_view section) {
  return std::find(kMoneyParts.begin(), kMoneyParts.end(), section) != kMoneyParts.end();
}

bool isPersonDays(string_view section, string_view key) {
  return key == "person_days" || key == "mason_days" || (section == "labour" && key.ends_with("days"));
}

/// Unit of a number under a key; `held` is what stands beside it or above it.
std::string unitOf(string_view section, string_view key, string_view held) {
  if (isPersonDays(section, key)) return "person_day";
  if (section == "labour" && key == "rate") return "person_day/" + std::string(held);
  if (section == "records" && key == "count") return "";
  if (holdsMoney(section)) {
    if (const string_view unit = wholeKey(kMoney, key); !unit.empty()) return std::string(unit);
  }
  if (const string_view unit = wholeKey(kKeys, key); !unit.empty()) return std::string(unit);
  const string_view ending = unitEnding(key);
  return std::string(ending.empty() ? held : ending);
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
      row(section, item, plain(json), json.is_number() ? unit : "");
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
    std::map<std::string, int> seen;
    for (std::size_t k = 0; k < list.size(); ++k) {
      std::string name = nameOf(list[k], k);
      if (const int before = seen[name]++; before > 0) name += "#" + std::to_string(before + 1);
      add(section, below(item, name), list[k], unit);
    }
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
