#include "ui/view3d/software_view.h"

#include "ui/view3d/dimension_layout.h"
#include "ui/view3d/palette.h"
#include "ui/view3d/software_picture.h"

#include <QPainter>
#include <QTimer>
#include <algorithm>
#include <iterator>
#include <utility>

namespace ui {
namespace {

constexpr double kPlainHeight_px = 600;  // higher pictures have larger labels
constexpr int kRest_ms = 120;            // without a change before the picture is drawn smooth

std::vector<view3d::ShadedPart> shadedParts(const core::geometry::Scene& scene) {
  std::vector<view3d::ShadedPart> parts;
  std::transform(scene.parts.begin(), scene.parts.end(), std::back_inserter(parts), view3d::shaded);
  return parts;
}

}  // namespace

QImage renderSoftware(const core::geometry::Scene& scene, const core::geometry::Camera& camera, QSize size,
                      bool dark, const DimensionText& text) {
  using namespace view3d;
  const double aspect = double(std::max(size.width(), 1)) / std::max(size.height(), 1);
  const double pixel = std::max(1.0, size.height() / kPlainHeight_px);
  const Projection projection = projectionFor(scene, camera, aspect);
  const auto all = [](const std::string&) { return true; };
  QImage image = softwarePicture(shadedParts(scene), all, projection, size, dark, Quality::smooth,
                                 kEdgeWidth_px * pixel);
  if (!text) return image;
  QPainter painter(&image);
  painter.scale(pixel, pixel);
  const QSizeF picture = QSizeF(size) / pixel;
  paintDimensions(painter,
                  placeDimensions(scene.dimensions, text, projection.projection * projection.view, picture),
                  dark);
  return image;
}

namespace view3d {

SoftwareView::SoftwareView(QWidget* parent) : PitViewBase(parent) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  setFocusPolicy(Qt::StrongFocus);
  control(this);
  refine_.setSingleShot(true);
  refine_.setInterval(kRest_ms);
  connect(&refine_, &QTimer::timeout, this, &SoftwareView::refine);
}

void SoftwareView::grabImage(std::function<void(QImage)> done) {
  QImage image = partsPicture(Quality::smooth);
  QPainter painter(&image);
  paintOver(painter);
  painter.end();
  done(image);
}

void SoftwareView::changed(Change change) {
  if (change == Change::scene) parts_ = shadedParts(scene());
  if (change != Change::dimensions) {
    drawn_ = {};
    quality_ = Quality::quick;
    refine_.start();
  }
  update();
}

void SoftwareView::refine() {
  if (controls()->isDragging()) {
    refine_.start();
    return;
  }
  quality_ = Quality::smooth;
  drawn_ = {};
  update();
}

void SoftwareView::paintEvent(QPaintEvent*) {
  const bool fits = drawn_.size() == pixelSize() && drawn_.devicePixelRatio() == devicePixelRatioF();
  if (!fits) drawn_ = partsPicture(quality_);
  QPainter painter(this);
  painter.drawImage(0, 0, drawn_);
  paintOver(painter);
  if (!std::exchange(was_painted_, true)) QTimer::singleShot(0, this, &PitView::firstFrameDrawn);
}

QSize SoftwareView::pixelSize() const {
  return (QSizeF(size()) * devicePixelRatioF()).toSize();
}

Projection SoftwareView::projection() const {
  return projectionFor(scene(), camera(), aspect());
}

QImage SoftwareView::partsPicture(Quality quality) const {
  const auto shows = [this](const std::string& id) { return !isHidden(id); };
  QImage image = softwarePicture(parts_, shows, projection(), pixelSize(), isDark(), quality,
                                 kEdgeWidth_px * devicePixelRatioF());
  image.setDevicePixelRatio(devicePixelRatioF());
  return image;
}

void SoftwareView::paintOver(QPainter& painter) const {
  const Projection seen = projection();
  paintDimensions(painter,
                  placeDimensions(shownDimensions(), dimensionText(), seen.projection * seen.view, size()),
                  isDark());
}

}  // namespace view3d
}  // namespace ui
