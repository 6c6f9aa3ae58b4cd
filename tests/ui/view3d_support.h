#pragma once

#include "core/geometry/scene.h"
#include "ui/view3d/pit_view.h"

#include <QImage>
#include <functional>
#include <memory>

namespace view3d_test {

/// Which of the two views a check is for.
enum class Kind { qt3d, software };
std::unique_ptr<ui::PitView> makeView(Kind kind);

/// What the test tank looks like; its layers are thick so that pixels fall well inside them.
struct Look {
  double depth_m = 1.7;
  double water_m = 1.1;
  bool cut = true;  ///< through the middle, what lies south of it taken away
  int facets = 48;
  core::Shape shape = core::Shape::rectangle;
};
core::geometry::Scene sceneOf(const Look& look);

constexpr double kStoneBed_m = 0.25;
constexpr double kCoat1_m = 0.16;
constexpr double kCoat2_m = 0.20;

core::geometry::Camera cameraFor(core::geometry::ViewPreset preset, const core::geometry::Scene& scene,
                                 const QWidget& view);

/// Shows a view at a size and waits until it is on the screen.
void show(ui::PitView& view, QSize size = {480, 360});
/// The view's picture; waits for it, at most 10 s.
QImage picture(ui::PitView& view);
/// Turns the event loop until a condition holds, at most `limit_ms`; whether it held.
bool waitFor(const std::function<bool()>& condition, int limit_ms = 10000);

/// Colour at the pixel where a point of the scene [m] appears.
QColor colourAt(const QImage& image, const core::geometry::Camera& camera, const Eigen::Vector3d& point);
/// Mean difference of the colour channels of two pictures of one size, 0..255.
double meanDifference(const QImage& a, const QImage& b);

bool isWatery(const QColor& colour);
/// Whether a colour is a part's, in the light or shade of some face, at its section face when `cut`.
bool isOf(const QColor& colour, core::geometry::Role role, int coat = 0);

}  // namespace view3d_test
