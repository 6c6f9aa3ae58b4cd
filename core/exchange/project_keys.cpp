#include "core/exchange/project_keys.h"

#include "core/project/fields.h"

#include <array>

namespace core::exchange {
namespace {

using std::string_view;

constexpr std::array<string_view, 2> kLaterParts{"prices", "options"};

bool isLaterPart(string_view id) {
  for (const string_view part : kLaterParts) {
    if (id == part) return true;
  }
  return false;
}

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
  if (id == "format" || id == "version" || id == kOutline || id == kSpotHeights || id == kWeatherDays)
    return Role::value;
  if (isLaterPart(id)) return Role::later_part;
  for (const Field& field : fields()) {
    if (const Role role = roleBeside(field.id, id); role != Role::unknown) return role;
  }
  return Role::unknown;
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
