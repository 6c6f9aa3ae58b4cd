#include "core/geometry/inside_so_far.h"

#include "core/geometry/scene.h"

#include <algorithm>

namespace core::geometry {
namespace {

using Points = std::vector<ProfilePoint>;

/// Coats that are there, of all; thickness of those that are not.
struct Coats {
  int there = 0;
  double missing_m = 0;
};

Coats coatsOf(const TankGeometry& tank, const Built& built) {
  Coats coats;
  for (const Layer& layer : tank.layers()) {
    if (!isCoat(layer)) continue;
    if (stands(layer, tank, built)) {
      ++coats.there;
    } else {
      coats.missing_m += layer.thickness_m;
    }
  }
  return coats;
}

bool hasBed(const TankGeometry& tank, const Built& built) {
  return tank.stoneBed() > 0 && built.has_stone_bed;
}

/// The earth's side, from a level up to the ground.
void addEarth(Points& points, const TankGeometry& tank, double from_m, double dug_m) {
  for (const ProfilePoint& p : tank.pitProfile(dug_m).points) {
    if (p.z_m > from_m + 1e-9) points.push_back(p);
  }
}

/// Over the top of the coats, and down to a ledge that has no collar yet.
void addTop(Points& points, const TankGeometry& tank, bool has_collar) {
  const Points pit = tank.pitProfile().points;
  const ProfilePoint edge = pit.back();
  points.push_back({tank.pitOffset(tank.depth()), tank.depth()});
  if (edge.offset_m <= points.back().offset_m) return;
  if (!has_collar) points.insert(points.end(), {pit[1], pit[2]});
  points.push_back(edge);
}

Points lined(const TankGeometry& tank, int arc_steps) {
  Points points = tank.waterProfile(tank.depth(), arc_steps).points;
  addTop(points, tank, true);
  return points;
}

Points coated(const TankGeometry& tank, double behind_m) {
  const auto face = [&](double z_m) -> ProfilePoint {
    return {tank.clearOffset(z_m) + behind_m * tank.slant(), z_m};
  };
  Points points{face(-behind_m), face(tank.depth())};
  addTop(points, tank, false);
  return points;
}

}  // namespace

std::vector<ProfilePoint> insideSoFar(const TankGeometry& tank, const Built& built, int arc_steps) {
  if (built.dug_m <= 0) return {tank.pitProfile().points.back()};
  const Coats coats = coatsOf(tank, built);
  if (built.dug_m < tank.pitDepth()) return tank.pitProfile(built.dug_m).points;
  if (isLined(tank, built)) return lined(tank, arc_steps);
  if (coats.there > 0) return coated(tank, coats.missing_m);
  const double floor = hasBed(tank, built) ? -tank.liningThickness() : tank.depth() - tank.pitDepth();
  Points points{{tank.pitOffset(floor), floor}};
  addEarth(points, tank, floor, tank.pitDepth());
  return points;
}

}  // namespace core::geometry
