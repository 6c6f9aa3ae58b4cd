#include "core/finding_list.h"
#include "core/findings_delivery_lines.h"
#include "core/hydraulics/figures.h"
#include "core/project/fields.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <variant>

namespace core {
namespace {

using hydraulics::OverflowPlan;

constexpr double kRounding = 1e-9;  // so that the value a finding names does clear it
constexpr double kLitrePerMinute = 60e3;
constexpr double kCoarsest_mm = 2;  // of the silt trap's engine

void notReckoned(const char* part, std::string_view fault, const char* field, FindingList& out) {
  out.caution("delivery_not_reckoned", {token("part", part), token("fault", std::string(fault))}, "own",
              field);
}

bool isWithin(const char* id, double number) {
  return number >= field(id).least && number <= field(id).most;
}

/// A sill level with the rim or its lip leaves no freeboard even before the storm.
void freeboard(const OverflowPlan& plan, const OverflowWay& way, FindingList& out) {
  const bool has_none = !plan.state && (plan.state.error() == "level_out_of_range" ||
                                        plan.state.error() == "head_out_of_range");
  if (!plan.state && !has_none)
    return notReckoned("overflow", plan.state.error(), "delivery.overflow.pipe_fall_m", out);
  const double left_m = plan.state ? plan.state->freeboard_left_m : 0;
  if (plan.state && left_m >= plan.wanted_freeboard_m - kRounding) return;
  std::vector values{value("freeboard_m", left_m, Unit::metre),
                     value("wanted_m", plan.wanted_freeboard_m, Unit::metre),
                     value("flow_l_per_min", plan.flow_m3_s * kLitrePerMinute, Unit::litre_per_minute)};
  const bool has_width =
      plan.width_that_would_m && isWithin("delivery.overflow.width_m", *plan.width_that_would_m);
  const double lip_m = way.lip_length_m > 0 ? way.lip_drop_m : 0;
  const double freeboard_m = plan.overflow.rim_level_m + lip_m - plan.overflow.sill_level_m;
  const bool is_lip_too_low = lip_m > 0 && lip_m >= freeboard_m && freeboard_m > kRounding;
  std::string field = is_lip_too_low ? "delivery.overflow.lip_drop_m" : "tank.freeboard_m";
  if (has_width) {
    values.push_back(value("width_m", *plan.width_that_would_m, Unit::metre));
    field = "delivery.overflow.width_m";
  } else if (plan.pipe_that_would_m) {
    values.push_back(value("pipe_m", *plan.pipe_that_would_m, Unit::metre));
    field = "delivery.overflow.pipe_mm";
  } else if (plan.head_m) {
    const double needed_m = *plan.head_m + plan.wanted_freeboard_m + lip_m;
    if (isWithin("tank.freeboard_m", needed_m))
      values.push_back(value("needed_freeboard_m", needed_m, Unit::metre));
  }
  const bool is_notch = std::holds_alternative<hydraulics::Notch>(plan.overflow.way);
  const std::string source = is_notch ? "broad_crest" : "fhwa_hds5";
  if (!plan.state || left_m < 0) {
    out.stop("delivery_rim_overtopped", std::move(values), source, field);
  } else {
    out.caution("delivery_overflow_small", std::move(values), source, field);
  }
}

/// What the spill path runs over: the cover, or the soil of the site where that is known.
std::string bedOf(const Project& project) {
  const SpillCover cover = project.delivery->spill.cover;
  const auto token_at = [](const char* id, std::size_t at) { return std::string(field(id).choices[at]); };
  if (cover == SpillCover::soil && project.site.soil)
    return token_at("site.soil", static_cast<std::size_t>(*project.site.soil));
  return token_at("delivery.spill.cover", static_cast<std::size_t>(cover));
}

/// The limit is the speed up to which the bed is safe.
void spill(const Project& project, const OverflowPlan& plan, FindingList& out) {
  if (!plan.spill) return;
  if (plan.spill->depth_m > plan.channel_depth_m * (1 + kRounding))
    out.caution("delivery_spill_shallow",
                {value("depth_m", plan.spill->depth_m, Unit::metre),
                 value("channel_m", plan.channel_depth_m, Unit::metre)},
                "manning", "delivery.spill.depth_m");
  if (!plan.scour || plan.scour->verdict == hydraulics::Scour::safe) return;
  out.caution(
      "delivery_spill_scours",
      {value("velocity_m_s", plan.spill->velocity_m_s, Unit::metre_per_second),
       value("limit_m_s", plan.scour->limit.low, Unit::metre_per_second), token("cover", bedOf(project))},
      plan.scour->limit.source, "delivery.spill.cover");
}

/// All of the water should leave over the lip, where it is led away.
void blocked(const OverflowPlan& plan, const OverflowWay& way, FindingList& out) {
  if (!plan.blocked)
    return notReckoned("blocked", plan.blocked.error(), "delivery.overflow.lip_length_m", out);
  const auto& parts = plan.blocked->parts;
  if (parts.size() > 1 && parts.back().depth_m <= kRounding) return;
  std::vector values{value("deepest_m", plan.blocked->deepest_m, Unit::metre)};
  const bool has_length =
      plan.lip_that_would_m && isWithin("delivery.overflow.lip_length_m", *plan.lip_that_would_m);
  if (has_length) values.push_back(value("lip_length_m", *plan.lip_that_would_m, Unit::metre));
  const bool needs_drop = way.lip_length_m > 0 && !has_length;
  out.caution("delivery_blocked_anywhere", std::move(values), "broad_crest",
              needs_drop ? "delivery.overflow.lip_drop_m" : "delivery.overflow.lip_length_m");
}

void overflow(const Project& project, const OverflowPlan& plan, FindingList& out) {
  if (!plan.is_storm_known)
    out.caution("delivery_storm_unknown", {value("storm_mm_h", plan.storm_mm_h, Unit::mm_per_hour)}, "own",
                "delivery.overflow.storm_mm_h");
  freeboard(plan, project.delivery->overflow, out);
  blocked(plan, project.delivery->overflow, out);
  spill(project, plan, out);
}

/// Smallest grain that neither passes the trap before it has sunk nor is carried on by the water's speed; one
/// that keeps no grain up to 2 mm is said to keep 2 mm.
double keptGrain(const hydraulics::TrapPlan& plan, bool is_short, double forward_m_s) {
  const double root =
      forward_m_s / hydraulics::typical("silt.speed");  // micro_hydro_civil_works, turned round
  const double sunk_mm = *plan.check ? (*plan.check)->kept_mm : is_short ? kCoarsest_mm : 0;
  return std::max(sunk_mm, root * root);
}

/// A trap too short for its grain, or so narrow and shallow that the water carries the grain on. The planned
/// size is named when it would do at the depth entered.
void siltTrap(const hydraulics::TrapPlan& plan, const SiltTrapWish& wish, FindingList& out) {
  if (!plan.trap && plan.flow_m3_s > 0)
    notReckoned("silt_trap", plan.trap.error(), "delivery.silt_trap.grain_mm", out);
  if (!plan.check || !plan.trap) return;
  const hydraulics::SiltTrap& trap = *plan.trap;
  // what settles between two cleanings takes its share of the depth
  const double mud_m = trap.deposit_m3 / (*wish.length_m * *wish.width_m);
  const double water_m = *wish.depth_m - mud_m;
  const bool is_short = *wish.length_m * *wish.width_m < trap.area_m2 * (1 - kRounding);
  const bool is_full = water_m <= 0;
  const double forward_m_s = plan.flow_m3_s / (*wish.width_m * (is_full ? *wish.depth_m : water_m));
  const bool is_fast = is_full || forward_m_s > trap.speed_limit_m_s * (1 + kRounding);
  if (!is_short && !is_fast) return;
  std::vector values{value("kept_mm", keptGrain(plan, is_short, forward_m_s), Unit::millimetre),
                     value("grain_mm", plan.grain.diameter_mm, Unit::millimetre)};
  const double needed_m = trap.settling_depth_m + trap.deposit_depth_m;
  const bool fits = isWithin("delivery.silt_trap.length_m", trap.length_m) &&
                    isWithin("delivery.silt_trap.width_m", trap.width_m) &&
                    isWithin("delivery.silt_trap.depth_m", needed_m);
  if (fits) {
    values.push_back(value("length_m", trap.length_m, Unit::metre));
    values.push_back(value("width_m", trap.width_m, Unit::metre));
    values.push_back(value("depth_m", std::max(needed_m, *wish.depth_m), Unit::metre));
  }
  out.caution("delivery_trap_small", std::move(values), "micro_hydro_civil_works",
              is_short ? "delivery.silt_trap.length_m" : "delivery.silt_trap.depth_m");
}

void unsure(const hydraulics::LeakTest& test, const char* verdict, FindingList& out) {
  out.note("delivery_leak_unsure",
           {value("mm_per_day", test.leak_mm_day, Unit::mm_per_day),
            value("error_mm_per_day", test.error_mm_day, Unit::mm_per_day), token("verdict", verdict)},
           "own", "delivery.leak_test.hours");
}

void leak(const hydraulics::LeakTest& test, FindingList& out) {
  const std::string field = "delivery.leak_test.tank_drop_mm";
  const std::string source = test.band ? test.band->source : "own";
  const auto values = [&](const char* band) {
    return std::vector{value("mm_per_day", test.leak_mm_day, Unit::mm_per_day),
                       value("l_per_day", test.leak_l_day, Unit::litre_per_day), token("band", band)};
  };
  switch (test.verdict) {
    case hydraulics::LeakVerdict::tight:
      return;
    case hydraulics::LeakVerdict::gains:
      return unsure(test, "gains", out);
    case hydraulics::LeakVerdict::unsure:
      return unsure(test, "unsure", out);
    case hydraulics::LeakVerdict::watch:
      return out.note("delivery_leak_watch", values("watch"), source, field);
    case hydraulics::LeakVerdict::repair:
      return out.caution("delivery_leak_repair", values("repair"), source, field);
    case hydraulics::LeakVerdict::empty_and_mend:
      return out.caution("delivery_leak_repair", values("empty_and_mend"), source, field);
  }
}

}  // namespace

void deliveryFindings(const Project& project, const Plan& plan, FindingList& out) {
  if (!project.delivery || !plan.delivery) return;
  const Delivery& delivery = *project.delivery;
  deliveryLineFindings(delivery, *plan.delivery, out);
  overflow(project, plan.delivery->overflow, out);
  siltTrap(plan.delivery->trap, delivery.silt_trap, out);
  const auto& test = plan.delivery->leak;
  if (test && *test) leak(**test, out);
  if (test && !*test) notReckoned("leak_test", test->error(), "delivery.leak_test.bucket_drop_mm", out);
}

}  // namespace core
