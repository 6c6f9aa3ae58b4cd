#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/site/ground.h"

#include <optional>
#include <vector>

#include <Eigen/Core>

namespace core::site {

/// Where the tank stands: its own frame turned and then moved into the site's.
struct Placement {
  Eigen::Vector2d at_m = Eigen::Vector2d::Zero();  ///< of the tank's origin
  double turn_deg = 0;                             ///< anticlockwise seen from above

  /// A direction of the tank's frame in the site's.
  Eigen::Vector2d turned(const Eigen::Vector2d& direction) const;
  /// A direction of the site's frame in the tank's.
  Eigen::Vector2d turnedBack(const Eigen::Vector2d& direction) const;
  Eigen::Vector2d toSite(const Eigen::Vector2d& in_tank_m) const { return at_m + turned(in_tank_m); }
  Eigen::Vector2d toTank(const Eigen::Vector2d& in_site_m) const { return turnedBack(in_site_m - at_m); }
};

/// The pit as dug: its wall runs straight from the floor to the rim, which lies level with the platform.
struct PitShape {
  geometry::Outline outline;  ///< clear floor outline
  double rim_offset_m;        ///< of the pit wall at the rim
  double floor_offset_m;      ///< of the pit wall at the pit floor
  double depth_m;             ///< pit floor below the rim
  double collar_m;            ///< rim collar let into the ground outside the pit wall, wide
};

PitShape pitShape(const geometry::TankGeometry& tank, const Lining& lining);

/// An outline in the site's frame as a convex polygon, anticlockwise.
struct SiteOutline {
  std::vector<Eigen::Vector2d> points_m;
  double area_error = 0;  ///< share by which the polygon's area falls short of the true one; 0 without arcs
};

/// Outline at an offset. Circles and round corners become polygons with their corners on the curve, so many
/// to a full turn; 128 fall short of a circle's area by 0.04 %.
SiteOutline siteOutline(const geometry::Outline& outline, double offset_m, const Placement& placement,
                        int facets_per_circle = 128);

/// Platform of a bench: rim collar and a walkway all round it.
SiteOutline platformOutline(const PitShape& pit, double walkway_m, const Placement& placement,
                            int facets_per_circle = 128);

/// Where the dug pit comes nearest to standing out of natural ground.
struct PitCover {
  double least_m;          ///< natural ground, topsoil off, over floor or wall there; below 0: stands on fill
  Eigen::Vector3d at_m;    ///< on the pit's floor or wall
  double natural_level_m;  ///< highest platform level with the whole pit in natural ground

  bool isInNaturalGround() const { return least_m >= -1e-9; }
};

/// Least cover of floor and walls of a pit dug from a platform at `level_m`; exact, since ground less pit is
/// a function that bends downward over each triangle. Nothing when the pit is not wholly inside the survey.
std::optional<PitCover> leastCover(const GroundSurface& ground, const PitShape& pit,
                                   const Placement& placement, double level_m, double topsoil_m);

}  // namespace core::site
