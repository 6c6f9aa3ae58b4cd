#pragma once

#include <QImage>
#include <array>
#include <vector>

namespace ui::view3d {

/// Draws flat triangles into a picture with a depth buffer. Pixels are counted from the top left; less depth
/// is nearer.
class Rasterizer {
public:
  struct Point {
    float x, y;   ///< [px]
    float depth;  ///< -1..1
  };
  using Triangle = std::array<Point, 3>;

  Rasterizer(QSize size, QRgb background);

  /// Opaque triangle.
  void fill(const Triangle& triangle, QRgb colour);
  /// Translucent triangle laid over what is there; leaves the depth as it is.
  void blend(const Triangle& triangle, QRgb colour);
  /// Opaque line of a width [px].
  void line(const Point& from, const Point& to, float width, QRgb colour);

  QSize size() const { return {width_, height_}; }
  /// Picture at full size.
  QImage image() const;
  /// Picture at half size; each pixel is the mean of four.
  QImage halved() const;

private:
  template <typename Paint>
  void scan(Triangle triangle, Paint paint);

  int width_, height_;
  std::vector<QRgb> colour_;
  std::vector<float> depth_;
};

}  // namespace ui::view3d
