#include "core/cost/carriage.h"

#include "core/cost/round_up.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace core::cost {
namespace {

constexpr double kMostLoads = std::numeric_limits<int>::max();

}  // namespace

Loading loading(Carrier by, const CarrierTerms& terms, double kg_each, bool in_pieces) {
  Loading l;
  l.by = by;
  l.in_pieces = in_pieces;
  l.kg_each = kg_each;
  l.load_kg = terms.load_kg;
  l.trips_per_day = terms.trips_per_day;
  l.price_per_trip = terms.price_per_trip;
  if (in_pieces && kg_each > 0) {
    l.loads_per_piece = static_cast<int>(roundUp(kg_each / terms.load_kg));
    l.pieces_per_load = std::max(1.0, std::floor(terms.load_kg / kg_each + kSlack));
  }
  return l;
}

double loadsFor(const Loading& l, double quantity) {
  if (l.kg_each <= 0 || quantity <= 0) return 0;
  if (!l.in_pieces) return roundUp(quantity * l.kg_each / l.load_kg);
  const double pieces = roundUp(quantity);
  return l.loads_per_piece > 1 ? pieces * l.loads_per_piece : roundUp(pieces / l.pieces_per_load);
}

std::optional<Carriage> carriage(const Loading& l, double quantity) {
  const double loads = loadsFor(l, quantity);
  if (loads > kMostLoads) return {};
  Carriage c;
  c.by = l.by;
  c.kg = quantity * l.kg_each;
  c.loads = static_cast<int>(loads);
  c.loads_per_piece = l.loads_per_piece;
  c.days = loads / l.trips_per_day;
  if (l.price_per_trip) c.amount = loads * *l.price_per_trip;
  return c;
}

const CarrierTerms& termsOf(Carrier by, const Prices& prices) {
  switch (by) {
    case Carrier::porter:
      return prices.porter;
    case Carrier::mule:
      return prices.mule;
    case Carrier::trolley:
      return prices.trolley;
    case Carrier::none:
      break;
  }
  throw std::logic_error("no carrier");
}

}  // namespace core::cost
