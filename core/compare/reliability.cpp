#include "core/compare/reliability.h"

#include "core/water/sweep.h"

#include <algorithm>
#include <cstddef>

namespace core::compare {
namespace {

constexpr double kYears = 10;
constexpr double kSweepError = 1e-3;  // of the capacity on any day, core/water/sweep.h

water::Lane withDeadWater(water::TankCurve tank, double more_m3) {
  tank.dead_m3 += more_m3;
  return {tank, 1};
}

}  // namespace

std::vector<YearsBounds> Reliability::bounds(std::span<const water::TankCurve> tanks,
                                             const std::atomic<bool>& cancel) const {
  std::vector<water::Lane> lanes;
  lanes.reserve(2 * tanks.size());
  for (const double sign : {1.0, -1.0}) {
    for (const water::TankCurve& tank : tanks)
      lanes.push_back(withDeadWater(tank, sign * kSweepError * tank.full_m3));
  }
  const std::vector<int> years = water::yearsWithoutDryDay(lanes, *series_, &cancel);
  std::vector<YearsBounds> result;
  if (years.size() != lanes.size()) return result;
  result.reserve(tanks.size());
  for (std::size_t i = 0; i < tanks.size(); ++i)
    result.push_back({yearsInTen(years[i]), yearsInTen(years[i + tanks.size()])});
  return result;
}

double Reliability::exact(const water::TankCurve& tank) const {
  const water::Run run = water::run(tank, *series_, water::startVolume(tank, *series_));
  int good = 0;
  for (std::size_t y = 0; y < series_->years(); ++y) {
    const auto first = run.dry.begin() + static_cast<std::ptrdiff_t>(series_->year_start[y]);
    const auto last = run.dry.begin() + static_cast<std::ptrdiff_t>(series_->year_start[y + 1]);
    good += std::find(first, last, 1) == last ? 1 : 0;
  }
  return yearsInTen(good);
}

double Reliability::yearsInTen(int years) const {
  return kYears * years / static_cast<double>(series_->years());
}

}  // namespace core::compare
