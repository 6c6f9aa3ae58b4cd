#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kMoneyHelp{
    Entry{"prices.items[].item",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "What is bought or paid: an item of the plan, or one of your own such as a gate or a meal.")},
    Entry{"prices.items[].price",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "What one unit costs where it is bought, without carrying; leave empty if not known.")},
    Entry{"prices.items[].quantity",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "How many units; leave empty to take it from the plan. An item of your own needs it.")},
    Entry{"prices.items[].own_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Share that the household or the group gives itself, in goods or in work; no "
                            "money is paid for it.")},
    Entry{"prices.items[].carried_by",
          QT_TRANSLATE_NOOP("ui::words", "Who carries it from the road to the tank.")},
    Entry{
        "prices.items[].kg_each",
        QT_TRANSLATE_NOOP("ui::words", "Weigh one unit; leave empty to take it from the table of weights.")},
    Entry{"prices.porter.load_kg",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "What one person carries on this path and comes back for again, all day; ask the porters.")},
    Entry{"prices.porter.trips_per_day",
          QT_TRANSLATE_NOOP("ui::words", "How often a porter walks from road to tank and back in a day.")},
    Entry{
        "prices.porter.price_per_trip",
        QT_TRANSLATE_NOOP("ui::words",
                          "What a porter is paid for one load from road to tank; leave empty if not known.")},
    Entry{"prices.mule.load_kg",
          QT_TRANSLATE_NOOP("ui::words",
                            "What one mule carries on this path; about a fifth of its own weight.")},
    Entry{"prices.mule.trips_per_day",
          QT_TRANSLATE_NOOP("ui::words", "How often a mule goes from road to tank and back in a day.")},
    Entry{"prices.mule.price_per_trip", QT_TRANSLATE_NOOP("ui::words",
                                                          "What is paid for one mule load from road to tank, "
                                                          "its driver counted; leave empty if not known.")},
    Entry{"prices.trolley.load_kg",
          QT_TRANSLATE_NOOP("ui::words", "What one trolley or small tractor takes over this road.")},
    Entry{"prices.trolley.trips_per_day",
          QT_TRANSLATE_NOOP("ui::words", "How often a trolley drives to the tank and back in a day.")},
    Entry{
        "prices.trolley.price_per_trip",
        QT_TRANSLATE_NOOP(
            "ui::words", "What is paid for one trolley load, its driver counted; leave empty if not known.")},
    Entry{"prices.contingency_percent",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Share of the bill that is kept in reserve for breakage, rain and forgotten things.")},
    Entry{"prices.discount_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "What money costs or would earn in a year beyond the rise of prices; it makes "
                            "linings that last long and short comparable.")},
    Entry{"prices.linings[].lining",
          QT_TRANSLATE_NOOP("ui::words", "One way to line the tank, to set beside the others.")},
    Entry{"prices.linings[].price",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the lining costs, put in place; leave empty if not known. For soil-cement "
                            "plaster the bill of this plan is taken then.")},
    Entry{"prices.linings[].per", QT_TRANSLATE_NOOP("ui::words",
                                                    "Whether the price is for the whole job, for a face of "
                                                    "one m², or for one m³ that the tank holds.")},
    Entry{"prices.linings[].life_years",
          QT_TRANSLATE_NOOP("ui::words",
                            "Years until the lining has to be made anew; ask people who have one.")},
    Entry{
        "prices.linings[].upkeep_percent",
        QT_TRANSLATE_NOOP("ui::words", "What mending and cleaning cost in a year, as a share of the price.")},
    Entry{"ranges.inputs[].input",
          QT_TRANSLATE_NOOP("ui::words", "A figure of the plan that nobody knows exactly beforehand.")},
    Entry{"ranges.inputs[].low_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far it may fall below the figure entered, at worst; 0 if it cannot.")},
    Entry{"ranges.inputs[].high_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "How far it may rise over the figure entered, at worst; 0 if it cannot.")},
    Entry{"ranges.draws", QT_TRANSLATE_NOOP("ui::words",
                                            "How many times the plan is reckoned with figures drawn by lot; "
                                            "more draws take longer and shake less.")},
    Entry{"ranges.seed",
          QT_TRANSLATE_NOOP("ui::words", "Start of the lot; the same seed gives the same draws again.")},
    Entry{"search.least_length_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Shortest length that is tried; of a round tank the smallest diameter. It is "
                            "measured as the clear length of the tank is.")},
    Entry{"search.most_length_m", QT_TRANSLATE_NOOP("ui::words",
                                                    "Longest length that is tried; of a round tank the "
                                                    "largest diameter. Measure what fits on the platform.")},
    Entry{"search.least_width_m", QT_TRANSLATE_NOOP("ui::words", "Smallest clear width that is tried.")},
    Entry{"search.most_width_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Largest clear width that is tried; measure what fits on the platform.")},
    Entry{"search.least_depth_m", QT_TRANSLATE_NOOP("ui::words", "Smallest clear depth that is tried.")},
    Entry{"search.most_depth_m", QT_TRANSLATE_NOOP("ui::words",
                                                   "Largest clear depth that is tried; pits deeper than hand "
                                                   "digging allows are left out all the same.")},
    Entry{"search.step_m",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Sizes are tried this far apart; half the step means up to eight times as many sizes.")},
    Entry{"search.most_cost",
          QT_TRANSLATE_NOOP("ui::words", "What the bill may come to; leave empty if money sets no limit.")},
    Entry{"search.most_bags",
          QT_TRANSLATE_NOOP("ui::words",
                            "Bags of cement that can be had; leave empty if cement sets no limit.")},
    Entry{"search.most_people",
          QT_TRANSLATE_NOOP(
              "ui::words", "People who can come for one coat on one day; leave empty if they set no limit.")},
};

}  // namespace

std::span<const Entry> moneyHelp() {
  return kMoneyHelp;
}

}  // namespace ui::words
