#include "core/cost/carriage.h"
#include "core/finding_list.h"
#include "core/project/field_access.h"

#include <algorithm>
#include <string>

namespace core {
namespace {

/// A bag of cement that is heavier than what its carrier takes.
void splitBags(const Project& project, const cost::Bill& bill, FindingList& out) {
  for (const cost::CostLine& line : bill.lines) {
    if (line.item != "cement_bags" || !line.carriage || line.carriage->loads_per_piece < 2) continue;
    const Carrier by = line.carriage->by;
    const std::string carrier = std::get<std::string>(access::Kind<Carrier>::get(by));
    out.note("cost_bag_split",
             {value("bag_kg", project.lining.cement_bag_kg, Unit::kilogram),
              value("load_kg", cost::termsOf(by, *project.prices).load_kg, Unit::kilogram),
              token("carrier", carrier)},
             by == Carrier::porter ? "head_load_study"
             : by == Carrier::mule ? "pack_animal"
                                   : "own",
             "prices." + carrier + ".load_kg");
  }
}

}  // namespace

void moneyFindings(const Project& project, const Plan& plan, FindingList& out) {
  if (project.prices && plan.cost) {
    const std::vector<std::string>& missing = plan.cost->bill.missing;
    if (!missing.empty())
      out.note("cost_prices_missing",
               {value("count", static_cast<double>(missing.size())), token("item", missing.front())}, "user",
               "prices.items");
    splitBags(project, plan.cost->bill, out);
  }
  for (const OptionResult& option : plan.options) {
    if (!option.problems.empty())
      out.caution("option_not_buildable", {token("option", option.letter)}, "exact", "options");
  }
}

}  // namespace core
