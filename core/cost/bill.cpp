#include "core/cost/bill_lines.h"
#include "core/project/field_access.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <utility>

namespace core::cost {
namespace {

CostLine lineOf(const LineTerms& terms, double quantity) {
  CostLine line;
  line.item = terms.item->item;
  line.group = token(terms.group);
  line.unit = terms.unit;
  line.quantity = quantity;
  line.price = terms.item->price;
  if (line.price) {
    line.amount = quantity * *line.price;
    line.own = *line.amount * terms.item->own_percent / 100;
    line.cash = *line.amount - line.own;
  }
  if (terms.loading) line.carriage = carriage(*terms.loading, quantity);
  return line;
}

/// What the plan has none of does not stand on the bill.
bool isLeftOut(const LineTerms& terms, double quantity) {
  return terms.from_plan && quantity <= 0;
}

bool isWork(Known item) {
  return item == Known::labourer || item == Known::mason;
}

/// Days that no works tell, unless they cost nothing however many they are.
bool isUntoldWork(const LineTerms& terms, const Project& project) {
  return terms.from_plan && isWork(*terms.from_plan) && !project.works && terms.item->price != 0.0;
}

/// Water costs only where the list names it.
bool isToBeListed(Known item, const KnownQuantities& quantities, const Project& project) {
  if (item == Known::water) return false;
  return quantities[item] > 0 || (isWork(item) && !project.works);
}

/// What the tank needs and the price list does not name.
void addUnlisted(const KnownQuantities& quantities, const Project& project,
                 std::vector<std::string>& missing) {
  const std::vector<PriceItem>& items = project.prices->items;
  for (std::size_t k = 0; k < kKnown; ++k) {
    const auto known = static_cast<Known>(k);
    if (!isToBeListed(known, quantities, project)) continue;
    const std::string_view name = nameOf(known);
    if (std::none_of(items.begin(), items.end(), [name](const PriceItem& i) { return i.item == name; }))
      missing.emplace_back(name);
  }
}

/// Its price, its weight or the count of its loads is not known.
bool isIncomplete(const LineTerms& terms, const CostLine& line) {
  if (line.quantity <= 0) return false;
  return !line.price || terms.is_weight_unknown || (terms.loading && !line.carriage);
}

void addMissingCarriers(const std::vector<CostLine>& lines, std::vector<std::string>& missing) {
  for (const Carrier by : {Carrier::porter, Carrier::mule, Carrier::trolley}) {
    const bool is_missing = std::any_of(lines.begin(), lines.end(), [by](const CostLine& line) {
      return line.carriage && line.carriage->by == by && line.carriage->loads > 0 && !line.carriage->amount;
    });
    if (is_missing) missing.push_back(std::get<std::string>(access::Kind<Carrier>::get(by)));
  }
}

}  // namespace

Bill bill(const BillInput& input) {
  const KnownQuantities known = knownQuantities(input);
  Bill b;
  Sums sums;
  for (const LineTerms& terms : lineTerms(input.project)) {
    const double quantity = terms.quantity(known);
    if (isUntoldWork(terms, input.project)) b.missing.push_back(terms.item->item);
    if (isLeftOut(terms, quantity)) continue;
    const CostLine& line = b.lines.emplace_back(lineOf(terms, quantity));
    if (isIncomplete(terms, line)) b.missing.push_back(line.item);
    sums[terms.group] += line.amount.value_or(0);
    b.own += line.own;
    if (line.carriage) sums.carriage += line.carriage->amount.value_or(0);
  }
  addUnlisted(known, input.project, b.missing);
  addMissingCarriers(b.lines, b.missing);
  const double contingency_percent = input.project.prices->contingency_percent;
  b.materials = sums[Group::materials];
  b.labour = sums[Group::labour];
  b.other = sums[Group::other];
  b.carriage = sums.carriage;
  b.contingency = sums.contingency(contingency_percent);
  b.total = sums.total(contingency_percent);
  b.cash = b.total - b.own;
  return b;
}

}  // namespace core::cost
