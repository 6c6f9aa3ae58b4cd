#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"
#include "core/site/site_plan.h"
#include "core/works/earthwork.h"

#include <optional>

namespace core::compare {

/// What the platform of any size moves on one site: volumes as core::site::sitePlan finds them, without the
/// faces, lines and pegs that it makes besides.
class Platforms {
public:
  /// @param site the plan of a tank of another size at the same place; must outlive this
  Platforms(const Project& project, const site::SitePlan& site, const Eigen::Vector2d& middle_m);

  /// Nothing when no platform can be made, or the tank would stand on fill.
  std::optional<works::Platform> of(const geometry::TankGeometry& tank) const;

private:
  struct Moved {
    double level_m, cut_m3, fill_m3, strip_m3;
  };
  const core::Platform& platform_;
  const Lining& lining_;
  const site::SitePlan& site_;
  Eigen::Vector2d middle_m_;  ///< of the tank, in the site's frame

  std::optional<Moved> onRelief(const geometry::TankGeometry& tank, const site::PitShape& pit) const;
  std::optional<Moved> at(const site::BenchShape& shape, double level_m) const;
  std::optional<Moved> balanced(const site::BenchShape& shape) const;
};

}  // namespace core::compare
