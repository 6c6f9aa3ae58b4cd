#include "core/hydraulics/delivery_plan.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <optional>
#include <vector>

namespace ui::words {
namespace {

using core::hydraulics::DeliveryPlan;
using core::hydraulics::FieldPlan;
using core::hydraulics::LineFlow;
using core::hydraulics::LinePlan;
using core::hydraulics::Result;
using core::hydraulics::SiphonFlow;
using core::hydraulics::SiphonState;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString metres(double length_m, const Formatter& format, int decimals = 1) {
  return format.quantity(length_m, core::Unit::metre, decimals);
}

QString bar(double pressure_bar, const Formatter& format) {
  return format.quantity(pressure_bar, core::Unit::bar, 1);
}

/// The line as it flows with the tank full, else nearly empty; null when nothing flows at all.
const LineFlow* anyFlow(const LinePlan& line) {
  return line.full ? &*line.full : line.low ? &*line.low : nullptr;
}

bool isBroken(const Result<LineFlow>& flow) {
  return flow && !flow->near_vapour.empty();
}

QString nothingFlows(std::string_view fault) {
  return say(QT_TRANSLATE_NOOP("ui::words", "Nothing flows: %1.")).arg(hydraulicsFault(fault));
}

QString gives(const LinePlan& line, const Formatter& format) {
  if (!line.full && !line.low) return nothingFlows(line.full.error());
  if (!line.full)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "The line brings %1 when the tank is nearly empty; when it is full, %2."))
        .arg(flowText(line.low->flow_m3_s, format), hydraulicsFault(line.full.error()));
  const QString full = flowText(line.full->flow_m3_s, format);
  if (isBroken(line.full))
    return say(QT_TRANSLATE_NOOP("ui::words", "By the levels of its ends alone the line would bring %1."))
        .arg(full);
  if (!line.low)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "The line brings %1 with the tank full; when it is nearly empty, %2."))
        .arg(full, hydraulicsFault(line.low.error()));
  const QString low = flowText(line.low->flow_m3_s, format);
  if (full == low) return say(QT_TRANSLATE_NOOP("ui::words", "The line brings %1.")).arg(full);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "The line brings %1 with the tank full and %2 when it is nearly empty."))
      .arg(full, low);
}

QString fills(const DeliveryPlan& plan, const Formatter& format) {
  if (!plan.source_fills_s) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "It fills the empty tank in %1 when nothing is drawn."))
      .arg(durationText(*plan.source_fills_s, format));
}

QString doesNotComeAbout(const LinePlan& line) {
  if (!isBroken(line.full) && !isBroken(line.low)) return {};
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Wide open it will not bring that much: the pipe sucks so hard at its high "
                               "parts that the column of water parts."));
}

QString wanted(const LinePlan& line, const Formatter& format) {
  if (!line.wanted_m3_s) return {};
  const QString flow = flowText(*line.wanted_m3_s, format);
  if (!line.smallest) return say(QT_TRANSLATE_NOOP("ui::words", "Wanted are %1.")).arg(flow);
  if (!*line.smallest)
    return say(QT_TRANSLATE_NOOP("ui::words", "Wanted are %1, but %2."))
        .arg(flow, hydraulicsFault(line.smallest->error()));
  const auto& size = (*line.smallest)->size;
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The smallest pipe that brings the %1 wanted has %2 outside diameter, class %3."))
      .arg(flow, format.quantity(size.outside_mm, core::Unit::millimetre, 0), bar(size.pressure_bar, format));
}

QString atRest(const LinePlan& line, const Formatter& format) {
  const LineFlow* const flow = anyFlow(line);
  if (!flow) return {};
  const QString pressure = bar(flow->static_bar, format);
  if (!line.line.pressure_class_bar)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "With its end shut, the lowest point of the pipe has to bear %1."))
        .arg(pressure);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "With its end shut, the lowest point of the pipe has to bear %1; it is good for "
                 "%2."))
      .arg(pressure, bar(*line.line.pressure_class_bar, format));
}

/// @param crest_m station of a siphon's top, which is filled by hand and no place to look for air
QString highPoints(const LinePlan& line, std::optional<double> crest_m, const Formatter& format) {
  const LineFlow* const flow = anyFlow(line);
  if (!flow) return {};
  std::vector<core::hydraulics::Hump> humps = flow->humps;
  std::erase_if(humps, [&](const core::hydraulics::Hump& hump) { return hump.station_m == crest_m; });
  if (humps.empty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "High points on the way, where air gathers: %1, the first at %2."))
      .arg(format.integer(static_cast<int>(humps.size())), metres(humps.front().station_m, format, 0));
}

/// Station of a siphon's top over the rim.
std::optional<double> crestOf(const FieldPlan& field) {
  const auto& profile = field.pipe.line.profile;
  if (!field.over_rim || profile.size() < 2) return std::nullopt;
  return profile[1].station_m;
}

QString stateText(const SiphonFlow& siphon, const Formatter& format) {
  switch (siphon.state) {
    case SiphonState::runs:
      return {};
    case SiphonState::crest_too_high:
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "The siphon cannot be started with the tank nearly empty: its top lies %1 "
                                   "over the water, and %2 is the most."))
          .arg(metres(siphon.lift_m, format, 2), metres(siphon.most_lift_m, format, 2));
    case SiphonState::parts_when_open:
      if (!siphon.throttled_m3_s) break;
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "Wide open the siphon breaks; let no more than %1 through its valve."))
          .arg(flowText(*siphon.throttled_m3_s, format));
    case SiphonState::no_fall:
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "The siphon stops before the tank is nearly empty: its end does not lie "
                                   "below the water."));
    case SiphonState::inlet_dry:
      return say(QT_TRANSLATE_NOOP("ui::words",
                                   "The siphon stops before the tank is nearly empty: its inlet falls dry."));
  }
  return say(QT_TRANSLATE_NOOP("ui::words", "Wide open the siphon breaks."));
}

/// The state with the tank full where it does not even run then, else the one with the water low.
const std::optional<Result<SiphonFlow>>& tellingSiphon(const FieldPlan& field) {
  const auto& full = field.siphon_full;
  const bool runs_full = full && *full && (*full)->state == SiphonState::runs;
  return field.siphon_low && (runs_full || !full) ? field.siphon_low : full;
}

QString siphonState(const FieldPlan& field, const Formatter& format) {
  const auto& siphon = tellingSiphon(field);
  if (!siphon) return {};
  if (*siphon && (*siphon)->state == SiphonState::crest_too_high && &siphon == &field.siphon_full)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "The siphon cannot be started, not even with the tank full: its top lies %1 "
                                 "over the water, and %2 is the most."))
        .arg(metres((*siphon)->lift_m, format, 2), metres((*siphon)->most_lift_m, format, 2));
  if (!*siphon)
    return say(QT_TRANSLATE_NOOP("ui::words", "The siphon cannot be reckoned: %1."))
        .arg(hydraulicsFault(siphon->error()));
  return stateText(**siphon, format);
}

QString priming(const FieldPlan& field, const Formatter& format) {
  if (!field.siphon_full || !*field.siphon_full) return {};
  const SiphonState state = (*field.siphon_full)->state;
  if (state != SiphonState::runs && state != SiphonState::parts_when_open) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "To start the siphon, fill it with %1 of water."))
      .arg(format.quantity((*field.siphon_full)->primed_with_m3 * 1000, core::Unit::litre, 1));
}

QString outlets(const FieldPlan& field, const Formatter& format) {
  const Result<double>& full = field.head_full_m;
  const Result<double>& low = field.head_low_m;
  if (!full || !low || !field.check)
    return say(QT_TRANSLATE_NOOP("ui::words", "What head is left at the outlet cannot be told: %1."))
        .arg(hydraulicsFault(!full  ? full.error()
                             : !low ? low.error()
                                    : field.check.error()));
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Outlet, %1: a head of %2 is left with the tank full and %3 when it is nearly "
                               "empty, %4 is wanted; %5."))
      .arg(outletName(field.outlet), metres(*full, format), metres(*low, format),
           metres(field.check->head.typical, format), outletVerdict(field.check->verdict));
}

QString emptying(const FieldPlan& field, const Formatter& format) {
  const QString level = metres(field.empty_to_level_m, format, 2);
  if (!field.emptying)
    return say(QT_TRANSLATE_NOOP(
                   "ui::words",
                   "How long it takes to draw the tank down to %1 over the floor cannot be told: "
                   "%2."))
        .arg(level, hydraulicsFault(field.emptying.error()));
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Wide open, it draws the full tank down to %1 over the floor in %2."))
      .arg(level, durationText(field.emptying->seconds, format));
}

QStringList withoutEmpty(QStringList answers) {
  answers.removeAll(QString());
  return answers;
}

}  // namespace

QStringList sourceLineAnswers(const DeliveryPlan& plan, const Formatter& format) {
  if (!plan.source)
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No way is entered for the line from the source. Give two points at least: "
                                  "the pipe's inlet and its end over the tank."))};
  const LinePlan& line = *plan.source;
  return withoutEmpty({gives(line, format), fills(plan, format), doesNotComeAbout(line), wanted(line, format),
                       atRest(line, format), highPoints(line, {}, format)});
}

QStringList fieldLineAnswers(const DeliveryPlan& plan, const Formatter& format) {
  if (!plan.field)
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No way is entered for the line to the field. Give two points at least: "
                                  "where the pipe leaves the tank and where it ends."))};
  const FieldPlan& field = *plan.field;
  const LinePlan& line = field.pipe;
  QStringList answers{gives(line, format)};
  if (!anyFlow(line)) return answers;
  answers << doesNotComeAbout(line) << siphonState(field, format) << outlets(field, format)
          << emptying(field, format) << priming(field, format) << wanted(line, format) << atRest(line, format)
          << highPoints(line, crestOf(field), format);
  return withoutEmpty(answers);
}

}  // namespace ui::words
