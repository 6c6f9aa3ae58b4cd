#include "core/cost/bill_lines.h"

#include <algorithm>
#include <iterator>

namespace core::cost {
namespace {

constexpr double kLitresPerM3 = 1000;

struct KnownItem {
  std::string_view item, unit;
  Group group;
  std::string_view weight;  // key of the figure
};

constexpr std::array<KnownItem, kKnown> kItems{{{"cement_bags", "bag", Group::materials, ""},
                                                {"soil", "m3", Group::materials, "weight.soil"},
                                                {"sand", "m3", Group::materials, "weight.sand"},
                                                {"stone", "m3", Group::materials, "weight.stone"},
                                                {"water", "m3", Group::materials, "weight.water"},
                                                {"sacks", "piece", Group::materials, "weight.sack"},
                                                {"labourer", "person_day", Group::labour, ""},
                                                {"mason", "person_day", Group::labour, ""},
                                                {"source_pipe", "m", Group::materials, "weight.pipe"},
                                                {"field_pipe", "m", Group::materials, "weight.pipe"},
                                                {"fence", "m", Group::materials, "weight.fence"}}};

std::optional<double> usualWeight(const KnownItem& item, const Lining& lining) {
  if (item.item == "cement_bags") return lining.cement_bag_kg;
  if (item.weight.empty()) return {};
  return figure(item.weight).typical;
}

bool isInPieces(std::string_view unit) {
  return unit == "bag" || unit == "piece" || unit == "job";
}

LineTerms termsFor(const PriceItem& item, const Project& project) {
  LineTerms line;
  line.item = &item;
  line.unit = item.quantity ? "piece" : "job";
  line.given = item.quantity.value_or(1);
  std::optional<double> kg = item.kg_each;
  const auto known =
      std::find_if(kItems.begin(), kItems.end(), [&](const KnownItem& k) { return k.item == item.item; });
  if (known != kItems.end()) {
    line.group = known->group;
    line.unit = known->unit;
    if (!item.quantity) line.from_plan = static_cast<Known>(std::distance(kItems.begin(), known));
    if (!kg) kg = usualWeight(*known, project.lining);
  }
  if (item.carried_by == Carrier::none || line.group == Group::labour) return line;  // people walk
  line.is_weight_unknown = !kg;
  if (kg)
    line.loading =
        loading(item.carried_by, termsOf(item.carried_by, *project.prices), *kg, isInPieces(line.unit));
  return line;
}

}  // namespace

std::string_view token(Group group) {
  constexpr std::array<std::string_view, kGroups> tokens{"materials", "labour", "other"};
  return tokens[static_cast<std::size_t>(group)];
}

std::string_view nameOf(Known item) {
  return kItems.at(static_cast<std::size_t>(item)).item;
}

KnownQuantities knownQuantities(const BillInput& input) {
  KnownQuantities known;
  for (const lining::Material& material : input.quantities.materials) {
    for (std::size_t k = 0; k < kKnown; ++k) {
      if (kItems[k].item == material.id)
        known.of[k] = material.unit == "L" ? material.order / kLitresPerM3 : material.order;
    }
  }
  known[Known::labourer] = input.labourer_days;
  known[Known::mason] = input.mason_days;
  if (const auto& delivery = input.project.delivery) {
    known[Known::source_pipe] = routeLength(delivery->source.route);
    known[Known::field_pipe] = routeLength(delivery->field.route);
  }
  if (input.project.site.fence_planned.value_or(false))
    known[Known::fence] = works::fenceLength(input.geometry);
  return known;
}

std::vector<LineTerms> lineTerms(const Project& project) {
  std::vector<LineTerms> lines;
  lines.reserve(project.prices->items.size());
  for (const PriceItem& item : project.prices->items) lines.push_back(termsFor(item, project));
  return lines;
}

}  // namespace core::cost
