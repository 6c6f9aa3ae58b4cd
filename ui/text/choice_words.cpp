#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>
#include <string>

namespace ui::words {
namespace {

/// Ids are the field's id, a colon and the token.
constexpr std::array kChoices{
    Entry{"site.ground.kind:level", QT_TRANSLATE_NOOP("ui::words", "level")},
    Entry{"site.ground.kind:slope", QT_TRANSLATE_NOOP("ui::words", "even slope")},
    Entry{"site.ground.kind:spot_heights", QT_TRANSLATE_NOOP("ui::words", "surveyed spot heights")},
    Entry{"site.soil:stiff_clay", QT_TRANSLATE_NOOP("ui::words", "stiff clay")},
    Entry{"site.soil:firm_loam", QT_TRANSLATE_NOOP("ui::words", "firm loam")},
    Entry{"site.soil:sandy", QT_TRANSLATE_NOOP("ui::words", "sandy")},
    Entry{"site.soil:loose_fill", QT_TRANSLATE_NOOP("ui::words", "loose fill")},
    Entry{"site.soil:soft_wet", QT_TRANSLATE_NOOP("ui::words", "soft and wet")},
    Entry{"site.soil:rock", QT_TRANSLATE_NOOP("ui::words", "rock")},
    Entry{"tank.shape:rectangle", QT_TRANSLATE_NOOP("ui::words", "rectangle")},
    Entry{"tank.shape:round", QT_TRANSLATE_NOOP("ui::words", "round")},
    Entry{"tank.shape:polygon", QT_TRANSLATE_NOOP("ui::words", "polygon")},
    Entry{"tank.measured_at:floor", QT_TRANSLATE_NOOP("ui::words", "finished floor")},
    Entry{"tank.measured_at:rim", QT_TRANSLATE_NOOP("ui::words", "rim")},
    Entry{"works.rest_day:none", QT_TRANSLATE_NOOP("ui::words", "none")},
    Entry{"works.rest_day:monday", QT_TRANSLATE_NOOP("ui::words", "Monday")},
    Entry{"works.rest_day:tuesday", QT_TRANSLATE_NOOP("ui::words", "Tuesday")},
    Entry{"works.rest_day:wednesday", QT_TRANSLATE_NOOP("ui::words", "Wednesday")},
    Entry{"works.rest_day:thursday", QT_TRANSLATE_NOOP("ui::words", "Thursday")},
    Entry{"works.rest_day:friday", QT_TRANSLATE_NOOP("ui::words", "Friday")},
    Entry{"works.rest_day:saturday", QT_TRANSLATE_NOOP("ui::words", "Saturday")},
    Entry{"works.rest_day:sunday", QT_TRANSLATE_NOOP("ui::words", "Sunday")},
};

}  // namespace

QString choiceLabel(std::string_view field_id, std::string_view token) {
  return lookUp(kChoices, std::string(field_id) + ":" + std::string(token), "choice");
}

}  // namespace ui::words
