#include "core/geometry/pegs.h"

#include "core/geometry/scene.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace core::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kPegHigh_m = 0.4, kPegHalf_m = 0.025;
constexpr double kStringHalf_m = 0.008;
constexpr double kClear_m = 1;       // offset pegs, beyond the corner
constexpr int kAboutRound_pegs = 8;  // about the edge of a round pit

using Heights = std::function<double(const Vector2d&)>;

void addBox(Mesh& mesh, const std::array<Vector3d, 8>& corner) {
  const auto first = static_cast<std::uint32_t>(mesh.points.size());
  mesh.points.insert(mesh.points.end(), corner.begin(), corner.end());
  // corners: lower four anticlockwise from above, then the upper four over them
  constexpr std::array<std::array<std::uint32_t, 3>, 12> kFaces{{{0, 2, 1},
                                                                 {0, 3, 2},
                                                                 {4, 5, 6},
                                                                 {4, 6, 7},
                                                                 {0, 1, 5},
                                                                 {0, 5, 4},
                                                                 {1, 2, 6},
                                                                 {1, 6, 5},
                                                                 {2, 3, 7},
                                                                 {2, 7, 6},
                                                                 {3, 0, 4},
                                                                 {3, 4, 7}}};
  for (const auto& f : kFaces) mesh.triangles.push_back({first + f[0], first + f[1], first + f[2]});
}

void addPeg(Mesh& mesh, const Vector2d& at, const Heights& ground) {
  const double high = ground(at) + kPegUp_m, low = high - kPegHigh_m;
  std::array<Vector3d, 8> corner;
  for (std::size_t k = 0; k < 4; ++k) {
    const double x = at.x() + (k == 1 || k == 2 ? kPegHalf_m : -kPegHalf_m);
    const double y = at.y() + (k >= 2 ? kPegHalf_m : -kPegHalf_m);
    corner[k] = {x, y, low};
    corner[k + 4] = {x, y, high};
  }
  addBox(mesh, corner);
}

void addString(Mesh& mesh, const Vector2d& from, const Vector2d& to, const Heights& ground) {
  const Vector2d along = (to - from).normalized();
  const Vector2d aside(-along.y() * kStringHalf_m, along.x() * kStringHalf_m);
  const auto at = [&](const Vector2d& end, double side, double up) {
    const Vector2d p = end + side * aside;
    return Vector3d(p.x(), p.y(), ground(end) + kStringUp_m + up);
  };
  addBox(mesh, {at(from, 1, -kStringHalf_m), at(from, -1, -kStringHalf_m), at(to, -1, -kStringHalf_m),
                at(to, 1, -kStringHalf_m), at(from, 1, kStringHalf_m), at(from, -1, kStringHalf_m),
                at(to, -1, kStringHalf_m), at(to, 1, kStringHalf_m)});
}

void addRound(PegPlaces& places, const TankGeometry& tank, double edge_m) {
  const Vector2d centre = tank.outline().centre();
  const double radius = tank.outline().radius() + edge_m;
  const auto on = [&](int k) -> Vector2d {
    const double turn = 2 * std::numbers::pi * k / kAboutRound_pegs;
    return centre + radius * Vector2d(std::cos(turn), std::sin(turn));
  };
  places.pegs.push_back(centre);
  for (int k = 0; k < kAboutRound_pegs; ++k) {
    places.pegs.push_back(on(k));
    places.strings.emplace_back(on(k), on(k + 1));
  }
}

void addSides(PegPlaces& places, const std::vector<Vector2d>& corners) {
  for (std::size_t k = 0; k < corners.size(); ++k) {
    const Vector2d &from = corners[k], &to = corners[(k + 1) % corners.size()];
    const Vector2d along = (to - from).normalized();
    const Vector2d before = from - kClear_m * along, after = to + kClear_m * along;
    places.pegs.insert(places.pegs.end(), {from, before, after});
    places.strings.emplace_back(before, after);
  }
}

}  // namespace

PegPlaces pegPlaces(const TankGeometry& tank) {
  PegPlaces places;
  const double edge = tank.pitProfile().points.back().offset_m;
  if (tank.outline().isCircle()) {
    addRound(places, tank, edge);
  } else {
    addSides(places, tank.outline().corners(edge));
  }
  return places;
}

Mesh pegsAndStrings(const TankGeometry& tank, const Heights& ground_m) {
  Mesh mesh;
  const PegPlaces places = pegPlaces(tank);
  for (const Vector2d& peg : places.pegs) addPeg(mesh, peg, ground_m);
  for (const auto& [from, to] : places.strings) addString(mesh, from, to, ground_m);
  return mesh;
}

}  // namespace core::geometry
