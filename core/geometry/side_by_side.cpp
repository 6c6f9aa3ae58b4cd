#include "core/geometry/side_by_side.h"

#include <algorithm>
#include <string>

namespace core::geometry {
namespace {

using Eigen::Vector3d;

Scene openTank(const TankGeometry& tank, double ground_margin_m, int facets) {
  SceneOptions options;
  options.cut = CutPlane{Eigen::Vector2d::Zero(), -Eigen::Vector2d::UnitY()};
  options.water_level_m = tank.fullLevel();
  options.facets_per_circle = facets;
  options.ground_margin_m = ground_margin_m;
  return scene(tank, options);
}

/// Half the pit's length at the ground.
double halfLength(const TankGeometry& tank) {
  return tank.outline().size(tank.pitOffset(tank.depth())).x() / 2;
}

/// A line on the ground before the tank that its name stands at.
Dimension nameLine(const TankGeometry& tank, std::size_t number, double front_y_m) {
  const double half = halfLength(tank);
  const Vector3d from(-half, front_y_m, tank.depth());
  const Vector3d to(half, front_y_m, tank.depth());
  return {"option_" + std::to_string(number), from, to, from, to, 2 * half};
}

void moveInto(Scene& all, Scene&& one, const Vector3d& by, std::size_t number) {
  for (Part& part : one.parts) {
    if (part.role == Role::person && number > 1) continue;
    for (Vector3d& point : part.mesh.points) point += by;
    part.id += "_" + std::to_string(number);
    all.parts.push_back(std::move(part));
  }
  for (Dimension d : one.dimensions) {
    for (Vector3d* point : {&d.from, &d.to, &d.from_foot, &d.to_foot}) *point += by;
    all.dimensions.push_back(d);
  }
  all.least = all.least.cwiseMin(one.least + by);
  all.most = all.most.cwiseMax(one.most + by);
}

}  // namespace

Scene sideBySide(const std::vector<TankGeometry>& tanks, double gap_m, int facets_per_circle) {
  Scene all{{}, {}, Vector3d::Constant(1e300), Vector3d::Constant(-1e300)};
  double deepest = 0;
  for (const TankGeometry& tank : tanks) deepest = std::max(deepest, tank.depth());
  double x = 0;
  for (std::size_t k = 0; k < tanks.size(); ++k) {
    const TankGeometry& tank = tanks[k];
    Scene one = openTank(tank, gap_m / 2, facets_per_circle);
    one.dimensions = {nameLine(tank, k + 1, one.least.y() - gap_m / 4)};
    x += halfLength(tank);
    moveInto(all, std::move(one), {x, 0, deepest - tank.depth()}, k + 1);
    x += halfLength(tank) + gap_m;
  }
  return all;
}

}  // namespace core::geometry
