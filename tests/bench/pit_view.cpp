// First frame, peak memory and time to a frame of the pit view. Arguments: facets to a circle (default 300),
// "software" to draw without OpenGL.

#include "core/geometry/tank_geometry.h"
#include "tests/bench/peak_memory.h"
#include "ui/view3d/software_picture.h"
#include "ui/view3d/software_view.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMainWindow>
#include <cstdio>

using namespace core::geometry;

namespace {

Scene roundTank(int facets) {
  core::Tank tank;
  tank.shape = core::Shape::round;
  tank.diameter_m = 7;
  core::Lining lining;
  lining.cove_radius_m = 0.15;
  SceneOptions options;
  options.facets_per_circle = facets;
  options.water_level_m = 1;
  options.cut = CutPlane{Eigen::Vector2d::Zero(), -Eigen::Vector2d::UnitY()};
  return scene(TankGeometry(tank, lining), options);
}

std::vector<ui::view3d::ShadedPart> shadedParts(const Scene& scene) {
  QElapsedTimer timer;
  timer.start();
  std::vector<ui::view3d::ShadedPart> parts;
  for (const Part& part : scene.parts) parts.push_back(ui::view3d::shaded(part));
  std::printf("faces and edges made ready in %.1f ms\n", double(timer.nsecsElapsed()) / 1e6);
  return parts;
}

void timeSoftware(const Scene& scene, Camera camera) {
  const std::vector<ui::view3d::ShadedPart> parts = shadedParts(scene);
  for (const auto quality : {ui::view3d::Quality::quick, ui::view3d::Quality::smooth}) {
    QElapsedTimer timer;
    timer.start();
    const int frames = 20;
    for (int k = 0; k < frames; ++k) {
      camera = orbited(camera, 7, 0);
      ui::view3d::softwarePicture(
          parts, [](const std::string&) { return true; },
          ui::view3d::projectionFor(scene, camera, 800.0 / 600), {800, 600}, false, quality, 1);
    }
    std::printf("software %s, 800 x 600: %.1f ms a frame\n",
                quality == ui::view3d::Quality::quick ? "while dragging" : "at rest",
                double(timer.elapsed()) / frames);
  }
}

}  // namespace

int main(int argc, char** argv) {
  QElapsedTimer timer;
  timer.start();
  if (argc > 2) qputenv("TANKWRIGHT_SOFTWARE_VIEW", "1");
  QApplication application(argc, argv);
  const Scene tank = roundTank(argc > 1 ? std::atoi(argv[1]) : 300);
  QMainWindow window;
  ui::PitView* view = ui::makePitView(&window);
  window.setCentralWidget(view);
  window.resize(1100, 700);
  view->setScene(tank);
  QObject::connect(view, &ui::PitView::firstFrameDrawn, &application, [&] {
    std::printf("%s: first frame %lld ms, peak memory %.1f MiB\n", qPrintable(view->kind()),
                static_cast<long long>(timer.elapsed()), peakMemory_MiB());
    std::size_t triangles = 0;
    for (const Part& part : tank.parts) triangles += part.mesh.triangles.size();
    std::printf("%zu triangles\n", triangles);
    timeSoftware(tank, view->camera());
    QCoreApplication::quit();
  });
  window.show();
  return QApplication::exec();
}
