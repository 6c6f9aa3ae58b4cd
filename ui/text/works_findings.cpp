#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr double kLeastTold_percent = 0.5;  // less is shown as nothing
constexpr double kPercent = 100;
constexpr double kLeastCarried_m3 = 0.01;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString masonsFew(const Values& v) {
  const QString text =
      say(QT_TRANSLATE_NOOP("ui::words",
                            "%1 needs more hands that lay plaster with skill. Masons entered: %2; needed to "
                            "put it on in one go: %3."))
          .arg(v.layer("coat"), v.whole("masons"), v.whole("needed"));
  return withSizeForCrew(text, v);
}

QString coatWaits(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1 waits %2 for the next coat after its curing. Keep it under wet sacks all that "
                 "time: the next coat does not hold on dry plaster."))
      .arg(v.layer("coat"), v.text("days", 0));
}

QString nobodyWets(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Nobody is entered who keeps the sacks wet. Plaster that dries early cracks and "
                        "leaks: agree who comes, rest days too."));
}

QString batchesSlow(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1 takes %2 batches an hour to be on in time; the mixing places that there are "
                 "bring %3. Mixing places needed: %4."))
      .arg(v.layer("coat"), v.text("needed_per_hour", 1), v.text("possible_per_hour", 1), v.whole("places"));
}

QString batchSets(const Values& v) {
  const QString what =
      say(QT_TRANSLATE_NOOP(
              "ui::words",
              "%1: the people there take %2 to spread a batch with a whole bag of cement; after "
              "%3 it stiffens."))
          .arg(v.layer("coat"), v.text("minutes", 0), v.text("limit_minutes", 0));
  const bool half_does = v.number("half_minutes") <= v.number("limit_minutes");
  return what + u' ' +
         (half_does
              ? say(QT_TRANSLATE_NOOP("ui::words", "Mix half a bag at a time: that is on the wall in %1."))
              : say(QT_TRANSLATE_NOOP(
                    "ui::words",
                    "Half a bag at a time takes %1 and stiffens too: put more people on the "
                    "coat, or mix still less at a time.")))
             .arg(v.text("half_minutes", 0));
}

QString peopleShort(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "On %1 more people are needed than there are: %2 needed, %3 there. Tasks lie on "
                 "top of each other; move one of them, or ask for more people."))
      .arg(v.date("date"), v.whole("needed"), v.whole("there"));
}

QString wishUnused(const Values& v) {
  const std::string task = v.token("task");
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "A wish is entered for a task that this plan does not have: %1. It is kept and "
                 "not used."))
      .arg(hasTaskName(task) ? taskName(task) : fromCore(task));
}

QString inflowUnknown(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "What flows into the new tank is not known, so nobody can say when the water "
                        "covers the walls. Enter the water let in each day, or the flow of the source."));
}

QString fillLate(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Filling is planned to start on %1, but should start by %2: plaster that falls "
                 "dry cracks. Start earlier, or keep all walls under wet sacks until then."))
      .arg(v.date("start"), v.date("latest"));
}

QString neverFull(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The first filling does not reach the overflow level of %1 within a year: the "
                               "water stands at %2 then. Find more water, or make the tank smaller."))
      .arg(v.text("full_m"), v.text("level_m"));
}

QString wallsWetLong(const Values& v) {
  const QString text =
      say(QT_TRANSLATE_NOOP(
              "ui::words",
              "The water rises slowly: after the last coat has cured, bare wall must stay under "
              "wet sacks for %1 more, until %2. That takes up to %3."))
          .arg(v.text("days", 0), v.date("until"), v.text("l_per_day", 0));
  if (v.number("carried_m3") < kLeastCarried_m3) return text;
  return text + u' ' +
         say(QT_TRANSLATE_NOOP("ui::words",
                               "Or bring about %1 of water by hand, so that it covers the walls in time."))
             .arg(litresWorth(v.number("carried_m3"), v.format(), Rounding::up));
}

struct Cause {
  const char* value;
  const char* text;
};

constexpr std::array kCauses{
    Cause{"rain_percent", QT_TRANSLATE_NOOP("ui::words", "heavy rain (%1)")},
    Cause{"frost_percent", QT_TRANSLATE_NOOP("ui::words", "frost (%1)")},
    Cause{"heat_percent", QT_TRANSLATE_NOOP("ui::words", "a day too hot or too cold (%1)")},
};

QString causes(const Values& v) {
  QStringList all;
  for (const Cause& cause : kCauses) {
    if (v.number(cause.value) >= kLeastTold_percent) all << say(cause.text).arg(v.text(cause.value, 0));
  }
  if (all.isEmpty()) return {};
  return u' ' + say(QT_TRANSLATE_NOOP("ui::words", "What disturbs them: %1.")).arg(andList(all));
}

QString weatherRisk(const Values& v) {
  const auto chance = [&](const char* name) { return timesInTen(v.number(name) / kPercent, v.format()); };
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "By the weather of the years reckoned, coats put on as planned stay undisturbed "
                 "%1."))
             .arg(chance("undisturbed_percent")) +
         causes(v) + u' ' +
         say(QT_TRANSLATE_NOOP("ui::words",
                               "With the works begun on %1 the first coat falls into the best week of the "
                               "year, and they stay undisturbed %2."))
             .arg(v.date("best_start"), chance("best_percent"));
}

QString coatDriesFast(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: in the mean weather of its day fresh plaster loses %2 of water; from %3 on "
                 "it may crack while it is soft. Begin at dawn, keep sun and wind off it, and lay "
                 "wet sacks on as soon as it bears them."))
      .arg(v.layer("coat"), v.text("kg_m2_h", 2), v.text("limit", 2));
}

QString recordsFew(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The plan is reckoned with few records. %1: %2 so far; from %3 on their middle "
                 "value says more."))
      .arg(recordedName(v.token("work")), v.whole("count"), v.whole("wanted"));
}

QString recordsDiffer(const Values& v) {
  const std::string work = v.token("work");
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: the records say %2, and the plan is reckoned with the %3 entered. Find out "
                 "why, or let the records stand in its place."))
      .arg(recordedName(work), recordedAmount(v.number("measured"), work, v.format()),
           recordedAmount(v.number("entered"), work, v.format()));
}

QString recordsOutOfRange(const Values& v) {
  const std::string work = v.token("work");
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: the middle of the records is %2, outside of what can be (%3 to %4). It is not "
                 "used; look at the records again."))
      .arg(recordedName(work), recordedAmount(v.number("measured"), work, v.format()),
           recordedAmount(v.number("least"), work, v.format()),
           recordedAmount(v.number("most"), work, v.format()));
}

constexpr std::array kWorksSentences{
    SentenceOf{"works_masons_few", masonsFew},
    SentenceOf{"works_batches_slow", batchesSlow},
    SentenceOf{"works_batch_sets", batchSets},
    SentenceOf{"works_people_short", peopleShort},
    SentenceOf{"works_wish_unused", wishUnused},
    SentenceOf{"works_coat_waits", coatWaits},
    SentenceOf{"works_nobody_wets", nobodyWets},
    SentenceOf{"records_out_of_range", recordsOutOfRange},
    SentenceOf{"works_fill_inflow_unknown", inflowUnknown},
    SentenceOf{"works_fill_late", fillLate},
    SentenceOf{"works_fill_never_full", neverFull},
    SentenceOf{"works_walls_wet_long", wallsWetLong},
    SentenceOf{"works_weather_risk", weatherRisk},
    SentenceOf{"works_coat_dries_fast", coatDriesFast},
    SentenceOf{"records_few", recordsFew},
    SentenceOf{"records_differ", recordsDiffer},
};

}  // namespace

QString withSizeForCrew(const QString& sentence, const Values& values) {
  if (!values.has("full_m3")) return sentence;
  const core::works::SizeForCrew size{.plan_factor = 0,  // not told
                                      .length_m = values.number("length_m"),
                                      .width_m = values.number("width_m"),
                                      .full_volume_m3 = values.number("full_m3")};
  return sentence + u' ' + sizeForCrew(size, values.format());
}

std::span<const SentenceOf> worksSentences() {
  return kWorksSentences;
}

}  // namespace ui::words
