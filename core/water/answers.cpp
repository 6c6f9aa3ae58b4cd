#include "core/water/answers.h"

#include "core/water/map.h"
#include "core/water/sweep.h"

#include <algorithm>
#include <functional>

namespace core::water {
namespace {

constexpr std::size_t kSteps = 64;        // of each round
constexpr double kLargestTank_m3 = 200;   // the job's largest small tank
constexpr double kMostTimesTheBeds = 10;  // areas tried, times the present one
constexpr double kYears = 10;
constexpr double kLeastOverPoint = 1.1;  // smallest size over the one whose floor is a point

/// Years in ten without a dry day for each lane.
std::vector<double> yearsInTen(const std::vector<Lane>& lanes, const DaySeries& series) {
  std::vector<double> out;
  for (const int years : yearsWithoutDryDay(lanes, series))
    out.push_back(kYears * years / static_cast<double>(series.years()));
  return out;
}

/// Values from just above `from` to `to`.
std::vector<double> spread(double from, double to) {
  std::vector<double> values;
  for (std::size_t k = 1; k <= kSteps; ++k)
    values.push_back(from + (to - from) * static_cast<double>(k) / static_cast<double>(kSteps));
  return values;
}

using MakeLane = std::function<Lane(double)>;

std::vector<double> reliability(const std::vector<double>& values, const MakeLane& lane,
                                const DaySeries& series) {
  std::vector<Lane> lanes;
  for (const double value : values) lanes.push_back(lane(value));
  return yearsInTen(lanes, series);
}

/// Smallest value within (from, most] from which the target is met; two rounds, the second within the step
/// where the first one found it.
std::optional<double> leastThatMeets(double target, double from, double most, const MakeLane& lane,
                                     const DaySeries& series) {
  double to = most;
  for (int round = 0; round < 2; ++round) {
    const std::vector<double> values = spread(from, to);
    const std::vector<double> years = reliability(values, lane, series);
    const auto met = std::find_if(years.begin(), years.end(), [&](double y) { return y >= target; });
    if (met == years.end()) return round == 0 ? std::nullopt : std::optional(to);
    const auto k = static_cast<std::size_t>(met - years.begin());
    from = k == 0 ? from : values[k - 1];
    to = values[k];
  }
  return to;
}

/// Largest value within (0, most] up to which the target is met all along.
std::optional<double> mostThatMeets(double target, double most, const MakeLane& lane,
                                    const DaySeries& series) {
  double from = 0;
  double to = most;
  for (int round = 0; round < 2; ++round) {
    const std::vector<double> values = spread(from, to);
    const std::vector<double> years = reliability(values, lane, series);
    const auto missed = std::find_if(years.begin(), years.end(), [&](double y) { return y < target; });
    if (missed == years.end()) return to;
    const auto k = static_cast<std::size_t>(missed - years.begin());
    if (k > 0) from = values[k - 1];
    to = values[k];
  }
  return from > 0 ? std::optional(from) : std::nullopt;
}

}  // namespace

void addSizes(WaterPlan& plan, double target_years_in_ten) {
  const TankCurve& tank = plan.curve;
  const DaySeries& series = *plan.series;
  const MapReach reach = mapReach(tank.full_m3, plan.bed_area_m2);
  const MakeLane sized = [&](double full_m3) { return Lane{scaled(tank, factorFor(tank, full_m3)), 1}; };
  const double least = kLeastOverPoint * leastFull(tank);
  const std::vector<double> sizes = spread(least, std::max(least, reach.most_full_m3));
  const std::vector<double> years = reliability(sizes, sized, series);
  for (std::size_t k = 0; k < sizes.size(); ++k) plan.storage.push_back({sizes[k], years[k]});
  plan.most_tried_m3 = std::max(reach.most_full_m3, kLargestTank_m3);
  plan.smallest_full_m3 = leastThatMeets(target_years_in_ten, least, plan.most_tried_m3, sized, series);
  if (plan.bed_area_m2 <= 0) return;
  plan.most_tried_area_m2 = kMostTimesTheBeds * plan.bed_area_m2;
  const auto bedded = [&](double factor) { return Lane{tank, factor}; };
  if (const auto factor = mostThatMeets(target_years_in_ten, kMostTimesTheBeds, bedded, series))
    plan.largest_bed_area_m2 = *factor * plan.bed_area_m2;
}

}  // namespace core::water
