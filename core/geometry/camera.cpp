#include "core/geometry/camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace core::geometry {
namespace {

constexpr double kLeastElevation_deg = -89.9;
constexpr double kMostElevation_deg = 90;
constexpr double kLeastDistance_m = 0.2;
constexpr double kMostDistance_m = 500;
constexpr double kMostDepthRatio = 5000;
constexpr double kLeastNear_m = 0.02;
constexpr double kBorder = 1.06;  // picture over box

double radians(double degrees) {
  return degrees * std::numbers::pi / 180;
}

Eigen::Vector3d towardEye(const Camera& camera) {
  const double a = radians(camera.azimuth_deg), e = radians(camera.elevation_deg);
  return {std::cos(e) * std::cos(a), std::cos(e) * std::sin(a), std::sin(e)};
}

Eigen::Vector3d right(const Camera& camera) {
  const double a = radians(camera.azimuth_deg);
  return {-std::sin(a), std::cos(a), 0};
}

double halfHeightPerMetre(const Camera& camera) {
  return std::tan(radians(camera.field_of_view_deg) / 2);
}

std::array<Eigen::Vector3d, 8> corners(const Eigen::Vector3d& least, const Eigen::Vector3d& most) {
  std::array<Eigen::Vector3d, 8> all;
  for (unsigned k = 0; k < 8; ++k)
    all[k] = {(k & 1 ? most : least).x(), (k & 2 ? most : least).y(), (k & 4 ? most : least).z()};
  return all;
}

/// Distance at which one corner of the box lies on the edge of the picture [m].
double distanceToShow(const Camera& camera, const Eigen::Vector3d& corner, double aspect) {
  const Eigen::Vector3d offset = corner - camera.target;
  const double across = std::abs(offset.dot(right(camera))) / aspect;
  const double along = std::abs(offset.dot(up(camera)));
  const double flat = kBorder * std::max(across, along) / halfHeightPerMetre(camera);
  return camera.lens == Camera::Lens::parallel ? flat : flat + offset.dot(towardEye(camera));
}

/// Move of the target, square to the line of sight, that brings the middle of what is seen to the middle of
/// the picture.
Eigen::Vector3d offCentre(const Camera& camera, std::span<const Eigen::Vector3d> points) {
  Eigen::Array2d least = Eigen::Array2d::Constant(std::numeric_limits<double>::infinity());
  Eigen::Array2d most = -least;
  for (const Eigen::Vector3d& point : points) {
    const Eigen::Vector3d offset = point - camera.target;
    const bool flat = camera.lens == Camera::Lens::parallel;
    const double nearer =
        flat ? 1
             : camera.distance_m / std::max(kLeastNear_m, camera.distance_m - offset.dot(towardEye(camera)));
    const Eigen::Array2d seen(offset.dot(right(camera)) * nearer, offset.dot(up(camera)) * nearer);
    least = least.min(seen);
    most = most.max(seen);
  }
  const Eigen::Array2d middle = (least + most) / 2;
  return middle.x() * right(camera) + middle.y() * up(camera);
}

Camera presetDirection(ViewPreset preset) {
  Camera camera;
  camera.azimuth_deg = preset == ViewPreset::oblique ? -62 : -90;
  camera.elevation_deg = preset == ViewPreset::plan ? 90 : preset == ViewPreset::section ? 0 : 32;
  camera.lens = preset == ViewPreset::oblique ? Camera::Lens::perspective : Camera::Lens::parallel;
  camera.field_of_view_deg = 32;
  return camera;
}

}  // namespace

Eigen::Vector3d eye(const Camera& camera) {
  return camera.target + camera.distance_m * towardEye(camera);
}

Eigen::Vector3d up(const Camera& camera) {
  const double a = radians(camera.azimuth_deg), e = radians(camera.elevation_deg);
  return {-std::sin(e) * std::cos(a), -std::sin(e) * std::sin(a), std::cos(e)};
}

Camera orbited(const Camera& camera, double d_azimuth_deg, double d_elevation_deg) {
  Camera turned = camera;
  turned.azimuth_deg = std::remainder(camera.azimuth_deg + d_azimuth_deg, 360.0);
  turned.elevation_deg =
      std::clamp(camera.elevation_deg + d_elevation_deg, kLeastElevation_deg, kMostElevation_deg);
  return turned;
}

Camera panned(const Camera& camera, double right_part, double up_part) {
  Camera moved = camera;
  moved.target -= pictureHeight(camera) * (right_part * right(camera) + up_part * up(camera));
  return moved;
}

Camera zoomed(const Camera& camera, double factor) {
  Camera moved = camera;
  moved.distance_m = std::clamp(camera.distance_m * factor, kLeastDistance_m, kMostDistance_m);
  return moved;
}

Camera presetFor(ViewPreset preset, std::span<const Eigen::Vector3d> points, double aspect,
                 double turned_deg) {
  constexpr int kRounds = 8;  // centring a perspective picture converges by about a factor of ten a round
  Camera camera = presetDirection(preset);
  camera.azimuth_deg += turned_deg;
  for (int k = 0; k < kRounds; ++k) {
    camera.target += offCentre(camera, points);
    camera.distance_m = kLeastDistance_m;
    for (const Eigen::Vector3d& point : points)
      camera.distance_m = std::max(camera.distance_m, distanceToShow(camera, point, aspect));
  }
  camera.distance_m = std::min(camera.distance_m, kMostDistance_m);
  return camera;
}

Camera presetFor(ViewPreset preset, std::span<const Eigen::Vector3d> points, double aspect) {
  return presetFor(preset, points, aspect, 0);
}

Camera presetFor(ViewPreset preset, const Eigen::Vector3d& least, const Eigen::Vector3d& most,
                 double aspect) {
  return presetFor(preset, corners(least, most), aspect);
}

double pictureHeight(const Camera& camera) {
  return 2 * camera.distance_m * halfHeightPerMetre(camera);
}

Eigen::Matrix4d viewMatrix(const Camera& camera) {
  Eigen::Matrix3d axes;
  axes << right(camera).transpose(), up(camera).transpose(), towardEye(camera).transpose();
  Eigen::Matrix4d view = Eigen::Matrix4d::Identity();
  view.topLeftCorner<3, 3>() = axes;
  view.topRightCorner<3, 1>() = -axes * eye(camera);
  return view;
}

Eigen::Matrix4d projectionMatrix(const Camera& camera, double aspect, double near_m, double far_m) {
  const double depth_m = far_m - near_m;
  Eigen::Matrix4d projection = Eigen::Matrix4d::Zero();
  if (camera.lens == Camera::Lens::parallel) {
    const double half_m = pictureHeight(camera) / 2;
    projection.diagonal() << 1 / (half_m * aspect), 1 / half_m, -2 / depth_m, 1;
    projection(2, 3) = -(far_m + near_m) / depth_m;
  } else {
    const double half = halfHeightPerMetre(camera);
    projection.diagonal() << 1 / (half * aspect), 1 / half, -(far_m + near_m) / depth_m, 0;
    projection(2, 3) = -2 * far_m * near_m / depth_m;
    projection(3, 2) = -1;
  }
  return projection;
}

DepthRange depthRange(const Camera& camera, const Eigen::Vector3d& least, const Eigen::Vector3d& most) {
  const Eigen::Vector3d from = eye(camera), away = -towardEye(camera);
  double near_m = 1e9, far_m = -1e9;
  for (const Eigen::Vector3d& corner : corners(least, most)) {
    near_m = std::min(near_m, (corner - from).dot(away));
    far_m = std::max(far_m, (corner - from).dot(away));
  }
  const double slack_m = 0.01 + 0.02 * (far_m - near_m);
  near_m -= slack_m;
  far_m += slack_m;
  if (camera.lens == Camera::Lens::parallel) return {near_m, far_m};
  far_m = std::max(far_m, 2 * kLeastNear_m);
  return {std::max({near_m, far_m / kMostDepthRatio, kLeastNear_m}), far_m};
}

}  // namespace core::geometry
