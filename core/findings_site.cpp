#include "core/finding_list.h"
#include "core/site/spoil.h"
#include "core/site/stability.h"
#include "core/site/thresholds.h"
#include "core/site/uplift.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <string_view>

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

void slope(const Project& project, const Plan& plan, FindingList& out) {
  if (!plan.site.has_relief) return;
  const double angle = plan.site.fall.degree;
  const auto values = [&](double from) {
    return std::vector{value("slope_deg", angle, Unit::degree), value("from_deg", from, Unit::degree)};
  };
  const std::string field =
      project.site.ground.kind == GroundKind::slope ? "site.ground.fall_percent" : "site.position.east_m";
  if (angle >= limit("slope.stop")) {
    out.stop("site_slope_too_steep", values(limit("slope.stop")), sourceOf("slope.stop"), field);
  } else if (angle >= limit("slope.caution")) {
    out.caution("site_slope_steep", values(limit("slope.caution")), sourceOf("slope.caution"), field);
  }
}

std::string_view faultToken(site::TinFault fault) {
  constexpr std::array<std::string_view, 4> tokens{"too_few", "collinear", "failed", "failed"};
  return tokens.at(static_cast<std::size_t>(fault));
}

std::string_view faultToken(site::BenchFault fault) {
  constexpr std::array<std::string_view, 5> tokens{"outside_survey", "leaves_survey", "never_daylights",
                                                   "cannot_balance", "cannot_balance"};
  return tokens.at(static_cast<std::size_t>(fault));
}

/// Field that mends what stands in the way of a platform.
std::string fieldOf(site::BenchFault fault) {
  switch (fault) {
    case site::BenchFault::outside_survey:
    case site::BenchFault::leaves_survey:
      return "site.position.east_m";
    case site::BenchFault::never_daylights:
      return "site.platform.fill_batter";
    default:
      return "site.platform.level_by";
  }
}

void survey(const site::SurveyedGround& ground, FindingList& out) {
  const std::string field = "site.ground.points_m";
  if (!ground.surface)
    out.stop("site_survey_unusable", {token("fault", std::string(faultToken(ground.surface.error())))},
             "user", field);
  if (ground.notes.empty()) return;
  const std::string& path = ground.notes.front().path;
  const std::size_t mark = path.find('[');
  const double row = mark == std::string::npos ? 0 : std::stod(path.substr(mark + 1)) + 1;
  out.caution("site_survey_doubtful",
              {value("count", static_cast<double>(ground.notes.size())), value("first_row", row)},
              "iglewicz_hoaglin", field);
}

/// No floor and no wall of the tank may stand on fill.
void platform(const Plan& plan, PlatformLevel by, FindingList& out) {
  const site::SitePlan& site = plan.site;
  if (site.fault)
    out.stop("site_platform_impossible", {token("fault", std::string(faultToken(*site.fault)))}, "exact",
             fieldOf(*site.fault));
  if (!site.cover || site.cover->isInNaturalGround()) return;
  const bool is_given = by == PlatformLevel::given;
  out.stop("site_tank_on_fill",
           {value("cover_m", site.cover->least_m, Unit::metre),
            value("over_middle_m", site.bench->level_m - site.middle_level_m, Unit::metre),
            value("most_over_middle_m", site.cover->natural_level_m - site.middle_level_m, Unit::metre)},
           sourceOf("cover.least"), is_given ? "site.platform.level_m" : "site.platform.level_by");
}

/// Height of a face of the bench where it is highest.
double heightOf(const geometry::Mesh& face, double level_m) {
  double most = 0;
  for (const Eigen::Vector3d& p : face.points) most = std::max(most, std::abs(p.z() - level_m));
  return most;
}

/// The faces of cut and fill: the cut against the table for its soil from the height on that asks for it, the
/// fill against the slope at which loose ground comes to rest.
void faces(const Site& site, const Plan& plan, FindingList& out) {
  if (!plan.site.bench) return;
  const site::Bench& bench = *plan.site.bench;
  const double cut_m = heightOf(bench.cut_face, bench.level_m);
  const double wanted = site::steepestBatter(site::excavationSoil(site.soil));
  const bool is_high = cut_m >= limit("pit.cave_in_from");
  // a face that stands close over the pit adds to its height
  const bool adds_up =
      site.platform.walkway_m < cut_m && cut_m + plan.earthwork.pit_depth_m >= limit("pit.cave_in_from");
  if ((is_high || adds_up) && site.platform.cut_batter < wanted)
    out.caution("site_cut_face_too_steep",
                {value("batter", site.platform.cut_batter, Unit::batter),
                 value("wanted", wanted, Unit::batter), value("height_m", cut_m, Unit::metre)},
                "osha_1926p", "site.platform.cut_batter");
  const double rests = 1 / std::tan(limit("spoil.repose") * std::numbers::pi / 180);
  if (bench.fill_m3 > 0 && site.platform.fill_batter < rests)
    out.caution(
        "site_fill_face_too_steep",
        {value("batter", site.platform.fill_batter, Unit::batter), value("wanted", rests, Unit::batter),
         value("height_m", heightOf(bench.fill_face, bench.level_m), Unit::metre)},
        sourceOf("spoil.repose"), "site.platform.fill_batter");
}

/// Fill beyond all that is dug.
void earth(const Project& project, const Plan& plan, FindingList& out) {
  const site::SitePlan& site = plan.site;
  if (site.lacking_bank_m3 > 0)
    out.caution("site_fill_lacking", {value("bank_m3", site.lacking_bank_m3, Unit::cubic_metre)}, "exact",
                project.site.platform.level_by == PlatformLevel::given ? "site.platform.level_m"
                                                                       : "site.platform.level_by");
}

/// A heap uphill washes into the tank, one downhill loads the ground that carries it.
void spoil(const Site& site, const Plan& plan, FindingList& out) {
  if (!site.spoil_azimuth_deg || !plan.site.fall.azimuth_deg) return;
  const double off = std::abs(std::remainder(*site.spoil_azimuth_deg - *plan.site.fall.azimuth_deg, 360));
  const double across = std::min(off, 180 - off);  // from straight up or down the fall
  if (across >= limit("spoil.off_fall")) return;
  out.caution(off < 90 ? "site_spoil_downhill" : "site_spoil_uphill",
              {value("azimuth_deg", *site.spoil_azimuth_deg, Unit::degree),
               value("proposed_deg", site::heapAzimuth(plan.site.fall.azimuth_deg), Unit::degree)},
              sourceOf("spoil.off_fall"), "site.spoil_azimuth_deg");
}

/// The lowest factor of the slips that were searched, against what is wanted of a slope.
void slips(const site::Stability& stability, GroundKind ground, FindingList& out) {
  const std::optional<double> factor = stability.leastFactor();
  if (!factor || *factor >= stability.wanted_slope) return;
  const auto worst = std::find_if(stability.slips.begin(), stability.slips.end(), [&](const auto& slip) {
    return slip.critical && slip.critical->slip.factor == *factor;
  });
  const std::vector values{value("factor", *factor, Unit::factor),
                           value("wanted", stability.wanted_slope, Unit::factor),
                           token("state", std::string(worst->state))};
  const std::string field = stability.edge == site::EdgeGround::with_edge ? "site.edge.distance_m"
                            : ground == GroundKind::slope                 ? "site.ground.fall_percent"
                                                                          : "site.position.east_m";
  if (*factor < 1) {
    out.stop("site_slip_likely", values, "bishop_1955", field);
  } else {
    out.caution("site_slip_near", values, "bishop_1955", field);
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

/// Ground water below the rim: its depth was entered from the natural ground, which the rim lies under or
/// over on a platform.
double waterBelowRim(const Site& site, const Plan& plan) {
  return *site.water_table_depth_m + plan.site.rimLevel() - plan.site.middle_level_m;
}

void groundWater(const Site& site, const Plan& plan, FindingList& out) {
  if (!site.water_table_depth_m) {
    out.caution("site_water_table_unknown", {}, "own", "site.water_table_depth_m");
    return;
  }
  const double wanted = limit("uplift.least_factor");
  const site::Uplift up =
      site::uplift(plan.geometry, {.water_table_m = waterBelowRim(site, plan), .factor = wanted});
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
  survey(*plan.site.ground, out);
  platform(plan, project.site.platform.level_by, out);
  faces(project.site, plan, out);
  slope(project, plan, out);
  slips(plan.site.stability, project.site.ground.kind, out);
  spoil(project.site, plan, out);
  earth(project, plan, out);
  edge(project.site, plan, out);
  groundWater(project.site, plan, out);
  people(project.site, out);
  runoffAndFrost(project, out);
}

}  // namespace core
