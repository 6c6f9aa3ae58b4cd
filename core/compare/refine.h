#pragma once

#include "core/plan.h"

#include <atomic>
#include <vector>

namespace core::compare {

/// A for the project itself and one for each option. Weather years and ground of the plan are used again.
/// @param cancel when it becomes true the answer is empty
std::vector<OptionResult> compareOptions(const Project& project, const Plan& plan,
                                         const std::atomic<bool>* cancel = nullptr);

/// What takes longer than a drag allows: slips on the downhill side, the spread of bags, days and money, the
/// options side by side.
struct Refinement {
  site::Stability stability;
  std::optional<cost::RangesPlan> ranges;
  std::vector<OptionResult> options;
};
/// @param cancel when it becomes true the answer is of no use
Refinement refinement(const Project& project, const Plan& plan, const std::atomic<bool>* cancel = nullptr);

/// Puts a refinement of the same project and plan in, and reckons the findings again.
void put(const Project& project, Plan& plan, Refinement refinement);

/// Both at once.
void refine(const Project& project, Plan& plan, const std::atomic<bool>* cancel = nullptr);

}  // namespace core::compare
