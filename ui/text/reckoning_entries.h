#pragma once

#include "core/base/unit.h"

#include <span>
#include <string_view>
#include <vector>

namespace ui::words {

/// What is said of one place in the plan's JSON. Texts are marked with QT_TRANSLATE_NOOP("ui::words", ...).
struct ReckoningEntry {
  std::string_view id;  ///< path, after the start of a ReckoningPlace where the part has some
  core::Unit unit;
  const char* name;
  const char* formula;
  /// Paths of other places ("tank.floor_m2", ".net" under the same start, "materials[].net/stone" one row),
  /// and "@" before fields of the project ("@lining.dry_to_wet"); blanks between them.
  std::string_view inputs;
  /// Key of a source. "user" and "#field": that of the field's default while it stands. "user?key": the
  /// user's when the first input is entered, else the key. "@": of each row its own. "=outlet.>path>.head":
  /// of a figure of core::hydraulics::figures(), the token at the path between.
  std::string_view source;
  std::string_view row = {};  ///< only rows of this name; "coat_*" for all that begin so
};

/// Where entries stand, and how they are called there; an empty name: as the entry.
struct ReckoningPlace {
  std::string_view start;
  const char* name;
  std::string_view input = {};  ///< path that "%" among the inputs stands for
};

struct ReckoningPart {
  std::string_view group;
  std::span<const ReckoningPlace> places;  ///< none: ids are whole paths
  std::span<const ReckoningEntry> entries;
};

std::vector<ReckoningPart> tankReckonings();
std::vector<ReckoningPart> liningReckonings();
std::vector<ReckoningPart> customaryReckonings();
std::vector<ReckoningPart> labourReckonings();
std::vector<ReckoningPart> datesReckonings();
std::vector<ReckoningPart> coatsReckonings();
std::vector<ReckoningPart> waterReckonings();
std::vector<ReckoningPart> sourceReckonings();
std::vector<ReckoningPart> pipesReckonings();
std::vector<ReckoningPart> deliveryReckonings();
std::vector<ReckoningPart> notesReckonings();
std::vector<ReckoningPart> siteReckonings();
std::vector<ReckoningPart> moneyReckonings();
/// Heads and flow of a line, whichever it is.
std::span<const ReckoningEntry> flowReckonings();

}  // namespace ui::words
