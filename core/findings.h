#pragma once

#include "core/plan.h"

#include <vector>

namespace core {

/// Everything a practitioner should know of a plan, stops first, then cautions, then notes.
std::vector<Finding> findings(const Project& project, const Plan& plan);

}  // namespace core
