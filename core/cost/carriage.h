#pragma once

#include "core/cost/cost_plan.h"
#include "core/project/prices.h"

#include <optional>

namespace core::cost {

/// How one kind of goods is made into loads.
struct Loading {
  Carrier by = Carrier::none;
  bool in_pieces = false;  ///< bags, sacks; else a heap or a coil that can be shared out at will
  double kg_each = 0;      ///< of one unit
  double load_kg = 1;
  int loads_per_piece = 1;  ///< a piece heavier than a load is split evenly
  double pieces_per_load = 1;
  double trips_per_day = 1;
  std::optional<double> price_per_trip;
};

/// @pre `by` is not none, load_kg and trips_per_day are above 0, kg_each is at most a million loads
Loading loading(Carrier by, const CarrierTerms& terms, double kg_each, bool in_pieces);

/// Loads, a whole number, for `quantity` units. Pieces of a begun unit are carried whole.
double loadsFor(const Loading& loading, double quantity);

/// Nothing for more loads than can be counted.
std::optional<Carriage> carriage(const Loading& loading, double quantity);

/// Terms of a carrier. @throws std::logic_error for none
const CarrierTerms& termsOf(Carrier by, const Prices& prices);

}  // namespace core::cost
