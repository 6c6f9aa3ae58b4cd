#include "core/water/answers.h"

#include "core/water/map.h"
#include "core/water/sweep.h"

#include <algorithm>
#include <functional>

namespace core::water {
namespace {

constexpr std::size_t kSteps = 64;        // of the first look
constexpr std::size_t kFineSteps = 32;    // within the step where the first look found the border
constexpr double kLargestTank_m3 = 200;   // the job's largest small tank
constexpr double kMostTimesTheBeds = 10;  // areas tried, times the present one
constexpr double kYears = 10;

using MakeLane = std::function<Lane(double)>;

/// Values tried and the years in ten that each gives.
struct Tried {
  std::vector<double> values, years;

  /// Index of the first value whose years fulfil a condition; the number of values when none does.
  template <class Condition>
  std::size_t first(Condition is_found) const {
    return static_cast<std::size_t>(std::find_if(years.begin(), years.end(), is_found) - years.begin());
  }
};

/// Tries values from just above `from` to `to`.
Tried trySteps(double from, double to, std::size_t steps, const MakeLane& lane, const DaySeries& series) {
  Tried tried;
  std::vector<Lane> lanes;
  for (std::size_t k = 1; k <= steps; ++k) {
    tried.values.push_back(from + (to - from) * static_cast<double>(k) / static_cast<double>(steps));
    lanes.push_back(lane(tried.values.back()));
  }
  for (const int years : yearsWithoutDryDay(lanes, series))
    tried.years.push_back(kYears * years / static_cast<double>(series.years()));
  return tried;
}

/// Years in ten of one lane by the run in double, whose numbers do not depend on the processor.
double yearsByRun(const Lane& lane, const DaySeries& series) {
  const double start = startVolume(lane.tank, series, lane.bed_factor);
  const Run all = run(lane.tank, series, start, lane.bed_factor);
  int good = 0;
  for (std::size_t y = 0; y < series.years(); ++y) {
    const auto first = all.dry.begin() + static_cast<std::ptrdiff_t>(series.year_start[y]);
    const auto last = all.dry.begin() + static_cast<std::ptrdiff_t>(series.year_start[y + 1]);
    good += std::find(first, last, 1) == last ? 1 : 0;
  }
  return kYears * good / static_cast<double>(series.years());
}

/// First value that meets the target; looked for again within the step before it.
std::optional<double> leastThatMeets(double target, double from, const Tried& tried, const MakeLane& lane,
                                     const DaySeries& series) {
  const auto meets = [&](double years) { return years >= target; };
  const std::size_t k = tried.first(meets);
  if (k == tried.values.size()) return std::nullopt;
  const Tried fine = trySteps(k == 0 ? from : tried.values[k - 1], tried.values[k], kFineSteps, lane, series);
  for (std::size_t i = fine.first(meets); i < fine.values.size(); ++i) {
    if (meets(yearsByRun(lane(fine.values[i]), series))) return fine.values[i];
  }
  return tried.values[k];
}

/// Largest value within (0, most] up to which the target is met all along.
std::optional<double> mostThatMeets(double target, double most, const MakeLane& lane,
                                    const DaySeries& series) {
  const auto misses = [&](double years) { return years < target; };
  const Tried tried = trySteps(0, most, kSteps, lane, series);
  const std::size_t k = tried.first(misses);
  if (k == tried.values.size()) return most;
  const double met = k == 0 ? 0 : tried.values[k - 1];
  const Tried fine = trySteps(met, tried.values[k], kFineSteps, lane, series);
  for (std::size_t i = std::min(fine.first(misses), fine.values.size() - 1); i > 0; --i) {
    if (!misses(yearsByRun(lane(fine.values[i - 1]), series))) return fine.values[i - 1];
  }
  return met > 0 ? std::optional(met) : std::nullopt;
}

}  // namespace

void addSizes(WaterPlan& plan, double target_years_in_ten) {
  const TankCurve& tank = plan.curve;
  const DaySeries& series = *plan.series;
  const MapReach reach = mapReach(tank.full_m3, plan.bed_area_m2);
  const MakeLane sized = [&](double full_m3) { return Lane{scaled(tank, factorFor(tank, full_m3)), 1}; };
  const double least = leastSize(tank);
  const double near = std::max(least, reach.most_full_m3);
  const Tried storage = trySteps(least, near, kSteps, sized, series);
  for (std::size_t k = 0; k < storage.values.size(); ++k)
    plan.storage.push_back({storage.values[k], storage.years[k]});
  plan.most_tried_m3 = std::max(near, kLargestTank_m3);
  plan.smallest_full_m3 = leastThatMeets(target_years_in_ten, least, storage, sized, series);
  if (!plan.smallest_full_m3 && plan.most_tried_m3 > near) {
    const Tried beyond = trySteps(near, plan.most_tried_m3, kSteps, sized, series);
    plan.smallest_full_m3 = leastThatMeets(target_years_in_ten, near, beyond, sized, series);
  }
  if (plan.bed_area_m2 <= 0) return;
  plan.most_tried_area_m2 = kMostTimesTheBeds * plan.bed_area_m2;
  const auto bedded = [&](double factor) { return Lane{tank, factor}; };
  if (const auto factor = mostThatMeets(target_years_in_ten, kMostTimesTheBeds, bedded, series))
    plan.largest_bed_area_m2 = *factor * plan.bed_area_m2;
}

}  // namespace core::water
