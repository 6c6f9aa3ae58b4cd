#pragma once

#include <optional>
#include <span>

#include <Eigen/Core>
#include <Eigen/Geometry>

namespace core::geometry {

/// Eye that turns about a point. z is up.
struct Camera {
  enum class Lens { perspective, parallel };
  Eigen::Vector3d target = Eigen::Vector3d::Zero();  ///< [m]
  double azimuth_deg = 35;    ///< direction from target to eye, anticlockwise from +x seen from above
  double elevation_deg = 30;  ///< of the eye above the horizon, -89.9 to 90
  double distance_m = 15;
  double field_of_view_deg = 35;  ///< vertical
  Lens lens = Lens::perspective;

  bool operator==(const Camera&) const = default;
};

enum class ViewPreset { plan, section, oblique };

Eigen::Vector3d eye(const Camera& camera);
Eigen::Vector3d up(const Camera& camera);

/// Camera turned by a drag [deg], elevation held to its range.
Camera orbited(const Camera& camera, double d_azimuth_deg, double d_elevation_deg);
/// Camera moved so that what stands at the target follows a drag given in fractions of the picture height.
Camera panned(const Camera& camera, double right, double up);
/// Camera brought nearer (factor < 1) or farther, distance held to 0.2 .. 500 m.
Camera zoomed(const Camera& camera, double factor);

/// Camera that shows all points, centred, from one of the standard sides. Section looks at the section face
/// along +y.
Camera presetFor(ViewPreset preset, std::span<const Eigen::Vector3d> points, double aspect);
/// The same, seen from a direction turned about the upright [deg].
Camera presetFor(ViewPreset preset, std::span<const Eigen::Vector3d> points, double aspect,
                 double turned_deg);
/// The same for the corners of a box.
Camera presetFor(ViewPreset preset, const Eigen::Vector3d& least, const Eigen::Vector3d& most, double aspect);

/// Height of the picture at the target [m]; a parallel lens shows as much as a perspective one shows at its
/// target.
double pictureHeight(const Camera& camera);

/// View matrix (right-handed, looking along -z) and projection (depth -1..1) of a camera.
Eigen::Matrix4d viewMatrix(const Camera& camera);
Eigen::Matrix4d projectionMatrix(const Camera& camera, double aspect, double near_m, double far_m);

/// Near and far planes that hold the box. Of a perspective lens the near plane stays before the eye and the
/// ratio is at most 5000; of a parallel lens it may lie behind the eye.
struct DepthRange {
  double near_m, far_m;
};
DepthRange depthRange(const Camera& camera, const Eigen::Vector3d& least, const Eigen::Vector3d& most);

}  // namespace core::geometry
