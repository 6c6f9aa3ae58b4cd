#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kMoneyLabels{
    Entry{"prices.items[].item", QT_TRANSLATE_NOOP("ui::words", "Item")},
    Entry{"prices.items[].price", QT_TRANSLATE_NOOP("ui::words", "Price of one")},
    Entry{"prices.items[].quantity", QT_TRANSLATE_NOOP("ui::words", "Quantity")},
    Entry{"prices.items[].own_percent", QT_TRANSLATE_NOOP("ui::words", "Given by the household")},
    Entry{"prices.items[].carried_by", QT_TRANSLATE_NOOP("ui::words", "Carried by")},
    Entry{"prices.items[].kg_each", QT_TRANSLATE_NOOP("ui::words", "Weight of one")},
    Entry{"prices.porter.load_kg", QT_TRANSLATE_NOOP("ui::words", "Porter: load at most")},
    Entry{"prices.porter.trips_per_day", QT_TRANSLATE_NOOP("ui::words", "Porter: trips a day")},
    Entry{"prices.porter.price_per_trip", QT_TRANSLATE_NOOP("ui::words", "Porter: price of a trip")},
    Entry{"prices.mule.load_kg", QT_TRANSLATE_NOOP("ui::words", "Mule: load at most")},
    Entry{"prices.mule.trips_per_day", QT_TRANSLATE_NOOP("ui::words", "Mule: trips a day")},
    Entry{"prices.mule.price_per_trip", QT_TRANSLATE_NOOP("ui::words", "Mule: price of a trip")},
    Entry{"prices.trolley.load_kg", QT_TRANSLATE_NOOP("ui::words", "Trolley: load at most")},
    Entry{"prices.trolley.trips_per_day", QT_TRANSLATE_NOOP("ui::words", "Trolley: trips a day")},
    Entry{"prices.trolley.price_per_trip", QT_TRANSLATE_NOOP("ui::words", "Trolley: price of a trip")},
    Entry{"prices.contingency_percent", QT_TRANSLATE_NOOP("ui::words", "Kept for what nobody foresees")},
    Entry{"prices.discount_percent", QT_TRANSLATE_NOOP("ui::words", "Interest a year")},
    Entry{"prices.linings[].lining", QT_TRANSLATE_NOOP("ui::words", "Lining")},
    Entry{"prices.linings[].price", QT_TRANSLATE_NOOP("ui::words", "Price")},
    Entry{"prices.linings[].per", QT_TRANSLATE_NOOP("ui::words", "Price is for")},
    Entry{"prices.linings[].life_years", QT_TRANSLATE_NOOP("ui::words", "Lasts")},
    Entry{"prices.linings[].upkeep_percent", QT_TRANSLATE_NOOP("ui::words", "Upkeep a year")},
    Entry{"ranges.inputs[].input", QT_TRANSLATE_NOOP("ui::words", "What is uncertain")},
    Entry{"ranges.inputs[].low_percent", QT_TRANSLATE_NOOP("ui::words", "Lowest")},
    Entry{"ranges.inputs[].high_percent", QT_TRANSLATE_NOOP("ui::words", "Highest")},
    Entry{"ranges.draws", QT_TRANSLATE_NOOP("ui::words", "Number of draws")},
    Entry{"ranges.seed", QT_TRANSLATE_NOOP("ui::words", "Seed of the draws")},
    Entry{"search.least_length_m", QT_TRANSLATE_NOOP("ui::words", "Length from")},
    Entry{"search.most_length_m", QT_TRANSLATE_NOOP("ui::words", "Length to")},
    Entry{"search.least_width_m", QT_TRANSLATE_NOOP("ui::words", "Width from")},
    Entry{"search.most_width_m", QT_TRANSLATE_NOOP("ui::words", "Width to")},
    Entry{"search.least_depth_m", QT_TRANSLATE_NOOP("ui::words", "Depth from")},
    Entry{"search.most_depth_m", QT_TRANSLATE_NOOP("ui::words", "Depth to")},
    Entry{"search.step_m", QT_TRANSLATE_NOOP("ui::words", "In steps of")},
    Entry{"search.most_cost", QT_TRANSLATE_NOOP("ui::words", "Money at most")},
    Entry{"search.most_bags", QT_TRANSLATE_NOOP("ui::words", "Bags of cement at most")},
    Entry{"search.most_people", QT_TRANSLATE_NOOP("ui::words", "People on a coat at most")},
};

}  // namespace

std::span<const Entry> moneyLabels() {
  return kMoneyLabels;
}

}  // namespace ui::words
