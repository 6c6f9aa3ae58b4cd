#include "core/cost/linings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>

namespace core::cost {
namespace {

constexpr std::array<std::string_view, 7> kEarthTasks{
    "strip_topsoil", "platform_cut", "platform_fill", "excavate", "excavate_deep", "carry_spoil", "trim"};

constexpr std::array<std::string_view, 6> kLiningMaterials{"cement_bags", "soil",  "sand",
                                                           "stone",       "water", "sacks"};

template <class Names>
bool holds(const Names& names, std::string_view name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

bool isEarth(std::string_view task) {
  return holds(kEarthTasks, task);
}

bool isLining(std::string_view task) {
  return task == "stone_bed" || task == "curing" || task.starts_with("coat_");
}

struct Days {
  double labourer = 0, mason = 0;
};

/// @param is_of picks tasks by their id
template <class Test>
Days daysOf(const works::Works& works, Test is_of) {
  Days days;
  for (const works::Labour& labour : works.labour) {
    if (!is_of(labour.task)) continue;
    days.labourer += labour.days - labour.mason_days;
    days.mason += labour.mason_days;
  }
  return days;
}

std::optional<double> wage(const Prices& prices, std::string_view who) {
  for (const PriceItem& item : prices.items) {
    if (item.item == who) return item.price;
  }
  return {};
}

/// Nothing when there is work to do and its price is not known.
std::optional<double> wages(double days, const std::optional<double>& price) {
  if (days <= 0) return 0;
  if (!price) return {};
  return days * *price;
}

double withContingency(double amount, const Prices& prices) {
  return amount * (1 + prices.contingency_percent / 100);
}

std::optional<double> earthCost(const CostInput& input) {
  if (!input.works) return {};
  const Prices& prices = *input.bill.project.prices;
  const Days days = daysOf(*input.works, isEarth);
  const std::optional<double> cost = wages(days.labourer + days.mason, wage(prices, "labourer"));
  if (!cost) return {};
  return withContingency(*cost, prices);
}

/// What the lining is made of, and carrying it.
std::optional<double> liningMaterials(const Bill& bill) {
  const auto isOfLining = [](const std::string& item) { return holds(kLiningMaterials, item); };
  if (std::any_of(bill.missing.begin(), bill.missing.end(), isOfLining)) return {};
  double sum = 0;
  for (const CostLine& line : bill.lines) {
    if (!isOfLining(line.item)) continue;
    sum += line.amount.value_or(0);
    if (!line.carriage || line.carriage->loads == 0) continue;
    if (!line.carriage->amount) return {};
    sum += *line.carriage->amount;
  }
  return sum;
}

std::optional<double> liningWages(const CostInput& input) {
  if (!input.works) return {};
  const Prices& prices = *input.bill.project.prices;
  const Days days = daysOf(*input.works, isLining);
  const std::optional<double> labourers = wages(days.labourer, wage(prices, "labourer"));
  const std::optional<double> masons = wages(days.mason, wage(prices, "mason"));
  if (!labourers || !masons) return {};
  return *labourers + *masons;
}

std::optional<double> soilCementPrice(const CostInput& input, const Bill& bill) {
  const std::optional<double> materials = liningMaterials(bill), work = liningWages(input);
  if (!materials || !work) return {};
  return withContingency(*materials + *work, *input.bill.project.prices);
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
std::optional<double> priceOf(const LiningOffer& offer, const CostInput& input, const Bill& bill) {
  if (offer.price) return *offer.price * sizeFor(offer.per, input);
  if (offer.lining == LiningKind::soil_cement) return soilCementPrice(input, bill);
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
  cost.price = priceOf(offer, input, bill);
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
