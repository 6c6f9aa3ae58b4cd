#pragma once

#include <optional>
#include <vector>

namespace core {

/// Polyethylene by its long-term strength: PE 80 8 MPa, PE 100 10 MPa.
enum class PipeGrade { pe80, pe100 };
/// What water is let out through.
enum class OutletKind { open_pipe, tap, hose, drip_low_cost, drip_standard, micro_sprinkler, sprinkler };
enum class OverflowKind { notch, pipe };
/// What the spill path is dug in or covered with.
enum class SpillCover { soil, grass, stone_pitching, plaster };

/// A point of a pipe's way.
struct RoutePoint {
  double distance_m = 0;  ///< level distance along the line from its first point; grows from row to row
  double over_rim_m = 0;  ///< above the rim of the tank; below it less than 0
  bool operator==(const RoutePoint&) const = default;
};

/// Level length of a pipe's way [m]; 0 when none was entered.
inline double routeLength(const std::vector<RoutePoint>& route) {
  return route.size() < 2 ? 0 : route.back().distance_m - route.front().distance_m;
}

struct Pipe {
  PipeGrade grade = PipeGrade::pe80;
  double outside_mm = 32;
  double class_bar = 10;
  std::optional<double> bore_mm;  ///< measured, in place of the table's
  int elbows = 4;
  int valves = 1;
  bool operator==(const Pipe&) const = default;
};

/// From the source to the tank: the first point is the pipe's inlet, the last its end over the tank.
struct SourceLine {
  std::vector<RoutePoint> route;  ///< fewer than two points: no line
  double water_over_inlet_m = 0.2;
  std::optional<double> wanted_l_per_min;
  Pipe pipe;
  bool operator==(const SourceLine&) const = default;
};

/// From the tank to the field: the first point is at the rim, or where the pipe leaves the tank.
struct FieldLine {
  std::vector<RoutePoint> route;  ///< fewer than two points: no line
  bool over_rim = true;           ///< a siphon over the rim; else a pipe through the lining
  double crest_over_rim_m = 0.1;  ///< axis of the siphon over the rim
  OutletKind outlet = OutletKind::tap;
  int outlets = 1;  ///< open at a time
  Pipe pipe;
  bool operator==(const FieldLine&) const = default;
};

struct OverflowWay {
  OverflowKind kind = OverflowKind::notch;
  double width_m = 0.5;  ///< of the notch
  double pipe_mm = 100;  ///< inside diameter
  double pipe_length_m = 2;
  double pipe_fall_m = 0.1;
  std::optional<double> storm_mm_h;  ///< short heavy rain of the place; absent: not known
  double lip_length_m = 1.5;         ///< part of the rim laid lower, where water leaves when all is blocked
  double lip_drop_m = 0.03;          ///< how much lower
  bool operator==(const OverflowWay&) const = default;
};

/// Channel from the overflow to where water may run.
struct SpillPath {
  double bottom_width_m = 0.3;
  double depth_m = 0.2;
  double side_slope = 1;
  double fall_percent = 2;
  SpillCover cover = SpillCover::grass;
  bool operator==(const SpillPath&) const = default;
};

struct SiltTrapWish {
  double grain_mm = 0.1;                             ///< smallest grain that must stay behind
  std::optional<double> flow_l_per_min;              ///< absent: what the source line and the storm bring
  double silt_kg_m3 = 0.5;                           ///< in the water that comes in
  double cleaning_days = 7;                          ///< between two cleanings
  std::optional<double> length_m, width_m, depth_m;  ///< of a trap that stands or is planned by eye
  bool operator==(const SiltTrapWish&) const = default;
};

/// Leak test with a bucket that floats in the tank. Reckoned when both drops are there.
struct LeakReadings {
  std::optional<double> level_m;  ///< water in the tank; absent: full
  std::optional<double> tank_drop_mm;
  std::optional<double> bucket_drop_mm;
  double hours = 24;
  double reading_error_mm = 1;
  bool operator==(const LeakReadings&) const = default;
};

/// How the water comes to the tank, leaves it and must not leave it.
struct Delivery {
  double water_temperature_c = 15;
  SourceLine source;
  FieldLine field;
  OverflowWay overflow;
  SpillPath spill;
  SiltTrapWish silt_trap;
  LeakReadings leak_test;
  bool operator==(const Delivery&) const = default;
};

}  // namespace core
