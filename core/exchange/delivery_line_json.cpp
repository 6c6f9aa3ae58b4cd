// The lines' part of delivery_json.h.
#include "core/exchange/delivery_json_parts.h"

namespace core::exchange {
namespace {

using namespace hydraulics;

std::string regime(Regime value) {
  return tokenOf(value, std::array{"laminar", "transition", "turbulent"});
}

std::string siphonState(SiphonState value) {
  return tokenOf(value, std::array{"runs", "crest_too_high", "parts_when_open", "no_fall", "inlet_dry"});
}

std::string outletVerdict(OutletVerdict value) {
  return tokenOf(value, std::array{"works", "works_poorly", "works_full", "too_low"});
}

Json size(const PipeSize& s) {
  return {{"grade", s.grade == PipeGrade::pe80 ? "pe80" : "pe100"},
          {"outside_mm", number(s.outside_mm)},
          {"wall_mm", number(s.wall_mm)},
          {"inside_mm", number(s.insideMm())},
          {"sdr", number(s.sdr)},
          {"class_bar", number(s.pressure_bar)}};
}

Json point(const LinePoint& p) {
  return {{"station_m", number(p.station_m)},
          {"level_m", number(p.level_m)},
          {"length_m", number(p.length_m)},
          {"energy_m", number(p.energy_m)},
          {"head_line_m", number(p.head_line_m)},
          {"pressure_m", number(p.pressure_m)},
          {"static_pressure_m", number(p.static_pressure_m)}};
}

Json stretch(const Stretch& s) {
  return {{"from_m", number(s.from_m)},
          {"to_m", number(s.to_m)},
          {"lowest_pressure_m", number(s.worst_m)},
          {"lowest_station_m", number(s.worst_station_m)}};
}

Json hump(const Hump& h) {
  return {{"station_m", number(h.station_m)},
          {"level_m", number(h.level_m)},
          {"rise_m", number(h.rise_m)},
          {"fall_m", number(h.fall_m)},
          {"over_straight_m", number(h.over_straight_m)},
          {"pressure_m", number(h.pressure_m)}};
}

Json lineFlow(const LineFlow& f) {
  return {{"flow_l_per_min", litresPerMinute(f.flow_m3_s)},
          {"hazen_williams_l_per_min", litresPerMinute(f.hazen_williams_m3_s)},
          {"velocity_m_s", number(f.velocity_m_s)},
          {"reynolds", number(f.reynolds)},
          {"friction_factor", number(f.friction_factor)},
          {"regime", regime(f.regime)},
          {"head_m", number(f.head_m)},
          {"length_m", number(f.length_m)},
          {"friction_head_m", number(f.friction_head_m)},
          {"minor_head_m", number(f.minor_head_m)},
          {"velocity_head_m", number(f.velocity_head_m)},
          {"residual_head_m", number(f.residual_head_m)},
          {"static_head_m", number(f.static_head_m)},
          {"static_bar", number(f.static_bar)},
          {"class_left_bar", number(f.class_left_bar)},
          {"lowest_allowed_m", number(f.lowest_allowed_m)},
          {"air_lock_head_m", number(f.air_lock_head_m)},
          {"points", listOf(f.points, point)},
          {"above_head_line", listOf(f.above_head_line, stretch)},
          {"near_vapour", listOf(f.near_vapour, stretch)},
          {"humps", listOf(f.humps, hump)}};
}

Json heads(const LineHeads& h) {
  return {{"upper_level_m", number(h.upper_level_m)}, {"lower_level_m", number(h.lower_level_m)}};
}

Json choice(const PipeChoice& c) {
  Json json = size(c.size);
  json["flow_l_per_min"] = litresPerMinute(c.flow.flow_m3_s);
  return json;
}

Json fitting(const Fitting& f) {
  return {{"key", f.key}, {"k", number(f.k)}, {"station_m", number(f.station_m)}};
}

Json profilePoint(const PipePoint& p) {
  return {{"station_m", number(p.station_m)}, {"level_m", number(p.level_m)}};
}

Json line(const LinePlan& plan) {
  return {{"size", plan.size ? size(*plan.size) : Json(nullptr)},
          {"bore_mm", number(plan.line.bore.diameter_m * 1000)},
          {"class_bar", number(plan.line.pressure_class_bar)},
          {"class_share", number(plan.share)},
          {"profile", listOf(plan.line.profile, profilePoint)},
          {"fittings", listOf(plan.line.fittings, fitting)},
          {"full_heads", heads(plan.full_heads)},
          {"low_heads", heads(plan.low_heads)},
          {"full", resultOf(plan.full, lineFlow)},
          {"low", resultOf(plan.low, lineFlow)},
          {"wanted_l_per_min", litresPerMinute(plan.wanted_m3_s)},
          {"smallest_pipe", resultOf(plan.smallest, choice)}};
}

Json siphon(const SiphonFlow& s) {
  return {{"state", siphonState(s.state)},
          {"barometric_m", number(s.barometric_m)},
          {"most_lift_m", number(s.most_lift_m)},
          {"lift_m", number(s.lift_m)},
          {"lift_left_m", number(s.lift_left_m)},
          {"lowest_level_m", number(s.lowest_level_m)},
          {"primed_with_m3", number(s.primed_with_m3)},
          {"flow_l_per_min", litresPerMinute(s.flow_m3_s)},
          {"velocity_m_s", number(s.velocity_m_s)},
          {"crest_loss_m", number(s.crest_loss_m)},
          {"crest_pressure_m", number(s.crest_pressure_m)},
          {"clearing_velocity_m_s", number(s.clearing_velocity_m_s)},
          {"clears_air", s.clears_air},
          {"throttled_l_per_min", litresPerMinute(s.throttled_m3_s)}};
}

Json outletCheck(const OutletCheck& c) {
  return {{"verdict", outletVerdict(c.verdict)},
          {"wanted_head_m", number(c.head.typical)},
          {"left_full_m", number(c.left_full_m)},
          {"left_low_m", number(c.left_low_m)}};
}

Json levelTime(const LevelTime& t) {
  return {{"level_m", number(t.level_m)}, {"hours", hours(t.seconds)}};
}

Json emptying(const Emptying& e) {
  return {{"emptying_hours", hours(e.seconds)},
          {"error_hours", hours(e.error_s)},
          {"curve", listOf(e.curve, levelTime)}};
}

Json field(const FieldPlan& plan) {
  Json json = line(plan.pipe);
  json["over_rim"] = plan.over_rim;
  json["outlet"] = std::string(outletKey(plan.outlet));
  json["outlets"] = plan.outlets;
  json["siphon_full"] = resultOf(plan.siphon_full, siphon);
  json["siphon_low"] = resultOf(plan.siphon_low, siphon);
  json["head_full_m"] = numberOf(plan.head_full_m);
  json["head_low_m"] = numberOf(plan.head_low_m);
  json["outlet_check"] = resultOf(plan.check, outletCheck);
  json["empties_to_level_m"] = number(plan.empty_to_level_m);
  json["emptying"] = resultOf(plan.emptying, emptying);
  return json;
}

}  // namespace

Json lineJson(const std::optional<LinePlan>& plan) {
  return plan ? line(*plan) : Json(nullptr);
}

Json fieldJson(const std::optional<FieldPlan>& plan) {
  return plan ? field(*plan) : Json(nullptr);
}

}  // namespace core::exchange
