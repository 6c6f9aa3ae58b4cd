#pragma once

#include "core/plan.h"

#include <string>

namespace core::exchange {

/// The plan as one JSON object, "format":"tankwright-plan", SI units, two-space indent, newline at the end.
std::string planText(const Plan& plan);

/// The plan's tables as CSV (RFC 4180): section, item, value, unit. Items are named by the keys of planText.
std::string planCsv(const Plan& plan);

}  // namespace core::exchange
