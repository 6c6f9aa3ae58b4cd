#include "core/exchange/json_reader.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace core::exchange {
namespace {

constexpr double kMostWhole = 1e15;  // every whole double up to here is exact as an integer

bool isPlainList(const Json& json) {
  return json.is_array() &&
         std::none_of(json.begin(), json.end(), [](const Json& e) { return e.is_structured(); });
}

void write(const Json& json, std::size_t indent, std::string& out);

void writePlainList(const Json& json, std::string& out) {
  out += '[';
  for (std::size_t k = 0; k < json.size(); ++k) {
    if (k > 0) out += ", ";
    out += compactText(json[k]);
  }
  out += ']';
}

void writeLines(const Json& json, std::size_t indent, std::string& out) {
  bool first = true;
  for (const auto& item : json.items()) {
    out += first ? "\n" : ",\n";
    first = false;
    out.append(indent + 2, ' ');
    if (json.is_object()) out += compactText(item.key()) + ": ";
    write(item.value(), indent + 2, out);
  }
  out += '\n';
  out.append(indent, ' ');
}

void write(const Json& json, std::size_t indent, std::string& out) {
  if (!json.is_structured() || json.empty()) {
    out += compactText(json);
  } else if (isPlainList(json)) {
    writePlainList(json, out);
  } else {
    out += json.is_object() ? '{' : '[';
    writeLines(json, indent, out);
    out += json.is_object() ? '}' : ']';
  }
}

}  // namespace

Json jsonNumber(double value) {
  if (value == std::floor(value) && std::abs(value) < kMostWhole) return static_cast<std::int64_t>(value);
  return value;
}

std::string prettyText(const Json& json) {
  std::string out;
  write(json, 0, out);
  return out + '\n';
}

std::string compactText(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace core::exchange
