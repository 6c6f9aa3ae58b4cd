#include "core/site/ground_lines.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kStep_m = 0.05;
constexpr double kBeyond_m = 1.5;   // ground shown beyond what is disturbed
constexpr double kFarthest_m = 15;  // of the section A-A beyond the platform
constexpr double kEverywhere_m = 1e6;
constexpr double kMostSamples = 3000;
constexpr double kHold_m = 0.01;  // of a line with fewer points
constexpr double kDownhill_depths = 6;

Vector2d middleOf(const SitePlan& plan, const geometry::TankGeometry& tank) {
  return plan.placement.toSite(tank.outline().centre());
}

/// The tank's own y in the site's frame.
Vector2d acrossOf(const SitePlan& plan) {
  return plan.placement.turned(Vector2d::UnitY());
}

Vector2d downhillOf(const SitePlan& plan) {
  const double azimuth = plan.fall.azimuth_deg.value_or(0) * std::numbers::pi / 180;
  return {std::sin(azimuth), std::cos(azimuth)};
}

/// Greatest distance from `middle` of disturbed ground, held to some metres beyond the platform where asked.
double reachOf(const SitePlan& plan, const Vector2d& middle, double most_beyond_m) {
  double reach = 0;
  for (const Vector2d& p : plan.shape.outline_m) reach = std::max(reach, (p - middle).norm());
  if (!plan.bench) return reach;
  const double most = reach + most_beyond_m;
  for (const DaylightLine& line : plan.bench->daylight) {
    for (const Vector3d& p : line.line) reach = std::max(reach, (p.head<2>() - middle).norm());
  }
  return std::min(reach, most);
}

/// What a line does beyond the survey: it ends, or goes on along the plane of the ground under the platform.
enum class Beyond { left_out, goes_on };

std::vector<GroundSample> sampled(const SitePlan& plan, const geometry::TankGeometry& tank,
                                  const Vector2d& along, double from_m, double to_m, Beyond beyond) {
  const Vector2d middle = middleOf(plan, tank);
  const double to_floor = tank.depth() - plan.rimLevel();
  std::vector<GroundSample> samples;
  const std::optional<Plane> plane =
      beyond == Beyond::goes_on ? plan.ground->surface->planeOver(plan.shape.outline_m) : std::nullopt;
  const auto steps = static_cast<int>(std::min(std::ceil((to_m - from_m) / kStep_m), kMostSamples));
  for (int k = 0; k <= steps; ++k) {
    const double x = from_m + (to_m - from_m) * k / steps;
    const Vector2d at = middle + x * along;
    std::optional<double> natural = plan.ground->surface->heightAt(at);
    if (!natural && plane) natural = plane->at(at);
    std::optional<double> finished = finishedGround(plan, at);
    if (!finished) finished = natural;
    if (natural && finished) samples.push_back({x, *natural + to_floor, *finished + to_floor});
  }
  return samples;
}

}  // namespace

void addGroundLines(SitePlan& plan, const geometry::TankGeometry& tank, const PitShape& pit) {
  if (!plan.bench) return;
  const Vector2d middle = middleOf(plan, tank);
  const double reach = reachOf(plan, middle, kFarthest_m) + kBeyond_m;
  plan.across = sampled(plan, tank, acrossOf(plan), -reach, reach, Beyond::left_out);
  plan.along = sampled(plan, tank, plan.placement.turned(Vector2d::UnitX()), -reach, reach, Beyond::left_out);
  if (!plan.fall.azimuth_deg) return;
  const double all = reachOf(plan, middle, kEverywhere_m) + kBeyond_m;
  const double downhill = std::max(all, pitReach(plan, tank, pit) + kDownhill_depths * pit.depth_m);
  plan.downhill = sampled(plan, tank, downhillOf(plan), -reach, downhill, Beyond::goes_on);
}

GroundLine groundLine(const SitePlan& plan, GroundOf of) {
  namespace bg = boost::geometry;
  using Point = bg::model::d2::point_xy<double>;
  bg::model::linestring<Point> fine, coarse;
  for (const GroundSample& s : plan.downhill)
    fine.emplace_back(s.along_m,
                      of == GroundOf::finished ? s.finished_m : std::min(s.natural_m, s.finished_m));
  bg::simplify(fine, coarse, kHold_m);
  GroundLine line;
  for (const Point& p : coarse) line.emplace_back(p.x(), p.y());
  return line;
}

double pitReach(const SitePlan& plan, const geometry::TankGeometry& tank, const PitShape& pit, Side side) {
  const Vector2d middle = middleOf(plan, tank);
  Vector2d along = plan.fall.azimuth_deg ? downhillOf(plan) : acrossOf(plan);
  if (side == Side::uphill) along = -along;
  double reach = 0;
  for (const Vector2d& p : siteOutline(pit.outline, pit.rim_offset_m, plan.placement).points_m)
    reach = std::max(reach, along.dot(p - middle));
  return reach;
}

}  // namespace core::site
