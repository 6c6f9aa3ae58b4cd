#pragma once

#include "core/site/bishop.h"

#include <atomic>
#include <cstddef>
#include <optional>

namespace core::site {

/// Which circles to try. Every circle of the search is named by where it leaves the ground above, where it
/// comes out below, and how deep it bulges between; that covers all centres and radii whose slip starts and
/// ends inside the section: circles on the face, through the toe and deeper ones.
struct SlipSearch {
  int stations = 24;  ///< places along the section tried for either end, besides the breaks of the ground
  int depths = 10;    ///< bulges tried for each pair of ends
  int starts = 12;    ///< best circles from which the search goes on in ever smaller steps
  int slices = 40;    ///< while searching; the answer is computed with BishopOptions
  double least_depth_m = 0;                  ///< slips nowhere deeper than this are left out
  std::optional<double> upper_end_most_x_m;  ///< slips that begin beyond it, to the right, are left out;
                                             ///< a slip with a crack begins at the crack
  std::optional<double> lower_end_most_z_m;  ///< slips that come out higher are left out
  BishopOptions answer;
};

enum class SearchFault { bad_section, level_section, nothing_found, cancelled };

struct CriticalSlip {
  Slip slip;
  std::size_t tried = 0;    ///< circles
  std::size_t refused = 0;  ///< of them without a factor
  bool is_at_end = false;   ///< one end lies at the end of the section: draw a longer one
};

/// The circle with the lowest factor of safety by Bishop's simplified method: a coarse grid, then ever
/// smaller steps from the best. The same input gives the same answer.
tl::expected<CriticalSlip, SearchFault> criticalSlip(const SlopeSection& section,
                                                     const SlipSearch& search = {},
                                                     const std::atomic<bool>* cancel = nullptr);

}  // namespace core::site
