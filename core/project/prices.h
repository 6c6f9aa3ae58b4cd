#pragma once

#include <optional>
#include <string>
#include <vector>

namespace core {

enum class Carrier { none, porter, mule, trolley };
enum class LiningKind { soil_cement, plastic_sheet, ferrocement, stone_masonry, moulded_tank };
/// What a lining's price is for.
enum class PricePer { job, square_metre, cubic_metre };
enum class RangedInput {
  thickness,
  unevenness,
  dry_to_wet,
  cement_density,
  digging,
  plastering,
  prices,
  wages,
  flow
};

/// One line of the price list. The quantities of cement_bags, soil, sand, stone, water, sacks, labourer,
/// mason, source_pipe, field_pipe and fence come from the plan; any other name is an item of one's own.
struct PriceItem {
  std::string item;
  std::optional<double> price;     ///< of one unit; absent: not known
  std::optional<double> quantity;  ///< absent: from the plan
  double own_percent = 0;          ///< share that the household or group gives itself
  Carrier carried_by = Carrier::none;
  std::optional<double> kg_each;  ///< absent: from the table of weights
  bool operator==(const PriceItem&) const = default;
};

struct CarrierTerms {
  double load_kg;
  double trips_per_day;
  std::optional<double> price_per_trip;
  bool operator==(const CarrierTerms&) const = default;
};

/// What one way to line the tank costs and how long it lasts.
struct LiningOffer {
  LiningKind lining = LiningKind::soil_cement;
  std::optional<double> price;  ///< absent: for soil-cement reckoned from this plan, else not compared
  PricePer per = PricePer::square_metre;
  double life_years = 10;
  double upkeep_percent = 2;  ///< of the price, a year
  bool operator==(const LiningOffer&) const = default;
};

std::vector<PriceItem> usualItems();
std::vector<LiningOffer> usualLinings();

struct Prices {
  std::vector<PriceItem> items = usualItems();
  CarrierTerms porter{30, 4, {}};
  CarrierTerms mule{60, 3, {}};
  CarrierTerms trolley{1000, 2, {}};
  double contingency_percent = 10;
  double discount_percent = 10;
  std::vector<LiningOffer> linings = usualLinings();
  bool operator==(const Prices&) const = default;
};

/// How far one input may lie from the value in force: low and high of a triangular spread about it [%].
struct InputRange {
  RangedInput input = RangedInput::thickness;
  double low_percent = -10;
  double high_percent = 10;
  bool operator==(const InputRange&) const = default;
};

std::vector<InputRange> usualRanges();

struct Ranges {
  std::vector<InputRange> inputs = usualRanges();
  int draws = 10000;
  int seed = 1;
  bool operator==(const Ranges&) const = default;
};

}  // namespace core
