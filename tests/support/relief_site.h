#pragma once

#include "core/geometry/relief.h"
#include "tests/support/cgal_mesh.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Tanks on ground that is not level, with the outlines and heights worked out from the user's sizes alone.
namespace support {

using Height = std::function<double(const Eigen::Vector2d&)>;

struct ReliefSite {
  static constexpr int kFacets = 32;
  static constexpr double kCutBatter = 1.0, kFillBatter = 1.5, kReach_m = 7, kPlatform_m = 1.4;

  core::Tank from;
  core::Lining lining;
  core::geometry::TankGeometry tank;
  cgal::Polygon platform;  ///< its edge
  core::geometry::Relief relief;

  ReliefSite(core::Shape shape, Height natural, const Eigen::Vector2d& downhill);

  /// Puts the edge of the platform at another offset of the outline.
  void setPlatform(double offset_m);
  core::geometry::FinishedGround ground() const { return {tank, relief, kFacets}; }
  bool round() const { return from.shape == core::Shape::round; }
  cgal::Polygon outline(double offset_m) const;
  /// Distance outside the platform's edge; of a round tank as its radius grows.
  double outside(const Eigen::Vector2d& p) const;
  double finished(const Eigen::Vector2d& p) const;

  /// The picture, with nothing but what the site gives.
  core::geometry::Scene drawn(std::optional<core::geometry::CutPlane> plane = std::nullopt) const;
};

/// An even slope; the middle of the tank lies under ground so far over the rim.
ReliefSite evenSlope(core::Shape shape, double percent, double azimuth_deg, double over_rim_m = 0.1);
ReliefSite wavyGround(core::Shape shape, double azimuth_deg);
/// Every shape on slopes and waves of several directions.
std::vector<ReliefSite> reliefSites();

/// Height of a triangle that faces up, at a place in plan; nothing when it does not lie there.
std::optional<double> heightOn(const core::geometry::Mesh& mesh, std::size_t triangle,
                               const Eigen::Vector2d& p);

bool hasPart(const core::geometry::Scene& scene, const std::string& id);
/// @throws std::logic_error when there is none
const core::geometry::Part& partOf(const core::geometry::Scene& scene, const std::string& id);
/// Ground, excavation, cut and fill, which together are one closed surface.
core::geometry::Mesh wholeGround(const core::geometry::Scene& scene);

}  // namespace support
