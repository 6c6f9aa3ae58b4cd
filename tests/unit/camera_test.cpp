#include "core/geometry/camera.h"

#include "core/geometry/scene.h"

#include <map>
#include <random>

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <catch2/catch.hpp>

using namespace core::geometry;
using Eigen::Vector3d;
using Eigen::Vector4d;

namespace {

const Vector3d kLeast(-4.5, -3.0, -2.2), kMost(4.5, 3.0, 3.1);

Eigen::Matrix4d wholeMatrix(const Camera& camera, double aspect) {
  const DepthRange depth = depthRange(camera, kLeast, kMost);
  return projectionMatrix(camera, aspect, depth.near_m, depth.far_m) * viewMatrix(camera);
}

Vector3d projected(const Camera& camera, double aspect, const Vector3d& point) {
  return (wholeMatrix(camera, aspect) * point.homogeneous()).eval().hnormalized();
}

Camera anyCamera(std::mt19937& random) {
  std::uniform_real_distribution<double> unit(0, 1);
  Camera camera;
  camera.target = Vector3d(unit(random), unit(random), unit(random)) * 3;
  camera.azimuth_deg = 360 * unit(random) - 180;
  camera.elevation_deg = 170 * unit(random) - 80;
  camera.distance_m = 2 + 30 * unit(random);
  camera.lens = unit(random) < 0.5 ? Camera::Lens::parallel : Camera::Lens::perspective;
  return camera;
}

}  // namespace

TEST_CASE("the view matrix takes the eye to the origin and the target down -z") {
  std::mt19937 random(71);
  for (int k = 0; k < 50; ++k) {
    const Camera camera = anyCamera(random);
    const Eigen::Isometry3d view(viewMatrix(camera));
    CHECK((view * eye(camera)).norm() < 1e-12);
    CHECK((view * camera.target - Vector3d(0, 0, -camera.distance_m)).norm() < 1e-12);
    CHECK((view.linear() * up(camera) - Vector3d::UnitY()).norm() < 1e-12);
    CHECK(view.linear().determinant() == Approx(1));                       // right-handed
    CHECK((view.linear() * view.linear().transpose()).isIdentity(1e-12));  // Eigen: a rotation
  }
}

TEST_CASE("a perspective matrix has the values of the published OpenGL frustum") {
  // OpenGL 2.1 reference pages, gluPerspective: f = cot(fovy / 2); f/aspect, f, (far+near)/(near-far), 2 far
  // near/(near-far), -1.
  Camera camera;
  camera.field_of_view_deg = 90;
  const Eigen::Matrix4d matrix = projectionMatrix(camera, 2, 1, 3);
  Eigen::Matrix4d expected;
  expected << 0.5, 0, 0, 0, 0, 1, 0, 0, 0, 0, -2, -3, 0, 0, -1, 0;
  CHECK((matrix - expected).cwiseAbs().maxCoeff() < 1e-12);
}

TEST_CASE("a parallel matrix has the values of the published OpenGL box") {
  // OpenGL 2.1 reference pages, glOrtho: 2/(right-left), 2/(top-bottom), -2/(far-near),
  // -(far+near)/(far-near).
  Camera camera;
  camera.lens = Camera::Lens::parallel;
  camera.field_of_view_deg = 90;
  camera.distance_m = 5;  // picture 10 m high, at aspect 2 it is 20 m wide
  const Eigen::Matrix4d matrix = projectionMatrix(camera, 2, -1, 3);
  Eigen::Matrix4d expected = Vector4d(0.1, 0.2, -0.5, 1).asDiagonal();
  expected(2, 3) = -0.5;
  CHECK((matrix - expected).cwiseAbs().maxCoeff() < 1e-12);
}

TEST_CASE("every preset shows the whole box and fills the picture one way") {
  for (const auto preset : {ViewPreset::plan, ViewPreset::section, ViewPreset::oblique})
    for (const double aspect : {0.5, 1.0, 1.7}) {
      const Camera camera = presetFor(preset, kLeast, kMost, aspect);
      double widest = 0;
      for (unsigned k = 0; k < 8; ++k) {
        const Vector3d corner((k & 1 ? kMost : kLeast).x(), (k & 2 ? kMost : kLeast).y(),
                              (k & 4 ? kMost : kLeast).z());
        const Vector3d seen = projected(camera, aspect, corner);
        CHECK(seen.cwiseAbs().maxCoeff() < 1);
        widest = std::max({widest, std::abs(seen.x()), std::abs(seen.y())});
      }
      CHECK(widest > 0.9);
    }
}

TEST_CASE("plan has north at the top, section looks north, oblique stands south-east above") {
  const Camera plan = presetFor(ViewPreset::plan, kLeast, kMost, 1.5);
  CHECK(projected(plan, 1.5, {0, 2, 0}).y() > 0.1);
  CHECK(projected(plan, 1.5, {2, 0, 0}).x() > 0.1);
  CHECK(plan.lens == Camera::Lens::parallel);

  const Camera section = presetFor(ViewPreset::section, kLeast, kMost, 1.5);
  CHECK((section.target - eye(section)).normalized().isApprox(Vector3d::UnitY(), 1e-9));
  CHECK(projected(section, 1.5, {2, 0, 0}).x() > 0.1);
  CHECK(projected(section, 1.5, {0, 0, 2}).y() > 0.1);
  CHECK(section.lens == Camera::Lens::parallel);

  const Vector3d stand = eye(presetFor(ViewPreset::oblique, kLeast, kMost, 1.5));
  CHECK(stand.x() > kMost.x());
  CHECK(stand.y() < kLeast.y());
  CHECK(stand.z() > kMost.z());
}

TEST_CASE("a parallel lens keeps sizes whatever the depth") {
  const Camera plan = presetFor(ViewPreset::plan, kLeast, kMost, 1.5);
  const double near = projected(plan, 1.5, {1, 0, 3}).x() - projected(plan, 1.5, {0, 0, 3}).x();
  const double far = projected(plan, 1.5, {1, 0, -2}).x() - projected(plan, 1.5, {0, 0, -2}).x();
  CHECK(near == Approx(far));
}

TEST_CASE("the depth range holds the box with a ratio a 24 bit buffer can bear") {
  std::mt19937 random(72);
  for (int k = 0; k < 200; ++k) {
    const Camera camera = anyCamera(random);
    const DepthRange depth = depthRange(camera, kLeast, kMost);
    CHECK(depth.far_m > depth.near_m);
    if (camera.lens == Camera::Lens::parallel) continue;
    CHECK(depth.near_m > 0);
    CHECK(depth.far_m / depth.near_m < 1e4);
    for (const Vector3d& corner : {kLeast, kMost}) {
      const double ahead = -(viewMatrix(camera) * corner.homogeneous())(2);
      CHECK(ahead < depth.far_m);
      if (ahead > 0.1) CHECK(ahead > depth.near_m);
    }
  }
}

TEST_CASE("turning there and back or right round leaves the camera where it was") {
  std::mt19937 random(73);
  for (int k = 0; k < 50; ++k) {
    const Camera camera = anyCamera(random);
    const Camera back = orbited(orbited(camera, 33, -4), -33, 4);
    CHECK((eye(back) - eye(camera)).norm() < 1e-9);
    CHECK((eye(orbited(camera, 360, 0)) - eye(camera)).norm() < 1e-9);
    CHECK((eye(orbited(camera, 70, 5)) - camera.target).norm() == Approx(camera.distance_m));
  }
}

TEST_CASE("elevation and distance are held to their ranges") {
  CHECK(orbited(Camera{}, 0, 500).elevation_deg == 90);
  CHECK(orbited(Camera{}, 0, -500).elevation_deg == -89.9);
  CHECK(zoomed(Camera{}, 1e9).distance_m == 500);
  CHECK(zoomed(Camera{}, 1e-9).distance_m == 0.2);
  CHECK(zoomed(zoomed(Camera{}, 0.8), 1 / 0.8).distance_m == Approx(Camera{}.distance_m));
}

TEST_CASE("what stands at the target follows a drag") {
  std::mt19937 random(74);
  for (int k = 0; k < 50; ++k) {
    const Camera camera = anyCamera(random);
    const Vector3d before = projected(camera, 1, camera.target);
    const Vector3d after = projected(panned(camera, 0.25, -0.1), 1, camera.target);
    CHECK(after.x() - before.x() == Approx(0.5));  // the picture is 2 units high
    CHECK(after.y() - before.y() == Approx(-0.2));
  }
}

TEST_CASE("the person stands 1.65 m tall at the given foot") {
  const Mesh mesh = person({2, 3, 1});
  Eigen::AlignedBox3d box;
  for (const Vector3d& point : mesh.points) box.extend(point);
  CHECK(box.min().z() == Approx(1));
  CHECK(box.max().z() == Approx(2.65));
  CHECK(box.center().x() == Approx(2));
  CHECK(box.center().y() == Approx(3));
  CHECK(box.sizes().x() < 0.8);
}

TEST_CASE("every body of the person is closed and faces outward") {
  const Mesh mesh = person(Vector3d::Zero());
  std::map<std::pair<std::uint32_t, std::uint32_t>, int> edges;
  double six_volumes = 0;
  for (const auto& [a, b, c] : mesh.triangles) {
    ++edges[{a, b}], ++edges[{b, c}], ++edges[{c, a}];
    six_volumes += mesh.points[a].dot(mesh.points[b].cross(mesh.points[c]));
  }
  for (const auto& [edge, count] : edges) {
    REQUIRE(count == 1);
    REQUIRE(edges.count({edge.second, edge.first}) == 1);
  }
  // A grown person displaces roughly 0.05 to 0.08 m3: at about 1000 kg/m3 that is 50 to 80 kg (from memory).
  CHECK(six_volumes / 6 > 0.04);
  CHECK(six_volumes / 6 < 0.09);
}
