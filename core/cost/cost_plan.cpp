#include "core/cost/cost_plan.h"

#include "core/cost/linings.h"
#include "core/cost/money_days.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>

#include <fmt/format.h>

namespace core::cost {
namespace {

/// Months whose mean rain is below half of ET0. @source fao_growing_period
std::vector<int> dryMonths(const water::Weather& weather) {
  constexpr double kShareOfEt0 = 0.5;
  const std::array<double, kMonths> rain = water::monthlyMeans(weather, weather.rain_mm);
  const std::array<double, kMonths> et0 = water::monthlyMeans(weather, weather.et0_mm);
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

/// Of the whole tank: the bill, and what its lining asks for in the years.
std::optional<double> annualOf(const Bill& bill, const std::vector<LiningCost>& linings) {
  const auto lining = std::find_if(linings.begin(), linings.end(), [](const LiningCost& cost) {
    return cost.lining == LiningKind::soil_cement && cost.price;
  });
  if (lining == linings.end()) return {};
  return bill.total * lining->recovery + lining->upkeep_year;
}

}  // namespace

Problems check(const Prices& prices) {
  Problems problems;
  const auto& items = prices.items;
  for (auto item = items.begin(); item != items.end(); ++item) {
    const auto isSame = [&](const PriceItem& earlier) { return earlier.item == item->item; };
    if (item->item.empty() || std::none_of(items.begin(), item, isSame)) continue;
    problems.push_back({"name_repeated",
                        fmt::format("prices.items[{}].item", std::distance(items.begin(), item)),
                        fmt::format("\"{}\"", item->item),
                        {},
                        {},
                        Unit::none,
                        {}});
  }
  return problems;
}

CostPlan costPlan(const CostInput& input) {
  CostPlan plan;
  plan.bill = bill(input.bill);
  plan.linings = linings(input, plan.bill);
  if (input.works) plan.days = moneyDays(plan.bill, *input.works);
  const bool is_priced = plan.bill.missing.empty() && !plan.bill.lines.empty();
  if (is_priced && input.full_volume_m3 > 0) plan.per_m3_stored = plan.bill.total / input.full_volume_m3;
  if (input.water) addDelivered(*input.water, plan);
  if (is_priced) plan.annual = annualOf(plan.bill, plan.linings);
  if (plan.annual && plan.delivered_m3.value_or(0) > 0)
    plan.per_m3_delivered = *plan.annual / *plan.delivered_m3;
  return plan;
}

}  // namespace core::cost
