#pragma once

#include "core/base/figure.h"
#include "core/base/problem.h"
#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"
#include "core/water/water_plan.h"
#include "core/works/schedule.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::cost {

/// Weights of materials and the like with low, typical, high. Keys: weight.soil, weight.sand, weight.stone,
/// weight.water (kg for each m3), weight.sack (kg), weight.pipe (kg for each m), weight.fence (kg for each
/// m).
const std::vector<Figure>& figures();
/// @throws std::logic_error when there is none
const Figure& figure(std::string_view key);

/// Loads and trips of one item by its carrier.
struct Carriage {
  Carrier by = Carrier::none;
  double kg = 0;
  int loads = 0;                 ///< a piece heavier than a load is split evenly
  int loads_per_piece = 1;       ///< over 1: each piece is split
  double days = 0;               ///< of one carrier
  std::optional<double> amount;  ///< absent: the price of a trip is not known
};

/// One line of the bill.
struct CostLine {
  std::string item;
  std::string group;  ///< materials, labour, other
  std::string unit;   ///< bag, m3, piece, person_day, m, job
  double quantity = 0;
  std::optional<double> price;
  std::optional<double> amount;  ///< absent: the price is not known
  double own = 0;                ///< share that is given, of the amount
  double cash = 0;               ///< the rest
  std::optional<Carriage> carriage;
};

struct Bill {
  std::vector<CostLine> lines;
  double materials = 0, labour = 0, other = 0;
  double carriage = 0;
  double contingency = 0;
  double total = 0;          ///< all five
  double own = 0, cash = 0;  ///< total = own + cash; contingency is cash
  /// What the sums lack: items without a price or, to be carried, a weight; labourer and mason without works
  /// (unless their quantity is given or their price is 0); what the tank needs but the price list does not
  /// name (what is free stands there with a price of 0; water only counts when named); porter, mule, trolley
  /// without a price.
  std::vector<std::string> missing;
};

/// What the bill is reckoned from, light enough for the search of sizes.
struct BillInput {
  const geometry::TankGeometry& geometry;
  const Project& project;  ///< in force; its prices are there
  const lining::Quantities& quantities;
  double labourer_days = 0, mason_days = 0;
};
Bill bill(const BillInput& input);

/// Capital recovery factor i (1 + i)^n / ((1 + i)^n - 1); 1/n without interest. @pre life_years > 0
double capitalRecovery(double discount_percent, double life_years);

/// One lining by what it costs a year, with the digging it needs. What every tank needs whatever its lining
/// is in none of them: pipes, fence, silt trap, overflow, clearing and setting out, filling, leak test,
/// planting, own items.
struct LiningCost {
  LiningKind lining;
  /// Of the lining alone, for this tank; absent: not known. As offered. Soil-cement without an offer: cement,
  /// soil, sand, stone, water and sacks as billed with their carriage, and the works' person-days of the
  /// stone bed, the coats and the curing at the prices of labourer and mason (own quantities of these are not
  /// asked); the contingency on all of it.
  std::optional<double> price;
  /// Topsoil, platform, pit, spoil and trimming at the labourer's price, with contingency; 0 for a moulded
  /// tank, which stands on the ground, and while it is not known (without works or a labourer's price).
  double earth = 0;
  double capital = 0;  ///< price + earth
  double life_years = 0;
  double recovery = 0;           ///< factor
  double upkeep_year = 0;        ///< percent of the price
  std::optional<double> annual;  ///< capital * recovery + upkeep; absent while price or earth is not known
  std::optional<double> annual_per_m3;
};

/// Money needed on one day.
struct DayMoney {
  works::Day date;
  double goods = 0, wages = 0;  ///< cash
  double together = 0;          ///< cash from the first day up to and with this one
};

struct CostPlan {
  Bill bill;
  std::vector<LiningCost> linings;  ///< cheapest a year first, unknown ones last
  std::vector<DayMoney> days;  ///< days on which money is needed; contingency has none; empty without works
  std::optional<double> per_m3_stored;  ///< total over the full volume; absent while prices are missing
  std::optional<double> delivered_m3;   ///< drawn in the dry months of a mean year; absent without water
  std::vector<int> dry_months;          ///< 0 to 11: rain below half of ET0
  /// Of the whole soil-cement tank: bill.total * recovery + upkeep_year of soil-cement among the linings;
  /// absent while anything is missing from the bill or soil-cement has no price.
  std::optional<double> annual;
  std::optional<double> per_m3_delivered;  ///< annual over delivered
};

/// Problems of the price list: an item named twice.
Problems check(const Prices& prices);

struct CostInput {
  BillInput bill;
  const works::Works* works = nullptr;
  const water::WaterPlan* water = nullptr;
  double full_volume_m3 = 0;
};

/// @pre the project's prices are there
CostPlan costPlan(const CostInput& input);

}  // namespace core::cost
