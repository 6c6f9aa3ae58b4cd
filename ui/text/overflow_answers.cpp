#include "core/hydraulics/delivery_plan.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::words {
namespace {

using core::hydraulics::BlockedState;
using core::hydraulics::DeliveryPlan;
using core::hydraulics::LeakRule;
using core::hydraulics::LeakTest;
using core::hydraulics::LeakVerdict;
using core::hydraulics::OverflowPlan;
using core::hydraulics::Scour;
using core::hydraulics::TrapPlan;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString metres(double length_m, const Formatter& format, int decimals = 2) {
  return format.quantity(length_m, core::Unit::metre, decimals);
}

QString metresUp(double length_m, const Formatter& format) {
  return metres(toShownStep(length_m, core::Unit::metre, 2, format, Rounding::up), format);
}

QString millimetres(double length_mm, const Formatter& format) {
  return format.quantity(length_mm, core::Unit::millimetre, 2);
}

QString storm(const OverflowPlan& plan, const Formatter& format) {
  const QString rain = format.quantity(plan.storm_mm_h, core::Unit::mm_per_hour, 0);
  const QString flow = flowText(plan.flow_m3_s, format);
  if (!plan.is_storm_known)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "Taken is a storm of %1, for the heaviest rain here is not known: %2 run in."))
        .arg(rain, flow);
  return say(QT_TRANSLATE_NOOP("ui::words", "In a storm of %1, %2 run into the tank.")).arg(rain, flow);
}

QString fromSource(const OverflowPlan& plan, const Formatter& format) {
  if (plan.source_m3_s <= 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Of these, %1 are rain and %2 come from the source."))
      .arg(flowText(plan.storm_m3_s, format), flowText(plan.source_m3_s, format));
}

QString passes(const OverflowPlan& plan, const Formatter& format) {
  if (!plan.state)
    return say(QT_TRANSLATE_NOOP("ui::words", "How high the water then stands cannot be told: %1."))
        .arg(hydraulicsFault(plan.state.error()));
  const double left_m = plan.state->freeboard_left_m;
  if (left_m < 0)
    return say(QT_TRANSLATE_NOOP("ui::words", "The overflow passes %1 at most, so water runs over the rim."))
        .arg(flowText(plan.state->capacity_m3_s, format));
  const QString stands = left_m >= plan.wanted_freeboard_m
                             ? say(QT_TRANSLATE_NOOP("ui::words",
                                                     "The overflow passes it: the water stays %1 below the "
                                                     "lowest part of the rim, wanted are %2."))
                             : say(QT_TRANSLATE_NOOP("ui::words",
                                                     "The overflow just passes it: the water stays only %1 "
                                                     "below the lowest part of the rim, wanted "
                                                     "are %2."));
  return stands.arg(metres(left_m, format), metres(plan.wanted_freeboard_m, format));
}

QString overflowThatWould(const OverflowPlan& plan, const Formatter& format) {
  if (plan.state && plan.state->freeboard_left_m >= plan.wanted_freeboard_m) return {};
  if (plan.width_that_would_m)
    return say(QT_TRANSLATE_NOOP("ui::words", "A notch %1 wide would be enough."))
        .arg(metresUp(*plan.width_that_would_m, format));
  if (plan.pipe_that_would_m)
    return say(QT_TRANSLATE_NOOP("ui::words", "An overflow pipe of %1 inside diameter would be enough."))
        .arg(millimetresUp(*plan.pipe_that_would_m, format));
  return {};
}

double depthOf(const BlockedState& state, std::string_view part) {
  const auto found = std::ranges::find(state.parts, part, &core::hydraulics::RimPartFlow::key);
  return found == state.parts.end() ? 0 : found->depth_m;
}

QString blocked(const OverflowPlan& plan, const Formatter& format) {
  if (!plan.blocked)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "Where the water goes if the overflow is blocked cannot be told: "
                                 "%1."))
        .arg(hydraulicsFault(plan.blocked.error()));
  const QString deepest = metres(plan.blocked->deepest_m, format, 3);
  if (depthOf(*plan.blocked, "lip") <= 0)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "If the overflow is blocked, water runs over the rim anywhere, %1 deep."))
        .arg(deepest);
  if (depthOf(*plan.blocked, "rim") <= 0)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "If the overflow is blocked, all of the water leaves over the low part of the "
                   "rim, %1 deep."))
        .arg(deepest);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "If the overflow is blocked, water leaves over the low part of the rim, %1 "
                               "deep, and over the rest of it too: make the low part longer or lower."))
      .arg(deepest);
}

QString spill(const OverflowPlan& plan, const Formatter& format) {
  if (!plan.spill)
    return say(QT_TRANSLATE_NOOP("ui::words", "How the spill path carries the water cannot be told: %1."))
        .arg(hydraulicsFault(plan.spill.error()));
  return say(QT_TRANSLATE_NOOP("ui::words", "In the spill path, %1 deep, the water runs %2 deep at %3."))
      .arg(metres(plan.channel_depth_m, format), metres(plan.spill->depth_m, format),
           format.quantity(plan.spill->velocity_m_s, core::Unit::metre_per_second, 1));
}

QString scour(const OverflowPlan& plan) {
  if (!plan.scour) return {};
  const std::string& key = plan.scour->limit.key;
  const QString bed = spillBed(std::string_view(key).substr(key.find('.') + 1));
  switch (plan.scour->verdict) {
    case Scour::safe:
      return say(QT_TRANSLATE_NOOP("ui::words", "Its bed bears that speed (%1).")).arg(bed);
    case Scour::doubtful:
      return say(QT_TRANSLATE_NOOP("ui::words", "Its bed may not bear that speed (%1).")).arg(bed);
    case Scour::scours:
      break;
  }
  return say(QT_TRANSLATE_NOOP("ui::words", "Its bed is washed out at that speed (%1).")).arg(bed);
}

QString trapSize(const TrapPlan& plan, const Formatter& format) {
  const QString grain = millimetres(plan.grain.diameter_mm, format);
  const QString flow = flowText(plan.flow_m3_s, format);
  if (!plan.trap)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "A trap for grains of %1 and a flow of %2 cannot be reckoned: %3."))
        .arg(grain, flow, hydraulicsFault(plan.trap.error()));
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "To hold back grains of %1 at a flow of %2, the trap is made %3 long, %4 wide "
                               "and %5 deep inside."))
      .arg(grain, flow, metresUp(plan.trap->length_m, format), metresUp(plan.trap->width_m, format),
           metresUp(plan.trap->depth_m, format));
}

QString mud(const TrapPlan& plan, const Formatter& format) {
  if (!plan.trap || plan.trap->deposit_m3 <= 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Between two cleanings about %1 of mud settle in it, %2 deep."))
      .arg(litresWorth(plan.trap->deposit_m3, format), metres(plan.trap->deposit_depth_m, format));
}

QString trapAsItIs(const TrapPlan& plan, const Formatter& format) {
  if (!plan.check) return {};
  if (!*plan.check)
    return say(QT_TRANSLATE_NOOP("ui::words", "What the trap as it is holds back cannot be told: %1."))
        .arg(hydraulicsFault(plan.check->error()));
  const QString kept = millimetres((*plan.check)->kept_mm, format);
  if (!(*plan.check)->slow_enough)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "The trap as it is has room for grains of %1 to sink, but water runs so fast "
                   "through it that it carries them on: make it deeper or wider."))
        .arg(kept);
  return say(QT_TRANSLATE_NOOP("ui::words", "The trap as it is holds back grains of %1 and larger."))
      .arg(kept);
}

QString leakSize(const LeakTest& test, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP("ui::words", "The tank loses %1 through its lining, about %2."))
      .arg(format.quantity(test.leak_mm_day, core::Unit::mm_per_day, 1),
           format.quantity(test.leak_l_day, core::Unit::litre_per_day, 0));
}

QString leakVerdict(const LeakTest& test, const Formatter& format) {
  switch (test.verdict) {
    case LeakVerdict::gains:
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "Against the bucket the tank gained water: some ran in, or a reading is "
                                   "wrong. Test again."));
    case LeakVerdict::unsure:
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "The difference is no more than the readings' error of %1, so it tells "
                                   "nothing. Let the test run longer."))
          .arg(format.quantity(test.error_mm_day, core::Unit::mm_per_day, 1));
    case LeakVerdict::tight:
      return say(QT_TRANSLATE_NOOP("ui::words", "For a tank of plaster that is tight."));
    case LeakVerdict::watch:
      return say(QT_TRANSLATE_NOOP("ui::words", "Watch it: test again in some weeks."));
    case LeakVerdict::repair:
      return say(QT_TRANSLATE_NOOP("ui::words", "Find the cracks and mend them."));
    case LeakVerdict::empty_and_mend:
      break;
  }
  return say(QT_TRANSLATE_NOOP("ui::words", "Let no more water in, empty it and mend it."));
}

QString publishedMark(const LeakRule& rule, const Formatter& format) {
  return (rule.kept
              ? say(QT_TRANSLATE_NOOP("ui::words", "It keeps to a mark for concrete tanks, %1: %2."))
              : say(QT_TRANSLATE_NOOP("ui::words", "It does not keep to a mark for concrete tanks, %1: %2.")))
      .arg(format.quantity(rule.allowed_mm_day, core::Unit::mm_per_day, 1), sourceText(rule.source));
}

QStringList withoutEmpty(QStringList answers) {
  answers.removeAll(QString());
  return answers;
}

}  // namespace

QStringList overflowAnswers(const DeliveryPlan& delivery, const Formatter& format) {
  const OverflowPlan& plan = delivery.overflow;
  return withoutEmpty({storm(plan, format), fromSource(plan, format), passes(plan, format),
                       overflowThatWould(plan, format), blocked(plan, format), spill(plan, format),
                       scour(plan)});
}

QStringList siltTrapAnswers(const DeliveryPlan& delivery, const Formatter& format) {
  const TrapPlan& plan = delivery.trap;
  return withoutEmpty({trapAsItIs(plan, format), trapSize(plan, format), mud(plan, format)});
}

QStringList leakAnswers(const DeliveryPlan& delivery, const Formatter& format) {
  if (!delivery.leak)
    return {
        say(QT_TRANSLATE_NOOP("ui::words",
                              "No leak test is entered. Let a light bucket float deep in the tank, only a "
                              "hand's breadth of it dry; read both, and read them again after a dry day.")),
        say(QT_TRANSLATE_NOOP("ui::words",
                              "What the tank loses more than the bucket goes through the lining."))};
  if (!*delivery.leak)
    return {say(QT_TRANSLATE_NOOP("ui::words", "The leak test tells nothing: %1."))
                .arg(hydraulicsFault(delivery.leak->error()))};
  const LeakTest& test = **delivery.leak;
  const bool is_measured = test.verdict != LeakVerdict::gains && test.verdict != LeakVerdict::unsure;
  if (!is_measured) return {leakVerdict(test, format)};
  return {leakSize(test, format), leakVerdict(test, format), publishedMark(test.by_drop, format),
          publishedMark(test.by_volume, format)};
}

}  // namespace ui::words
