#include "ui/text/finding_sentences.h"
#include "ui/text/ground_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr int kLevelDecimals = 2;

constexpr std::array kSurveyFaults{
    Entry{"too_few", QT_TRANSLATE_NOOP("ui::words",
                                       "No ground can be made of the spot heights: a surface needs three at "
                                       "different places. Survey more, all round the tank.")},
    Entry{"collinear", QT_TRANSLATE_NOOP("ui::words",
                                         "No ground can be made of the spot heights: they all lie on one "
                                         "line. Survey some to the side of it.")},
    Entry{"failed", QT_TRANSLATE_NOOP("ui::words",
                                      "No ground can be made of the spot heights: they could not be joined "
                                      "to triangles. Look for points that stand nearly at the same place, "
                                      "and take them out.")},
};

constexpr std::array kPlatformFaults{
    Entry{"outside_survey", QT_TRANSLATE_NOOP("ui::words",
                                              "The platform does not lie wholly inside the survey. Move the "
                                              "tank, or survey more ground around it.")},
    Entry{"leaves_survey",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "Cut or fill runs out of the survey before it meets the ground. "
              "Survey further out or move the tank; steeper cut faces help too, if the soil bears them.")},
    Entry{
        "never_daylights",
        QT_TRANSLATE_NOOP("ui::words",
                          "The ground is as steep as a face of cut or fill, which so never meets it. Choose "
                          "flatter ground, or a steeper batter if the soil bears it.")},
    Entry{"cannot_balance", QT_TRANSLATE_NOOP("ui::words",
                                              "At no level do cut and fill balance here. Give the level of "
                                              "the platform, or have the tank stand in natural ground.")},
};

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString surveyUnusable(const Values& v) {
  return surveyFault(v.token("fault"));
}

QString surveyDoubtful(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Spot heights that look doubtful: %1, the first in row %2. Each stands far above, below or "
                 "away from the others, or repeats one. Look at the place and mend or delete the row."))
      .arg(v.whole("count"), v.whole("first_row"));
}

QString platformImpossible(const Values& v) {
  return platformFault(v.token("fault"));
}

QString tankOnFill(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Part of the tank would stand on fill: where it is worst, natural ground ends %1 short of "
                 "floor or wall. Fill settles and cracks the lining. The platform lies %2; lay it %3, or "
                 "lower."))
      .arg(v.format().quantity(std::abs(v.number("cover_m")), core::Unit::metre, kLevelDecimals),
           overMiddle(v.number("over_middle_m"), v.format()),
           atMostOverMiddle(v.number("most_over_middle_m"), v.format()));
}

/// Without the factor: what it is worth is for the engineer to say.
QString slip(const Values& v) {
  const QString what =
      v.token("state") == "empty"
          ? say(QT_TRANSLATE_NOOP("ui::words",
                                  "The ground below the tank may slip even with "
                                  "the tank empty, while it is dug."))
          : say(QT_TRANSLATE_NOOP("ui::words", "The ground below the tank may slip when the tank leaks."));
  return what + QLatin1Char(' ') +
         say(QT_TRANSLATE_NOOP(
             "ui::words",
             "A licensed engineer must look at it before anyone digs (calculation sheet E1). "
             "A place further from the edge, or on flatter ground, would help."));
}

QString spoilDownhill(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The heap of spoil is to lie downhill of the tank, where its weight loads the "
                               "ground that carries it. Heap it across the fall, to the %1 of the tank."))
      .arg(compass(v.number("proposed_deg")));
}

QString spoilUphill(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The heap of spoil is to lie uphill of the tank, where rain washes it in. Heap "
                 "it across the fall, to the %1 of the tank."))
      .arg(compass(v.number("proposed_deg")));
}

QString cutFaceTooSteep(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The cut face of the platform stands up to %1 high and leans back %2 for each "
                 "unit of height; the published table asks for %3 in this soil. Lean it back, or "
                 "widen the walkway where it stands close over the pit."))
      .arg(v.text("height_m"), v.text("batter", 2), v.text("wanted", 2));
}

QString fillFaceTooSteep(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The fill face of the platform runs out %1 for each unit of height; loose ground "
                 "comes to rest at %2. Make it %2 or flatter."))
      .arg(v.text("batter", 2), v.text("wanted", 2));
}

QString fillLacking(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The fill takes more than all that is dug: %1 of ground would have to be brought. "
                 "Lay the platform lower."))
      .arg(v.text("bank_m3", 1));
}

constexpr std::array kGroundSentences{
    SentenceOf{"site_survey_unusable", surveyUnusable},
    SentenceOf{"site_survey_doubtful", surveyDoubtful},
    SentenceOf{"site_platform_impossible", platformImpossible},
    SentenceOf{"site_tank_on_fill", tankOnFill},
    SentenceOf{"site_cut_face_too_steep", cutFaceTooSteep},
    SentenceOf{"site_fill_face_too_steep", fillFaceTooSteep},
    SentenceOf{"site_fill_lacking", fillLacking},
    SentenceOf{"site_slip_near", slip},
    SentenceOf{"site_slip_likely", slip},
    SentenceOf{"site_spoil_downhill", spoilDownhill},
    SentenceOf{"site_spoil_uphill", spoilUphill},
};

}  // namespace

QString platformFault(std::string_view fault) {
  return lookUp(kPlatformFaults, fault, "fault of platform");
}

QString surveyFault(std::string_view fault) {
  return lookUp(kSurveyFaults, fault, "fault of survey");
}

QString overMiddle(double over_m, const Formatter& format) {
  const double step = format.shownStep(over_m, core::Unit::metre, kLevelDecimals);
  if (std::abs(over_m) < step / 2)
    return say(QT_TRANSLATE_NOOP("ui::words", "as high as the natural ground at the middle of the tank"));
  return (over_m > 0
              ? say(QT_TRANSLATE_NOOP("ui::words", "%1 over the natural ground at the middle of the tank"))
              : say(QT_TRANSLATE_NOOP("ui::words", "%1 below the natural ground at the middle of the tank")))
      .arg(format.quantity(std::abs(over_m), core::Unit::metre, kLevelDecimals));
}

QString atMostOverMiddle(double over_m, const Formatter& format) {
  return overMiddle(toShownStep(over_m, core::Unit::metre, kLevelDecimals, format, Rounding::down), format);
}

std::span<const SentenceOf> groundSentences() {
  return kGroundSentences;
}

}  // namespace ui::words
