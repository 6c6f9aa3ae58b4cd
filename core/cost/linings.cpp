#include "core/cost/linings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace core::cost {
namespace {

constexpr std::array<std::string_view, 7> kEarthTasks{
    "strip_topsoil", "platform_cut", "platform_fill", "excavate", "excavate_deep", "carry_spoil", "trim"};

double earthDays(const works::Works* works) {
  double days = 0;
  if (!works) return days;
  for (const works::Labour& labour : works->labour) {
    if (std::find(kEarthTasks.begin(), kEarthTasks.end(), labour.task) != kEarthTasks.end())
      days += labour.days;
  }
  return days;
}

std::optional<double> labourerPrice(const Prices& prices) {
  for (const PriceItem& item : prices.items) {
    if (item.item == "labourer") return item.price;
  }
  return {};
}

/// Nothing when there is digging to do and a labourer's price is not known.
std::optional<double> earthCost(const CostInput& input) {
  const double days = earthDays(input.works);
  if (days <= 0) return 0;
  const std::optional<double> price = labourerPrice(*input.bill.project.prices);
  if (!price) return {};
  return days * *price;
}

double sizeFor(PricePer per, const CostInput& input) {
  switch (per) {
    case PricePer::job:
      return 1;
    case PricePer::square_metre:
      return input.bill.geometry.floorArea() + input.bill.geometry.wallArea();
    case PricePer::cubic_metre:
      return input.full_volume_m3;
  }
  return 1;
}

/// The lining alone.
std::optional<double> priceOf(const LiningOffer& offer, const CostInput& input, const Bill& bill,
                              double earth) {
  if (offer.price) return *offer.price * sizeFor(offer.per, input);
  const bool is_billed =
      offer.lining == LiningKind::soil_cement && bill.missing.empty() && !bill.lines.empty();
  if (is_billed) return bill.total - earth;
  return {};
}

LiningCost costOf(const LiningOffer& offer, const CostInput& input, const Bill& bill) {
  const std::optional<double> earth =
      offer.lining == LiningKind::moulded_tank ? std::optional<double>(0) : earthCost(input);
  LiningCost cost{};
  cost.lining = offer.lining;
  cost.life_years = offer.life_years;
  cost.recovery = capitalRecovery(input.bill.project.prices->discount_percent, offer.life_years);
  cost.earth = earth.value_or(0);
  cost.price = priceOf(offer, input, bill, cost.earth);
  if (!cost.price) return cost;
  cost.capital = *cost.price + cost.earth;
  cost.upkeep_year = *cost.price * offer.upkeep_percent / 100;
  if (!earth) return cost;
  cost.annual = cost.capital * cost.recovery + cost.upkeep_year;
  if (input.full_volume_m3 > 0) cost.annual_per_m3 = *cost.annual / input.full_volume_m3;
  return cost;
}

bool isCheaper(const LiningCost& a, const LiningCost& b) {
  if (!a.annual || !b.annual) return a.annual && !b.annual;
  return *a.annual < *b.annual;
}

}  // namespace

double capitalRecovery(double discount_percent, double life_years) {
  const double i = discount_percent / 100;
  if (i == 0) return 1 / life_years;
  return i / -std::expm1(-life_years * std::log1p(i));  // i / (1 - (1 + i)^-n)
}

std::vector<LiningCost> linings(const CostInput& input, const Bill& bill) {
  std::vector<LiningCost> costs;
  const std::vector<LiningOffer>& offers = input.bill.project.prices->linings;
  costs.reserve(offers.size());
  for (const LiningOffer& offer : offers) costs.push_back(costOf(offer, input, bill));
  std::stable_sort(costs.begin(), costs.end(), isCheaper);
  return costs;
}

}  // namespace core::cost
