#pragma once

#include "core/base/unit.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// One thing wrong with what the user gave. No text: ui turns code and numbers into a sentence.
///
/// Codes (stable, never reused):
/// - file: cannot_read, cannot_write, too_large, not_json, too_deep, not_utf8, not_a_project, unknown_version
/// - value: missing, wrong_type, not_finite, out_of_range, unknown_choice, too_long, bad_date, duplicate_key
/// - list: too_few, too_many
/// - outline: outline_clockwise, outline_self_touching, outline_not_convex
/// - across fields: freeboard_not_below_rim, dead_depth_not_below_full, coats_thicker_than_tank,
///   rim_outline_vanishes, corner_radius_too_large, corner_radius_too_small, cove_too_large,
///   mix_without_filler, pit_floor_vanishes
/// - water: unknown_crop, bad_day_of_month, name_repeated, season_too_long, rain_without_wet_days,
///   more_wet_days_than_days, less_rain_than_wet_days, max_below_min, date_not_later
/// - delivery: route_not_onward, unknown_pipe
/// - field notes: layer_not_below_its_top
/// - works, money, options: no_working_day (rest and closed days leave none), range_crossed (a range or rate
/// whose low, typical and high do not rise), unknown_field
///   (an option changes what is no field), unknown_work (a rate of one's own for work that the table does not
///   have)
/// - weather table (path "row:17:rain_mm", the header being row 1): csv_no_header, csv_column_missing,
///   csv_row_cells, csv_date_repeated, csv_date_backwards, csv_max_below_min
/// - survey: survey_too_few, survey_collinear, survey_conflict, given_up (someone did not wait for the
///   triangles)
/// - short form: short_form_version (does not begin with a version that is known), short_form_check (the
/// check
///   group does not fit; value: the group), short_form_token (value: a part that is none)
/// - notes (do not stop anything): unknown_key, part_absent (the rates of a district file need works),
/// csv_days_missing (value: first and last day), survey_duplicate,
///   survey_spike, survey_far
///
/// `value` of not_json and not_utf8 is "line:column" of the fault, of cannot_read and cannot_write the
/// system's reason.
struct Problem {
  std::string code;
  std::string path;   ///< where, as in "tank.depth_m" or "lining.coats[1].soil"; empty for the whole file
  std::string value;  ///< what was found, as JSON text, shortened
  std::optional<double> least;  ///< smallest allowed [unit]
  std::optional<double> most;   ///< largest allowed [unit]
  Unit unit = Unit::none;
  std::string allowed;  ///< allowed type or choices, as "number" or "rectangle|round|polygon"

  bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// All codes a problem can have.
std::span<const std::string_view> problemCodes();

}  // namespace core
