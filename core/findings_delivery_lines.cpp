#include "core/findings_delivery_lines.h"

#include "core/hydraulics/figures.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>

#include <fmt/format.h>

namespace core {
namespace {

using hydraulics::DeliveryPlan;
using hydraulics::FieldPlan;
using hydraulics::Hump;
using hydraulics::LineFlow;
using hydraulics::LinePlan;
using hydraulics::SiphonFlow;
using hydraulics::SiphonState;
using hydraulics::Stretch;

constexpr double kRounding = 1e-9;     // so that the value a finding names does clear it
constexpr double kNoSuction_m = 1e-6;  // rounding at a free end
constexpr double kLitrePerMinute = 60e3;

double litresPerMinute(double flow_m3_s) {
  return flow_m3_s * kLitrePerMinute;
}

/// A line and what its findings point at.
struct LineView {
  std::string name;  ///< source or field
  const LinePlan& plan;
  const std::vector<RoutePoint>& route;
  std::optional<double> crest_station_m;  ///< of a siphon, which sucks there by intention

  FindingValue nameValue() const { return token("line", name); }
  std::string path(const std::string& rest) const { return "delivery." + name + "." + rest; }

  /// Level of the route's point nearest to a station of the plan.
  std::string pointNear(double station_m) const {
    const double first_m = crest_station_m.value_or(0) - route.front().distance_m;
    std::size_t nearest = 0;
    const auto apart = [&](std::size_t i) { return std::abs(route[i].distance_m + first_m - station_m); };
    for (std::size_t i = 1; i < route.size(); ++i) {
      if (apart(i) < apart(nearest)) nearest = i;
    }
    if (crest_station_m && nearest == 0) return path("crest_over_rim_m");
    return path(fmt::format("route[{}].over_rim_m", nearest));
  }
};

std::string fieldOfFault(const LineView& line, std::string_view fault) {
  if (fault == "inlet_dry")
    return line.name == "source" ? line.path("water_over_inlet_m") : "tank.dead_depth_m";
  if (fault == "no_head") return line.path(fmt::format("route[{}].over_rim_m", line.route.size() - 1));
  if (fault == "altitude_out_of_range") return "site.elevation_m";
  if (fault == "bore_out_of_range" || fault == "roughness_out_of_range") return line.path("pipe.bore_mm");
  return line.path("route[0].over_rim_m");
}

/// Without head when the tank is nearly empty a line is no good to the end, which its outlets and the time of
/// emptying say; any other fault, and each with a full tank, is told here.
void noFlow(const LineView& line, FindingList& out) {
  const auto& full = line.plan.full;
  const auto& low = line.plan.low;
  if (full && (low || low.error() == "no_head")) return;
  const std::string_view fault = full ? low.error() : full.error();
  out.caution("delivery_line_no_flow", {line.nameValue(), token("fault", std::string(fault))}, "own",
              fieldOfFault(line, fault));
}

void overClass(const LineView& line, FindingList& out) {
  double static_bar = 0;
  for (const auto* flow : {&line.plan.full, &line.plan.low}) {
    if (*flow) static_bar = std::max(static_bar, (*flow)->static_bar);
  }
  const double class_bar = line.plan.line.pressure_class_bar.value_or(static_bar);
  if (static_bar <= class_bar) return;
  out.caution("delivery_static_over_class",
              {line.nameValue(), value("static_bar", static_bar, Unit::bar),
               value("class_bar", class_bar, Unit::bar)},
              line.plan.share < 1 ? "iso_4427_heat" : "iso_4427", line.path("pipe.class_bar"));
}

/// The stretch with the lowest pressure, full and nearly empty. Left out is one that is lowest at the crest
/// of a siphon, and one that is lowest at the inlet: there the losses are reckoned whose place is not known.
struct WorstStretch {
  std::optional<Stretch> stretch;
  double lowest_m = 0;

  void take(const LineFlow& flow, const std::vector<Stretch>& stretches, std::optional<double> crest_m) {
    const double inlet_m = flow.points.front().station_m;
    for (const Stretch& s : stretches) {
      if (s.worst_station_m == crest_m || s.worst_station_m == inlet_m || s.worst_m > -kNoSuction_m) continue;
      if (stretch && stretch->worst_m <= s.worst_m) continue;
      stretch = s;
      lowest_m = flow.lowest_allowed_m;
    }
  }
};

/// Places where the pipe sucks, and where so far that the column of water parts. Of a siphon's crest its own
/// findings tell.
void suction(const LineView& line, FindingList& out) {
  WorstStretch sucks, parts;
  for (const auto* flow : {&line.plan.full, &line.plan.low}) {
    if (!*flow) continue;
    sucks.take(**flow, (*flow)->above_head_line, line.crest_station_m);
    parts.take(**flow, (*flow)->near_vapour, line.crest_station_m);
  }
  if (parts.stretch) {
    const Stretch& s = *parts.stretch;
    out.caution("delivery_vapour",
                {line.nameValue(), value("station_m", s.worst_station_m, Unit::metre),
                 value("pressure_m", s.worst_m, Unit::metre), value("lowest_m", parts.lowest_m, Unit::metre)},
                "wagner_pruss_2002", line.pointNear(s.worst_station_m));
  } else if (sucks.stretch) {
    const Stretch& s = *sucks.stretch;
    out.note("delivery_above_head_line",
             {line.nameValue(), value("from_m", s.from_m, Unit::metre), value("to_m", s.to_m, Unit::metre),
              value("pressure_m", s.worst_m, Unit::metre)},
             "colebrook_1939", line.pointNear(s.worst_station_m));
  }
}

/// Air in the falls behind the high points against the least head. The crest of a siphon is primed.
void airLock(const LineView& line, FindingList& out) {
  const LineFlow* least = nullptr;
  for (const auto* flow : {&line.plan.full, &line.plan.low}) {
    if (*flow && (!least || (*flow)->head_m < least->head_m)) least = &**flow;
  }
  if (!least) return;
  double air_m = 0;
  const Hump* first = nullptr;
  for (const Hump& hump : least->humps) {
    if (hump.station_m == line.crest_station_m) continue;
    air_m += hump.fall_m;
    if (!first) first = &hump;
  }
  if (!first || air_m < least->head_m) return;
  out.caution("delivery_air_lock",
              {line.nameValue(), value("station_m", first->station_m, Unit::metre),
               value("air_m", air_m, Unit::metre), value("head_m", least->head_m, Unit::metre)},
              "common_practice", line.pointNear(first->station_m));
}

void flowSmall(const LineView& line, FindingList& out) {
  std::optional<double> flow;
  for (const auto* each : {&line.plan.full, &line.plan.low}) {
    if (*each) flow = std::min(flow.value_or((*each)->flow_m3_s), (*each)->flow_m3_s);
  }
  const auto& wanted = line.plan.wanted_m3_s;
  if (!flow || !wanted || *flow >= *wanted * (1 - kRounding)) return;
  std::vector values{line.nameValue(),
                     value("flow_l_per_min", litresPerMinute(*flow), Unit::litre_per_minute),
                     value("wanted_l_per_min", litresPerMinute(*wanted), Unit::litre_per_minute)};
  if (line.plan.smallest && *line.plan.smallest) {
    const hydraulics::PipeSize& size = (*line.plan.smallest)->size;
    values.push_back(value("outside_mm", size.outside_mm, Unit::millimetre));
    values.push_back(value("class_bar", size.pressure_bar, Unit::bar));
  }
  out.caution("delivery_flow_small", std::move(values), "colebrook_1939",
              line.path(line.plan.size ? "pipe.outside_mm" : "pipe.bore_mm"));
}

void line(const LineView& view, FindingList& out) {
  noFlow(view, out);
  overClass(view, out);
  suction(view, out);
  airLock(view, out);
  flowSmall(view, out);
}

/// The siphon in the worse of the two cases that are in `state`.
const SiphonFlow* inState(const FieldPlan& field, SiphonState state) {
  for (const auto* flow : {&field.siphon_low, &field.siphon_full}) {
    if (*flow && **flow && (**flow)->state == state) return &***flow;
  }
  return nullptr;
}

void siphon(const LineView& view, const FieldPlan& field, FindingList& out) {
  const auto& profile = field.pipe.line.profile;
  const auto highest = std::max_element(profile.begin(), profile.end(),
                                        [](const auto& a, const auto& b) { return a.level_m < b.level_m; });
  const std::string crest = view.pointNear(highest->station_m);
  if (const SiphonFlow* high = inState(field, SiphonState::crest_too_high)) {
    out.caution(
        "delivery_siphon_too_high",
        {value("lift_m", high->lift_m, Unit::metre), value("most_lift_m", high->most_lift_m, Unit::metre)},
        hydraulics::figure("siphon.reserve")->source, crest);
  } else if (const SiphonFlow* parts = inState(field, SiphonState::parts_when_open)) {
    out.caution("delivery_siphon_throttle",
                {value("throttled_l_per_min", litresPerMinute(parts->throttled_m3_s.value_or(0)),
                       Unit::litre_per_minute),
                 value("lift_m", parts->lift_m, Unit::metre)},
                hydraulics::figure("siphon.reserve")->source, crest);
  } else if (const SiphonFlow* runs = inState(field, SiphonState::runs); runs && !runs->clears_air) {
    out.note("delivery_siphon_air",
             {value("velocity_m_s", runs->velocity_m_s, Unit::metre_per_second),
              value("clearing_m_s", runs->clearing_velocity_m_s, Unit::metre_per_second)},
             "sanks_air", "delivery.field.pipe.outside_mm");
  }
}

std::string verdictToken(hydraulics::OutletVerdict verdict) {
  switch (verdict) {
    case hydraulics::OutletVerdict::works:
      return "works";
    case hydraulics::OutletVerdict::works_poorly:
      return "works_poorly";
    case hydraulics::OutletVerdict::works_full:
      return "works_full";
    case hydraulics::OutletVerdict::too_low:
      return "too_low";
  }
  return {};
}

void outlets(const FieldPlan& field, FindingList& out) {
  if (!field.check || field.check->verdict == hydraulics::OutletVerdict::works) return;
  const Figure& head = field.check->head;
  const std::vector values{token("outlet", std::string(hydraulics::outletKey(field.outlet))),
                           token("verdict", verdictToken(field.check->verdict)),
                           value("head_full_m", *field.head_full_m, Unit::metre),
                           value("head_low_m", *field.head_low_m, Unit::metre),
                           value("wanted_m", head.typical, Unit::metre)};
  if (field.check->verdict == hydraulics::OutletVerdict::works_poorly) {
    out.note("delivery_outlet_head", values, head.source, "delivery.field.outlet");
  } else {
    out.caution("delivery_outlet_head", values, head.source, "delivery.field.outlet");
  }
}

}  // namespace

void deliveryLineFindings(const Delivery& delivery, const DeliveryPlan& plan, FindingList& out) {
  if (plan.source) line({"source", *plan.source, delivery.source.route, {}}, out);
  if (!plan.field) return;
  const FieldPlan& field = *plan.field;
  std::optional<double> crest_m;
  if (field.over_rim) crest_m = field.pipe.line.profile[1].station_m;
  const LineView view{"field", field.pipe, delivery.field.route, crest_m};
  line(view, out);
  if (!field.over_rim) out.caution("delivery_through_lining", {}, "own", "delivery.field.over_rim");
  siphon(view, field, out);
  outlets(field, out);
}

}  // namespace core
