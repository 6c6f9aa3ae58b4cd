#include "core/site/relief.h"

#include "core/geometry/polygon.h"
#include "core/site/pit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kBeyond_m = 1.5;
constexpr double kLeastReach_m = 2.5;
constexpr double kMostReach_m = 25;

/// How far the faces run out beyond the platform.
double faceReach(const SitePlan& plan) {
  double reach = 0;
  for (const DaylightLine& line : plan.bench->daylight) {
    for (const Vector3d& p : line.line) {
      const double run = std::abs(p.z() - plan.bench->level_m) *
                         (line.of == DaylightLine::Of::cut ? plan.shape.cut_batter : plan.shape.fill_batter);
      reach = std::max(reach, run);
    }
  }
  return reach;
}

/// How far the heap lies beyond the platform: to its far side.
double heapReach(const SitePlan& plan) {
  if (!plan.heap || !plan.heap_place) return 0;
  const std::vector<Vector2d>& corner = plan.shape.outline_m;
  double outside = 0;
  for (std::size_t k = 0; k < corner.size(); ++k) {
    const Vector2d& next = corner[(k + 1) % corner.size()];
    const Vector2d out = geometry::outwardNormal(next - corner[k]);
    outside = std::max(outside, out.dot(plan.heap_place->centre_m - corner[k]));
  }
  return outside + plan.heap->base_radius_m;
}

}  // namespace

std::optional<geometry::Relief> reliefOf(const SitePlan& plan, const geometry::TankGeometry& tank,
                                         const Lining& lining, double walkway_m) {
  if (plan.has_relief && !plan.bench) return std::nullopt;
  if (!plan.has_relief && !plan.heap_place) return std::nullopt;
  const PitShape pit = pitShape(tank, lining);
  geometry::Relief relief;
  relief.platform_offset_m = pit.rim_offset_m + pit.collar_m + walkway_m;
  relief.cut_batter = plan.shape.cut_batter;
  relief.fill_batter = plan.shape.fill_batter;
  relief.topsoil_m = plan.has_relief ? plan.shape.topsoil_m : 0;
  const double heap_m = heapReach(plan) + kBeyond_m / 3;
  relief.reach_m = std::clamp(heap_m, kLeastReach_m, kMostReach_m);
  const double to_floor = tank.depth() - plan.rimLevel();
  relief.natural_m = [depth = tank.depth()](const Vector2d&) { return depth; };
  if (plan.bench) {
    relief.reach_m = std::clamp(std::max(faceReach(plan) + kBeyond_m, heap_m), kLeastReach_m, kMostReach_m);
    const Plane under = plan.ground->surface->planeOver(plan.shape.outline_m).value_or(Plane{});
    relief.natural_m = [ground = plan.ground, placement = plan.placement, under,
                        to_floor](const Vector2d& p) {
      const Vector2d at = placement.toSite(p);
      // beyond the survey the picture goes on along the plane under the platform
      return ground->surface->heightAt(at).value_or(under.at(at)) + to_floor;
    };
  }
  if (plan.fall.azimuth_deg) {
    const double azimuth = *plan.fall.azimuth_deg * std::numbers::pi / 180;
    relief.downhill = plan.placement.turnedBack({std::sin(azimuth), std::cos(azimuth)});
  }
  if (plan.heap && plan.heap_place) {
    const Vector3d centre = inTankFrame(
        plan, tank, {plan.heap_place->centre_m.x(), plan.heap_place->centre_m.y(), plan.rimLevel()});
    relief.heap = geometry::Relief::Heap{centre.head<2>(), plan.heap->base_radius_m, plan.heap->top_radius_m,
                                         plan.heap->height_m};
  }
  return relief;
}

}  // namespace core::site
