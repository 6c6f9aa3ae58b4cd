#include "ui/view3d/qt3d_view.h"

#include "ui/view3d/dimension_entity.h"
#include "ui/view3d/frame_grabber.h"
#include "ui/view3d/frame_graph.h"
#include "ui/view3d/materials.h"
#include "ui/view3d/palette.h"
#include "ui/view3d/part_entity.h"
#include "ui/view3d/qt3d_window.h"
#include "ui/view3d/software_view.h"

#include <QCoreApplication>
#include <QMetaMethod>
#include <QVBoxLayout>
#include <utility>

#include <QMatrix4x4>
#include <Qt3DRender/QMaterial>
#include <Qt3DRender/QRenderCapture>

namespace ui::view3d {
namespace {

using core::geometry::Part;
using core::geometry::Role;

QMatrix4x4 toQt(const Eigen::Matrix4d& matrix) {
  const Eigen::Matrix<float, 4, 4, Eigen::RowMajor> rows = matrix.cast<float>();
  return QMatrix4x4(rows.data());
}

bool takesFocusByTab(const QWidget& widget) {
  return (widget.focusPolicy() & Qt::TabFocus) && widget.isEnabled() && widget.isVisible();
}

}  // namespace

Qt3DView::Qt3DView(QWidget* parent)
    : PitViewBase(parent),
      window_(new Qt3DWindow),
      container_(createWindowContainer(window_, this)),
      face_material_(makeFaceMaterial(window_->content())),
      line_material_(new LineMaterial(window_->content())),
      dimensions_(new DimensionEntity(window_->frameGraph(), line_material_, window_->content())) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(container_);
  container_->setMinimumSize(minimumSizeHint());
  container_->setFocusPolicy(Qt::StrongFocus);
  container_->setAccessibleName(QCoreApplication::translate("ui::PitPanel", "The pit in three dimensions"));
  setFocusProxy(container_);
  window_->setObjectName("pit_surface");
  window_->frameGraph().setBackground(surroundings(isDark()).background);
  control(window_);
  connect(controls(), &OrbitControls::focusLeaves, this, &Qt3DView::leaveFocus);
}

void Qt3DView::grabImage(std::function<void(QImage)> done) {
  if (!window_->isExposed()) {
    done(softwareImage());
    return;
  }
  const auto taken = [this, done = std::move(done)](QImage image) {
    image.setDevicePixelRatio(devicePixelRatioF());
    done(image.isNull() ? softwareImage() : image);
  };
  new FrameGrabber(window_->frameGraph().capture(), taken, this);
}

QImage Qt3DView::softwareImage() const {
  core::geometry::Scene shown = scene();
  std::erase_if(shown.parts, [this](const Part& part) { return isHidden(part.id); });
  shown.dimensions = shownDimensions();
  return renderSoftware(shown, camera(), size(), isDark(), dimensionText());
}

void Qt3DView::changed(Change change) {
  switch (change) {
    case Change::scene:
      showParts();
      showMatrices();
      break;
    case Change::hidden:
      hideParts();
      return;
    case Change::camera:
      showMatrices();
      break;
    case Change::colours:
      window_->frameGraph().setBackground(surroundings(isDark()).background);
      break;
    case Change::dimensions:
      break;
  }
  showDimensions();
}

bool Qt3DView::event(QEvent* event) {
  if (event->type() == QEvent::ScreenChangeInternal || event->type() == QEvent::Show) changed(Change::camera);
  if (event->type() == QEvent::Show) tellFirstFrame();
  return PitViewBase::event(event);
}

void Qt3DView::showParts() {
  std::unordered_map<std::string, PartEntity*> left = std::exchange(parts_, {});
  for (const Part& part : scene().parts) {
    auto found = left.extract(part.id);
    PartEntity* entity = found ? found.mapped()
                               : new PartEntity(part.role == Role::water, window_->frameGraph(),
                                                face_material_, line_material_, window_->content());
    entity->setPart(shaded(part));
    parts_.emplace(part.id, entity);
  }
  for (const auto& [id, entity] : left) delete entity;
  hideParts();
}

void Qt3DView::hideParts() {
  for (const auto& [id, entity] : parts_) entity->setShown(!isHidden(id));
}

void Qt3DView::showMatrices() {
  const Projection seen = projectionFor(scene(), camera(), aspect());
  window_->setMatrices(toQt(seen.view), toQt(seen.projection));
  line_material_->setPicture(QSizeF(size()) * devicePixelRatioF(), devicePixelRatioF());
}

void Qt3DView::showDimensions() {
  const Projection seen = projectionFor(scene(), camera(), aspect());
  const Eigen::Matrix4d clip_from_world = seen.projection * seen.view;
  dimensions_->show(placeDimensions(shownDimensions(), dimensionText(), clip_from_world, size()), size(),
                    devicePixelRatioF(), isDark());
}

void Qt3DView::tellFirstFrame() {
  static const QMetaMethod told = QMetaMethod::fromSignal(&PitView::firstFrameDrawn);
  if (!isSignalConnected(told) || std::exchange(first_frame_awaited_, true)) return;
  auto* reply = window_->frameGraph().capture()->requestCapture();
  connect(reply, &Qt3DRender::QRenderCaptureReply::completed, this, [this, reply] {
    reply->deleteLater();
    emit firstFrameDrawn();
  });
}

void Qt3DView::leaveFocus(bool forward) {
  const auto next = [forward](QWidget* from) {
    return forward ? from->nextInFocusChain() : from->previousInFocusChain();
  };
  for (QWidget* widget = next(container_); widget != container_; widget = next(widget)) {
    if (widget == this || isAncestorOf(widget) || !takesFocusByTab(*widget)) continue;
    window()->activateWindow();
    widget->setFocus(forward ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return;
  }
}

}  // namespace ui::view3d
