#pragma once

#include "core/base/unit.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <Eigen/Core>

namespace core {

enum class Severity { note, caution, stop };

/// One number, or a token, behind a finding.
struct FindingValue {
  std::string name;  ///< stable key, also in the JSON result
  double number = 0;
  Unit unit = Unit::none;
  std::string token;  ///< set instead of the number for a name, e.g. a part of the file
};

/// Something a practitioner should know. No text: ui makes the sentence from code and values.
///
/// Codes (stable, never reused) and the values each carries:
///   part_absent{part}  unknown_key{path}
///   soil_unknown{}  clay_unknown{}
///   smaller_than_recommended{length_m,width_m,depth_m,volume_m3}
///   clay_share_low, clay_share_high{coat,clay_percent,least,most,sand_per_soil}
///   clay_share_cannot_reach{coat,clay_percent,least}: the soil alone has too little clay
///   curing_short{coat,days,ordinary_days}  cure_outlasts_fill_window{days,window_days}
///   coat_crew_small{coat,people,needed[,length_m,width_m,full_m3]}: the size this crew could do
///   pit_ladder{pit_depth_m,from_m}  pit_cave_in{pit_depth_m,from_m} pit_too_deep_by_hand{pit_depth_m,most_m}
///   customary_cement_differs{ratio,by_area_ratio}  customary_sand_soil_differs{bill,mix}
///   digging_norms_differ{norm_days,practice_days}
///   site_on_fill{}  site_soft_wet{}  site_rock_floor{}  site_swelling_soil{clay_percent,from}
///   site_cut_too_steep{batter,wanted,pit_depth_m}  site_cut_too_high{pit_depth_m,most_m,factor}
///   site_slope_steep, site_slope_too_steep{slope_deg,from_deg}
///   site_edge_unknown{}  site_edge_near, site_edge_too_near{distance_m,own_m,code_m}
///   site_soil_weaker_in_pit{soil,entered}: tokens of site.soil  site_water_higher_in_pit{depth_m,entered_m}
///   site_water_table_unknown{}  site_uplift, site_uplift_near{factor,wanted,head_m[,keep_water_m]}
///   site_house_unknown{}  site_house_in_flow_path{house_m,within_m}
///   site_survey_unusable{fault}: too_few, collinear, failed  site_survey_doubtful{count,first_row}: rows
///   from 1 site_platform_impossible{fault}: outside_survey, leaves_survey, never_daylights, cannot_balance
///   site_tank_on_fill{cover_m,over_middle_m,most_over_middle_m}: cover of natural ground, where it is least
///   site_cut_face_too_steep, site_fill_face_too_steep{batter,wanted,height_m}
///   site_fill_lacking{bank_m3}: ground that has to be brought for the fill
///   site_slip_near, site_slip_likely{factor,wanted,state}: state empty, full_leaking
///   site_spoil_downhill, site_spoil_uphill{azimuth_deg,proposed_deg}
///   site_toddlers_no_fence{}  site_toddlers_unknown{}  site_runoff_straight_in{}  site_frost{month,t_min_c}
///   water_latitude_unknown{}  water_climate_unknown{}: no answer without them
///   water_elevation_unknown{}: sea level is reckoned with
///   water_no_supply{}  water_no_need{}  water_not_for_drinking{people}
///   water_target_missed{years_in_ten,target,most_tried_m3[,smallest_full_m3][,largest_bed_area_m2]}
///   water_never_full{full_m3,most_m3}: in no year does the tank fill
///   water_rain_spread_unknown{rain_cv_percent}: years made from means alone differ too little
///   water_rain_spread_differs{rain_cv_percent,made_percent}: made years differ more or less than asked
///   water_years_few{years,wanted}  water_record_no_whole_year{}
///   water_record_short{years,wanted}  water_record_years_left_out{years,first}  water_record_filled{values}
///   water_readings_few{month,count}  water_reading_outlier{row,flow_l_per_min,median_l_per_min}
///   water_reading_too_quick{row,seconds}
///   water_flow_differs_from_readings{month,flow_l_per_min,median_l_per_min}
///   water_et0_methods_differ{penman_monteith_mm,hargreaves_mm}
///   delivery_line_no_flow{line,fault}: line is source or field, fault a code of hydraulics::Result
///   delivery_static_over_class{line,static_bar,class_bar}
///   delivery_vapour{line,station_m,pressure_m,lowest_m}: the column of water parts there
///   delivery_above_head_line{line,from_m,to_m,pressure_m}: the pipe sucks between
///   delivery_air_lock{line,station_m,air_m,head_m}: air behind the high points can hold all the head back
///   delivery_flow_small{line,flow_l_per_min,wanted_l_per_min[,outside_mm][,class_bar]}
///   delivery_through_lining{}
///   delivery_siphon_too_high{lift_m,most_lift_m}  delivery_siphon_throttle{throttled_l_per_min,lift_m}
///   delivery_siphon_air{velocity_m_s,clearing_m_s}
///   delivery_outlet_head{outlet,verdict,head_full_m,head_low_m,wanted_m}
///   delivery_storm_unknown{storm_mm_h}
///   delivery_overflow_small,
///   delivery_rim_overtopped{freeboard_m,wanted_m,flow_l_per_min[,width_m][,pipe_m][,needed_freeboard_m]}
///   delivery_blocked_anywhere{deepest_m[,lip_length_m]}: it runs over all of the rim
///   delivery_spill_shallow{depth_m,channel_m}  delivery_spill_scours{velocity_m_s,limit_m_s,cover}
///   delivery_trap_small{kept_mm,grain_mm[,length_m,width_m,depth_m]}
///   delivery_not_reckoned{part,fault}: part overflow, blocked, silt_trap, leak_test
///   delivery_leak_watch, delivery_leak_repair{mm_per_day,l_per_day,band}: band watch, repair, empty_and_mend
///   delivery_leak_unsure{mm_per_day,error_mm_per_day,verdict}: verdict unsure, gains
///   works_masons_few{coat,masons,needed[,length_m,width_m,full_m3]}
///   works_batches_slow{coat,needed_per_hour,possible_per_hour,places}
///   works_batch_sets{coat,minutes,half_minutes,limit_minutes}: a batch sets before it is on the wall
///   works_people_short{date,needed,there}: date an ISO 8601 token, of the first such day
///   works_wish_unused{task}  works_coat_waits{coat,days}: between its curing and the next coat
///   works_nobody_wets{}
///   works_fill_inflow_unknown{}  works_fill_late{start,latest}: ISO 8601 tokens
///   works_fill_never_full{level_m,full_m}: after a year
///   works_walls_wet_long{days,until,l_per_day,carried_m3}: bare wall after the end of curing
///   works_weather_risk{undisturbed_percent,best_percent,rain_percent,frost_percent,heat_percent,best_start}
///   works_coat_dries_fast{coat,kg_m2_h,limit}
///   records_out_of_range{work,measured,least,most}
///   records_few{work,count,wanted}  records_differ{work,measured,entered}: work is dry_to_wet or a work
///   cost_prices_missing{count,item}: item is the first one
///   cost_bag_split{bag_kg,load_kg,carrier}
///   option_not_buildable{option}: its letter
struct Finding {
  std::string code;
  Severity severity = Severity::note;
  std::vector<FindingValue> values;
  std::string source;  ///< key
  std::string field;   ///< path of the field to look at, may be empty
  /// Place on or about the tank that it is about: x, y in the tank's frame, z above the finished floor.
  std::optional<Eigen::Vector3d> at_m = {};
};

/// All codes a finding can have.
std::span<const std::string_view> findingCodes();

}  // namespace core
