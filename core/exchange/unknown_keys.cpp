#include "core/exchange/unknown_keys.h"

#include "core/exchange/project_keys.h"
#include "core/project/fields.h"

#include <algorithm>
#include <string>
#include <utility>

namespace core::exchange {
namespace {

class Walk {
public:
  UnknownKeys take() {
    const auto by_pointer = [](const KeptKey& a, const KeptKey& b) { return a.pointer < b.pointer; };
    std::sort(found_.kept.begin(), found_.kept.end(), by_pointer);
    return std::move(found_);
  }

  void object(const Json& json, const std::string& prefix, const Json::json_pointer& at) {
    for (const auto& item : json.items()) {
      const std::string id = prefix + item.key();
      const Role role = roleOf(prefix, item.key());
      if (role == Role::unknown) {
        keep(at / item.key(), item.value());
      } else if (role == Role::section && item.value().is_object()) {
        object(item.value(), id + ".", at / item.key());
      } else if (role == Role::rows && item.value().is_array()) {
        rows(item.value(), id + "[].", at / item.key());
      }
    }
  }

private:
  UnknownKeys found_;

  void rows(const Json& list, const std::string& prefix, const Json::json_pointer& at) {
    for (std::size_t row = 0; row < list.size(); ++row) {
      if (list[row].is_object()) object(list[row], prefix, at / row);
    }
  }

  void keep(const Json::json_pointer& at, const Json& value) {
    found_.kept.push_back({at.to_string(), compactText(value)});
    Problem note;
    note.code = "unknown_key";
    note.path = dottedPath(at);
    note.value = shortened(found_.kept.back().json);
    found_.notes.push_back(std::move(note));
  }
};

}  // namespace

UnknownKeys unknownKeys(const Json& root) {
  Walk walk;
  walk.object(root, "", Json::json_pointer());
  return walk.take();
}

}  // namespace core::exchange
