#pragma once

#include <limits>

namespace core::geometry {

/// How far a tank has come; as it stands when nothing is said: finished.
struct Built {
  bool is_platform_made = true;
  bool has_pegs = false;  ///< pegs and strings of the setting-out
  double dug_m =
      std::numeric_limits<double>::infinity();  ///< depth of the pit so far, below the ground beside it; 0:
                                                ///< nothing is dug. Held to the depth of the pit
  bool has_stone_bed = true;
  int coats = std::numeric_limits<int>::max();  ///< put on so far; cove and rim collar come with the last
  bool has_sacks = false;                       ///< wet sacks hang over the last coat put on
  double water_level_m = 0;                     ///< above the finished floor
  bool operator==(const Built&) const = default;
};

}  // namespace core::geometry
