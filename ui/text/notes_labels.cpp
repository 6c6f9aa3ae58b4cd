#include "ui/text/notes_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kNotesLabels{
    Entry{"notes.jars[].place", QT_TRANSLATE_NOOP("ui::words", "Taken from")},
    Entry{"notes.jars[].sand_mm", QT_TRANSLATE_NOOP("ui::words", "Sand")},
    Entry{"notes.jars[].silt_mm", QT_TRANSLATE_NOOP("ui::words", "Silt")},
    Entry{"notes.jars[].clay_mm", QT_TRANSLATE_NOOP("ui::words", "Clay")},
    Entry{"notes.feel[].place", QT_TRANSLATE_NOOP("ui::words", "Taken from")},
    Entry{"notes.feel[].ball", QT_TRANSLATE_NOOP("ui::words", "The ball")},
    Entry{"notes.feel[].ribbon_mm", QT_TRANSLATE_NOOP("ui::words", "The ribbon breaks at")},
    Entry{"notes.feel[].grit", QT_TRANSLATE_NOOP("ui::words", "Rubbed wet it is")},
    Entry{"notes.pit_layers[].pit", QT_TRANSLATE_NOOP("ui::words", "Test pit")},
    Entry{"notes.pit_layers[].from_m", QT_TRANSLATE_NOOP("ui::words", "From")},
    Entry{"notes.pit_layers[].to_m", QT_TRANSLATE_NOOP("ui::words", "To")},
    Entry{"notes.pit_layers[].soil", QT_TRANSLATE_NOOP("ui::words", "Soil")},
    Entry{"notes.pit_layers[].has_water", QT_TRANSLATE_NOOP("ui::words", "Water came in")},
    Entry{"notes.slope[].run_m", QT_TRANSLATE_NOOP("ui::words", "Level distance")},
    Entry{"notes.slope[].drop_m", QT_TRANSLATE_NOOP("ui::words", "Drop")},
};

/// Ids are the field's id, a colon and the token.
constexpr std::array kNotesChoices{
    Entry{"notes.feel[].ball:falls_apart", QT_TRANSLATE_NOOP("ui::words", "falls apart")},
    Entry{"notes.feel[].ball:holds", QT_TRANSLATE_NOOP("ui::words", "holds together")},
    Entry{"notes.feel[].grit:gritty", QT_TRANSLATE_NOOP("ui::words", "gritty")},
    Entry{"notes.feel[].grit:even", QT_TRANSLATE_NOOP("ui::words", "neither gritty nor smooth")},
    Entry{"notes.feel[].grit:smooth", QT_TRANSLATE_NOOP("ui::words", "smooth like flour")},
    Entry{"notes.pit_layers[].soil:stiff_clay", QT_TRANSLATE_NOOP("ui::words", "stiff clay")},
    Entry{"notes.pit_layers[].soil:firm_loam", QT_TRANSLATE_NOOP("ui::words", "firm loam")},
    Entry{"notes.pit_layers[].soil:sandy", QT_TRANSLATE_NOOP("ui::words", "sandy")},
    Entry{"notes.pit_layers[].soil:loose_fill", QT_TRANSLATE_NOOP("ui::words", "loose fill")},
    Entry{"notes.pit_layers[].soil:soft_wet", QT_TRANSLATE_NOOP("ui::words", "soft and wet")},
    Entry{"notes.pit_layers[].soil:rock", QT_TRANSLATE_NOOP("ui::words", "rock")},
};

/// By the token of the texture.
constexpr std::array kTextures{
    Entry{"sand", QT_TRANSLATE_NOOP("ui::words", "sand")},
    Entry{"loamy_sand", QT_TRANSLATE_NOOP("ui::words", "loamy sand")},
    Entry{"sandy_loam", QT_TRANSLATE_NOOP("ui::words", "sandy loam")},
    Entry{"loam", QT_TRANSLATE_NOOP("ui::words", "loam")},
    Entry{"silt_loam", QT_TRANSLATE_NOOP("ui::words", "silt loam")},
    Entry{"silt", QT_TRANSLATE_NOOP("ui::words", "silt")},
    Entry{"sandy_clay_loam", QT_TRANSLATE_NOOP("ui::words", "sandy clay loam")},
    Entry{"clay_loam", QT_TRANSLATE_NOOP("ui::words", "clay loam")},
    Entry{"silty_clay_loam", QT_TRANSLATE_NOOP("ui::words", "silty clay loam")},
    Entry{"sandy_clay", QT_TRANSLATE_NOOP("ui::words", "sandy clay")},
    Entry{"silty_clay", QT_TRANSLATE_NOOP("ui::words", "silty clay")},
    Entry{"clay", QT_TRANSLATE_NOOP("ui::words", "clay")},
};

}  // namespace

std::span<const Entry> notesLabels() {
  return kNotesLabels;
}

std::span<const Entry> notesChoices() {
  return kNotesChoices;
}

QString textureName(core::site::Texture texture) {
  return lookUp(kTextures, core::site::tokenOf(texture), "texture");
}

}  // namespace ui::words
