#include "ui/text/finding_sentences.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words_table.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr int kSizeDecimals = 2;

constexpr std::array kLines{
    Entry{"source", QT_TRANSLATE_NOOP("ui::words", "the line from the source")},
    Entry{"field", QT_TRANSLATE_NOOP("ui::words", "the line to the field")},
};

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString line(const Values& v) {
  return lookUp(kLines, v.token("line"), "line");
}

/// A size that clears the finding, rounded up as it can be typed.
QString sizeThatWould(const Values& v, std::string_view name) {
  const double size_m =
      toShownStep(v.number(name), core::Unit::metre, kSizeDecimals, v.format(), Rounding::up);
  return v.format().quantity(size_m, core::Unit::metre, kSizeDecimals);
}

QString lineNoFlow(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words", "Water does not flow as it should through %1: %2."))
      .arg(line(v), hydraulicsFault(v.token("fault")));
}

QString staticOverClass(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "With the outlet shut, the water in %1 presses with %2; the pipe bears %3. Take a "
                 "stronger class, or let the water fall into an open tank on the way, which breaks the "
                 "pressure."))
      .arg(line(v), v.text("static_bar", 1), v.text("class_bar", 1));
}

QString vapour(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "In %1, at %2 along it, the pressure head would sink to %3; under %4 the column of water "
                 "parts and the flow reckoned does not come about. Lay the pipe lower there, or throttle it "
                 "at its end."))
      .arg(line(v), v.text("station_m", 0), v.text("pressure_m", 1), v.text("lowest_m", 1));
}

QString aboveHeadLine(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "From %2 to %3 along %1 the pipe lies above the line of heads and sucks, down to %4 of "
                 "pressure head: air gathers, and a leak draws in dirt. Lay it lower there, or throttle the "
                 "line at its end."))
      .arg(line(v), v.text("from_m", 0), v.text("to_m", 0), v.text("pressure_m", 1));
}

QString airLock(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Air behind the high points of %1, the first at %2 along it, can hold back %3 "
                               "of head; there are only %4 to drive the water, so it may not start to flow. "
                               "Lay the pipe with a steady fall, or put an air valve on each high point."))
      .arg(line(v), v.text("station_m", 0), v.text("air_m", 1), v.text("head_m", 1));
}

QString pipeThatWould(const Values& v) {
  if (!v.has("outside_mm"))
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "No pipe of the table brings that much and bears the pressure: find more "
                                 "fall, or break the pressure on the way."));
  if (!v.has("class_bar"))
    return say(QT_TRANSLATE_NOOP("ui::words", "A pipe of %1 outside diameter would bring it."))
        .arg(v.text("outside_mm", 0));
  return say(QT_TRANSLATE_NOOP("ui::words", "A pipe of %1 outside diameter, class %2, would bring it."))
      .arg(v.text("outside_mm", 0), v.text("class_bar"));
}

QString flowSmall(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words", "Only %2 come through %1; %3 are wanted."))
             .arg(line(v), v.text("flow_l_per_min", 1), v.text("wanted_l_per_min", 1)) +
         u' ' + pipeThatWould(v);
}

QString throughLining(const Values&) {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "The pipe to the field goes through the lining. A tank of plaster leaks first where "
                        "a pipe passes it, and the leak soaks the ground below. A siphon over the rim needs "
                        "no hole."));
}

QString siphonTooHigh(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The top of the siphon lies %1 above the water; at this height above the sea it can be %2 "
                 "at most. Lay the top nearer to the rim, or let the water sink less deep."))
      .arg(v.text("lift_m"), v.text("most_lift_m"));
}

QString siphonThrottle(const Values& v) {
  if (v.number("throttled_l_per_min") <= 0)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "The siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. "
                   "Lay the top lower."))
        .arg(v.text("lift_m"));
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Wide open, the siphon breaks: its top lies %1 above the water, and the pipe sucks too hard "
                 "there. Put a valve at its lower end and open it to %2 at most, or lay the top lower."))
      .arg(v.text("lift_m"), v.text("throttled_l_per_min", 1));
}

QString siphonAir(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Water runs through the siphon at %1; under %2 it does not carry air down, which gathers at "
                 "the top and stops it in time. Take a narrower pipe, or put a plug at the top to fill it "
                 "anew."))
      .arg(v.text("velocity_m_s", 2), v.text("clearing_m_s", 2));
}

QString outletHead(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The outlet chosen (%1) wants a head of %2. Left are %3 with the tank full "
                               "and %4 when it is nearly empty: %5. Lay the end of the line lower, take a "
                               "wider pipe, or choose an outlet that needs less."))
      .arg(choiceLabel("delivery.field.outlet", v.token("outlet")), v.text("wanted_m", 1),
           v.text("head_full_m", 1), v.text("head_low_m", 1), outletVerdict(v.token("verdict")));
}

QString stormUnknown(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "How hard it rains here at worst is not known; the overflow is reckoned for %1. Ask the "
                 "weather station for the heaviest rain of ten minutes or a quarter of an hour."))
      .arg(v.text("storm_mm_h", 0));
}

QString overflowThatWould(const Values& v) {
  if (v.has("width_m"))
    return say(QT_TRANSLATE_NOOP("ui::words", "A notch %1 wide would leave it."))
        .arg(sizeThatWould(v, "width_m"));
  if (v.has("pipe_m"))
    return say(QT_TRANSLATE_NOOP("ui::words", "An overflow pipe of %1 inside diameter would leave it."))
        .arg(millimetresUp(v.number("pipe_m"), v.format()));
  if (v.has("needed_freeboard_m"))
    return say(QT_TRANSLATE_NOOP("ui::words", "A freeboard of %1 would leave it."))
        .arg(sizeThatWould(v, "needed_freeboard_m"));
  return say(QT_TRANSLATE_NOOP("ui::words", "Give more freeboard, or lead less water in during a storm."));
}

QString overflowSmall(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "In a storm the overflow has to pass %1; the water then stands only %2 below "
                               "the lowest part of the rim, "
                               "and %3 is wanted."))
             .arg(v.text("flow_l_per_min", 0), v.text("freeboard_m"), v.text("wanted_m")) +
         u' ' + overflowThatWould(v);
}

QString rimOvertopped(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "In a storm the overflow has to pass %1 and cannot: the water runs over the rim and washes "
                 "out the ground behind the lining. It should stay %2 below the lowest part of it."))
             .arg(v.text("flow_l_per_min", 0), v.text("wanted_m")) +
         u' ' + overflowThatWould(v);
}

QString blockedAnywhere(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "If leaves block the overflow, water runs over the rim anywhere, up to %1 deep, and nobody "
                 "knows where it goes. Lay a part of the rim lower, on the side where it does no harm."))
             .arg(v.text("deepest_m", 3)) +
         (v.has("lip_length_m")
              ? u' ' + say(QT_TRANSLATE_NOOP("ui::words", "As low as it is now, it has to be %1 long."))
                           .arg(sizeThatWould(v, "lip_length_m"))
              : QString());
}

QString spillShallow(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "In a storm the water in the spill path would stand %1 deep; the channel is %2 deep. Dig it "
                 "deeper or wider."))
      .arg(v.text("depth_m"), v.text("channel_m"));
}

QString spillScours(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "In a storm the water runs down the spill path at %1 and may dig itself in: "
                               "%2 bears about %3. "
                               "Make the path wider or flatter, or pave it with stones."))
      .arg(v.text("velocity_m_s", 2), spillBed(v.token("cover")), v.text("limit_m_s", 2));
}

QString trapSize(const Values& v) {
  if (!v.has("length_m"))
    return say(
        QT_TRANSLATE_NOOP("ui::words", "Make it deeper, longer or wider, or lead less water through it."));
  if (!v.has("depth_m"))
    return say(QT_TRANSLATE_NOOP("ui::words", "A trap %1 long and %2 wide inside would hold them."))
        .arg(sizeThatWould(v, "length_m"), sizeThatWould(v, "width_m"));
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "A trap %1 long and %2 wide inside, with %3 of water and mud, would hold them."))
      .arg(sizeThatWould(v, "length_m"), sizeThatWould(v, "width_m"), sizeThatWould(v, "depth_m"));
}

QString trapSmall(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The silt trap holds grains down to %1 back; it should hold those of %2 too."))
             .arg(v.text("kept_mm", 2), v.text("grain_mm", 2)) +
         u' ' + trapSize(v);
}

QString leakWatch(const Values& v) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The tank leaks %1, about %2. Look for cracks and for wet ground below it, and test again "
                 "in some weeks."))
      .arg(v.text("mm_per_day", 1), v.text("l_per_day", 0));
}

QString leakRepair(const Values& v) {
  const bool at_once = v.token("band") == "empty_and_mend";
  return say(QT_TRANSLATE_NOOP("ui::words", "The tank leaks %1, about %2."))
             .arg(v.text("mm_per_day", 1), v.text("l_per_day", 0)) +
         u' ' +
         (at_once
              ? say(QT_TRANSLATE_NOOP("ui::words",
                                      "That can soften the ground below it: let no more water in, empty it "
                                      "and mend it."))
              : say(QT_TRANSLATE_NOOP("ui::words",
                                      "Let the water sink until it stops: the leak is at that height. Mend "
                                      "the cracks there.")));
}

QString leakUnsure(const Values& v) {
  const QString error = v.text("error_mm_per_day", 1);
  const QString leak = v.format().quantity(std::abs(v.number("mm_per_day")), core::Unit::mm_per_day, 1);
  if (v.token("verdict") == "gains")
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "Against the bucket the tank gained %1, more than the readings' error of "
                                 "%2: water ran in, "
                                 "or a reading is wrong. Shut all inlets and test again in dry weather."))
        .arg(leak, error);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The leak test shows %1, no more than the readings' error of %2, so it tells nothing. Let "
                 "it run longer."))
      .arg(leak, error);
}

QString reckonedPart(std::string_view part) {
  if (part == "overflow") return say(QT_TRANSLATE_NOOP("ui::words", "The overflow"));
  if (part == "blocked") return say(QT_TRANSLATE_NOOP("ui::words", "The blocked overflow"));
  if (part == "silt_trap") return say(QT_TRANSLATE_NOOP("ui::words", "The silt trap"));
  return say(QT_TRANSLATE_NOOP("ui::words", "The leak test"));
}

QString notReckoned(const Values& v) {
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 could not be reckoned, so nothing is known of it: %2."))
      .arg(reckonedPart(v.token("part")), hydraulicsFault(v.token("fault")));
}

constexpr std::array kDeliverySentences{
    SentenceOf{"delivery_line_no_flow", lineNoFlow},
    SentenceOf{"delivery_static_over_class", staticOverClass},
    SentenceOf{"delivery_vapour", vapour},
    SentenceOf{"delivery_above_head_line", aboveHeadLine},
    SentenceOf{"delivery_air_lock", airLock},
    SentenceOf{"delivery_flow_small", flowSmall},
    SentenceOf{"delivery_through_lining", throughLining},
    SentenceOf{"delivery_siphon_too_high", siphonTooHigh},
    SentenceOf{"delivery_siphon_throttle", siphonThrottle},
    SentenceOf{"delivery_siphon_air", siphonAir},
    SentenceOf{"delivery_outlet_head", outletHead},
    SentenceOf{"delivery_storm_unknown", stormUnknown},
    SentenceOf{"delivery_overflow_small", overflowSmall},
    SentenceOf{"delivery_rim_overtopped", rimOvertopped},
    SentenceOf{"delivery_blocked_anywhere", blockedAnywhere},
    SentenceOf{"delivery_spill_shallow", spillShallow},
    SentenceOf{"delivery_spill_scours", spillScours},
    SentenceOf{"delivery_trap_small", trapSmall},
    SentenceOf{"delivery_not_reckoned", notReckoned},
    SentenceOf{"delivery_leak_watch", leakWatch},
    SentenceOf{"delivery_leak_repair", leakRepair},
    SentenceOf{"delivery_leak_unsure", leakUnsure},
};

}  // namespace

std::span<const SentenceOf> deliverySentences() {
  return kDeliverySentences;
}

}  // namespace ui::words
