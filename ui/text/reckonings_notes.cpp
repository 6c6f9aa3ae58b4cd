#include "ui/text/reckoning_entries.h"

#include <QCoreApplication>

namespace ui::words {
namespace {

using enum core::Unit;

// clang-format off
constexpr ReckoningEntry kNotes[]{
    {"field_tests.jars[].row", piece, QT_TRANSLATE_NOOP("ui::words", "Jars that count, by their rows"), QT_TRANSLATE_NOOP("ui::words", "a jar without layers is left out"), "@notes.jars[].sand_mm", "user"},
    {"field_tests.jars[].sand_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Sand in each jar"), QT_TRANSLATE_NOOP("ui::words", "layer of sand ÷ all layers: share of the settled volume"), "@notes.jars[].sand_mm @notes.jars[].silt_mm @notes.jars[].clay_mm", "sums"},
    {"field_tests.jars[].silt_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Silt in each jar"), QT_TRANSLATE_NOOP("ui::words", "layer of silt ÷ all layers"), "@notes.jars[].sand_mm @notes.jars[].silt_mm @notes.jars[].clay_mm", "sums"},
    {"field_tests.jars[].clay_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Clay in each jar"), QT_TRANSLATE_NOOP("ui::words", "layer of clay ÷ all layers; by weight it is less, for clay settles loosely"), "@notes.jars[].sand_mm @notes.jars[].silt_mm @notes.jars[].clay_mm", "sums"},
    {"field_tests.clay_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Clay in the soil, by the jars"), QT_TRANSLATE_NOOP("ui::words", "middle of the jars"), "field_tests.jars[].clay_percent", "sums"},
    {"field_tests.feel[].row", piece, QT_TRANSLATE_NOOP("ui::words", "Balls that count, by their rows"), QT_TRANSLATE_NOOP("ui::words", "a ball that was not tried is left out"), "@notes.feel[].ribbon_mm", "user"},
    {"field_tests.pits.layers", piece, QT_TRANSLATE_NOOP("ui::words", "Layers of the test pits"), QT_TRANSLATE_NOOP("ui::words", "those that begin above the floor of the tank's pit"), "@notes.pit_layers[].from_m earthwork.pit_depth_m", "user"},
    {"field_tests.pits.layers_unknown", piece, QT_TRANSLATE_NOOP("ui::words", "Of them with unknown soil"), QT_TRANSLATE_NOOP("ui::words", "counted"), "@notes.pit_layers[].soil", "user"},
    {"field_tests.pits.down_to_m", metre, QT_TRANSLATE_NOOP("ui::words", "Deepest test pit"), QT_TRANSLATE_NOOP("ui::words", "deepest end of a layer"), "@notes.pit_layers[].to_m", "user"},
    {"field_tests.water_depth_m", metre, QT_TRANSLATE_NOOP("ui::words", "Water met in the test pits at"), QT_TRANSLATE_NOOP("ui::words", "least depth of a layer in which water came"), "@notes.pit_layers[].from_m @notes.pit_layers[].has_water", "user"},
    {"field_tests.slope[].row", piece, QT_TRANSLATE_NOOP("ui::words", "Settings of the water level that count, by their rows"), QT_TRANSLATE_NOOP("ui::words", "a setting without run is left out"), "@notes.slope[].run_m", "user"},
    {"field_tests.slope[].fall_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Fall of each setting"), QT_TRANSLATE_NOOP("ui::words", "drop ÷ run"), "@notes.slope[].drop_m @notes.slope[].run_m", "sums"},
    {"field_tests.run_m", metre, QT_TRANSLATE_NOOP("ui::words", "Run, all settings"), QT_TRANSLATE_NOOP("ui::words", "sum"), "@notes.slope[].run_m", "sums"},
    {"field_tests.drop_m", metre, QT_TRANSLATE_NOOP("ui::words", "Drop, all settings"), QT_TRANSLATE_NOOP("ui::words", "sum"), "@notes.slope[].drop_m", "sums"},
    {"field_tests.fall_percent", percent, QT_TRANSLATE_NOOP("ui::words", "Fall of the ground, by the water level"), QT_TRANSLATE_NOOP("ui::words", "all drops ÷ all runs; below 0 where it was walked uphill"), "field_tests.drop_m field_tests.run_m", "sums"},
};
// clang-format on

}  // namespace

std::vector<ReckoningPart> notesReckonings() {
  return {{"notes", {}, kNotes}};
}

}  // namespace ui::words
