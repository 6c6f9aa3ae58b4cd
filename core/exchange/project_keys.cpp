#include "core/exchange/project_keys.h"

#include "core/project/fields.h"

#include <algorithm>
#include <array>

namespace core::exchange {
namespace {

using std::string_view;

/// Ids that stand for values although no field has them.
constexpr std::array<string_view, 7> kOtherValues{
    "format", "version", kOutline, kSpotHeights, kWeatherDays, "options[].name", "options[].changes"};

Role roleBeside(string_view field_id, string_view id) {
  if (!field_id.starts_with(id)) return Role::unknown;
  const string_view rest = field_id.substr(id.size());
  if (rest.empty()) return Role::value;
  if (rest.starts_with("[].")) return Role::rows;
  return rest.starts_with('.') ? Role::section : Role::unknown;
}

}  // namespace

Role roleOf(string_view prefix, string_view key) {
  if (key.empty() || key.find_first_of(".[]") != string_view::npos) return Role::unknown;
  const std::string id = std::string(prefix).append(key);
  if (std::find(kOtherValues.begin(), kOtherValues.end(), id) != kOtherValues.end()) return Role::value;
  if (id == kOptions) return Role::rows;
  for (const Field& field : fields()) {
    if (const Role role = roleBeside(field.id, id); role != Role::unknown) return role;
  }
  return Role::unknown;
}

std::vector<string_view> sections() {
  std::vector<string_view> ids;
  for (const Field& field : fields()) {
    for (std::size_t dot = field.id.find('.'); dot != string_view::npos; dot = field.id.find('.', dot + 1)) {
      const string_view id = field.id.substr(0, dot);
      if (!id.ends_with("[]") && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    }
  }
  return ids;
}

std::string pointerText(string_view id, std::size_t row) {
  std::string out = "/";
  for (std::size_t k = 0; k < id.size(); ++k) {
    if (id.substr(k).starts_with("[]")) {
      out += "/" + std::to_string(row);
      ++k;
    } else {
      out += id[k] == '.' ? '/' : id[k];
    }
  }
  return out;
}

}  // namespace core::exchange
