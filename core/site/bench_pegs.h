#pragma once

#include "core/site/bench.h"

#include <string>
#include <vector>

namespace core::site {

/// A peg to set out a bench.
struct BenchPeg {
  std::string id;  ///< P1, P2, ... platform corners; Q1, Q2, ... daylight out from the corner of that number
  std::string kind;            ///< platform_corner, daylight_cut, daylight_fill
  Eigen::Vector3d at_m;        ///< platform corner at the platform's level; daylight on the ground
  double ground_m;             ///< natural ground at the peg
  double dig_m;                ///< from the ground down to the finished surface; below 0: fill up
  double from_corner_m;        ///< level distance from the platform corner of that number
  double over_platform_m = 0;  ///< peg over the platform; below 0: under it
};

/// Pegs at the platform's corners and where the mitre out from each corner comes to daylight. Of outlines
/// with many corners only every so many-th is taken, at most `most` in all, spread evenly.
std::vector<BenchPeg> benchPegs(const GroundSurface& ground, const BenchShape& shape, const Bench& bench,
                                int most = 12);

}  // namespace core::site
