#include "core/compare/refine.h"

#include "core/findings.h"

#include <utility>

namespace core::compare {
namespace {

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel && *cancel;
}

template <typename Part>
const Part* there(const std::optional<Part>& part) {
  return part ? &*part : nullptr;
}

}  // namespace

Refinement refinement(const Project& project, const Plan& plan, const std::atomic<bool>* cancel) {
  Refinement refined;
  refined.stability = plan.site.stability;
  if (!refined.stability.is_searched) site::searchSlips(refined.stability, cancel);
  if (isCancelled(cancel)) return refined;
  if (plan.works || plan.cost) {
    const Project in_force = works::inForce(project, plan.calibration);
    refined.ranges = cost::ranges(
        {in_force, plan.geometry, plan.quantities, there(plan.works), there(plan.cost), there(plan.water)},
        cancel);
  }
  if (project.options.empty() || isCancelled(cancel)) return refined;
  Plan searched = plan;
  searched.site.stability = refined.stability;
  refined.options = compareOptions(project, searched, cancel);
  return refined;
}

void put(const Project& project, Plan& plan, Refinement refinement) {
  plan.site.stability = std::move(refinement.stability);
  plan.ranges = std::move(refinement.ranges);
  plan.options = std::move(refinement.options);
  plan.findings = findings(works::inForce(project, plan.calibration), plan);
}

void refine(const Project& project, Plan& plan, const std::atomic<bool>* cancel) {
  Refinement refined = refinement(project, plan, cancel);
  if (!isCancelled(cancel)) put(project, plan, std::move(refined));
}

}  // namespace core::compare
