#include "ui/text/finding_sentences.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString onFill(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "The soil is loose fill. Fill settles unevenly and cracks the lining: no floor or "
                        "wall may stand on it. Choose a place in natural ground, or let a licensed "
                        "engineer decide."));
}

QString softWet(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "The soil is soft and wet. It does not carry the lining and its cut does not stand. "
                        "Choose a drier place, or let a licensed engineer decide."));
}

QString rockFloor(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Part of the floor is rock. The lining cracks where rock and earth meet: bed it "
                        "evenly on stones all over, and break no rock without someone trained for it."));
}

QString swellingSoil(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The soil holds %1 clay. From about %2 on, clay may swell when wet and crack the "
                 "lining. Test it: dry a clod and see how far it shrinks."))
      .arg(v.text("clay_percent"), v.text("from"));
}

QString cutTooSteep(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The pit is %1 deep and its walls lean back %2 for each unit of height; the "
                 "published table asks for %3 in this soil. Slope the open cut back further, step "
                 "it, or shore it. Local codes and licensed practice come first."))
      .arg(v.text("pit_depth_m"), v.text("batter", 2), v.text("wanted", 2));
}

QString cutTooHigh(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The pit is %1 deep. In the weakest soil of this kind a cut with this batter is "
                 "reckoned to stand to %2 only, with a safety of %3. Dig less deep, lean the walls "
                 "back, shore them, or let a licensed engineer test the soil."))
      .arg(v.text("pit_depth_m"), v.text("most_m"), v.text("factor", 1));
}

QString slopeSteep(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The ground falls at %1. From %2 on look for cracks, springs, leaning trees and "
                 "old slips before you choose the place."))
      .arg(v.text("slope_deg"), v.text("from_deg"));
}

QString slopeTooSteep(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The ground falls at %1. From %2 on no tank is built without a licensed engineer: "
                 "a leak can bring the slope down."))
      .arg(v.text("slope_deg"), v.text("from_deg"));
}

QString edgeUnknown(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Distance and drop of the nearest edge downhill are not known, and not known is "
                        "not safe. Measure both."));
}

QString edgeNear(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The edge downhill is %1 away. One rule (drop plus pit depth) asks for %2, another "
                 "(a third of the drop, as for footings) for %3; they disagree here. Move the tank "
                 "back if you can."))
      .arg(v.text("distance_m"), v.text("own_m"), v.text("code_m"));
}

QString edgeTooNear(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The edge downhill is %1 away, nearer than both rules allow: %2 (drop plus pit "
                 "depth) and %3 (a third of the drop, as for footings). Move the tank back, or let "
                 "a licensed engineer decide."))
      .arg(v.text("distance_m"), v.text("own_m"), v.text("code_m"));
}

QString waterTableUnknown(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "The depth of ground water is not known, and not known is not safe: it can lift "
                        "an empty tank. Ask how high wells and springs stand in the rains."));
}

QString keepWater(const Values& v) {
  return v.has("keep_water_m")
             ? say(QT_TRANSLATE_NOOP("ui::words", "Never let the water sink below %1 above the floor then."))
                   .arg(v.text("keep_water_m"))
             : say(QT_TRANSLATE_NOOP("ui::words", "Not even a full tank would hold it down."));
}

QString uplift(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Ground water stands %1 over the underside of the floor and lifts the empty tank: "
                 "its weight is %2 of the lift, %3 is wanted."))
             .arg(v.text("head_m"), v.text("factor", 2), v.text("wanted", 1)) +
         QLatin1Char(' ') + keepWater(v);
}

QString houseUnknown(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Whether a house lies downhill is not known, and not known is not safe. Walk the "
                        "way that escaping water would take."));
}

QString houseInFlowPath(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "A house lies %1 downhill, within %2. Lead the overflow, and the way of the water "
                 "if the tank breaks, past it, or choose another place."))
      .arg(v.text("house_m", 0), v.text("within_m", 0));
}

QString toddlersNoFence(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Small children live near and no fence is planned. A child drowns in silence and "
                        "cannot climb a smooth wall: plan a fence on all four sides with a gate that shuts "
                        "itself, and a ladder or rope to climb out."));
}

QString toddlersUnknown(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Whether small children live within 20 m is not known, and not known is not safe. "
                        "Plan the fence, or ask."));
}

QString runoffStraightIn(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "Runoff is led in and no silt trap is planned. Silt fills the tank and wears the "
                        "lining: plan a trap and a way to let the first rain go."));
}

QString frost(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "In %1 the mean lowest temperature is %2. Do not plaster or cure in frost, and ask "
                 "locally whether ice has broken linings."))
      .arg(v.month("month"), v.text("t_min_c"));
}

constexpr std::array kSiteSentences{
    SentenceOf{"site_on_fill", onFill},
    SentenceOf{"site_soft_wet", softWet},
    SentenceOf{"site_rock_floor", rockFloor},
    SentenceOf{"site_swelling_soil", swellingSoil},
    SentenceOf{"site_cut_too_steep", cutTooSteep},
    SentenceOf{"site_cut_too_high", cutTooHigh},
    SentenceOf{"site_slope_steep", slopeSteep},
    SentenceOf{"site_slope_too_steep", slopeTooSteep},
    SentenceOf{"site_edge_unknown", edgeUnknown},
    SentenceOf{"site_edge_near", edgeNear},
    SentenceOf{"site_edge_too_near", edgeTooNear},
    SentenceOf{"site_water_table_unknown", waterTableUnknown},
    SentenceOf{"site_uplift", uplift},
    SentenceOf{"site_uplift_near", uplift},
    SentenceOf{"site_house_unknown", houseUnknown},
    SentenceOf{"site_house_in_flow_path", houseInFlowPath},
    SentenceOf{"site_toddlers_no_fence", toddlersNoFence},
    SentenceOf{"site_toddlers_unknown", toddlersUnknown},
    SentenceOf{"site_runoff_straight_in", runoffStraightIn},
    SentenceOf{"site_frost", frost},
};

}  // namespace

std::span<const SentenceOf> siteSentences() {
  return kSiteSentences;
}

}  // namespace ui::words
