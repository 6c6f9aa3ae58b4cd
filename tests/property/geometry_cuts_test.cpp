#include "core/geometry/scene.h"
#include "core/geometry/tank_geometry.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/hull_tank.h"
#include "tests/support/random_tank.h"

#include <cmath>
#include <numbers>
#include <vector>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

namespace {

using namespace core::geometry;
using core::Shape;
using support::RandomTanks;
using support::TankAndLining;

CutPlane turned(const CutPlane& plane) {
  return {plane.point, -plane.normal};
}

// A plane through a point between two corners of the mesh that are not above one another.
CutPlane randomPlane(support::Dice& dice, const Mesh& mesh) {
  const int last = static_cast<int>(mesh.points.size()) - 1;
  const auto corner = [&]() -> Eigen::Vector2d {
    return mesh.points[static_cast<std::size_t>(dice.whole(0, last))].head<2>();
  };
  const Eigen::Vector2d a = corner();
  Eigen::Vector2d b = corner();
  while ((a - b).norm() < 0.1) b = corner();
  const double turn = dice.between(0, 2 * std::numbers::pi);
  const double share = dice.between(0.1, 0.9);
  return {share * a + (1 - share) * b, 3 * Eigen::Vector2d(std::cos(turn), std::sin(turn))};
}

// Area within the lines in which the triangles cross the plane: the section without any triangulation.
double sectionByCrossings(const Mesh& mesh, const CutPlane& plane) {
  const Eigen::Vector2d n = plane.normal.normalized();
  const Eigen::Vector2d right(-n.y(), n.x());
  double twice = 0;
  for (const auto& t : mesh.triangles) {
    Eigen::Vector2d from = Eigen::Vector2d::Zero(), to = from;
    for (std::size_t k = 0; k < 3; ++k) {
      const Eigen::Vector3d& a = mesh.points[t[k]];
      const Eigen::Vector3d& b = mesh.points[t[(k + 1) % 3]];
      const double da = n.dot(a.head<2>() - plane.point), db = n.dot(b.head<2>() - plane.point);
      if ((da < 0) == (db < 0)) continue;
      const Eigen::Vector3d p = a + da / (da - db) * (b - a);
      const Eigen::Vector2d at(right.dot(p.head<2>() - plane.point), p.z());
      if (da < 0) {
        from = at;
      } else {
        to = at;
      }
    }
    twice += to.x() * from.y() - to.y() * from.x();
  }
  return std::abs(twice) / 2;
}

struct Section {
  double area_m2 = 0;      // with sign: seen from the side cut away
  double least_m2 = 0;     // most negative triangle
  double off_plane_m = 0;  // farthest corner from the plane
};

Section section(const CutMesh& half, const CutPlane& plane) {
  const Eigen::Vector2d n = plane.normal.normalized();
  const Eigen::Vector3d n3(n.x(), n.y(), 0);
  Section result;
  for (std::size_t i = half.first_section_triangle; i < half.mesh.triangles.size(); ++i) {
    const auto& t = half.mesh.triangles[i];
    const Eigen::Vector3d& a = half.mesh.points[t[0]];
    const double area = (half.mesh.points[t[1]] - a).cross(half.mesh.points[t[2]] - a).dot(n3) / 2;
    result.area_m2 += area;
    result.least_m2 = std::min(result.least_m2, area);
    for (const auto v : t) {
      result.off_plane_m =
          std::max(result.off_plane_m, std::abs(n.dot(half.mesh.points[v].head<2>() - plane.point)));
    }
  }
  return result;
}

void requireCleanCut(const Mesh& mesh, const CutPlane& plane) {
  const CutMesh front = cut(mesh, plane), back = cut(mesh, turned(plane));
  const double whole = volume(mesh);
  double halves = 0;
  for (const CutMesh* half : {&front, &back}) {
    if (half->mesh.empty()) continue;
    const support::cgal::Solid measured = support::cgal::solid(half->mesh);
    REQUIRE(measured.manifold);
    REQUIRE(measured.closed);
    REQUIRE(measured.outward);
    halves += measured.volume_m3;
  }
  REQUIRE(halves == Approx(whole).epsilon(1e-9));

  const Section seen = section(front, plane), other = section(back, turned(plane));
  const double size = std::max(1.0, seen.area_m2);
  REQUIRE(seen.off_plane_m < 1e-9);
  REQUIRE(seen.least_m2 > -1e-9 * size);
  REQUIRE(seen.area_m2 == Approx(other.area_m2).epsilon(1e-9).margin(1e-12));
  REQUIRE(seen.area_m2 == Approx(sectionByCrossings(mesh, plane)).epsilon(1e-9).margin(1e-12));
  REQUIRE(seen.area_m2 == Approx(support::cgal::sectionArea(mesh, plane)).epsilon(1e-9).margin(1e-12));
}

std::vector<Mesh> solids(const TankGeometry& tank, double level_m, int facets, int arc_steps) {
  const Ring ring = tank.outline().ring(facets);
  std::vector<Mesh> all;
  for (const Layer& layer : tank.layers()) all.push_back(solid(ring, tank.layerProfile(layer.id, arc_steps)));
  all.push_back(solid(ring, tank.pitProfile()));
  all.push_back(solid(ring, tank.waterProfile(level_m, arc_steps)));
  all.push_back(solid(ring, tank.groundProfile(1.5, 0.5)));
  return all;
}

// Ground and excavation are the two parts of one closed surface.
Mesh closedMesh(const Part& part, const Scene& drawn) {
  Mesh mesh = part.mesh;
  if (part.role != Role::ground) return mesh;
  for (const Part& other : drawn.parts) {
    if (other.role != Role::excavation) continue;
    mesh.triangles.insert(mesh.triangles.end(), other.mesh.triangles.begin(), other.mesh.triangles.end());
  }
  return mesh;
}

void requireClosed(const Mesh& mesh) {
  if (mesh.empty()) return;
  const support::cgal::Solid measured = support::cgal::solid(mesh);
  REQUIRE(measured.manifold);
  REQUIRE(measured.closed);
  REQUIRE(measured.positive);
}

void requireInBox(const Mesh& mesh, const Scene& drawn) {
  for (const Eigen::Vector3d& p : mesh.points) {
    REQUIRE((p.array() >= drawn.least.array() - 1e-9).all());
    REQUIRE((p.array() <= drawn.most.array() + 1e-9).all());
  }
}

const auto kShapes = {Shape::rectangle, Shape::round, Shape::polygon};

}  // namespace

TEST_CASE("a random vertical cut parts a solid into two closed halves with a flat, whole section") {
  RandomTanks tanks(8128);
  for (const Shape shape : kShapes) {
    for (int i = 0; i < 120; ++i) {
      const TankAndLining from = tanks.next(shape);
      const TankGeometry tank(from.tank, from.lining);
      const double level = tanks.dice().between(0.05, 1) * tank.depth();
      int k = 0;
      for (const Mesh& mesh : solids(tank, level, 16, 4)) {
        CAPTURE(static_cast<int>(shape), i, k++);
        requireCleanCut(mesh, randomPlane(tanks.dice(), mesh));
      }
    }
  }
}

TEST_CASE("a cut along a plane through corners stays closed and moves by no more than 2 micrometres") {
  RandomTanks tanks(496);
  for (const Shape shape : kShapes) {
    for (int i = 0; i < 60; ++i) {
      const TankAndLining from = tanks.next(shape);
      const TankGeometry tank(from.tank, from.lining);
      const Ring ring = tank.outline().ring(16);
      const auto corner = tanks.dice().whole(0, static_cast<int>(ring.size()) - 1);
      const double turn = std::numbers::pi / 2 * tanks.dice().whole(0, 3);
      // straight through a corner of the floor, and along the axes, where round tanks have corners and walls
      // have flats
      const CutPlane along{ring.at(corner, 0), {std::cos(turn), std::sin(turn)}};
      const CutPlane middle{tank.outline().centre(), {std::cos(turn), std::sin(turn)}};
      int k = 0;
      for (const Mesh& mesh : solids(tank, tank.depth(), 16, 4)) {
        for (const CutPlane& plane : {along, middle}) {
          CAPTURE(static_cast<int>(shape), i, k++, turn);
          const CutMesh front = cut(mesh, plane), back = cut(mesh, turned(plane));
          const Section seen = section(front, plane);
          for (const CutMesh* half : {&front, &back}) {
            if (half->mesh.empty()) continue;
            const support::cgal::Solid measured = support::cgal::solid(half->mesh);
            REQUIRE(measured.manifold);
            REQUIRE(measured.closed);
          }
          REQUIRE(seen.off_plane_m <= 2e-6 + 1e-12);
          const double slack = 2 * 2e-6 * (area(mesh) / 2);
          REQUIRE(std::abs(volume(front.mesh) + volume(back.mesh) - volume(mesh)) <= slack);
        }
      }
    }
  }
}

TEST_CASE("a plane beside a solid leaves it whole or leaves nothing") {
  RandomTanks tanks(6);
  const TankAndLining from = tanks.next(Shape::polygon, support::Corners::sharp);
  const TankGeometry tank(from.tank, from.lining);
  const Mesh mesh = solid(tank.outline().ring(16), tank.pitProfile());
  const CutMesh whole = cut(mesh, {{100, 0}, {1, 0}});
  CHECK(volume(whole.mesh) == Approx(tank.pitVolume()));
  CHECK(whole.first_section_triangle == whole.mesh.triangles.size());
  CHECK(cut(mesh, {{-100, 0}, {1, 0}}).mesh.empty());
}

TEST_CASE("every part of a picture is closed, cut or whole") {
  RandomTanks tanks(28);
  for (const Shape shape : kShapes) {
    for (int i = 0; i < 40; ++i) {
      const TankAndLining from = tanks.next(shape);
      const TankGeometry tank(from.tank, from.lining);
      SceneOptions options;
      options.facets_per_circle = 24;
      options.water_level_m = tanks.dice().between(0, 1) * tank.depth();
      if (i % 2 == 1) {
        const double turn = tanks.dice().between(0, 6);
        options.cut = CutPlane{{tanks.dice().between(-0.4, 0.4), 0.1}, {std::cos(turn), std::sin(turn)}};
      }
      const Scene drawn = scene(tank, options);
      for (const Part& part : drawn.parts) {
        CAPTURE(static_cast<int>(shape), i, part.id);
        REQUIRE(part.first_section_triangle <= part.mesh.triangles.size());
        requireInBox(part.mesh, drawn);
        if (part.role != Role::excavation) requireClosed(closedMesh(part, drawn));
      }
    }
  }
}

TEST_CASE("the ground and the faces of the pit enclose the block less what is dug") {
  RandomTanks tanks(29);
  for (int i = 0; i < 200; ++i) {
    const TankAndLining from = tanks.next(i % 2 ? Shape::polygon : Shape::rectangle, support::Corners::sharp);
    const TankGeometry tank(from.tank, from.lining);
    const Scene drawn = scene(tank, {});
    const support::cgal::Solid ground = support::cgal::solid(closedMesh(drawn.parts[0], drawn));
    CAPTURE(i);
    REQUIRE(drawn.parts[0].role == Role::ground);
    // the block is a prism from half a metre below the pit to the ground beside the tank
    const double outer = tank.pitProfile().points.back().offset_m + SceneOptions{}.ground_margin_m;
    const support::cgal::Polygon around = support::cgal::offset(tank.outline().corners(0), outer);
    const double block = support::cgal::area(around) * (tank.pitDepth() + 0.5);
    REQUIRE(ground.volume_m3 == Approx(block - tank.pitVolume()).epsilon(1e-9));
    // the faces of the pit are all of the pit but its mouth
    const double edge = tank.pitProfile().points.back().offset_m;
    const double mouth = support::cgal::area(support::cgal::offset(tank.outline().corners(0), edge));
    REQUIRE(drawn.parts[1].role == Role::excavation);
    const double pit = support::HullTank(from, 1).pit().surface_m2;
    REQUIRE(area(drawn.parts[1].mesh) == Approx(pit - mouth).epsilon(1e-9));
  }
}
