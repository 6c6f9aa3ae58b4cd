#pragma once

#include "core/base/problem.h"
#include "core/geometry/tank_geometry.h"
#include "core/site/bench.h"
#include "core/site/bench_pegs.h"
#include "core/site/ground.h"
#include "core/site/pit.h"
#include "core/site/spoil.h"
#include "core/site/stability_plan.h"

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

namespace core::site {

/// The natural ground ready for use, with what is doubtful in its survey. Kept from plan to plan, for joining
/// 100,000 spot heights to triangles takes most of a second.
struct SurveyedGround {
  core::Ground from;
  tl::expected<GroundSurface, TinFault> surface;
  Problems notes;        ///< of checkSurvey: doubtful points that do not stop anything
  Problems faults = {};  ///< of checkSurvey: what keeps it from being used
};

/// Makes the ground ready. @param cancel may be null; then the surface is TinFault::cancelled
std::shared_ptr<const SurveyedGround> surveyedGround(const core::Ground& ground,
                                                     const std::atomic<bool>* cancel = nullptr);

/// Natural and finished ground at one place of a line across the tank.
struct GroundSample {
  double along_m;     ///< from the middle of the tank
  double natural_m;   ///< above the finished floor of the tank
  double finished_m;  ///< after cutting and filling, the pit left out; above the finished floor
};

/// Cut and fill at one of the levels that can be asked for.
struct PlatformChoice {
  PlatformLevel level_by;
  double over_middle_m;  ///< over the natural ground at the middle of the tank
  double cut_m3, fill_m3;
  double cover_m;  ///< natural ground over floor and walls of the pit where it is least; below 0: on fill
};

/// Where the tank stands on its ground, and the platform made for it.
/// All levels and places are in the site's frame (see GroundSurface) unless they say otherwise.
struct SitePlan {
  std::shared_ptr<const SurveyedGround> ground;
  bool has_relief = false;  ///< the ground is not level: there is a bench
  Placement placement;
  Fall fall;                  ///< of the natural ground under the platform
  double middle_level_m = 0;  ///< natural ground at the middle of the tank
  BenchShape shape;
  std::optional<BenchFault> fault;      ///< why there is no bench
  std::optional<Bench> bench;           ///< absent on level ground, and when it has a fault
  std::optional<PitCover> cover;        ///< absent likewise
  std::vector<PlatformChoice> choices;  ///< each way to find the level that gives a bench
  std::vector<BenchPeg> pegs;
  double platform_m2 = 0;
  double topsoil_m3 = 0;                ///< stripped, as it lies
  double lacking_bank_m3 = 0;           ///< ground to be brought for the fill, beyond all that is dug
  double spoil_bank_m3 = 0;             ///< of pit and cut, less what the fill takes
  std::optional<SpoilHeap> heap;        ///< absent when the soil is not known, or nothing is left over
  std::optional<HeapPlace> heap_place;  ///< in the site's frame
  double setback_m = 0;
  std::vector<GroundSample> across;    ///< along the section A-A: the tank's own y through its middle
  std::vector<GroundSample> along;     ///< along the section B-B: the tank's own x through its middle
  std::vector<GroundSample> downhill;  ///< straight down the fall through the middle of the tank
  Stability stability;

  /// Level of the platform, which the rim is level with.
  double rimLevel() const { return bench ? bench->level_m : middle_level_m; }
};

/// @param earlier the ground of an earlier plan, used again when it is of the same spot heights; may be null
SitePlan sitePlan(const geometry::TankGeometry& tank, const core::Site& site, const Lining& lining,
                  std::shared_ptr<const SurveyedGround> earlier);

/// Height of the finished ground [m]: natural ground between the planes of cut and fill. Nothing outside the
/// survey.
std::optional<double> finishedGround(const SitePlan& plan, const Eigen::Vector2d& at);

/// A place of the site's frame in the tank's own: x, y turned and moved, z above the finished floor.
Eigen::Vector3d inTankFrame(const SitePlan& plan, const geometry::TankGeometry& tank,
                            const Eigen::Vector3d& at_m);

}  // namespace core::site
