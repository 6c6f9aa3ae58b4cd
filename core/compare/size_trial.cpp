#include "core/compare/size_trial.h"

#include "core/compare/size_grid.h"
#include "core/cost/cost_plan.h"
#include "core/lining/quantities.h"
#include "core/project/fields.h"
#include "core/site/thresholds.h"
#include "core/works/labour.h"
#include "core/works/one_go.h"
#include "core/works/schedule.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <utility>

namespace core::compare {
namespace {

using geometry::TankGeometry;

/// What does not touch the numbers of a size but takes time: a bill to compare with, and sizes for a crew
/// that is too small.
Project withoutExtras(Project project) {
  project.lining.customary = {};
  if (!project.works) return project;
  constexpr int kAnyNumber = 1'000'000;
  project.works->plasterers = kAnyNumber;
  project.works->masons = kAnyNumber;
  for (TaskWish& wish : project.works->wishes) {
    if (wish.task.starts_with("coat_")) wish.people.reset();
  }
  return project;
}

/// The highest cut that just stands in the weakest soil of its class. The finding site_cut_too_high warns
/// from less on, where the factor wanted is no longer there.
std::optional<double> mostCut(const site::Stability& stability) {
  const auto low = std::find_if(stability.cuts.begin(), stability.cuts.end(),
                                [](const site::CutHeights& cut) { return cut.strength == "low"; });
  return low == stability.cuts.end() ? std::nullopt : low->culmann_m;
}

int peopleOn(const std::vector<works::CoatCheck>& coats) {
  int most = 0;
  for (const works::CoatCheck& coat : coats) most = std::max(most, coat.needed);
  return most;
}

struct Days {
  double labourer = 0, mason = 0;
};

/// The same monthly means of evaporation in two days a month, the second one holding what the first one's
/// rounding takes off, so that a tank that fills loses as much. Without years no weather window is looked
/// for.
water::Weather twoDaysAMonth(const water::Weather& weather) {
  const std::array<double, kMonths> et0_mm = water::monthlyMeans(weather, weather.et0_mm);
  water::Weather means;
  for (std::size_t m = 0; m < kMonths; ++m) {
    const double twice = 2 * et0_mm.at(m);
    const auto first = static_cast<float>(twice);
    for (const float day_mm : {first, static_cast<float>(twice - static_cast<double>(first))}) {
      means.month.push_back(static_cast<std::uint8_t>(m));
      means.et0_mm.push_back(day_mm);
      means.rain_mm.push_back(0);
    }
  }
  return means;
}

std::optional<water::WaterPlan> lightWater(const std::optional<water::WaterPlan>& plan) {
  if (!plan || !plan->weather) return std::nullopt;
  water::WaterPlan light;
  light.weather = std::make_shared<const water::Weather>(twoDaysAMonth(*plan->weather));
  return light;
}

Days daysOf(const std::vector<works::Labour>& labour) {
  double all = 0;
  double mason = 0;
  for (const works::Labour& task : labour) {
    all += task.days;
    mason += task.mason_days;
  }
  return {all - mason, mason};
}

}  // namespace

bool isByCost(const Plan& plan) {
  return plan.cost && plan.cost->bill.missing.empty() && plan.cost->bill.total > 0;
}

SizeTrial::SizeTrial(Project in_force, const Plan& plan)
    : project_(withoutExtras(std::move(in_force))),
      entered_(project_.tank),
      water_(lightWater(plan.water)),
      has_prices_(isByCost(plan)),
      most_cut_m_(mostCut(plan.site.stability)),
      platforms_(project_, plan.site, plan.site.placement.toSite(plan.geometry.outline().centre())) {}

std::optional<Limit> SizeTrial::attempt(Candidate& candidate) {
  setSize(project_.tank, entered_, candidate);
  if (!isSound()) return Limit::geometry;
  const TankGeometry tank(project_.tank, project_.lining);
  candidate.full_volume_m3 = tank.volumeToLevel(tank.fullLevel());
  if (const auto limit = digging(tank)) return limit;
  const std::optional<works::Platform> platform = platforms_.of(tank);
  if (!platform) return Limit::platform;
  if (const auto limit = building(tank, *platform, candidate)) return limit;
  curve_ = water::curveOf(tank);
  return std::nullopt;
}

double SizeTrial::costOf(const Candidate& size) {
  setSize(project_.tank, entered_, size);
  const TankGeometry tank(project_.tank, project_.lining);
  const lining::Quantities quantities = lining::quantities(tank, project_);
  const works::Platform platform = platforms_.of(tank).value();
  return fullCost({tank, project_, quantities, platform});
}

double SizeTrial::fullCost(const works::LabourInput& input) const {
  Days days;
  if (project_.works) {
    const works::Works all = works::worksPlan({input, water_ ? &*water_ : nullptr});
    days = {all.person_days - all.mason_days, all.mason_days};
  }
  return cost::bill({input.geometry, project_, input.quantities, days.labourer, days.mason}).total;
}

water::TankCurve SizeTrial::curveFor(const Candidate& size) {
  setSize(project_.tank, entered_, size);
  return water::curveOf(TankGeometry(project_.tank, project_.lining));
}

bool SizeTrial::isSound() const {
  static const Field& diameter = field("tank.diameter_m");
  const Tank& tank = project_.tank;
  if (tank.shape == Shape::round && !(tank.diameter_m >= diameter.least && tank.diameter_m <= diameter.most))
    return false;
  return geometry::check(tank, project_.lining).empty();
}

std::optional<Limit> SizeTrial::digging(const TankGeometry& tank) const {
  static const double by_hand_m = site::threshold("pit.deepest_by_hand").value;
  if (tank.pitDepth() > by_hand_m) return Limit::pit_depth;
  if (most_cut_m_ && tank.pitDepth() > *most_cut_m_) return Limit::cut;
  return std::nullopt;
}

std::optional<Limit> SizeTrial::building(const TankGeometry& tank, const works::Platform& platform,
                                         Candidate& candidate) const {
  const SearchLimits& limits = project_.search;
  const lining::Quantities quantities = lining::quantities(tank, project_);
  const works::LabourInput input{tank, project_, quantities, platform};
  candidate.cement_bags = lining::orderOf(quantities, "cement_bags");
  Days days;
  if (project_.works) {
    const std::vector<works::Labour> labour = works::labour(input);
    days = daysOf(labour);
    candidate.people_on_coat = peopleOn(works::coatChecks(input, labour));
  }
  if (limits.most_people && candidate.people_on_coat > *limits.most_people) return Limit::people;
  if (limits.most_bags && candidate.cement_bags > *limits.most_bags) return Limit::bags;
  if (!has_prices_) return std::nullopt;
  const double rounding = 1 - 1e-12;  // the schedule only adds to these days, but sums them otherwise
  candidate.cost = rounding * cost::bill({tank, project_, quantities, days.labourer, days.mason}).total;
  if (!limits.most_cost) return std::nullopt;
  if (*candidate.cost <= *limits.most_cost) candidate.cost = fullCost(input);
  return *candidate.cost > *limits.most_cost ? std::optional(Limit::cost) : std::nullopt;
}

}  // namespace core::compare
