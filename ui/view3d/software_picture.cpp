#include "ui/view3d/software_picture.h"

#include "ui/view3d/palette.h"
#include "ui/view3d/rasterizer.h"

#include <Eigen/Geometry>

namespace ui::view3d {
namespace {

using core::geometry::Role;
using Eigen::Vector3f;
using Eigen::Vector4f;

constexpr float kLeastW = 1e-4F;

QRgb pixelOf(const std::array<float, 4>& colour, float shade) {
  const auto byte = [](float x) { return static_cast<int>(std::min(x, 1.0F) * 255 + 0.5F); };
  return qRgba(byte(colour[0] * shade), byte(colour[1] * shade), byte(colour[2] * shade), byte(colour[3]));
}

/// Draws parts one after another into a rasterizer.
class Painter {
public:
  Painter(Rasterizer& raster, const Projection& projection)
      : raster_(raster),
        view_(projection.view.cast<float>()),
        projection_(projection.projection.cast<float>()),
        parallel_(projection.projection(3, 3) == 1),
        half_(static_cast<float>(raster.size().width()) / 2, static_cast<float>(raster.size().height()) / 2) {
  }

  void faces(const ShadedPart& part) {
    const bool water = part.role == Role::water;
    for (std::size_t k = 0; k + 2 < part.faces.size(); k += 3) face(&part.faces[k], water);
  }

  void edges(const ShadedPart& part, float width) {
    for (const EdgeLine& edge : part.edges) {
      Vector4f from = clipOf(inView(edge.from), -kNearer), to = clipOf(inView(edge.to), -kNearer);
      if (from.w() < kLeastW && to.w() < kLeastW) continue;
      if (from.w() < kLeastW) from = cutAtEye(to, from);
      if (to.w() < kLeastW) to = cutAtEye(from, to);
      raster_.line(pixel(from), pixel(to), width, pixelOf(edge.colour, 1));
    }
  }

private:
  Vector3f inView(const std::array<float, 3>& p) const {
    return (view_ * Vector4f(p[0], p[1], p[2], 1)).head<3>();
  }

  /// Clip coordinates with the depth of a point moved away from the eye by a part of its distance.
  Vector4f clipOf(const Vector3f& at, float away) const {
    Vector4f clip = projection_ * at.homogeneous();
    if (away == 0) return clip;
    const Vector4f moved = projection_ * Vector4f(at.x(), at.y(), at.z() - away * std::abs(at.z()), 1);
    if (moved.w() > kLeastW) clip.z() = moved.z() / moved.w() * clip.w();
    return clip;
  }

  static Vector4f cutAtEye(const Vector4f& front, const Vector4f& behind) {
    const float part = (front.w() - kLeastW) / (front.w() - behind.w());
    return front + part * (behind - front);
  }

  Rasterizer::Point pixel(const Vector4f& clip) const {
    return {(1 + clip.x() / clip.w()) * half_.x(), (1 - clip.y() / clip.w()) * half_.y(),
            clip.z() / clip.w()};
  }

  void face(const FaceVertex* corner, bool water) {
    const std::array<Vector3f, 3> at{inView(corner[0].point), inView(corner[1].point),
                                     inView(corner[2].point)};
    Vector3f normal =
        view_.topLeftCorner<3, 3>() * Vector3f(corner->normal[0], corner->normal[1], corner->normal[2]);
    const bool from_behind = normal.dot(parallel_ ? Vector3f::UnitZ() : Vector3f(-at[0])) < 0;
    if (from_behind && water) return;
    if (from_behind) normal = -normal;
    const QRgb colour = pixelOf(corner->colour, lights_.shade(normal));
    const float away = from_behind ? kBehind : 0;
    clipped({clipOf(at[0], away), clipOf(at[1], away), clipOf(at[2], away)}, colour, water);
  }

  /// Draws the part of a triangle that lies beyond the near plane.
  void clipped(const std::array<Vector4f, 3>& corner, QRgb colour, bool water) {
    const auto beyond = [](const Vector4f& c) { return c.z() + c.w(); };
    if (beyond(corner[0]) > 0 && beyond(corner[1]) > 0 && beyond(corner[2]) > 0) {
      draw({pixel(corner[0]), pixel(corner[1]), pixel(corner[2])}, colour, water);
      return;
    }
    std::array<Rasterizer::Point, 4> left{};
    std::size_t count = 0;
    for (std::size_t k = 0; k < 3; ++k) {
      const Vector4f &a = corner[k], &b = corner[(k + 1) % 3];
      if (beyond(a) > 0) left[count++] = pixel(a);
      if ((beyond(a) > 0) != (beyond(b) > 0))
        left[count++] = pixel(a + beyond(a) / (beyond(a) - beyond(b)) * (b - a));
    }
    for (std::size_t k = 2; k < count; ++k) draw({left[0], left[k - 1], left[k]}, colour, water);
  }

  void draw(const Rasterizer::Triangle& triangle, QRgb colour, bool water) {
    water ? raster_.blend(triangle, colour) : raster_.fill(triangle, colour);
  }

  Rasterizer& raster_;
  Eigen::Matrix4f view_, projection_;
  bool parallel_;
  Eigen::Vector2f half_;
  Lights lights_;
};

}  // namespace

QImage softwarePicture(const std::vector<ShadedPart>& parts,
                       const std::function<bool(const std::string&)>& shows, const Projection& projection,
                       QSize size, bool dark, Quality quality, double edge_width_px) {
  const int scale = quality == Quality::smooth ? 2 : 1;
  Rasterizer raster(size * scale, surroundings(dark).background.rgb());
  Painter painter(raster, projection);
  const auto width = static_cast<float>(edge_width_px * scale);
  for (const ShadedPart& part : parts)
    if (part.role != Role::water && shows(part.id)) painter.faces(part);
  for (const ShadedPart& part : parts)
    if (shows(part.id)) painter.edges(part, width);
  for (const ShadedPart& part : parts)
    if (part.role == Role::water && shows(part.id)) painter.faces(part);
  return quality == Quality::smooth ? raster.halved() : raster.image();
}

}  // namespace ui::view3d
