#include "ui/text/hydraulics_words.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kCrops{
    Entry{"tomato", QT_TRANSLATE_NOOP("ui::words", "Tomato")},
    Entry{"sweet_pepper", QT_TRANSLATE_NOOP("ui::words", "Sweet pepper")},
    Entry{"eggplant", QT_TRANSLATE_NOOP("ui::words", "Aubergine (eggplant)")},
    Entry{"potato", QT_TRANSLATE_NOOP("ui::words", "Potato")},
    Entry{"onion_dry", QT_TRANSLATE_NOOP("ui::words", "Onion, for bulbs")},
    Entry{"onion_green", QT_TRANSLATE_NOOP("ui::words", "Onion, green")},
    Entry{"garlic", QT_TRANSLATE_NOOP("ui::words", "Garlic")},
    Entry{"cabbage", QT_TRANSLATE_NOOP("ui::words", "Cabbage")},
    Entry{"cauliflower", QT_TRANSLATE_NOOP("ui::words", "Cauliflower")},
    Entry{"broccoli", QT_TRANSLATE_NOOP("ui::words", "Broccoli")},
    Entry{"carrot", QT_TRANSLATE_NOOP("ui::words", "Carrot")},
    Entry{"lettuce", QT_TRANSLATE_NOOP("ui::words", "Lettuce")},
    Entry{"spinach", QT_TRANSLATE_NOOP("ui::words", "Spinach")},
    Entry{"radish", QT_TRANSLATE_NOOP("ui::words", "Radish")},
    Entry{"cucumber", QT_TRANSLATE_NOOP("ui::words", "Cucumber")},
    Entry{"beans_green", QT_TRANSLATE_NOOP("ui::words", "Beans, green")},
    Entry{"beans_dry", QT_TRANSLATE_NOOP("ui::words", "Beans, dry")},
    Entry{"peas", QT_TRANSLATE_NOOP("ui::words", "Peas")},
    Entry{"lentil", QT_TRANSLATE_NOOP("ui::words", "Lentils")},
    Entry{"maize_grain", QT_TRANSLATE_NOOP("ui::words", "Maize, for grain")},
    Entry{"maize_sweet", QT_TRANSLATE_NOOP("ui::words", "Maize, sweet")},
    Entry{"winter_wheat", QT_TRANSLATE_NOOP("ui::words", "Winter wheat")},
    Entry{"barley", QT_TRANSLATE_NOOP("ui::words", "Barley")},
    Entry{"millet", QT_TRANSLATE_NOOP("ui::words", "Millet")},
    Entry{"citrus", QT_TRANSLATE_NOOP("ui::words", "Citrus trees")},
    Entry{"deciduous_fruit", QT_TRANSLATE_NOOP("ui::words", "Fruit trees that shed their leaves")},
};

constexpr std::array kFigures{
    Entry{"runoff.roof_sheet", QT_TRANSLATE_NOOP("ui::words", "metal sheet roof")},
    Entry{"runoff.roof_tile", QT_TRANSLATE_NOOP("ui::words", "tiled or slate roof")},
    Entry{"runoff.roof_thatch", QT_TRANSLATE_NOOP("ui::words", "thatched roof")},
    Entry{"runoff.ground_bare", QT_TRANSLATE_NOOP("ui::words", "bare ground")},
    Entry{"runoff.ground_pasture", QT_TRANSLATE_NOOP("ui::words", "pasture")},
    Entry{"runoff.ground_cultivated", QT_TRANSLATE_NOOP("ui::words", "tilled ground")},
    Entry{"first_flush.roof", QT_TRANSLATE_NOOP("ui::words", "first flush off a roof")},
    Entry{"first_flush.ground", QT_TRANSLATE_NOOP("ui::words", "first flush off ground")},
    Entry{"open_water_kc", QT_TRANSLATE_NOOP("ui::words", "open water")},
    Entry{"cover.shade_cloth_single", QT_TRANSLATE_NOOP("ui::words", "shade cloth, one layer")},
    Entry{"cover.shade_cloth_double", QT_TRANSLATE_NOOP("ui::words", "shade cloth, two layers")},
    Entry{"seepage", QT_TRANSLATE_NOOP("ui::words", "seepage through the plaster")},
    Entry{"person", QT_TRANSLATE_NOOP("ui::words", "one person")},
};

/// Figures that go by the choices of a field: "animal.pig" by the animal's name.
struct ByChoice {
  std::string_view prefix, field;
};

constexpr std::array kByChoice{
    ByChoice{"soil_water.", "site.soil"},
    ByChoice{"efficiency.", "water.beds[].method"},
    ByChoice{"animal.", "water.animals[].kind"},
};

}  // namespace

QString cropName(std::string_view id) {
  return has(kCrops, id) ? lookUp(kCrops, id, "crop") : fromCore(id);
}

QString figureName(std::string_view key) {
  for (const ByChoice& by : kByChoice) {
    if (key.starts_with(by.prefix)) return choiceLabel(by.field, key.substr(by.prefix.size()));
  }
  if (key.starts_with("weight.")) return weightName(key);
  return has(kFigures, key) ? lookUp(kFigures, key, "figure") : hydraulicsFigureName(key);
}

}  // namespace ui::words
