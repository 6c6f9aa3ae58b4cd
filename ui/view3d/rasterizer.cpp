#include "ui/view3d/rasterizer.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui::view3d {
namespace {

using Point = Rasterizer::Point;

/// First pixel whose middle lies at or after a coordinate, held to 0..end.
int firstPixel(float coordinate, int end) {
  return static_cast<int>(std::clamp(std::ceil(coordinate - 0.5F), 0.0F, static_cast<float>(end)));
}

float edgeAt(const Point& a, const Point& b, float y) {
  return a.x + (y - a.y) * (b.x - a.x) / (b.y - a.y);
}

/// Depth as a plane over the picture.
struct DepthPlane {
  float at_origin, per_x, per_y;
};

DepthPlane planeOf(const Rasterizer::Triangle& t) {
  const double ux = t[1].x - t[0].x, uy = t[1].y - t[0].y, uz = t[1].depth - t[0].depth;
  const double vx = t[2].x - t[0].x, vy = t[2].y - t[0].y, vz = t[2].depth - t[0].depth;
  const double area = ux * vy - uy * vx;
  if (std::abs(area) < 1e-9) return {t[0].depth, 0, 0};
  const double per_x = (uz * vy - uy * vz) / area, per_y = (ux * vz - uz * vx) / area;
  return {static_cast<float>(t[0].depth - per_x * t[0].x - per_y * t[0].y), static_cast<float>(per_x),
          static_cast<float>(per_y)};
}

QRgb laidOver(QRgb over, QRgb under) {
  const int a = qAlpha(over);
  const auto mix = [a](int x, int y) { return (x * a + y * (255 - a) + 127) / 255; };
  return qRgb(mix(qRed(over), qRed(under)), mix(qGreen(over), qGreen(under)), mix(qBlue(over), qBlue(under)));
}

QRgb meanOf(QRgb a, QRgb b, QRgb c, QRgb d) {
  constexpr QRgb odd = 0x00ff00ff;
  const QRgb red_blue = ((a & odd) + (b & odd) + (c & odd) + (d & odd) + 0x00020002) >> 2;
  const QRgb green = ((a >> 8 & 0xff) + (b >> 8 & 0xff) + (c >> 8 & 0xff) + (d >> 8 & 0xff) + 2) >> 2;
  return 0xff000000 | (red_blue & odd) | green << 8;
}

}  // namespace

Rasterizer::Rasterizer(QSize size, QRgb background)
    : width_(std::max(size.width(), 1)),
      height_(std::max(size.height(), 1)),
      colour_(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_), background),
      depth_(colour_.size(), std::numeric_limits<float>::max()) {}

template <typename Paint>
void Rasterizer::scan(Triangle t, Paint paint) {
  std::sort(t.begin(), t.end(), [](const Point& a, const Point& b) { return a.y < b.y; });
  const DepthPlane plane = planeOf(t);
  const int last_row = firstPixel(t[2].y, height_);
  for (int row = firstPixel(t[0].y, height_); row < last_row; ++row) {
    const float y = static_cast<float>(row) + 0.5F;
    const float along = edgeAt(t[0], t[2], y);
    const float across = y < t[1].y ? edgeAt(t[0], t[1], y) : edgeAt(t[1], t[2], y);
    const int first = firstPixel(std::min(along, across), width_);
    const int count = firstPixel(std::max(along, across), width_) - first;
    if (count <= 0) continue;
    const float depth = plane.at_origin + plane.per_y * y + plane.per_x * (static_cast<float>(first) + 0.5F);
    const std::size_t start =
        static_cast<std::size_t>(row) * static_cast<std::size_t>(width_) + static_cast<std::size_t>(first);
    paint(colour_.data() + start, depth_.data() + start, count, depth, plane.per_x);
  }
}

void Rasterizer::fill(const Triangle& triangle, QRgb colour) {
  scan(triangle,
       [colour](QRgb* __restrict pixel, float* __restrict depth, int count, float from, float step) {
         for (int k = 0; k < count; ++k) {
           const float z = from + static_cast<float>(k) * step;
           const bool nearer = z < depth[k];
           depth[k] = nearer ? z : depth[k];
           pixel[k] = nearer ? colour : pixel[k];
         }
       });
}

void Rasterizer::blend(const Triangle& triangle, QRgb colour) {
  scan(triangle, [colour](QRgb* pixel, const float* depth, int count, float from, float step) {
    for (int k = 0; k < count; ++k)
      if (from + static_cast<float>(k) * step < depth[k]) pixel[k] = laidOver(colour, pixel[k]);
  });
}

void Rasterizer::line(const Point& from, const Point& to, float width, QRgb colour) {
  const float dx = to.x - from.x, dy = to.y - from.y, length = std::hypot(dx, dy);
  if (length < 1e-3F) return;
  const float nx = -dy / length * width / 2, ny = dx / length * width / 2;
  const Point a{from.x + nx, from.y + ny, from.depth}, b{from.x - nx, from.y - ny, from.depth};
  const Point c{to.x - nx, to.y - ny, to.depth}, d{to.x + nx, to.y + ny, to.depth};
  fill({a, b, c}, colour);
  fill({a, c, d}, colour);
}

QImage Rasterizer::image() const {
  return QImage(reinterpret_cast<const uchar*>(colour_.data()), width_, height_, QImage::Format_RGB32).copy();
}

QImage Rasterizer::halved() const {
  QImage half(width_ / 2, height_ / 2, QImage::Format_RGB32);
  for (int row = 0; row < half.height(); ++row) {
    const QRgb* upper = colour_.data() + 2 * static_cast<std::size_t>(row) * static_cast<std::size_t>(width_);
    const QRgb* lower = upper + width_;
    auto* out = reinterpret_cast<QRgb*>(half.scanLine(row));
    for (int k = 0; k < half.width(); ++k, upper += 2, lower += 2)
      out[k] = meanOf(upper[0], upper[1], lower[0], lower[1]);
  }
  return half;
}

}  // namespace ui::view3d
