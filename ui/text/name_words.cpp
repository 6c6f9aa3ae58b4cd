#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr std::array kLayers{
    Entry{"stone_bed", QT_TRANSLATE_NOOP("ui::words", "Stone bed")},
    Entry{"cove", QT_TRANSLATE_NOOP("ui::words", "Cove")},
    Entry{"rim", QT_TRANSLATE_NOOP("ui::words", "Rim collar")},
    Entry{"ground", QT_TRANSLATE_NOOP("ui::words", "Ground")},
    Entry{"cut", QT_TRANSLATE_NOOP("ui::words", "Ground cut down")},
    Entry{"fill", QT_TRANSLATE_NOOP("ui::words", "Ground filled up")},
    Entry{"heap", QT_TRANSLATE_NOOP("ui::words", "Spoil heap")},
    Entry{"fall_arrow", QT_TRANSLATE_NOOP("ui::words", "Arrow down the fall")},
    Entry{"marker", QT_TRANSLATE_NOOP("ui::words", "Marked place")},
    Entry{"cut_pattern", QT_TRANSLATE_NOOP("ui::words", "Pattern of the cut")},
    Entry{"fill_pattern", QT_TRANSLATE_NOOP("ui::words", "Pattern of the fill")},
    Entry{"excavation", QT_TRANSLATE_NOOP("ui::words", "Dug pit")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "Water")},
    Entry{"person", QT_TRANSLATE_NOOP("ui::words", "Person for scale")},
    Entry{"pegs", QT_TRANSLATE_NOOP("ui::words", "Pegs and strings")},
    Entry{"sacks", QT_TRANSLATE_NOOP("ui::words", "Wet sacks")},
};

constexpr std::array kMaterials{
    Entry{"cement", QT_TRANSLATE_NOOP("ui::words", "Cement")},
    Entry{"cement_bags", QT_TRANSLATE_NOOP("ui::words", "Bags of cement")},
    Entry{"soil", QT_TRANSLATE_NOOP("ui::words", "Soil, sieved")},
    Entry{"sand", QT_TRANSLATE_NOOP("ui::words", "Sand")},
    Entry{"stone", QT_TRANSLATE_NOOP("ui::words", "Stone, loose")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "Water, all together")},
    Entry{"mixing_water", QT_TRANSLATE_NOOP("ui::words", "Water for mixing")},
    Entry{"curing_water", QT_TRANSLATE_NOOP("ui::words", "Water for wetting")},
    Entry{"sacks", QT_TRANSLATE_NOOP("ui::words", "Sacks to keep wet")},
};

constexpr std::array kTasks{
    Entry{"clear", QT_TRANSLATE_NOOP("ui::words", "Clear the ground")},
    Entry{"set_out", QT_TRANSLATE_NOOP("ui::words", "Set out with pegs and string")},
    Entry{"strip_topsoil", QT_TRANSLATE_NOOP("ui::words", "Strip the topsoil")},
    Entry{"platform_cut", QT_TRANSLATE_NOOP("ui::words", "Cut the platform")},
    Entry{"platform_fill", QT_TRANSLATE_NOOP("ui::words", "Fill and ram the platform")},
    Entry{"excavate", QT_TRANSLATE_NOOP("ui::words", "Dig the pit")},
    Entry{"excavate_deep", QT_TRANSLATE_NOOP("ui::words", "Dig the low part of the pit")},
    Entry{"carry_spoil", QT_TRANSLATE_NOOP("ui::words", "Carry the spoil to its heap")},
    Entry{"trim", QT_TRANSLATE_NOOP("ui::words", "Trim walls and floor")},
    Entry{"pipes", QT_TRANSLATE_NOOP("ui::words", "Lay pipes and their collars")},
    Entry{"stone_bed", QT_TRANSLATE_NOOP("ui::words", "Lay and compact the stone bed")},
    Entry{"curing", QT_TRANSLATE_NOOP("ui::words", "Keep the coats wet")},
    Entry{"fill", QT_TRANSLATE_NOOP("ui::words", "Fill for the first time")},
    Entry{"filling", QT_TRANSLATE_NOOP("ui::words", "Watch the first filling")},
    Entry{"leak_test", QT_TRANSLATE_NOOP("ui::words", "Test for leaks")},
    Entry{"silt_trap", QT_TRANSLATE_NOOP("ui::words", "Build the silt trap")},
    Entry{"overflow", QT_TRANSLATE_NOOP("ui::words", "Build overflow and spill path")},
    Entry{"fence", QT_TRANSLATE_NOOP("ui::words", "Build fence, gate and ladder")},
    Entry{"planting", QT_TRANSLATE_NOOP("ui::words", "Plant the beds")},
    Entry{"fill_by", QT_TRANSLATE_NOOP("ui::words", "Start filling no later than")},
};

constexpr std::array kStages{
    Entry{"natural", QT_TRANSLATE_NOOP("ui::words", "ground as it lies")},
    Entry{"pegs", QT_TRANSLATE_NOOP("ui::words", "pegs and strings")},
    Entry{"platform", QT_TRANSLATE_NOOP("ui::words", "making the platform")},
    Entry{"dig", QT_TRANSLATE_NOOP("ui::words", "digging")},
    Entry{"dug", QT_TRANSLATE_NOOP("ui::words", "pit dug and trimmed")},
    Entry{"stone_bed", QT_TRANSLATE_NOOP("ui::words", "stone bed")},
    Entry{"fill", QT_TRANSLATE_NOOP("ui::words", "first filling")},
    Entry{"full", QT_TRANSLATE_NOOP("ui::words", "full tank")},
};

constexpr std::array kSkills{
    Entry{"labourer", QT_TRANSLATE_NOOP("ui::words", "labourers")},
    Entry{"mason", QT_TRANSLATE_NOOP("ui::words", "masons")},
    Entry{"wetter", QT_TRANSLATE_NOOP("ui::words", "people who wet")},
    Entry{"mason_and_helpers", QT_TRANSLATE_NOOP("ui::words", "masons and helpers")},
};

constexpr std::array kDimensions{
    Entry{"clear_length", QT_TRANSLATE_NOOP("ui::words", "clear length")},
    Entry{"clear_width", QT_TRANSLATE_NOOP("ui::words", "clear width")},
    Entry{"clear_diameter", QT_TRANSLATE_NOOP("ui::words", "clear diameter")},
    Entry{"clear_depth", QT_TRANSLATE_NOOP("ui::words", "clear depth")},
    Entry{"pit_length", QT_TRANSLATE_NOOP("ui::words", "pit length")},
    Entry{"pit_width", QT_TRANSLATE_NOOP("ui::words", "pit width")},
    Entry{"pit_diameter", QT_TRANSLATE_NOOP("ui::words", "pit diameter")},
    Entry{"pit_depth", QT_TRANSLATE_NOOP("ui::words", "pit depth")},
};

constexpr std::array kLevels{
    Entry{"pit_floor", QT_TRANSLATE_NOOP("ui::words", "Pit floor")},
    Entry{"stone_bed_top", QT_TRANSLATE_NOOP("ui::words", "Top of stone bed")},
    Entry{"overflow", QT_TRANSLATE_NOOP("ui::words", "Overflow level")},
    Entry{"rim", QT_TRANSLATE_NOOP("ui::words", "Rim")},
};

constexpr std::array kPegKinds{
    Entry{"pit_corner", QT_TRANSLATE_NOOP("ui::words", "pit corner at ground")},
    Entry{"offset_peg", QT_TRANSLATE_NOOP("ui::words", "offset peg, clear of the pit")},
    Entry{"pit_floor_corner", QT_TRANSLATE_NOOP("ui::words", "pit corner at floor")},
    Entry{"centre", QT_TRANSLATE_NOOP("ui::words", "centre")},
    Entry{"arc_centre", QT_TRANSLATE_NOOP("ui::words", "centre of the rounded corner")},
    Entry{"arc_end", QT_TRANSLATE_NOOP("ui::words", "end of the rounded corner's arc")},
    Entry{"square_mark", QT_TRANSLATE_NOOP("ui::words", "mark for the right angle")},
    Entry{"platform_corner", QT_TRANSLATE_NOOP("ui::words", "platform corner")},
    Entry{"daylight_cut", QT_TRANSLATE_NOOP("ui::words", "top of the cut, where it meets the ground")},
    Entry{"daylight_fill", QT_TRANSLATE_NOOP("ui::words", "toe of the fill, where it meets the ground")},
};

constexpr std::array kTieKinds{
    Entry{"side", QT_TRANSLATE_NOOP("ui::words", "side")},
    Entry{"diagonal", QT_TRANSLATE_NOOP("ui::words", "diagonal")},
    Entry{"radius", QT_TRANSLATE_NOOP("ui::words", "radius")},
    Entry{"triangle_3_4_5", QT_TRANSLATE_NOOP("ui::words", "3-4-5 triangle")},
};

constexpr std::array kParts{
    Entry{"site", QT_TRANSLATE_NOOP("ui::words", "site")},
    Entry{"tank", QT_TRANSLATE_NOOP("ui::words", "tank")},
    Entry{"lining", QT_TRANSLATE_NOOP("ui::words", "lining")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "water balance")},
    Entry{"delivery", QT_TRANSLATE_NOOP("ui::words", "pipes, overflow and silt trap")},
    Entry{"works", QT_TRANSLATE_NOOP("ui::words", "labour and dates")},
    Entry{"records", QT_TRANSLATE_NOOP("ui::words", "records of work and batches")},
    Entry{"notes", QT_TRANSLATE_NOOP("ui::words", "field notes")},
    Entry{"ranges", QT_TRANSLATE_NOOP("ui::words", "ranges of uncertain figures")},
    Entry{"search", QT_TRANSLATE_NOOP("ui::words", "limits of the search")},
    Entry{"prices", QT_TRANSLATE_NOOP("ui::words", "prices and cost")},
    Entry{"options", QT_TRANSLATE_NOOP("ui::words", "options side by side")},
};

QString numbered(const char* text, int number) {
  return QCoreApplication::translate("ui::words", text).arg(number);
}

QString bags(double value, const Formatter& format) {
  const int whole = static_cast<int>(std::ceil(std::min(value, 1e6)));
  const QString number = format.number(value, core::Unit::piece, value == whole ? 0 : 1);
  const QString pattern = value == 1 ? QCoreApplication::translate("ui::words", "%1 bag")
                                     : QCoreApplication::translate("ui::words", "%1 bags", nullptr, whole);
  return QString(pattern).replace(u' ', QChar::Nbsp).arg(number);
}

}  // namespace

QString layerName(std::string_view layer_id) {
  if (const int coat = numberIn(layer_id, "coat_"))
    return numbered(QT_TRANSLATE_NOOP("ui::words", "Coat %1"), coat);
  return lookUp(kLayers, layer_id, "layer");
}

QString materialName(std::string_view material_id) {
  return lookUp(kMaterials, material_id, "material");
}

QString amount(double value, std::string_view material_unit, const Formatter& format) {
  if (material_unit == "bag") return bags(value, format);
  if (material_unit == "kg") return format.quantity(value, core::Unit::kilogram, 0);
  if (material_unit == "m3") return format.quantity(value, core::Unit::cubic_metre, 2);
  if (material_unit == "L") return format.litres(value / 1000);
  if (material_unit == "piece") return format.number(value, core::Unit::piece, 0);
  return lookUp({}, material_unit, "unit of material");
}

QString taskName(std::string_view task_id) {
  if (const int coat = numberIn(task_id, "coat_"))
    return numbered(QT_TRANSLATE_NOOP("ui::words", "Place coat %1"), coat);
  if (const int coat = numberIn(task_id, "cure_")) {
    return numbered(QT_TRANSLATE_NOOP("ui::words", "Keep coat %1 wet"), coat);
  }
  return lookUp(kTasks, task_id, "task");
}

bool hasTaskName(std::string_view task_id) {
  return numberIn(task_id, "coat_") || numberIn(task_id, "cure_") || has(kTasks, task_id);
}

QString stageName(std::string_view stage) {
  if (const int coat = numberIn(stage, "coat_"))
    return numbered(QT_TRANSLATE_NOOP("ui::words", "coat %1 put on"), coat);
  if (const int coat = numberIn(stage, "cure_"))
    return numbered(QT_TRANSLATE_NOOP("ui::words", "coat %1 under wet sacks"), coat);
  return lookUp(kStages, stage, "stage");
}

QString dayAndStage(const core::works::BuildDay& day, const Formatter& format) {
  const QString stage = stageName(day.stage);
  return day.date ? QStringLiteral("%1: %2").arg(format.date(*day.date), stage) : stage;
}

QString skillName(std::string_view skill) {
  return lookUp(kSkills, skill, "skill");
}

QString dimensionName(std::string_view dimension_id) {
  return lookUp(kDimensions, dimension_id, "dimension");
}

QString levelName(std::string_view level_id) {
  if (const int coat = numberIn(level_id, "coat_", "_top")) {
    return numbered(QT_TRANSLATE_NOOP("ui::words", "Top of coat %1"), coat);
  }
  return lookUp(kLevels, level_id, "level");
}

QString pegKindName(std::string_view kind) {
  return lookUp(kPegKinds, kind, "kind of peg");
}

QString tieKindName(std::string_view kind) {
  return lookUp(kTieKinds, kind, "kind of tie");
}

QString partName(std::string_view part) {
  return lookUp(kParts, part, "part");
}

}  // namespace ui::words
