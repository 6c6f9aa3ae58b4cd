#include "core/exchange/json_leaves.h"

#include <array>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace core::exchange {
namespace {

/// Whole numbers that name a row as well as a word would.
constexpr std::array<std::string_view, 3> kNumberNames{"coat", "month", "row"};

std::string nameOf(const Json& row, std::size_t index) {
  std::string number = std::to_string(index + 1);
  if (!row.is_object() || row.empty()) return number;
  const auto first = row.begin();
  if (first.key() == "from" && first->is_string())
    return first->get<std::string>() + ">" + row.at("to").get<std::string>();
  if (first->is_string()) return first->get<std::string>();
  for (const std::string_view key : kNumberNames) {
    if (first.key() == key && first->is_number_integer()) return std::to_string(first->get<int>());
  }
  return number;
}

FieldValue valueOf(const Json& json) {
  if (json.is_boolean()) return json.get<bool>();
  if (json.is_number()) return json.get<double>();
  if (json.is_string()) return json.get<std::string>();
  return std::monostate{};
}

class Walk {
public:
  std::vector<PlanLeaf> of(const Json& json) {
    visit(json, {});
    return std::move(leaves_);
  }

private:
  std::vector<PlanLeaf> leaves_;
  std::unordered_map<std::string, std::size_t> places_;
  std::vector<std::string> names_;

  void visit(const Json& json, const std::string& path) {
    if (json.is_object()) {
      for (const auto& item : json.items())
        visit(item.value(), path.empty() ? item.key() : path + "." + item.key());
    } else if (json.is_array()) {
      visitRows(json, path + "[]");
    } else {
      add(json, path);
    }
  }

  void visitRows(const Json& list, const std::string& path) {
    for (std::size_t k = 0; k < list.size(); ++k) {
      names_.push_back(nameOf(list[k], k));
      visit(list[k], path);
      names_.pop_back();
    }
  }

  void add(const Json& json, const std::string& path) {
    const auto [place, is_new] = places_.emplace(path, leaves_.size());
    if (is_new) leaves_.push_back({path, {}});
    leaves_[place->second].rows.push_back({names_, valueOf(json)});
  }
};

}  // namespace

std::vector<PlanLeaf> leavesOf(const Json& json) {
  return Walk().of(json);
}

}  // namespace core::exchange
