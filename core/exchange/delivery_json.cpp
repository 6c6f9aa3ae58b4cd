#include "core/exchange/delivery_json.h"

#include "core/exchange/delivery_json_parts.h"

#include <array>
#include <string>
#include <utility>
#include <variant>

namespace core::exchange {
namespace {

using namespace hydraulics;

std::string pipeControl(PipeControl value) {
  return tokenOf(value, std::array{"entrance", "orifice", "barrel", "full_pipe"});
}

std::string scourVerdict(Scour value) {
  return tokenOf(value, std::array{"safe", "doubtful", "scours"});
}

std::string leakVerdict(LeakVerdict value) {
  return tokenOf(value, std::array{"gains", "unsure", "tight", "watch", "repair", "empty_and_mend"});
}

Json overflowState(const OverflowState& s, bool is_pipe) {
  return {{"head_m", number(s.head_m)},
          {"water_level_m", number(s.water_level_m)},
          {"freeboard_left_m", number(s.freeboard_left_m)},
          {"capacity_l_per_min", litresPerMinute(s.capacity_m3_s)},
          {"control", is_pipe ? Json(pipeControl(s.control)) : Json(nullptr)}};
}

Json rimPart(const RimPartFlow& p) {
  return {{"part", p.key}, {"depth_m", number(p.depth_m)}, {"flow_l_per_min", litresPerMinute(p.flow_m3_s)}};
}

Json blocked(const BlockedState& b) {
  return {{"water_level_m", number(b.water_level_m)},
          {"deepest_m", number(b.deepest_m)},
          {"parts", listOf(b.parts, rimPart)}};
}

Json channelFlow(const ChannelFlow& f) {
  return {{"depth_m", number(f.depth_m)},
          {"velocity_m_s", number(f.velocity_m_s)},
          {"top_width_m", number(f.top_width_m)},
          {"froude", number(f.froude)}};
}

Json scour(const std::optional<ScourCheck>& check) {
  if (!check) return nullptr;
  return {{"verdict", scourVerdict(check->verdict)},
          {"key", check->limit.key},
          {"safe_m_s", number(check->limit.low)},
          {"scours_m_s", number(check->limit.high)}};
}

Json overflow(const OverflowPlan& plan) {
  const bool is_pipe = std::holds_alternative<OverflowPipe>(plan.overflow.way);
  return {{"kind", is_pipe ? "pipe" : "notch"},
          {"storm_mm_h", number(plan.storm_mm_h)},
          {"storm_known", plan.is_storm_known},
          {"storm_l_per_min", litresPerMinute(plan.storm_m3_s)},
          {"source_l_per_min", litresPerMinute(plan.source_m3_s)},
          {"flow_l_per_min", litresPerMinute(plan.flow_m3_s)},
          {"sill_level_m", number(plan.overflow.sill_level_m)},
          {"state", resultOf(plan.state, [&](const OverflowState& s) { return overflowState(s, is_pipe); })},
          {"wanted_freeboard_m", number(plan.wanted_freeboard_m)},
          {"width_that_would_m", number(plan.width_that_would_m)},
          {"pipe_that_would_m", number(plan.pipe_that_would_m)},
          {"blocked", resultOf(plan.blocked, blocked)},
          {"spill_channel_depth_m", number(plan.channel_depth_m)},
          {"spill_manning_n", number(plan.channel.manning_n)},
          {"spill", resultOf(plan.spill, channelFlow)},
          {"scour", scour(plan.scour)}};
}

Json trap(const SiltTrap& t) {
  return {{"settling_m_s", number(t.settling.velocity_m_s)},
          {"ideal_area_m2", number(t.ideal_area_m2)},
          {"area_m2", number(t.area_m2)},
          {"length_m", number(t.length_m)},
          {"width_m", number(t.width_m)},
          {"depth_m", number(t.depth_m)},
          {"speed_limit_m_s", number(t.speed_limit_m_s)},
          {"surface_loading_m_per_day", number(t.surface_loading_m_day)},
          {"settling_depth_m", number(t.settling_depth_m)},
          {"deposit_kg", number(t.deposit_kg)},
          {"deposit_m3", number(t.deposit_m3)},
          {"deposit_depth_m", number(t.deposit_depth_m)},
          {"detention_s", number(t.detention_s)}};
}

Json trapCheck(const SiltTrapCheck& c) {
  return {{"kept_mm", number(c.kept_mm)},
          {"forward_m_s", number(c.forward_m_s)},
          {"speed_limit_m_s", number(c.speed_limit_m_s)},
          {"slow_enough", c.slow_enough}};
}

Json siltTrap(const TrapPlan& plan) {
  return {{"flow_l_per_min", litresPerMinute(plan.flow_m3_s)},
          {"flow_given", plan.is_flow_given},
          {"grain_mm", number(plan.grain.diameter_mm)},
          {"planned", resultOf(plan.trap, trap)},
          {"standing", resultOf(plan.check, trapCheck)}};
}

Json rule(const LeakRule& r) {
  return {
      {"allowed_mm_per_day", number(r.allowed_mm_day)}, {"kept", r.kept}, {"source", std::string(r.source)}};
}

Json leakTest(const LeakTest& t) {
  return {{"verdict", leakVerdict(t.verdict)},
          {"tank_mm_per_day", number(t.tank_mm_day)},
          {"evaporation_mm_per_day", number(t.evaporation_mm_day)},
          {"leak_mm_per_day", number(t.leak_mm_day)},
          {"error_mm_per_day", number(t.error_mm_day)},
          {"leak_l_per_day", number(t.leak_l_day)},
          {"share_percent_per_day", number(t.share_percent_day)},
          {"by_drop", rule(t.by_drop)},
          {"by_volume", rule(t.by_volume)}};
}

}  // namespace

Json deliveryJson(const DeliveryPlan& plan) {
  Json leak = resultOf(plan.leak, leakTest);
  if (!leak.is_null()) leak["level_m"] = number(plan.leak_level_m);
  return {{"water_temperature_c", number(plan.climate.temperature_c)},
          {"altitude_m", number(plan.climate.altitude_m)},
          {"altitude_known", plan.is_altitude_known},
          {"rim_level_m", number(plan.rim_level_m)},
          {"full_level_m", number(plan.full_level_m)},
          {"dead_level_m", number(plan.dead_level_m)},
          {"source", lineJson(plan.source)},
          {"source_fills_hours", plan.source_fills_s ? hours(*plan.source_fills_s) : Json(nullptr)},
          {"field", fieldJson(plan.field)},
          {"overflow", overflow(plan.overflow)},
          {"silt_trap", siltTrap(plan.trap)},
          {"leak_test", std::move(leak)}};
}

}  // namespace core::exchange
