#include "core/hydraulics/delivery_parts.h"
#include "core/hydraulics/figures.h"
#include "core/project/fields.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

namespace core::hydraulics {
namespace {

constexpr double kMmPerMetre = 1000;
constexpr int kLeastPipe_mm = 20, kMostPipe_mm = 500, kPipeStep_mm = 5;  // own: sizes that are tried

double intensity(const Delivery& delivery) {
  return delivery.overflow.storm_mm_h.value_or(kStorm_mm_h);
}

StormArea stormArea(const Catchment& catchment, const char* figure_key) {
  return {std::max(catchment.runoff, typical(figure_key)), catchment.area_m2};
}

std::vector<StormArea> ledInAreas(const std::optional<core::Water>& water) {
  if (!water) return {};
  return {stormArea(water->roof, "storm_runoff.roof"), stormArea(water->ground, "storm_runoff.bare_packed")};
}

bool hasLip(const OverflowWay& way) {
  return way.lip_length_m > 0 && way.lip_drop_m > 0;
}

/// Level from which water leaves the tank elsewhere than by its overflow.
double lowestRim(const DeliveryTask& task) {
  const OverflowWay& way = task.delivery.overflow;
  return task.tank.depth() - (hasLip(way) ? way.lip_drop_m : 0);
}

Overflow overflowOf(const DeliveryTask& task) {
  const OverflowWay& way = task.delivery.overflow;
  Overflow overflow;
  overflow.sill_level_m = task.tank.fullLevel();
  overflow.rim_level_m = lowestRim(task);
  if (way.kind == OverflowKind::notch) {
    overflow.way = Notch{way.width_m, typical("weir.broad_crest")};
  } else {
    overflow.way = OverflowPipe{.diameter_m = way.pipe_mm / kMmPerMetre,
                                .length_m = way.pipe_length_m,
                                .fall_m = way.pipe_fall_m,
                                .manning_n = typical("manning.plastic_pipe"),
                                .entrance_k = typical("minor.entrance_sharp"),
                                .orifice_coefficient = typical("orifice.sharp")};
  }
  return overflow;
}

/// Width that carries the flow at a head: over a flat sill the flow grows in step with the width.
std::optional<double> widthFor(const Notch& notch, double head_m, double flow_m3_s) {
  if (!(head_m > 0)) return std::nullopt;
  const Result<double> of_one_metre = notchFlow({1, notch.share}, head_m);
  if (!of_one_metre) return std::nullopt;
  return flow_m3_s / *of_one_metre;
}

std::optional<double> pipeFor(OverflowPipe pipe, double head_m, double flow_m3_s) {
  for (int mm = kLeastPipe_mm; mm <= kMostPipe_mm; mm += kPipeStep_mm) {
    pipe.diameter_m = mm / kMmPerMetre;
    const Result<PipeHead> head = pipeHead(pipe, flow_m3_s);
    if (head && head->head_m <= head_m) return pipe.diameter_m;
  }
  return std::nullopt;
}

void fillSize(OverflowPlan& plan) {
  const double head_m = plan.overflow.rim_level_m - plan.overflow.sill_level_m - plan.wanted_freeboard_m;
  if (const auto* notch = std::get_if<Notch>(&plan.overflow.way)) {
    plan.width_that_would_m = widthFor(*notch, head_m, plan.flow_m3_s);
  } else {
    plan.pipe_that_would_m = pipeFor(std::get<OverflowPipe>(plan.overflow.way), head_m, plan.flow_m3_s);
  }
}

/// A lip longer than the rim leaves a length below 0, which overRim refuses.
std::vector<RimPart> rimParts(const DeliveryTask& task) {
  const OverflowWay& way = task.delivery.overflow;
  const double rim_m = task.tank.depth();
  if (!hasLip(way)) return {{"rim", task.tank.rimLength(), rim_m}};
  return {{"lip", way.lip_length_m, rim_m - way.lip_drop_m},
          {"rim", task.tank.rimLength() - way.lip_length_m, rim_m}};
}

const char* manningKey(SpillCover cover) {
  constexpr std::array keys{"manning.earth", "manning.short_grass", "manning.stone_pitching",
                            "manning.plaster"};
  return keys.at(static_cast<std::size_t>(cover));
}

std::string scourKey(SpillCover cover, const std::optional<Soil>& soil) {
  if (cover != SpillCover::soil)
    return std::string(field("delivery.spill.cover").choices[static_cast<std::size_t>(cover)]);
  if (!soil) return "loose_fill";
  return std::string(field("site.soil").choices[static_cast<std::size_t>(*soil)]);
}

void fillSpill(OverflowPlan& plan, const DeliveryTask& task) {
  const SpillPath& spill = task.delivery.spill;
  plan.channel = {spill.bottom_width_m, spill.side_slope, spill.fall_percent / 100,
                  typical(manningKey(spill.cover))};
  plan.channel_depth_m = spill.depth_m;
  plan.spill = evenFlow(plan.channel, plan.flow_m3_s);
  if (!plan.spill) return;
  const Result<ScourCheck> scour =
      checkScour(plan.spill->velocity_m_s, scourKey(spill.cover, task.site.soil));
  if (scour) plan.scour = *scour;
}

}  // namespace

double largestSourceFlow(const std::optional<core::Water>& water) {
  double most = 0;
  if (!water) return most;
  for (const SourceMonth& month : water->source.months) {
    if (month.hours_per_day > 0) most = std::max(most, month.flow_l_per_min);
  }
  return most * kLitrePerMinute_m3_s;
}

Result<double> ledInStorm(const DeliveryTask& task) {
  return stormPeak(ledInAreas(task.water), intensity(task.delivery));
}

OverflowPlan overflowPlan(const DeliveryTask& task, double source_m3_s) {
  OverflowPlan plan;
  plan.storm_mm_h = intensity(task.delivery);
  plan.is_storm_known = task.delivery.overflow.storm_mm_h.has_value();
  std::vector<StormArea> areas = ledInAreas(task.water);
  areas.push_back({typical("storm_runoff.open_water"), task.tank.brimArea()});
  plan.storm_m3_s = stormPeak(areas, plan.storm_mm_h).value();  // fields keep to its ranges
  plan.source_m3_s = source_m3_s;
  plan.flow_m3_s = plan.storm_m3_s + source_m3_s;
  plan.overflow = overflowOf(task);
  plan.rim_level_m = task.tank.depth();
  plan.state = overflowState(plan.overflow, plan.flow_m3_s);
  plan.wanted_freeboard_m = kStormFreeboard_m;
  fillSize(plan);
  plan.head_m = plan.state ? std::optional(plan.state->head_m) : std::nullopt;
  if (hasLip(task.delivery.overflow))
    plan.lip_that_would_m =
        widthFor({1, typical("weir.broad_crest")}, task.delivery.overflow.lip_drop_m, plan.flow_m3_s);
  plan.blocked = overRim(rimParts(task), plan.flow_m3_s, typical("weir.broad_crest"));
  fillSpill(plan, task);
  return plan;
}

}  // namespace core::hydraulics
