#pragma once

#include "core/exchange/json_values.h"
#include "core/hydraulics/delivery_plan.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>

namespace core::exchange {

// What the files behind deliveryJson share.

using hydraulics::Result;

inline Json litresPerMinute(double flow_m3_s) {
  constexpr double kLitrePerMinute = 60e3;
  return number(flow_m3_s * kLitrePerMinute);
}

inline Json litresPerMinute(const std::optional<double>& flow_m3_s) {
  return flow_m3_s ? litresPerMinute(*flow_m3_s) : Json(nullptr);
}

inline Json hours(double seconds) {
  constexpr double kHour_s = 3600;
  return number(seconds / kHour_s);
}

/// JSON of a value, or the code of why there is none.
template <class Value, class Make>
Json resultOf(const Result<Value>& result, Make make) {
  return result ? Json(make(*result)) : Json{{"fault", std::string(result.error())}};
}

template <class Value, class Make>
Json resultOf(const std::optional<Result<Value>>& result, Make make) {
  return result ? resultOf(*result, make) : Json(nullptr);
}

inline Json numberOf(const Result<double>& result) {
  return result ? number(*result) : Json(nullptr);
}

template <class Enum, std::size_t Count>
std::string tokenOf(Enum value, const std::array<const char*, Count>& tokens) {
  return tokens.at(static_cast<std::size_t>(value));
}

/// A line with its flows; null when there is none.
Json lineJson(const std::optional<hydraulics::LinePlan>& plan);
Json fieldJson(const std::optional<hydraulics::FieldPlan>& plan);

}  // namespace core::exchange
