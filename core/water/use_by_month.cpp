#include "core/water/use_by_month.h"

#include "core/water/check.h"

#include <algorithm>

namespace core::water {
namespace {

const BandDay& firstDay(const WaterPlan& plan, int month) {
  return *std::ranges::find_if(plan.band, [&](const BandDay& d) { return d.month == month && d.day == 1; });
}

MonthUse monthUse(const WaterPlan& plan, std::size_t month) {
  const MonthFlows& flows = plan.months[month];
  const BandDay& first = firstDay(plan, static_cast<int>(month));
  MonthUse use;
  use.month = static_cast<int>(month) + 1;
  use.wanted_m3 = flows.need();
  use.wanted_a_day_m3 = flows.need() / daysInMonth(use.month);
  use.drawn_m3 = flows.drawn;
  use.drawn_a_day_m3 = flows.drawn / daysInMonth(use.month);
  use.usual_level_m = plan.curve.level(first.p50);
  use.low_level_m = plan.curve.level(first.p10);
  return use;
}

}  // namespace

std::vector<MonthUse> useByMonth(const WaterPlan& plan) {
  const auto first = static_cast<std::size_t>(plan.weather->first_month);
  std::vector<MonthUse> months;
  for (std::size_t k = 0; k < kMonths; ++k) months.push_back(monthUse(plan, (first + k) % kMonths));
  return months;
}

}  // namespace core::water
