#pragma once

#include "core/geometry/mesh.h"
#include "core/site/ground.h"

#include <atomic>
#include <optional>
#include <vector>

#include <Eigen/Core>
#include <tl/expected.hpp>

namespace core::site {

/// A platform cut into and filled onto the ground. Its outline is a convex polygon; outside each edge the
/// ground is cut back, or filled out, along one plane that rises or falls square to the edge. The planes of
/// two edges meet in a mitre, so corners stay sharp all the way to daylight (a round platform is a polygon of
/// many edges). Ground above the cut planes goes, ground below the fill planes is filled, between them it
/// stays.
struct BenchShape {
  std::vector<Eigen::Vector2d> outline_m;  ///< convex, anticlockwise, in the site's frame
  double cut_batter = 1;                   ///< horizontal run per unit height of the cut face, over 0
  double fill_batter = 1.5;                ///< horizontal run per unit height of the fill face, over 0
  double topsoil_m = 0;                    ///< stripped over all disturbed ground before cutting and filling
};

enum class BenchFault {
  outside_survey,   ///< the platform is not wholly inside the survey
  leaves_survey,    ///< cut or fill runs on past the edge of the survey
  never_daylights,  ///< even ground as steep as a batter, or steeper: the face never meets it
  cannot_balance,   ///< no level balances cut and fill
  cancelled,
};

/// Where a batter meets the natural ground.
struct DaylightLine {
  enum class Of { cut, fill } of = Of::cut;
  Polyline line;
};

struct Bench {
  double level_m = 0;  ///< of the platform
  // Topsoil apart: strip + cut - fill is the ground taken away less the ground added. All in place: cut and
  // strip as they lie, fill as compacted.
  double cut_m3 = 0;
  double fill_m3 = 0;
  double strip_m3 = 0;  ///< topsoil; on the cut face no deeper than the face
  double platform_m2 = 0;
  double cut_face_m2 = 0;   ///< in plan
  double fill_face_m2 = 0;  ///< in plan
  double disturbed_m2() const { return platform_m2 + cut_face_m2 + fill_face_m2; }

  std::vector<DaylightLine> daylight;
  geometry::Mesh platform, cut_face, fill_face;  ///< open surfaces, facing up
};

/// Bench with its platform at `level_m`. Volumes are exact: on an even slope in closed form, on a survey by
/// cutting every triangle along the edges of platform and faces.
tl::expected<Bench, BenchFault> benchAt(const GroundSurface& ground, const BenchShape& shape, double level_m,
                                        const std::atomic<bool>* cancel = nullptr);

/// How cut and fill are weighed against each other.
struct Balance {
  double compacted_per_bank = 0.9;  ///< volume in the finished fill of one cubic metre dug, over 0
  double more_bank_m3 = 0;          ///< other ground put into the fill, as it lies: from the pit, brought in
};

/// Bench at the level where (cut + more) * compacted_per_bank = fill, to 1e-9 of the fill and no finer than
/// 1e-9 m3. Topsoil takes no part.
tl::expected<Bench, BenchFault> balancedBench(const GroundSurface& ground, const BenchShape& shape,
                                              const Balance& balance,
                                              const std::atomic<bool>* cancel = nullptr);

}  // namespace core::site
