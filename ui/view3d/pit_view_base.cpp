#include "ui/view3d/pit_view_base.h"

namespace ui::view3d {

using core::geometry::Camera;
using core::geometry::Dimension;
using core::geometry::Scene;
using core::geometry::ViewPreset;

namespace {

/// Box around the parts, or a small one about the origin when there are none.
std::pair<Eigen::Vector3d, Eigen::Vector3d> boxAround(const Scene& scene) {
  if (scene.least.allFinite() && scene.most.allFinite()) return {scene.least, scene.most};
  return {Eigen::Vector3d::Constant(-1), Eigen::Vector3d::Constant(1)};
}

}  // namespace

Projection projectionFor(const Scene& scene, const Camera& camera, double aspect) {
  auto [least, most] = boxAround(scene);
  for (const Dimension& dimension : scene.dimensions)
    for (const Eigen::Vector3d& point : {dimension.from, dimension.to}) {
      least = least.cwiseMin(point);
      most = most.cwiseMax(point);
    }
  const core::geometry::DepthRange depth = depthRange(camera, least, most);
  return {viewMatrix(camera), projectionMatrix(camera, aspect, depth.near_m, depth.far_m)};
}

PitViewBase::PitViewBase(QWidget* parent) : PitView(parent) {
  setMinimumSize(minimumSizeHint());
}

void PitViewBase::setScene(const Scene& scene) {
  scene_ = scene;
  changed(Change::scene);
  if (!camera_given_) showStandardView();
}

void PitViewBase::setDimensionText(DimensionText text) {
  text_ = std::move(text);
  changed(Change::dimensions);
}

void PitViewBase::setDimensionsShown(bool shown) {
  if (shown == dimensions_shown_) return;
  dimensions_shown_ = shown;
  changed(Change::dimensions);
}

void PitViewBase::setHiddenParts(const QStringList& ids) {
  if (ids == hidden_) return;
  hidden_ = ids;
  changed(Change::hidden);
}

void PitViewBase::setCamera(const Camera& camera) {
  camera_given_ = true;
  moveTo(camera);
}

void PitViewBase::setDark(bool dark) {
  if (dark == dark_) return;
  dark_ = dark;
  changed(Change::colours);
}

void PitViewBase::control(QObject* source) {
  controls_ = new OrbitControls(source);
  controls_->setCamera(camera_);
  connect(controls_, &OrbitControls::moved, this, &PitViewBase::setCamera);
  connect(controls_, &OrbitControls::homeAsked, this, &PitViewBase::showStandardView);
}

void PitViewBase::resizeEvent(QResizeEvent* event) {
  PitView::resizeEvent(event);
  if (!camera_given_) showStandardView();
  changed(Change::camera);
}

const std::vector<Dimension>& PitViewBase::shownDimensions() const {
  static const std::vector<Dimension> none;
  return dimensions_shown_ && text_ ? scene_.dimensions : none;
}

void PitViewBase::showStandardView() {
  const auto [least, most] = boxAround(scene_);
  moveTo(presetFor(ViewPreset::oblique, least, most, aspect()));
}

void PitViewBase::moveTo(const Camera& camera) {
  if (camera == camera_) return;
  camera_ = camera;
  if (controls_) controls_->setCamera(camera);
  changed(Change::camera);
  emit cameraChanged();
}

}  // namespace ui::view3d
