#pragma once

#include "core/geometry/tank_geometry.h"

#include <string>
#include <vector>

namespace core::geometry {

/// A peg to drive or a mark to make. x, y from the first pit corner along the first side (or from the
/// centre), z above the ground beside the tank [m]. Round corners are set out from the sharp corner where the
/// sides' lines meet.
struct Peg {
  /// A, B, ... pit corners at ground; A1, A2, ... offset pegs 1 m clear on the two sides' lines; a, b, ...
  /// pit floor corners; A0, B0, ... centres of round corners, A3, A4, ... ends of their arcs; O centre of a
  /// round pit; m, n marks of the 3-4-5 triangle
  std::string id;
  std::string kind;  ///< pit_corner, offset_peg, pit_floor_corner, arc_centre, arc_end, centre, square_mark
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

  /// The mark with an id. @pre there is one
  const LevelMark& mark(const std::string& id) const;
  /// The mark of the finished floor: the top of the layer laid last, under the overflow.
  const LevelMark& clearFloor() const;
};

SettingOut settingOut(const TankGeometry& tank);

}  // namespace core::geometry
