#include "core/findings.h"

#include "core/finding_list.h"
#include "core/site/thresholds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <fmt/format.h>

namespace core {
namespace {

constexpr std::array<std::string_view, 111> kCodes{
    "part_absent",
    "unknown_key",
    "soil_unknown",
    "clay_unknown",
    "smaller_than_recommended",
    "clay_share_low",
    "clay_share_high",
    "clay_share_cannot_reach",
    "curing_short",
    "cure_outlasts_fill_window",
    "coat_crew_small",
    "pit_ladder",
    "pit_cave_in",
    "pit_too_deep_by_hand",
    "customary_cement_differs",
    "customary_sand_soil_differs",
    "digging_norms_differ",
    "site_on_fill",
    "site_soft_wet",
    "site_rock_floor",
    "site_swelling_soil",
    "site_cut_too_steep",
    "site_cut_too_high",
    "site_slope_steep",
    "site_slope_too_steep",
    "site_edge_unknown",
    "site_edge_near",
    "site_edge_too_near",
    "site_water_table_unknown",
    "site_uplift",
    "site_uplift_near",
    "site_house_unknown",
    "site_house_in_flow_path",
    "site_survey_unusable",
    "site_survey_doubtful",
    "site_platform_impossible",
    "site_tank_on_fill",
    "site_cut_face_too_steep",
    "site_fill_face_too_steep",
    "site_fill_lacking",
    "site_slip_near",
    "site_slip_likely",
    "site_spoil_downhill",
    "site_spoil_uphill",
    "site_toddlers_no_fence",
    "site_toddlers_unknown",
    "site_runoff_straight_in",
    "site_frost",
    "site_soil_weaker_in_pit",
    "site_water_higher_in_pit",
    "water_latitude_unknown",
    "water_climate_unknown",
    "water_elevation_unknown",
    "water_no_supply",
    "water_no_need",
    "water_not_for_drinking",
    "water_target_missed",
    "water_never_full",
    "water_rain_spread_unknown",
    "water_years_few",
    "water_record_no_whole_year",
    "water_rain_spread_differs",
    "water_record_short",
    "water_record_years_left_out",
    "water_record_filled",
    "water_readings_few",
    "water_reading_outlier",
    "water_reading_too_quick",
    "water_flow_differs_from_readings",
    "water_et0_methods_differ",
    "delivery_line_no_flow",
    "delivery_static_over_class",
    "delivery_vapour",
    "delivery_above_head_line",
    "delivery_air_lock",
    "delivery_flow_small",
    "delivery_through_lining",
    "delivery_siphon_too_high",
    "delivery_siphon_throttle",
    "delivery_siphon_air",
    "delivery_outlet_head",
    "delivery_storm_unknown",
    "delivery_overflow_small",
    "delivery_rim_overtopped",
    "delivery_blocked_anywhere",
    "delivery_spill_shallow",
    "delivery_spill_scours",
    "delivery_trap_small",
    "delivery_not_reckoned",
    "delivery_leak_watch",
    "delivery_leak_repair",
    "delivery_leak_unsure",
    "works_masons_few",
    "works_batches_slow",
    "works_batch_sets",
    "works_people_short",
    "works_wish_unused",
    "works_fill_inflow_unknown",
    "works_fill_late",
    "works_fill_never_full",
    "works_walls_wet_long",
    "works_weather_risk",
    "works_coat_dries_fast",
    "works_coat_waits",
    "works_nobody_wets",
    "records_out_of_range",
    "records_few",
    "records_differ",
    "cost_prices_missing",
    "cost_bag_split",
    "option_not_buildable",
};

// Thresholds; sources stand beside the findings they raise.
constexpr double kLeastClay_percent = 10;   // earth_plaster_clay
constexpr double kMostClay_percent = 15;    // earth_plaster_clay
constexpr int kOrdinaryCuring_days = 7;     // is456_curing
constexpr double kBillAgreesWithin = 0.10;  // own: share by which two bills may differ and still agree

void pitDepth(const Plan& plan, FindingList& out) {
  const double depth = plan.earthwork.pit_depth_m;
  const site::Threshold& ladder = site::threshold("pit.ladder_from");
  const site::Threshold& cave_in = site::threshold("pit.cave_in_from");
  const site::Threshold& by_hand = site::threshold("pit.deepest_by_hand");
  const auto values = [&](const char* limit, double m) {
    return std::vector{value("pit_depth_m", depth, Unit::metre), value(limit, m, Unit::metre)};
  };
  if (depth > by_hand.value)
    out.stop("pit_too_deep_by_hand", values("most_m", by_hand.value), std::string(by_hand.source),
             "tank.depth_m");
  if (depth >= cave_in.value)
    out.caution("pit_cave_in", values("from_m", cave_in.value), std::string(cave_in.source), "tank.batter");
  if (depth >= ladder.value)
    out.caution("pit_ladder", values("from_m", ladder.value), std::string(ladder.source));
}

void size(const Project& project, const Plan& plan, FindingList& out) {
  const Practice& p = project.practice;
  const double least_m3 = p.smallest_length_m * p.smallest_width_m * p.smallest_depth_m;
  if (plan.tank.brim_volume_m3 >= least_m3 * (1 - 1e-9)) return;
  out.note(
      "smaller_than_recommended",
      {value("length_m", p.smallest_length_m, Unit::metre), value("width_m", p.smallest_width_m, Unit::metre),
       value("depth_m", p.smallest_depth_m, Unit::metre), value("volume_m3", least_m3, Unit::cubic_metre)},
      "common_practice", "practice.smallest_length_m");
}

void clay(const Project& project, const Plan& plan, FindingList& out) {
  if (!project.site.clay_percent) {
    out.note("clay_unknown", {}, "earth_plaster_clay", "site.clay_percent");
    return;
  }
  const double in_soil = *project.site.clay_percent;
  for (const lining::CoatQuantities& q : plan.quantities.coats) {
    const double share = q.clay_percent.value_or(0);
    const std::string field = fmt::format("lining.coats[{}].sand", q.coat - 1);
    std::vector values{value("coat", q.coat), value("clay_percent", share, Unit::percent),
                       value("least", kLeastClay_percent, Unit::percent),
                       value("most", kMostClay_percent, Unit::percent)};
    if (share > kMostClay_percent) {
      values.push_back(value("sand_per_soil", in_soil / kMostClay_percent - 1, Unit::factor));
      out.caution("clay_share_high", std::move(values), "earth_plaster_clay", field);
    } else if (share < kLeastClay_percent && in_soil >= kLeastClay_percent) {
      values.push_back(value("sand_per_soil", in_soil / kLeastClay_percent - 1, Unit::factor));
      out.caution("clay_share_low", std::move(values), "earth_plaster_clay", field);
    } else if (share < kLeastClay_percent) {
      values.pop_back();
      out.caution("clay_share_cannot_reach", std::move(values), "earth_plaster_clay", "site.clay_percent");
    }
  }
}

void curing(const Project& project, FindingList& out) {
  for (std::size_t k = 0; k < project.lining.coats.size(); ++k) {
    const int days = project.lining.coats[k].cure_days;
    if (days >= kOrdinaryCuring_days) continue;
    out.note("curing_short",
             {value("coat", static_cast<double>(k + 1)), value("days", days, Unit::day),
              value("ordinary_days", kOrdinaryCuring_days, Unit::day)},
             "is456_curing", fmt::format("lining.coats[{}].cure_days", k));
  }
  const int last = project.lining.coats.back().cure_days;
  if (project.works && last > project.works->fill_within_days) {
    out.caution(
        "cure_outlasts_fill_window",
        {value("days", last, Unit::day), value("window_days", project.works->fill_within_days, Unit::day)},
        "wocat_5684", "works.fill_within_days");
  }
}

void digging(const Project& project, const Plan& plan, FindingList& out) {
  if (!project.site.soil) out.note("soil_unknown", {}, "is7272", "site.soil");
  if (!plan.works) return;
  out.note("digging_norms_differ",
           {value("norm_days", plan.works->digging_days_by_norm.value_or(0), Unit::person_day),
            value("practice_days", plan.works->digging_days_by_practice.value_or(0), Unit::person_day)},
           "rate_norms_2073", "works.digging_person_day_per_m3");
}

bool differs(double ratio) {
  return ratio > 0 && std::abs(std::log(ratio)) > std::log(1 + kBillAgreesWithin);
}

void customaryBill(const Plan& plan, FindingList& out) {
  if (!plan.quantities.customary) return;
  const lining::BillComparison& bill = *plan.quantities.customary;
  for (const lining::BillLine& line : bill.lines) {
    if (line.id != "cement" || !differs(line.shell_ratio)) continue;
    out.caution("customary_cement_differs",
                {value("ratio", line.shell_ratio, Unit::factor),
                 value("by_area_ratio", line.by_area_ratio, Unit::factor)},
                "exact", "lining.customary_bill.cement_kg");
  }
  if (bill.bill_soil_per_sand && bill.mix_soil_per_sand > 0 &&
      differs(*bill.bill_soil_per_sand / bill.mix_soil_per_sand)) {
    out.caution("customary_sand_soil_differs",
                {value("bill", *bill.bill_soil_per_sand, Unit::factor),
                 value("mix", bill.mix_soil_per_sand, Unit::factor)},
                "exact", "lining.customary_bill.soil_m3");
  }
}

/// Parts of the file that are not there, and keys that this version does not know.
void parts(const Project& project, FindingList& out) {
  if (!project.works) out.note("part_absent", {token("part", "works")}, "user");
  if (!project.water) out.note("part_absent", {token("part", "water")}, "user");
  if (!project.delivery) out.note("part_absent", {token("part", "delivery")}, "user");
  if (!project.prices) out.note("part_absent", {token("part", "prices")}, "user");
  for (const KeptKey& k : project.kept) out.note("unknown_key", {token("path", k.pointer)}, "user");
}

}  // namespace

std::span<const std::string_view> findingCodes() {
  return kCodes;
}

std::vector<Finding> findings(const Project& project, const Plan& plan) {
  FindingList out;
  pitDepth(plan, out);
  siteFindings(project, plan, out);
  notesFindings(project, plan, out);
  clay(project, plan, out);
  customaryBill(plan, out);
  curing(project, out);
  size(project, plan, out);
  digging(project, plan, out);
  waterFindings(project, plan, out);
  deliveryFindings(project, plan, out);
  worksFindings(project, plan, out);
  moneyFindings(project, plan, out);
  parts(project, out);
  std::vector<Finding> all = out.sorted();
  for (Finding& finding : all) finding.at_m = placeOf(finding, plan);
  return all;
}

}  // namespace core
