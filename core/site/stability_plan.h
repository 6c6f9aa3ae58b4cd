#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"
#include "core/site/slip_search.h"
#include "core/site/stability.h"

#include <atomic>
#include <optional>
#include <string_view>
#include <vector>

namespace core::site {

/// Slips nowhere deeper than this are left out of the search [m]: they are not of the tank. Own proposal.
inline constexpr double kLeastSlip_m = 0.3;
/// Horizontal run per unit height that a terrace edge is taken to have. Own proposal.
inline constexpr double kEdgeBatter = 1;

/// Height at which the pit wall stands, by one set of strengths.
struct CutHeights {
  std::string_view strength;  ///< low, typical, high
  SoilStrength soil;
  // Absent: friction alone holds the face, or it lies outside the table.
  std::optional<double> vertical_m;      ///< a vertical cut that just stands
  std::optional<double> culmann_m;       ///< this face, just standing
  std::optional<double> culmann_safe_m;  ///< this face, with the factor wanted
  std::optional<double> taylor_m;        ///< this face by the stability number, just standing
  std::optional<double> taylor_number;   ///< c / (gamma H)
  std::optional<double> taylor_factor;   ///< of this cut as deep as the pit
};

/// The downhill side searched for the circle with the lowest factor.
struct EdgeSlip {
  std::string_view state;  ///< empty, full_leaking
  SlopeSection section;    ///< x downhill from the middle of the tank, z above the finished floor
  std::optional<CriticalSlip> critical;
  std::optional<SearchFault> fault;
};

/// What the section of the downhill side was made from.
enum class EdgeGround {
  none,       ///< level ground and no edge: nothing to slip
  natural,    ///< the finished ground down the fall
  with_edge,  ///< the finished ground, dropping at the terrace edge
};

/// Numbers of the engineer's calculation page.
struct Stability {
  double face_deg = 90;  ///< of the pit wall
  double pit_depth_m = 0;
  double wanted_cut = 1.5, wanted_slope = 1.5;  ///< factors wanted
  std::vector<CutHeights> cuts;                 ///< empty when the soil is not known
  EdgeGround edge = EdgeGround::none;
  std::optional<SoilStrength> edge_soil;  ///< strength taken for the slips: the low one of the soil
  std::optional<SoilStrength> fill_soil;  ///< strength taken for the fill; absent: none on the downhill side
  std::vector<EdgeSlip> slips;            ///< empty and full_leaking; none when there is no slope or soil
  double crack_full_share = 0;            ///< of the pit's depth that stands full of water
  double upper_end_most_m = 0;            ///< slips that begin further downhill leave the tank alone
  bool is_searched = false;               ///< the slips hold their circles, or why there is none
  /// Lowest factor of all slips.
  std::optional<double> leastFactor() const;
};

/// One point of the ground down the fall: x from the middle of the tank, z above the finished floor.
using GroundLine = std::vector<Eigen::Vector2d>;

/// What the section of the downhill side is made from.
struct DownhillSide {
  GroundLine finished;    ///< ground down the fall, the pit left out; empty on level ground
  GroundLine under_fill;  ///< the natural ground where it was filled, else the finished one; empty: no fill
  double pit_edge_m = 0;  ///< from the middle of the tank to the pit edge, down the fall
  double uphill_pit_edge_m = 0;     ///< up the fall
  std::optional<double> water_z_m;  ///< ground water, as entered, above the finished floor
};

/// Cut heights, and the sections of the slips without their circles; searchSlips() adds those. Fill counts as
/// loose fill of low strength.
Stability stability(const geometry::TankGeometry& tank, const core::Site& site, const DownhillSide& side);

/// Finds the circles; takes some tenths of a second. The ground from the uphill pit edge on is searched as it
/// stands and with a crack as deep as the pit, for the tank's hole has no strength; the lower factor counts.
void searchSlips(Stability& stability, const std::atomic<bool>* cancel = nullptr);

}  // namespace core::site
