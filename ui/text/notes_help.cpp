#include "ui/text/notes_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kNotesHelp{
    Entry{"notes.jars[].place",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Where the soil in the jar was taken, and how deep; take it from where the soil for the mix "
              "will be dug.")},
    Entry{"notes.jars[].sand_mm",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Height of the lowest layer, marked one minute after the jar was put down: grains that the "
              "eye can see.")},
    Entry{"notes.jars[].silt_mm",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Height of the layer over the sand alone, marked after two hours; not from the bottom of the "
              "jar.")},
    Entry{"notes.jars[].clay_mm",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Height of the top layer alone, when the water over it is clear; that may take a day or "
              "more.")},
    Entry{"notes.feel[].place",
          QT_TRANSLATE_NOOP("ui::words", "Where the soil in the hand was taken, and how deep.")},
    Entry{"notes.feel[].ball",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Moisten a handful, knead it like dough, squeeze it and open the hand. Left empty: not tried "
              "yet.")},
    Entry{"notes.feel[].ribbon_mm",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Push the ball out between thumb and finger to a flat ribbon and measure it when it breaks "
              "by its own weight; 0 when none forms.")},
    Entry{"notes.feel[].grit",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rub a pinch with much water in the palm: grit like sugar, smooth like flour, "
                            "or neither.")},
    Entry{"notes.pit_layers[].pit",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Name of the test pit, the same in each of its layers. Nobody climbs into a pit deeper than "
              "the waist that is not stepped back or shored.")},
    Entry{"notes.pit_layers[].from_m",
          QT_TRANSLATE_NOOP("ui::words", "Depth of the top of the layer below the ground; 0 for the first.")},
    Entry{"notes.pit_layers[].to_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Depth of the bottom of the layer below the ground; of the last layer, of the "
                            "test pit.")},
    Entry{"notes.pit_layers[].soil",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "What the layer is. Clay is stiff when the thumb dents it but goes in only with great effort; "
              "leave the soil empty when nobody tried.")},
    Entry{"notes.pit_layers[].has_water",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Whether water stood or seeped in there; look again on the next day. It stands highest after "
              "the rains.")},
    Entry{"notes.slope[].run_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Distance of one setting of the hose, held level, straight down the fall; 0: "
                            "not measured yet.")},
    Entry{"notes.slope[].drop_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water mark on the lower staff less that on the upper one; less than 0 where "
                            "the ground rises.")},
};

}  // namespace

std::span<const Entry> notesHelp() {
  return kNotesHelp;
}

}  // namespace ui::words
