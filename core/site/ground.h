#pragma once

#include "core/project/project.h"
#include "core/site/clip.h"
#include "core/site/polylines.h"
#include "core/site/tin.h"

#include <memory>
#include <optional>
#include <vector>

#include <Eigen/Core>
#include <tl/expected.hpp>

namespace core::site {

/// A plane: height `level_m` over the origin, rising by `gradient` (x, y) [m/m].
struct Plane {
  Eigen::Vector2d gradient = Eigen::Vector2d::Zero();
  double level_m = 0;

  double at(const Eigen::Vector2d& p) const { return level_m + gradient.dot(p); }
};

/// Fall of the ground.
struct Fall {
  double percent = 0;  ///< fall per run, 100 = 45 degrees
  double degree = 0;   ///< from the level
  std::optional<double>
      azimuth_deg;  ///< downhill, clockwise from north (y), 0 to 360; absent on level ground
};

Fall fallOf(const Plane& plane);

/// The natural ground as a surface over the plan.
/// Frame of everything in core::site: x east, y north, z up [m]. The tank stands at the origin unless a
/// placement says otherwise. On level and evenly sloping ground z = 0 is the ground at the origin; with spot
/// heights z is the survey's own datum.
class GroundSurface {
public:
  static GroundSurface level(double level_m = 0);
  /// Even slope through z = 0 at the origin.
  /// @param azimuth_deg downhill, clockwise from north
  static GroundSurface slope(double fall_percent, double azimuth_deg);
  static GroundSurface plane(const Plane& plane);
  /// Spot heights joined to triangles; nothing is known outside them.
  static tl::expected<GroundSurface, TinFault> spotHeights(std::span<const Eigen::Vector3d> points_m,
                                                           const std::atomic<bool>* cancel = nullptr);

  /// Height of the ground [m]; nothing outside the survey.
  std::optional<double> heightAt(const Eigen::Vector2d& at) const;
  /// The plane; null for spot heights.
  const Plane* plane() const { return tin_ ? nullptr : &plane_; }
  /// The triangles; null for a plane.
  const Tin* tin() const { return tin_ ? &tin_->tin : nullptr; }

  /// Ground over a convex polygon, cut along its edges: patches whose plans cover it.
  std::vector<Patch> over(const std::vector<Eigen::Vector2d>& convex) const;
  /// Least-squares plane of the ground over a convex polygon, every square metre counting alike (exact
  /// integrals over the triangles); nothing when the polygon is not wholly inside the survey.
  std::optional<Plane> planeOver(const std::vector<Eigen::Vector2d>& convex) const;

private:
  struct Survey {
    explicit Survey(Tin t) : tin(std::move(t)), lookup(tin) {}
    Tin tin;
    TinLookup lookup;
  };
  Plane plane_;
  std::shared_ptr<const Survey> tin_;  // never changed, so copies share it
};

/// The ground as entered. Spot heights should have passed checkSurvey().
tl::expected<GroundSurface, TinFault> groundSurface(const core::Ground& ground,
                                                    const std::atomic<bool>* cancel = nullptr);

/// Contour line of one level.
struct Contour {
  double level_m;
  Polyline line;
};

/// Plain step for contour lines [m]: 1, 2 or 5 times a power of ten, the least that gives at most `most`
/// lines over `range_m`.
double contourStep(double range_m, int most);

/// Contour lines at whole multiples of `step_m`. Even slopes are drawn inside the box; a survey's lines run
/// over all of it.
std::vector<Contour> contours(const GroundSurface& ground, double step_m, const Eigen::Vector2d& box_least_m,
                              const Eigen::Vector2d& box_most_m);

}  // namespace core::site
