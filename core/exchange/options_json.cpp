#include "core/exchange/options_json.h"

#include "core/exchange/field_json.h"
#include "core/exchange/point_list.h"
#include "core/exchange/project_keys.h"
#include "core/project/option_fields.h"

#include <set>
#include <string>
#include <string_view>
#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

constexpr string_view kName = "name";
constexpr string_view kChanges = "changes";

class OptionReader {
public:
  OptionReader(std::size_t index, Problems& problems)
      : path_(fmt::format("{}[{}]", kOptions, index)), problems_(problems) {}

  Option read(const Json& json) {
    Option option;
    if (!json.is_object()) {
      add("wrong_type", path_, &json, "object");
      return option;
    }
    if (json.contains(kName)) option.name = readName(json.at(std::string(kName)));
    if (json.contains(kChanges)) option.changes = readChanges(json.at(std::string(kChanges)));
    return option;
  }

private:
  std::string path_;
  Problems& problems_;
  std::set<std::pair<string_view, std::size_t>> seen_;

  Problem& add(string_view code, std::string path, const Json* found, string_view allowed) {
    problems_.push_back(problemAt(code, std::move(path), found, allowed));
    return problems_.back();
  }

  std::string readName(const Json& json) {
    const std::string path = fmt::format("{}.{}", path_, kName);
    if (!json.is_string()) {
      add("wrong_type", path, &json, "text");
      return {};
    }
    std::string name = json.get<std::string>();
    if (name.size() > kMostNameBytes)
      add("too_long", path, &json, "text").most = static_cast<double>(kMostNameBytes);
    return name;
  }

  std::vector<FieldChange> readChanges(const Json& json) {
    std::vector<FieldChange> changes;
    const std::string path = fmt::format("{}.{}", path_, kChanges);
    if (!json.is_object()) {
      add("wrong_type", path, &json, "object");
      return changes;
    }
    if (json.size() > kMostChanges) {
      const Json count = json.size();
      add("too_many", path, &count, "object").most = static_cast<double>(kMostChanges);
      return changes;
    }
    for (const auto& item : json.items()) readChange(item.key(), item.value(), changes);
    return changes;
  }

  void readChange(const std::string& field_path, const Json& value, std::vector<FieldChange>& changes) {
    const std::string path = fmt::format("{}.{}.{}", path_, kChanges, field_path);
    const auto place = placeOfPath(field_path);
    if (place && !seen_.emplace(place->field->id, place->row).second) add("duplicate_key", path, nullptr, "");
    if (!value.is_structured()) {
      changes.push_back({field_path, fieldValueOf(value)});
    } else if (place) {
      add("wrong_type", path, &value, allowedText(*place->field));
    } else {
      add("unknown_field", path, &value, "");
    }
  }
};

}  // namespace

Json optionsJson(const std::vector<Option>& options) {
  Json list = Json::array();
  for (const Option& option : options) {
    Json changes = Json::object();
    for (const FieldChange& change : option.changes) changes[change.path] = jsonOf(change.value);
    list.push_back({{kName, option.name}, {kChanges, std::move(changes)}});
  }
  return list;
}

ReadOptions readOptions(const Json& list) {
  ReadOptions read;
  for (std::size_t k = 0; k < list.size(); ++k)
    read.options.push_back(OptionReader(k, read.problems).read(list[k]));
  return read;
}

}  // namespace core::exchange
