#pragma once

#include "core/project/delivery.h"
#include "core/project/notes.h"
#include "core/project/options.h"
#include "core/project/prices.h"
#include "core/project/spot_heights.h"
#include "core/project/water.h"
#include "core/project/works.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include <Eigen/Core>

namespace core {

enum class Shape { rectangle, round, polygon };
enum class MeasuredAt { floor, rim };
enum class GroundKind { level, slope, spot_heights };
/// How the level of the platform is found.
enum class PlatformLevel { natural_ground, balanced, given };

struct Ground {
  GroundKind kind = GroundKind::level;
  double fall_percent = 0;          ///< used by slope
  double downhill_azimuth_deg = 0;  ///< used by slope; clockwise from north
  SpotHeights points_m;             ///< used by spot heights
  bool operator==(const Ground&) const = default;
};

/// Where the tank stands in the survey: its own frame turned, then moved.
struct Position {
  double east_m = 0;
  double north_m = 0;
  double turn_deg = 0;  ///< anticlockwise seen from above; 0: the length runs east
  bool operator==(const Position&) const = default;
};

/// The level place that is made for tank and walkway on ground that is not level.
struct Platform {
  PlatformLevel level_by = PlatformLevel::natural_ground;
  double level_m = 0;      ///< used when given: over the natural ground at the middle of the tank
  double walkway_m = 0.6;  ///< all round, outside the rim collar
  double cut_batter = 1;   ///< horizontal run per unit height of the cut face
  double fill_batter = 1.5;
  double topsoil_m = 0.15;          ///< stripped over all disturbed ground
  double compacted_per_bank = 0.9;  ///< volume in the finished fill of one cubic metre dug
  bool operator==(const Platform&) const = default;
};

/// A licensed engineer's word that a tank may be built although a finding says stop. Counts when all four
/// entries are there.
struct StopOverride {
  std::string engineer;
  std::string licence;
  std::string reason;
  std::optional<std::chrono::year_month_day> date;
  bool isRecorded() const { return !engineer.empty() && !licence.empty() && !reason.empty() && date; }
  bool operator==(const StopOverride&) const = default;
};

/// What is known of the place. An absent value means "not known", which never counts as safe.
struct Site {
  std::optional<double> latitude_deg;
  std::optional<double> elevation_m;
  Ground ground;
  Position position;
  Platform platform;
  std::optional<double>
      spoil_azimuth_deg;  ///< of the heap from the tank, clockwise from north; absent: proposed
  std::optional<Soil> soil;
  std::optional<double> clay_percent;
  std::optional<double> water_table_depth_m;
  std::optional<double> edge_distance_m;
  std::optional<double> edge_height_m;
  std::optional<bool> rock_floor;
  std::optional<double> house_downhill_m;
  std::optional<bool> toddlers_within_20_m;
  std::optional<bool> fence_planned;      ///< four sides, gate that shuts itself, ladder or rope to climb out
  std::optional<bool> silt_trap_planned;  ///< before the tank, for runoff led in
  StopOverride stop_override;
  bool operator==(const Site&) const = default;
};

/// The finished, clear inside of the tank: what the water touches.
struct Tank {
  Shape shape = Shape::rectangle;
  MeasuredAt measured_at = MeasuredAt::floor;
  double length_m = 6;
  double width_m = 3.5;
  double diameter_m = 4;
  std::vector<Eigen::Vector2d> outline_m = {{0, 0}, {6, 0}, {6, 3.5}, {0, 3.5}};  ///< convex, anticlockwise
  double depth_m = 1.5;                                                           ///< finished floor to rim
  double batter = 0.1;         ///< outward horizontal run of the wall per unit height
  double corner_radius_m = 0;  ///< of the clear floor outline
  double freeboard_m = 0.15;   ///< rim down to the overflow level
  double dead_depth_m = 0.1;   ///< water that cannot be drawn
  bool operator==(const Tank&) const = default;
};

/// One plaster coat, measured square to the face. Coat 1 lies against the dug earth.
struct Coat {
  double thickness_m = 0.06;
  double soil = 3;  ///< parts by loose volume
  double sand = 3;
  double cement = 1;
  int cure_days = 3;  ///< days under wet sacks after the coat
  bool operator==(const Coat&) const = default;
};

/// A bill of materials as people reckon it today, to stand beside the computed one. Absent entries are not
/// compared.
struct CustomaryBill {
  std::optional<double> soil_m3;
  std::optional<double> sand_m3;
  std::optional<double> stone_m3;
  std::optional<double> cement_kg;
  bool operator==(const CustomaryBill&) const = default;
};

struct Lining {
  double stone_bed_m = 0.0635;
  double dry_to_wet = 1.30;  ///< loose ingredients per placed plaster
  double waste_percent = 5;
  double unevenness_percent = 15;  ///< extra against dug faces: stone bed and coat 1
  double cement_bag_kg = 50;
  double cement_loose_kg_m3 = 1440;
  std::vector<Coat> coats = {{0.06, 3, 3, 1, 3}, {0.06, 2, 2, 1, 4}};
  double cove_radius_m = 0;  ///< fillet between floor and wall
  double rim_width_m = 0;    ///< collar let into the ground around the top, outward of the coats
  double rim_thickness_m = 0;
  double sieving_loss_percent = 10;
  double sand_bulking_percent = 20;
  double stone_loose_factor = 1.1;  ///< loose stone bought per compacted bed
  double mixing_water_l_per_m3 = 300;
  double curing_water_l_per_m2_day = 8;
  double sack_covers_m2 = 1.0;
  double sack_spare_percent = 10;
  double gauge_box_l = 35;
  double pan_l = 12;
  double bucket_l = 15;
  CustomaryBill customary;
  bool operator==(const Lining&) const = default;
};

/// Smallest tank that people who build them recommend; a smaller one is said in a finding, not refused.
struct Practice {
  double smallest_length_m = 5;
  double smallest_width_m = 3;
  double smallest_depth_m = 1.5;
  bool operator==(const Practice&) const = default;
};

/// A key of the project file that this version does not know. Kept and written back.
struct KeptKey {
  std::string pointer;  ///< RFC 6901 JSON pointer
  std::string json;     ///< the value as JSON text
  bool operator==(const KeptKey&) const = default;
};

/// Everything the user entered; a plain value in SI units.
struct Project {
  std::string title;
  std::string place;
  std::string prepared_by;
  std::string currency;
  Site site;
  Tank tank;
  Lining lining;
  Practice practice;
  std::optional<Works> works = Works{};
  std::optional<Water> water;        ///< absent: whether the water lasts is not asked
  std::optional<Delivery> delivery;  ///< absent: pipes, overflow and traps are not asked
  std::optional<Prices> prices;      ///< absent: money is not asked
  Records records;
  FieldNotes notes;
  Ranges ranges;
  SearchLimits search;
  std::vector<Option> options;
  std::vector<KeptKey> kept;  ///< in the order of the pointers
  bool operator==(const Project&) const = default;
};

}  // namespace core
