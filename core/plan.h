#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "core/base/problem.h"
#include "core/geometry/setting_out.h"
#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"
#include "core/works/schedule.h"

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
/// Codes (stable, never reused):
///   part_absent{part}; part_not_computed{part}; ground_not_computed{};
///   smaller_than_recommended{length_m,width_m,depth_m}; clay_share_low/_high{coat,clay_percent,least,most,sand_per_soil};
///   clay_unknown{}; soil_unknown{}; curing_short{coat,days,ordinary_days}; cure_outlasts_fill_window{days,window_days};
///   coat_crew_small{coat,people,needed}; pit_ladder{pit_depth_m,from_m}; pit_cave_in{pit_depth_m,from_m};
///   pit_too_deep_by_hand{pit_depth_m,most_m}; customary_cement_differs{ratio}; customary_sand_soil_differs{bill,mix};
///   digging_norms_differ{norm_days,practice_days}; unknown_key{path}
struct Finding {
  std::string code;
  Severity severity = Severity::note;
  std::vector<FindingValue> values;
  std::string source;  ///< key
  std::string field;   ///< id of the field to look at, may be empty
};

/// Depth and what the tank holds up to it, for a dip-stick.
struct DipMark {
  double level_m;
  double volume_m3;
};

struct TankFigures {
  double brim_volume_m3, full_volume_m3, usable_volume_m3, dead_volume_m3;
  double full_surface_m2, floor_m2, wall_m2, rim_length_m, brim_area_m2;
  double clear_floor_length_m, clear_floor_width_m;  ///< extents at the finished floor; both the diameter for a round tank
  double clear_rim_length_m, clear_rim_width_m;      ///< extents at the rim
  double depth_m, full_level_m, dead_level_m;        ///< above the finished floor
};

struct Earthwork {
  double pit_volume_m3;
  double pit_top_length_m, pit_top_width_m;      ///< outside of coat 1 at ground; the rim ledge is not counted
  double pit_floor_length_m, pit_floor_width_m;
  double pit_depth_m;
  std::optional<double> bench_cut_m3, bench_fill_m3;  ///< absent: not computed for this ground
  std::optional<double> swell_percent, spoil_loose_m3;  ///< absent: soil not known
};

/// Everything computed from a Project. The same Project gives the same Plan, byte for byte.
struct Plan {
  geometry::TankGeometry geometry;
  TankFigures tank;
  Earthwork earthwork;
  std::vector<geometry::Layer> layers;
  lining::Quantities quantities;
  std::vector<DipMark> dip_stick;  ///< every 5 cm from the finished floor, and the overflow level and the rim
  geometry::SettingOut setting_out;
  std::optional<works::Works> works;
  std::vector<Finding> findings;
};

/// Problems that keep a project from being planned: each field against its range, then across fields. Empty when it can be planned.
Problems check(const Project& project);

/// The plan, or the problems that stand in its way.
tl::expected<Plan, Problems> plan(const Project& project);

}  // namespace core
