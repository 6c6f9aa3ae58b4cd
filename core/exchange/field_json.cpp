#include "core/exchange/field_json.h"

namespace core::exchange {

Json jsonOf(const FieldValue& value) {
  if (const double* number = std::get_if<double>(&value)) return jsonNumber(*number);
  if (const bool* flag = std::get_if<bool>(&value)) return *flag;
  if (const std::string* text = std::get_if<std::string>(&value)) return *text;
  return nullptr;
}

FieldValue fieldValueOf(const Json& json) {
  constexpr double kPositiveZero = 0.0;  // added to a number it turns -0 into 0
  if (json.is_boolean()) return json.get<bool>();
  if (json.is_number()) return json.get<double>() + kPositiveZero;
  if (json.is_string()) return json.get<std::string>();
  return {};
}

}  // namespace core::exchange
