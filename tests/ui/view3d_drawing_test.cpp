#include "core/geometry/camera.h"
#include "ui/view3d/dimension_layout.h"
#include "ui/view3d/rasterizer.h"

#include <QPainter>

#include <catch2/catch.hpp>

using namespace ui::view3d;
using core::geometry::Dimension;

namespace {

constexpr QRgb kWhite = 0xffffffff, kRed = 0xffff0000, kBlue = 0xff0000ff;

Rasterizer::Triangle flat(float x0, float y0, float x1, float y1, float x2, float y2, float depth) {
  return {Rasterizer::Point{x0, y0, depth}, Rasterizer::Point{x1, y1, depth},
          Rasterizer::Point{x2, y2, depth}};
}

int countOf(const QImage& image, QRgb colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour;
  return count;
}

Dimension dimension(const Eigen::Vector3d& from, const Eigen::Vector3d& to) {
  return {"clear_length", from, to, from, to, (to - from).norm()};
}

std::vector<PlacedDimension> placed(const std::vector<Dimension>& dimensions, const QSizeF& picture) {
  core::geometry::Camera camera;
  camera.azimuth_deg = -90;
  camera.elevation_deg = 90;
  camera.lens = core::geometry::Camera::Lens::parallel;
  camera.field_of_view_deg = 90;
  camera.distance_m = 5;  // 10 m from top to bottom
  const Eigen::Matrix4d matrix =
      core::geometry::projectionMatrix(camera, picture.width() / picture.height(), 0, 10) *
      core::geometry::viewMatrix(camera);
  return placeDimensions(
      dimensions, [](const Dimension&) { return QStringLiteral("6.40 m"); }, matrix, picture);
}

}  // namespace

TEST_CASE("a triangle covers as many pixels as its area and two that share an edge cover none twice") {
  Rasterizer raster({200, 100}, kWhite);
  raster.fill(flat(10, 10, 110, 10, 110, 70, 0), kRed);
  const int upper = countOf(raster.image(), kRed);
  CHECK(upper == Approx(100 * 60 / 2.0).margin(60));
  raster.fill(flat(10, 10, 110, 70, 10, 70, 0), kBlue);
  const QImage image = raster.image();
  CHECK(countOf(image, kRed) == upper);
  CHECK(countOf(image, kRed) + countOf(image, kBlue) == 100 * 60);
}

TEST_CASE("a reference painter covers the same pixels but for the rim") {
  Rasterizer raster({120, 120}, kWhite);
  raster.fill(flat(7.3F, 90.2F, 101.4F, 55.7F, 30.1F, 4.9F, 0), kRed);
  QImage reference(120, 120, QImage::Format_RGB32);
  reference.fill(kWhite);
  QPainter painter(&reference);
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor(kRed));
  painter.drawPolygon(QPolygonF{{7.3, 90.2}, {101.4, 55.7}, {30.1, 4.9}});
  painter.end();
  int different = 0;
  for (int y = 0; y < 120; ++y)
    for (int x = 0; x < 120; ++x) different += reference.pixel(x, y) != raster.image().pixel(x, y);
  CHECK(different < 60);  // of about 3600 inside
}

TEST_CASE("the nearer face wins whatever the order, and a slanting one is cut where they cross") {
  const auto slant = Rasterizer::Triangle{Rasterizer::Point{0, 0, -1}, Rasterizer::Point{100, 0, 1},
                                          Rasterizer::Point{0, 200, -1}};
  for (const bool slant_first : {true, false}) {
    Rasterizer raster({100, 100}, kWhite);
    if (slant_first) raster.fill(slant, kBlue);
    raster.fill(flat(0, 0, 100, 0, 0, 200, 0), kRed);
    if (!slant_first) raster.fill(slant, kBlue);
    CHECK(raster.image().pixel(20, 10) == kBlue);
    CHECK(raster.image().pixel(70, 10) == kRed);
  }
}

TEST_CASE("a translucent face mixes and hides nothing drawn later behind it") {
  Rasterizer raster({50, 50}, kWhite);
  raster.blend(flat(0, 0, 50, 0, 0, 100, 0.2F), qRgba(0, 0, 255, 128));
  CHECK(qRed(raster.image().pixel(5, 5)) == Approx(127).margin(1));
  raster.fill(flat(0, 0, 50, 0, 0, 100, 0.4F), kRed);
  CHECK(raster.image().pixel(5, 5) == kRed);
  raster.blend(flat(0, 0, 50, 0, 0, 100, 0.6F), qRgba(0, 0, 255, 128));
  CHECK(raster.image().pixel(5, 5) == kRed);
}

TEST_CASE("triangles far outside or without area do no harm") {
  Rasterizer raster({40, 30}, kWhite);
  raster.fill(flat(-1e6F, -1e6F, 1e6F, -1e6F, 0, 1e6F, 0), kRed);
  CHECK(countOf(raster.image(), kRed) == 40 * 30);
  raster.fill(flat(5, 5, 20, 20, 35, 35, -0.5F), kBlue);
  raster.fill(flat(100, 5, 120, 20, 135, 5, -0.5F), kBlue);
  CHECK(countOf(raster.image(), kBlue) == 0);
}

TEST_CASE("halving takes the mean of four pixels") {
  Rasterizer raster({4, 2}, kWhite);
  raster.fill(flat(0, 0, 1.8F, 0, 0, 1.8F, 0), 0xff000000);
  raster.fill(flat(2, 0, 6, 0, 2, 4, 0), 0xff000000);
  const QImage half = raster.halved();
  CHECK(half.size() == QSize(2, 1));
  CHECK(qRed(half.pixel(0, 0)) == Approx(255 * 3 / 4.0).margin(1));
  CHECK(qRed(half.pixel(1, 0)) == 0);
}

TEST_CASE("a dimension lies where its ends are seen and its text on the middle of the line") {
  const auto all = placed({dimension({-3, 0, 0}, {3, 0, 0})}, {800, 400});
  REQUIRE(all.size() == 1);
  CHECK(all[0].from.x() == Approx(400 - 120));
  CHECK(all[0].to.x() == Approx(400 + 120));
  CHECK(all[0].from.y() == Approx(200));
  CHECK(all[0].label.center().x() == Approx(400).margin(1));
  CHECK(all[0].label.height() >= 14);
}

TEST_CASE("texts do not overlap, and a line seen end on is left out") {
  const auto all = placed({dimension({-3, 0, 0}, {3, 0, 0}), dimension({0, -3, 0}, {0, 3, 0}),
                           dimension({-3, 0.1, 0}, {3, 0.1, 0}), dimension({0, 0, -1}, {0, 0, 1})},
                          {800, 400});
  REQUIRE(all.size() == 3);
  for (std::size_t a = 0; a < all.size(); ++a) {
    CHECK_FALSE(all[a].label.isEmpty());
    for (std::size_t b = 0; b < a; ++b) CHECK_FALSE(all[a].label.intersects(all[b].label));
  }
}

TEST_CASE("a text that would hang over the border finds another place or is left out") {
  const auto all = placed({dimension({-30, 0, 0}, {3, 0, 0}), dimension({30, 0, 0}, {60, 0, 0})}, {800, 400});
  REQUIRE(all.size() == 2);
  CHECK(QRectF(0, 0, 800, 400).contains(all[0].label));
  CHECK(all[1].label.isEmpty());
}
