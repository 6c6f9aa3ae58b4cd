#pragma once

#include <string>
#include <vector>

#include "core/geometry/tank_geometry.h"

namespace core::geometry {

/// A peg to drive or a mark to make. x, y from the origin peg (first pit corner or centre), z above the ground beside the tank [m].
struct Peg {
  std::string id;    ///< A, B, ... pit corners at ground; A1, B1, ... offset pegs 1 m clear; a, b, ... pit floor corners
  std::string kind;  ///< pit_corner, offset_peg, pit_floor_corner, centre
  Eigen::Vector3d at_m;
};

/// A length to check with a tape between two pegs [m].
struct Tie {
  std::string from, to;
  std::string kind;  ///< side, diagonal, radius, triangle_3_4_5
  double length_m;
};

/// A level mark on the depth rod, measured down from the string line at ground level [m].
struct LevelMark {
  std::string id;  ///< pit_floor, stone_bed_top, coat_1_top, coat_2_top, ..., overflow, rim
  double below_ground_m;
};

/// How far the pit wall has come in from the pit edge at a depth below ground.
struct BatterMark {
  double below_ground_m;
  double in_from_edge_m;
};

struct SettingOut {
  std::vector<Peg> pegs;
  std::vector<Tie> ties;
  std::vector<LevelMark> levels;
  std::vector<BatterMark> batter;
};

SettingOut settingOut(const TankGeometry& tank);

}  // namespace core::geometry
