#include "core/project/prices.h"

namespace core {

std::vector<PriceItem> usualItems() {
  std::vector<PriceItem> items;
  for (const char* item : {"cement_bags", "sand", "soil", "stone", "sacks", "labourer", "mason",
                           "source_pipe", "field_pipe", "fence"})
    items.push_back({item, {}, {}, 0, Carrier::none, {}});
  return items;
}

std::vector<LiningOffer> usualLinings() {
  return {{LiningKind::soil_cement, {}, PricePer::job, 10, 3},
          {LiningKind::plastic_sheet, {}, PricePer::square_metre, 5, 2},
          {LiningKind::ferrocement, {}, PricePer::square_metre, 20, 2},
          {LiningKind::stone_masonry, {}, PricePer::square_metre, 25, 2},
          {LiningKind::moulded_tank, {}, PricePer::cubic_metre, 15, 1}};
}

std::vector<InputRange> usualRanges() {
  return {{RangedInput::thickness, -10, 25}, {RangedInput::unevenness, -50, 100},
          {RangedInput::dry_to_wet, -6, 10}, {RangedInput::cement_density, -10, 5},
          {RangedInput::digging, -25, 40},   {RangedInput::plastering, -25, 50},
          {RangedInput::prices, -5, 20},     {RangedInput::wages, -5, 15},
          {RangedInput::flow, -40, 20}};
}

}  // namespace core
