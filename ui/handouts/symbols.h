#pragma once

#include "ui/handouts/sheet.h"

namespace ui::handouts {

/// Rows of boxes to tick, in groups of five. Where there are very many, each box stands for several.
struct Tally {
  int boxes;
  int each;  ///< things one box stands for
};
Tally tallyFor(int count);
void addTally(Sheet& sheet, const Tally& tally);

/// Pictures of cement bags to count, in groups of five.
void addBags(Sheet& sheet, const Tally& tally);

/// Parts of a mix as a row of gauge boxes to fill, each with its first word.
struct MixPart {
  double parts;
  QString name;
};
void addMixParts(Sheet& sheet, const std::vector<MixPart>& mix);

}  // namespace ui::handouts
