#include "ui/text/notes_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString soilWeaker(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "A test pit shows a weaker soil (%1) above the floor of the pit than the one entered (%2). "
                 "The weakest layer decides how steep a cut may stand: enter that one."))
      .arg(choiceLabel("site.soil", v.token("soil")), choiceLabel("site.soil", v.token("entered")));
}

QString waterHigher(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Water came into a test pit %1 below the ground; entered is %2. Enter the "
                               "highest level that was seen, for it is the one that lifts the floor."))
      .arg(v.text("depth_m"), v.text("entered_m"));
}

constexpr std::array kNotesSentences{
    SentenceOf{"site_soil_weaker_in_pit", soilWeaker},
    SentenceOf{"site_water_higher_in_pit", waterHigher},
};

}  // namespace

std::span<const SentenceOf> notesSentences() {
  return kNotesSentences;
}

}  // namespace ui::words
