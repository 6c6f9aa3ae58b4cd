#include "core/base/problem.h"

#include <array>

namespace core {
namespace {

constexpr std::array<std::string_view, 65> kCodes{
    "cannot_read",
    "cannot_write",
    "too_large",
    "not_json",
    "too_deep",
    "not_utf8",
    "not_a_project",
    "unknown_version",
    "missing",
    "wrong_type",
    "not_finite",
    "out_of_range",
    "unknown_choice",
    "too_long",
    "bad_date",
    "duplicate_key",
    "too_few",
    "too_many",
    "outline_clockwise",
    "outline_self_touching",
    "outline_not_convex",
    "freeboard_not_below_rim",
    "dead_depth_not_below_full",
    "coats_thicker_than_tank",
    "rim_outline_vanishes",
    "corner_radius_too_large",
    "corner_radius_too_small",
    "cove_too_large",
    "mix_without_filler",
    "pit_floor_vanishes",
    "unknown_crop",
    "bad_day_of_month",
    "name_repeated",
    "season_too_long",
    "rain_without_wet_days",
    "more_wet_days_than_days",
    "less_rain_than_wet_days",
    "max_below_min",
    "date_not_later",
    "route_not_onward",
    "unknown_pipe",
    "layer_not_below_its_top",
    "no_working_day",
    "range_crossed",
    "unknown_field",
    "part_absent",
    "unknown_work",
    "csv_no_header",
    "csv_column_missing",
    "csv_row_cells",
    "survey_too_few",
    "survey_collinear",
    "survey_conflict",
    "given_up",
    "short_form_version",
    "short_form_check",
    "short_form_token",
    "csv_date_repeated",
    "csv_date_backwards",
    "csv_max_below_min",
    "unknown_key",
    "csv_days_missing",
    "survey_duplicate",
    "survey_spike",
    "survey_far",
};

}  // namespace

std::span<const std::string_view> problemCodes() {
  return kCodes;
}

}  // namespace core
