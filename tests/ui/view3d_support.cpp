#include "tests/ui/view3d_support.h"

#include "core/geometry/tank_geometry.h"
#include "ui/view3d/palette.h"
#include "ui/view3d/qt3d_view.h"
#include "ui/view3d/software_view.h"

#include <QElapsedTimer>
#include <QEventLoop>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <cmath>

#include <Eigen/Geometry>

namespace view3d_test {

using namespace core::geometry;

std::unique_ptr<ui::PitView> makeView(Kind kind) {
  if (kind == Kind::qt3d) return std::make_unique<ui::view3d::Qt3DView>(nullptr);
  return std::make_unique<ui::view3d::SoftwareView>(nullptr);
}

Scene sceneOf(const Look& look) {
  core::Tank tank;
  tank.shape = look.shape;
  tank.length_m = 6.4;
  tank.width_m = 3.8;
  tank.diameter_m = 5.2;
  tank.depth_m = look.depth_m;
  core::Lining lining;
  lining.stone_bed_m = kStoneBed_m;
  lining.coats = {{kCoat1_m, 3, 3, 1, 3}, {kCoat2_m, 2, 2, 1, 4}};
  SceneOptions options;
  options.water_level_m = look.water_m;
  options.facets_per_circle = look.facets;
  if (look.cut) options.cut = CutPlane{Eigen::Vector2d::Zero(), -Eigen::Vector2d::UnitY()};
  return scene(TankGeometry(tank, lining), options);
}

Camera cameraFor(ViewPreset preset, const Scene& scene, const QWidget& view) {
  return presetFor(preset, scene.least, scene.most, double(view.width()) / view.height());
}

void show(ui::PitView& view, QSize size) {
  view.resize(size);
  view.show();
  if (!QTest::qWaitForWindowExposed(&view)) throw std::runtime_error("the window did not come up");
}

QImage picture(ui::PitView& view) {
  bool ready = false;
  QImage image;
  view.grabImage([&](const QImage& taken) {
    image = taken;
    ready = true;
  });
  waitFor([&] { return ready; });
  return image;
}

bool waitFor(const std::function<bool()>& condition, int limit_ms) {
  QElapsedTimer timer;
  timer.start();
  while (!condition() && timer.elapsed() < limit_ms) {
    QEventLoop turn;
    QTimer::singleShot(10, &turn, &QEventLoop::quit);
    turn.exec();
  }
  return condition();
}

QColor colourAt(const QImage& image, const Camera& camera, const Eigen::Vector3d& point) {
  const double aspect = double(image.width()) / image.height();
  const Eigen::Vector4d clip =
      projectionMatrix(camera, aspect, 1, 2) * viewMatrix(camera) * point.homogeneous();
  const int x = static_cast<int>((clip.x() / clip.w() + 1) / 2 * image.width());
  const int y = static_cast<int>((1 - clip.y() / clip.w()) / 2 * image.height());
  return image.valid(x, y) ? image.pixelColor(x, y) : QColor();
}

double meanDifference(const QImage& a, const QImage& b) {
  if (a.size() != b.size() || a.isNull()) return 255;
  double sum = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) {
      const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
      sum += std::abs(qRed(p) - qRed(q)) + std::abs(qGreen(p) - qGreen(q)) + std::abs(qBlue(p) - qBlue(q));
    }
  return sum / (3.0 * a.width() * a.height());
}

bool isWatery(const QColor& colour) {
  return colour.blue() > colour.red() + 15 && colour.green() > colour.red() + 15;
}

namespace {

/// Distance of a colour from a tone in any light: of the directions from black.
double hueDistance(const QColor& colour, const QColor& tone) {
  const Eigen::Vector3d a(colour.red(), colour.green(), colour.blue());
  const Eigen::Vector3d b(tone.red(), tone.green(), tone.blue());
  const double light = a.norm() / b.norm();
  if (light < 0.5 || light > 1.2) return 1;
  return (a.normalized() - b.normalized()).norm();
}

}  // namespace

bool isOf(const QColor& colour, Role role, int coat) {
  const Part part{"", role, coat, {}, 0};
  return std::min(hueDistance(colour, ui::view3d::faceColour(part)),
                  hueDistance(colour, ui::view3d::sectionColour(part))) < 0.03;
}

}  // namespace view3d_test
