#include "core/cost/cost_plan.h"

#include "core/cost/linings.h"
#include "core/cost/money_days.h"

#include <array>
#include <cstddef>

namespace core::cost {
namespace {

/// Months whose mean rain is below half of ET0. @source fao_growing_period
std::vector<int> dryMonths(const water::Weather& weather) {
  constexpr double kShareOfEt0 = 0.5;
  std::array<double, kMonths> rain{}, et0{};
  for (std::size_t day = 0; day < weather.days(); ++day) {
    rain.at(weather.month[day]) += weather.rain_mm[day];
    et0.at(weather.month[day]) += weather.et0_mm[day];
  }
  std::vector<int> months;
  for (std::size_t month = 0; month < kMonths; ++month) {
    if (rain[month] < kShareOfEt0 * et0[month]) months.push_back(static_cast<int>(month));
  }
  return months;
}

void addDelivered(const water::WaterPlan& water, CostPlan& plan) {
  if (!water.weather) return;
  plan.dry_months = dryMonths(*water.weather);
  double drawn = 0;
  for (const int month : plan.dry_months) drawn += water.months.at(static_cast<std::size_t>(month)).drawn;
  plan.delivered_m3 = drawn;
}

std::optional<double> annualOfSoilCement(const std::vector<LiningCost>& linings) {
  for (const LiningCost& cost : linings) {
    if (cost.lining == LiningKind::soil_cement) return cost.annual;
  }
  return {};
}

}  // namespace

CostPlan costPlan(const CostInput& input) {
  CostPlan plan;
  plan.bill = bill(input.bill);
  plan.linings = linings(input, plan.bill);
  if (input.works) plan.days = moneyDays(plan.bill, *input.works);
  const bool is_priced = plan.bill.missing.empty() && !plan.bill.lines.empty();
  if (is_priced && input.full_volume_m3 > 0) plan.per_m3_stored = plan.bill.total / input.full_volume_m3;
  if (input.water) addDelivered(*input.water, plan);
  plan.annual = annualOfSoilCement(plan.linings);
  if (plan.annual && plan.delivered_m3.value_or(0) > 0)
    plan.per_m3_delivered = *plan.annual / *plan.delivered_m3;
  return plan;
}

}  // namespace core::cost
