#include "core/exchange/site_json.h"

#include "core/exchange/json_values.h"

#include <array>
#include <string_view>

namespace core::exchange {
namespace {

using site::SitePlan;

std::string_view nameOf(PlatformLevel level_by) {
  constexpr std::array<std::string_view, 3> names{"natural_ground", "balanced", "given"};
  return names.at(static_cast<std::size_t>(level_by));
}

std::string_view nameOf(site::BenchFault fault) {
  constexpr std::array<std::string_view, 5> names{"outside_survey", "leaves_survey", "never_daylights",
                                                  "cannot_balance", "cancelled"};
  return names.at(static_cast<std::size_t>(fault));
}

std::string_view nameOf(site::SearchFault fault) {
  constexpr std::array<std::string_view, 4> names{"bad_section", "level_section", "nothing_found",
                                                  "cancelled"};
  return names.at(static_cast<std::size_t>(fault));
}

Json choice(const site::PlatformChoice& c) {
  return {{"id", nameOf(c.level_by)},
          {"over_middle_m", number(c.over_middle_m)},
          {"cut_m3", number(c.cut_m3)},
          {"fill_m3", number(c.fill_m3)},
          {"cover_m", number(c.cover_m)}};
}

Json peg(const site::BenchPeg& p) {
  return {{"id", p.id},
          {"kind", p.kind},
          {"east_m", number(p.at_m.x())},
          {"north_m", number(p.at_m.y())},
          {"level_m", number(p.at_m.z())},
          {"ground_m", number(p.ground_m)},
          {"dig_m", number(p.dig_m)},
          {"from_corner_m", number(p.from_corner_m)},
          {"over_platform_m", number(p.over_platform_m)}};
}

Json heap(const SitePlan& plan) {
  if (!plan.heap || !plan.heap_place) return nullptr;
  return {{"loose_m3", number(plan.heap->loose_m3)},
          {"height_m", number(plan.heap->height_m)},
          {"base_radius_m", number(plan.heap->base_radius_m)},
          {"azimuth_deg", number(plan.heap_place->azimuth_deg)},
          {"toe_to_edge_m", number(plan.heap_place->toe_to_edge_m)},
          {"east_m", number(plan.heap_place->centre_m.x())},
          {"north_m", number(plan.heap_place->centre_m.y())}};
}

Json cut(const site::CutHeights& c) {
  return {{"id", c.strength},
          {"cohesion_kpa", number(c.soil.cohesion_kpa)},
          {"friction_deg", number(c.soil.friction_deg)},
          {"unit_weight_kn_m3", number(c.soil.unit_weight_kn_m3)},
          {"vertical_m", number(c.vertical_m)},
          {"culmann_m", number(c.culmann_m)},
          {"culmann_safe_m", number(c.culmann_safe_m)},
          {"taylor_m", number(c.taylor_m)},
          {"taylor_number", number(c.taylor_number)},
          {"taylor_factor", number(c.taylor_factor)}};
}

Json slip(const site::EdgeSlip& s) {
  Json json = {{"id", s.state}, {"factor", nullptr}, {"fault", nullptr}};
  if (s.fault) json["fault"] = nameOf(*s.fault);
  if (!s.critical) return json;
  const site::Slip& slip = s.critical->slip;
  json["factor"] = number(slip.factor);
  json["circle"] = {{"x_m", number(slip.circle.centre_m.x())},
                    {"z_m", number(slip.circle.centre_m.y())},
                    {"radius_m", number(slip.circle.radius_m)}};
  json["from_m"] = number(slip.from_x_m);
  json["to_m"] = number(slip.to_x_m);
  json["at_section_end"] = s.critical->is_at_end;
  json["circles_tried"] = s.critical->tried;
  json["crack_depth_m"] = s.section.crack ? number(s.section.crack->depth_m) : Json(nullptr);
  return json;
}

Json stability(const site::Stability& s) {
  return {{"face_deg", number(s.face_deg)},
          {"pit_depth_m", number(s.pit_depth_m)},
          {"wanted_cut_factor", number(s.wanted_cut)},
          {"wanted_slope_factor", number(s.wanted_slope)},
          {"cuts", listOf(s.cuts, cut)},
          {"slips", listOf(s.slips, slip)}};
}

}  // namespace

Json siteJson(const SitePlan& plan) {
  const bool has_bench = plan.bench.has_value();
  Json json = {
      {"fall_percent", number(plan.fall.percent)},
      {"downhill_azimuth_deg", number(plan.fall.azimuth_deg)},
      {"platform_m2", number(plan.platform_m2)},
      {"over_middle_m", has_bench ? number(plan.bench->level_m - plan.middle_level_m) : Json(nullptr)},
      {"fault", nullptr},
      {"lacking_bank_m3", number(plan.lacking_bank_m3)},
      {"cover_m", plan.cover ? number(plan.cover->least_m) : Json(nullptr)},
      {"in_natural_ground", nullptr},
      {"choices", listOf(plan.choices, choice)},
      {"pegs", listOf(plan.pegs, peg)},
      {"heap", heap(plan)},
      {"stability", stability(plan.stability)}};
  if (plan.fault) json["fault"] = nameOf(*plan.fault);
  if (!plan.has_relief) json["in_natural_ground"] = true;
  if (plan.cover) json["in_natural_ground"] = plan.cover->isInNaturalGround();
  return json;
}

}  // namespace core::exchange
