#pragma once

#include "ui/handouts/pictograms.h"
#include "ui/handouts/sheet.h"
#include "ui/text/worth.h"

#include <QString>
#include <vector>

namespace ui::handouts {

/// One step of a piece of work: what to do, beside the pictures of it.
struct Step {
  std::vector<Pictogram> pictures;
  QString text;
  bool tick = false;    ///< with a box to tick before the pictures
  bool strong = false;  ///< in heavy letters: a caution
};

/// Adds a step, pictures and text together on one page.
void addStep(Sheet& sheet, const Step& step, double picture_mm = kPictogram_mm);
void addSteps(Sheet& sheet, const std::vector<Step>& steps, double picture_mm = kPictogram_mm);

/// What the hands and the face need where there is cement.
Step cementStep();
/// Nobody works alone, and someone stays outside.
Step neverAloneStep();

/// A length from the table of limits (core/site/thresholds.h), rounded to the safe side.
QString limitLength(const char* key, words::Rounding rounding, const Formatter& format);

}  // namespace ui::handouts
