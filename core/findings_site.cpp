#include "core/finding_list.h"
#include "core/site/stability.h"
#include "core/site/thresholds.h"
#include "core/site/uplift.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace core {
namespace {

double limit(const char* key) {
  return site::threshold(key).value;
}

std::string sourceOf(const char* key) {
  return std::string(site::threshold(key).source);
}

double degrees(double radians) {
  return radians * 180 / std::numbers::pi;
}

void soil(const Site& site, FindingList& out) {
  if (site.soil == Soil::loose_fill) out.stop("site_on_fill", {}, "own", "site.soil");
  if (site.soil == Soil::soft_wet) out.stop("site_soft_wet", {}, "own", "site.soil");
  if (site.rock_floor == true) out.caution("site_rock_floor", {}, "own", "site.rock_floor");
  const double swelling = limit("swell.clay_share");
  if (site.clay_percent && *site.clay_percent >= swelling)
    out.caution(
        "site_swelling_soil",
        {value("clay_percent", *site.clay_percent, Unit::percent), value("from", swelling, Unit::percent)},
        sourceOf("swell.clay_share"), "site.clay_percent");
}

/// Batter of the open pit against the table for its soil; only pits deep enough to need it.
void cutBatter(const Project& project, const Plan& plan, FindingList& out) {
  const double depth = plan.earthwork.pit_depth_m;
  const double wanted = site::steepestBatter(site::excavationSoil(project.site.soil));
  if (depth < limit("pit.cave_in_from") || project.tank.batter >= wanted) return;
  out.caution("site_cut_too_steep",
              {value("batter", project.tank.batter, Unit::batter), value("wanted", wanted, Unit::batter),
               value("pit_depth_m", depth, Unit::metre)},
              "osha_1926p", "tank.batter");
}

/// Height at which the pit wall stands with the factor wanted, for the weakest soil of its class.
void cutHeight(const Project& project, const Plan& plan, FindingList& out) {
  if (!project.site.soil) return;
  const site::SoilStrength weak = site::soilStrength(*project.site.soil).low;
  const double face_deg = degrees(std::atan2(1, project.tank.batter));
  const double factor = limit("cut.least_factor");
  if (face_deg <= weak.friction_deg) return;
  const site::StabilityNumber height = site::culmannHeight(weak, face_deg, factor);
  if (!height || plan.earthwork.pit_depth_m <= *height) return;
  out.caution("site_cut_too_high",
              {value("pit_depth_m", plan.earthwork.pit_depth_m, Unit::metre),
               value("most_m", *height, Unit::metre), value("factor", factor, Unit::factor)},
              "soil_strength", "tank.depth_m");
}

void slope(const Site& site, FindingList& out) {
  if (site.ground.kind != GroundKind::slope) return;
  const double angle = degrees(std::atan(site.ground.fall_percent / 100));
  const auto values = [&](double from) {
    return std::vector{value("slope_deg", angle, Unit::degree), value("from_deg", from, Unit::degree)};
  };
  const std::string field = "site.ground.fall_percent";
  if (angle >= limit("slope.stop")) {
    out.stop("site_slope_too_steep", values(limit("slope.stop")), sourceOf("slope.stop"), field);
  } else if (angle >= limit("slope.caution")) {
    out.caution("site_slope_steep", values(limit("slope.caution")), sourceOf("slope.caution"), field);
  }
}

/// Two rules for the distance to the downhill edge; both are told.
void edge(const Site& site, const Plan& plan, FindingList& out) {
  if (!site.edge_distance_m || !site.edge_height_m) {
    out.caution("site_edge_unknown", {}, "own", "site.edge.distance_m");
    return;
  }
  const site::EdgeDistance rules = site::edgeDistance(*site.edge_height_m, plan.earthwork.pit_depth_m);
  const double distance = *site.edge_distance_m;
  if (*site.edge_height_m <= 0 || distance >= rules.largest()) return;
  const std::vector values{value("distance_m", distance, Unit::metre),
                           value("own_m", rules.own_m, Unit::metre),
                           value("code_m", rules.code_m, Unit::metre)};
  if (rules.disagree(distance)) {
    out.caution("site_edge_near", values, "ibc_1808_7", "site.edge.distance_m");
  } else {
    out.stop("site_edge_too_near", values, "ibc_1808_7", "site.edge.distance_m");
  }
}

void groundWater(const Site& site, const Plan& plan, FindingList& out) {
  if (!site.water_table_depth_m) {
    out.caution("site_water_table_unknown", {}, "own", "site.water_table_depth_m");
    return;
  }
  const double wanted = limit("uplift.least_factor");
  const site::Uplift up =
      site::uplift(plan.geometry, {.water_table_m = *site.water_table_depth_m, .factor = wanted});
  if (!up.factor) return;
  const double least = std::min(*up.factor, up.floor_factor.value_or(*up.factor));
  if (least >= wanted) return;
  std::vector values{value("factor", least, Unit::factor), value("wanted", wanted, Unit::factor),
                     value("head_m", up.head_m, Unit::metre)};
  if (up.keep_water_m) values.push_back(value("keep_water_m", *up.keep_water_m, Unit::metre));
  const std::string field = "site.water_table_depth_m";
  if (least < 1) {
    out.stop("site_uplift", std::move(values), sourceOf("uplift.least_factor"), field);
  } else {
    out.caution("site_uplift_near", std::move(values), sourceOf("uplift.least_factor"), field);
  }
}

void people(const Site& site, FindingList& out) {
  if (!site.house_downhill_m)
    out.caution("site_house_unknown", {}, "own", "site.house_downhill_m");
  else if (*site.house_downhill_m <= limit("house.flow_path"))
    out.caution("site_house_in_flow_path",
                {value("house_m", *site.house_downhill_m, Unit::metre),
                 value("within_m", limit("house.flow_path"), Unit::metre)},
                sourceOf("house.flow_path"), "site.house_downhill_m");
  if (site.fence_planned == true) return;
  if (site.toddlers_within_20_m == true)
    out.stop("site_toddlers_no_fence", {}, "own", "site.fence_planned");
  else if (!site.toddlers_within_20_m)
    out.caution("site_toddlers_unknown", {}, "own", "site.toddlers_within_20_m");
}

void runoffAndFrost(const Project& project, FindingList& out) {
  if (!project.water) return;
  const Water& water = *project.water;
  const bool led_in = water.roof.area_m2 * water.roof.runoff + water.ground.area_m2 * water.ground.runoff > 0;
  if (led_in && project.site.silt_trap_planned != true)
    out.caution("site_runoff_straight_in", {}, "own", "site.silt_trap_planned");
  const auto& months = water.climate.months;
  const auto coldest = std::min_element(months.begin(), months.end(), [](const auto& a, const auto& b) {
    return a.t_min_c.value_or(99) < b.t_min_c.value_or(99);
  });
  if (coldest == months.end() || !(coldest->t_min_c.value_or(0) < 0)) return;
  out.caution("site_frost",
              {value("month", static_cast<double>(coldest - months.begin()) + 1),
               value("t_min_c", *coldest->t_min_c, Unit::celsius)},
              "own", "water.climate.months[0].t_min_c");
}

}  // namespace

void siteFindings(const Project& project, const Plan& plan, FindingList& out) {
  soil(project.site, out);
  cutBatter(project, plan, out);
  cutHeight(project, plan, out);
  slope(project.site, out);
  edge(project.site, plan, out);
  groundWater(project.site, plan, out);
  people(project.site, out);
  runoffAndFrost(project, out);
}

}  // namespace core
