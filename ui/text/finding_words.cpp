#include "ui/text/finding_sentences.h"
#include "ui/text/money_words.h"
#include "ui/text/notes_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

QString partAbsent(const Values& v) {
  return QCoreApplication::translate("ui::words", "Not in the project, so not in the plan: %1.")
      .arg(partName(v.token("part")));
}

QString smallerThanRecommended(const Values& v) {
  return QCoreApplication::translate("ui::words",
                                     "The tank is smaller than the smallest one that builders recommend: %1 "
                                     "long, %2 wide and %3 deep (clear), which is %4 to the rim.")
      .arg(v.text("length_m"), v.text("width_m"), v.text("depth_m"), v.text("volume_m3", 1));
}

QString clayRemedy(const Values& v) {
  if (!v.has("sand_per_soil")) return {};
  return u' ' + QCoreApplication::translate("ui::words", "%1 parts of sand to 1 part of soil would reach it.")
                    .arg(v.text("sand_per_soil", 2));
}

QString clayShareLow(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "%1: clay is only %2 of its soil and sand together; %3 to %4 is wanted, or the plaster "
             "crumbles.")
             .arg(v.layer("coat"), v.text("clay_percent", 1), v.text("least"), v.text("most")) +
         clayRemedy(v);
}

QString clayShareHigh(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "%1: clay is %2 of its soil and sand together; %3 to %4 is wanted, or the plaster "
             "shrinks and cracks.")
             .arg(v.layer("coat"), v.text("clay_percent", 1), v.text("least"), v.text("most")) +
         clayRemedy(v);
}

QString clayShareCannotReach(const Values& v) {
  return QCoreApplication::translate("ui::words",
                                     "%1: clay is only %2 of its soil and sand together, and even the soil "
                                     "alone has less than the %3 wanted. Look for a soil with more clay.")
      .arg(v.layer("coat"), v.text("clay_percent", 1), v.text("least"));
}

QString clayUnknown(const Values&) {
  return QCoreApplication::translate(
      "ui::words",
      "The clay in the soil is not known, so the mix cannot be judged. Do a jar test and enter "
      "its result.");
}

QString soilUnknown(const Values&) {
  return QCoreApplication::translate(
      "ui::words",
      "The soil of the pit is not known. Digging is reckoned as for firm loam, and the walls "
      "cannot be called safe.");
}

QString curingShort(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "%1 is kept wet for %2. Ordinary cement practice is at least %3; shorter curing is "
             "reported from tanks of this kind, and leaves the plaster weaker.")
      .arg(v.layer("coat"), v.text("days", 0), v.text("ordinary_days", 0));
}

QString cureOutlastsFillWindow(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The last coat is kept wet for %1, but filling shall start within %2 of placing it. Keep "
             "the walls above the water under wet sacks after filling has begun.")
      .arg(v.text("days", 0), v.text("window_days", 0));
}

QString coatCrewSmall(const Values& v) {
  const QString text =
      QCoreApplication::translate(
          "ui::words", "%1 must be placed in one go, within the day. People entered for it: %2; needed: %3.")
          .arg(v.layer("coat"), v.whole("people"), v.whole("needed"));
  return withSizeForCrew(text, v);
}

QString pitLadder(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The pit is %1 deep. From %2 on a ladder must stand in it while anyone works there. Local "
             "codes and licensed practice come first.")
      .arg(v.text("pit_depth_m"), v.text("from_m"));
}

QString pitCaveIn(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The pit is %1 deep. From %2 on its walls must be held against cave-in: slope or step them "
             "back, or shore them, and let a competent person look at them each day. Local codes and "
             "licensed practice come first.")
      .arg(v.text("pit_depth_m"), v.text("from_m"));
}

QString pitTooDeepByHand(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The pit is %1 deep, more than the %2 that this program allows to be dug by hand. Have an "
             "engineer design it, or make the tank shallower and wider.")
      .arg(v.text("pit_depth_m"), v.text("most_m"));
}

QString customaryCementDiffers(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The mixes and thicknesses entered need %1 times the cement of the customary bill by exact "
             "shells, %2 times by area times thickness. Decide which to trust, thickness, mix or cement; the "
             "others follow from your choice.")
      .arg(v.text("ratio", 2), v.text("by_area_ratio", 2));
}

QString customarySandSoilDiffers(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The customary bill has %1 parts of soil to 1 part of sand; the mixes entered need %2. "
             "Both cannot be right.")
      .arg(v.text("bill", 2), v.text("mix", 2));
}

QString diggingNormsDiffer(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Digging takes %1 by published rate norms and %2 by local practice. Check which fits your "
             "diggers before you promise dates.")
      .arg(v.text("norm_days"), v.text("practice_days"));
}

QString unknownKey(const Values& v) {
  return QCoreApplication::translate(
             "ui::words", "The file's entry “%1” is not known to this version. It is kept and not used.")
      .arg(fromCore(v.token("path")));
}

constexpr std::array kSentences{
    SentenceOf{"part_absent", partAbsent},
    SentenceOf{"smaller_than_recommended", smallerThanRecommended},
    SentenceOf{"clay_share_low", clayShareLow},
    SentenceOf{"clay_share_high", clayShareHigh},
    SentenceOf{"clay_share_cannot_reach", clayShareCannotReach},
    SentenceOf{"clay_unknown", clayUnknown},
    SentenceOf{"soil_unknown", soilUnknown},
    SentenceOf{"curing_short", curingShort},
    SentenceOf{"cure_outlasts_fill_window", cureOutlastsFillWindow},
    SentenceOf{"coat_crew_small", coatCrewSmall},
    SentenceOf{"pit_ladder", pitLadder},
    SentenceOf{"pit_cave_in", pitCaveIn},
    SentenceOf{"pit_too_deep_by_hand", pitTooDeepByHand},
    SentenceOf{"customary_cement_differs", customaryCementDiffers},
    SentenceOf{"customary_sand_soil_differs", customarySandSoilDiffers},
    SentenceOf{"digging_norms_differ", diggingNormsDiffer},
    SentenceOf{"unknown_key", unknownKey},
};

/// Null when there is none.
const SentenceOf* sentenceOf(std::string_view code) {
  for (const std::span<const SentenceOf> table :
       {std::span<const SentenceOf>(kSentences), siteSentences(), notesSentences(), groundSentences(),
        waterSentences(), deliverySentences(), worksSentences(), moneySentences()}) {
    const auto found = std::ranges::find(table, code, &SentenceOf::code);
    if (found != table.end()) return &*found;
  }
  return nullptr;
}

}  // namespace

QString findingText(const core::Finding& finding, const Formatter& format) {
  const SentenceOf* const found = sentenceOf(finding.code);
  if (found == nullptr) throw std::logic_error("no words for finding " + finding.code);
  return found->sentence(Values(finding, format));
}

}  // namespace ui::words
