#include "core/compare/refine.h"
#include "core/findings.h"
#include "core/project/option_fields.h"

#include <algorithm>
#include <utility>

namespace core::compare {
namespace {

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel && *cancel;
}

void addSizes(OptionResult& result, const Plan& plan) {
  result.geometry = plan.geometry;
  result.full_volume_m3 = plan.tank.full_volume_m3;
  result.usable_volume_m3 = plan.tank.usable_volume_m3;
  result.pit_volume_m3 = plan.earthwork.pit_volume_m3;
  result.length_m = plan.tank.clear_floor_length_m;
  result.width_m = plan.tank.clear_floor_width_m;
  result.depth_m = plan.tank.depth_m;
}

void addMaterials(OptionResult& result, const lining::Quantities& quantities) {
  result.cement_bags = lining::orderOf(quantities, "cement_bags");
  result.sand_m3 = lining::orderOf(quantities, "sand");
  result.soil_m3 = lining::orderOf(quantities, "soil");
  result.stone_m3 = lining::orderOf(quantities, "stone");
}

void addWorks(OptionResult& result, const works::Works& works) {
  result.person_days = works.person_days;
  for (const works::CoatCheck& coat : works.coat_checks)
    result.people_on_coat = std::max(result.people_on_coat.value_or(0), coat.needed);
  for (const works::Task& task : works.schedule) {
    if (!works::isWork(task)) continue;
    result.start = std::min(result.start.value_or(task.start), task.start);
    result.finish = std::max(result.finish.value_or(task.finish), task.finish);
  }
}

void addMoneyAndWater(OptionResult& result, const Plan& plan) {
  if (plan.cost && plan.cost->bill.missing.empty()) {  // a part of the cost is no cost
    result.cost = plan.cost->bill.total;
    result.cash = plan.cost->bill.cash;
    result.per_m3_stored = plan.cost->per_m3_stored;
  }
  if (plan.cost) result.delivered_m3 = plan.cost->delivered_m3;
  if (!plan.water) return;
  result.years_in_ten = plan.water->years_in_ten;
  result.dry_days_mean = plan.water->dry_days_mean;
}

void addNumbers(OptionResult& result, const Plan& plan) {
  addSizes(result, plan);
  addMaterials(result, plan.quantities);
  if (plan.works) addWorks(result, *plan.works);
  addMoneyAndWater(result, plan);
  for (const Finding& finding : plan.findings) {
    result.stops += finding.severity == Severity::stop ? 1 : 0;
    result.cautions += finding.severity == Severity::caution ? 1 : 0;
  }
}

/// The numbers of one plan, its slips searched: a slip is a stop like any other.
OptionResult resultOf(std::size_t index, const Project& project, Plan plan, const std::atomic<bool>* cancel) {
  OptionResult result;
  result.letter = optionLetter(index);
  plan.options.clear();
  if (!plan.site.stability.is_searched) site::searchSlips(plan.site.stability, cancel);
  plan.findings = findings(works::inForce(project, plan.calibration), plan);
  addNumbers(result, plan);
  return result;
}

/// Changes of rows that the project does not have.
Problems rowsMissing(const Project& changed, const Option& option) {
  Problems problems;
  for (const FieldChange& change : option.changes) {
    const auto place = placeOfPath(change.path);
    if (place && place->row < rowCount(*place->field, changed)) continue;
    Problem problem;
    problem.code = "unknown_field";
    problem.path = change.path;
    problem.value = jsonText(change.value);
    problems.push_back(std::move(problem));
  }
  return problems;
}

OptionResult resultOf(std::size_t index, const Project& project, const Option& option, const Plan& base,
                      const std::atomic<bool>* cancel) {
  const Project changed = withChanges(project, option);
  tl::expected<Plan, Problems> plan = tl::make_unexpected(rowsMissing(changed, option));
  if (plan.error().empty()) plan = core::plan(changed, &base);
  OptionResult result;
  if (plan) {
    result = resultOf(index, changed, std::move(*plan), cancel);
  } else {
    result.letter = optionLetter(index);
    result.problems = std::move(plan.error());
  }
  result.name = option.name;
  result.changes = option.changes;
  return result;
}

}  // namespace

std::vector<OptionResult> compareOptions(const Project& project, const Plan& plan,
                                         const std::atomic<bool>* cancel) {
  std::vector<OptionResult> results{resultOf(0, project, plan, cancel)};
  for (std::size_t k = 0; k < project.options.size() && !isCancelled(cancel); ++k)
    results.push_back(resultOf(k + 1, project, project.options[k], plan, cancel));
  if (isCancelled(cancel)) results.clear();
  return results;
}

}  // namespace core::compare
