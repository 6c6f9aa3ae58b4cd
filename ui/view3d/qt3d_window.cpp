#include "ui/view3d/qt3d_window.h"

#include "ui/view3d/frame_graph.h"

#include <QSurfaceFormat>

#include <QMatrix4x4>
#include <Qt3DCore/QAspectEngine>
#include <Qt3DCore/QEntity>
#include <Qt3DCore/QTransform>
#include <Qt3DRender/QCameraLens>
#include <Qt3DRender/QRenderAspect>
#include <Qt3DRender/QRenderSettings>

namespace ui::view3d {
namespace {

QSurfaceFormat surfaceFormat() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 3);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setDepthBufferSize(24);
  format.setSamples(4);
  return format;
}

/// Makes contexts created meanwhile have our format; Qt 3D takes the default one for its own.
class DefaultFormat {
public:
  DefaultFormat() : before_(QSurfaceFormat::defaultFormat()) {
    QSurfaceFormat::setDefaultFormat(surfaceFormat());
  }
  ~DefaultFormat() { QSurfaceFormat::setDefaultFormat(before_); }
  DefaultFormat(const DefaultFormat&) = delete;
  DefaultFormat& operator=(const DefaultFormat&) = delete;

private:
  QSurfaceFormat before_;
};

}  // namespace

class Qt3DWindow::CameraEntity : public Qt3DCore::QEntity {
public:
  explicit CameraEntity(Qt3DCore::QNode* parent) : QEntity(parent) {
    addComponent(&lens_);
    addComponent(&place_);
  }

  void set(const QMatrix4x4& view, const QMatrix4x4& projection) {
    place_.setMatrix(view.inverted());
    lens_.setProjectionMatrix(projection);
  }

private:
  Qt3DRender::QCameraLens& lens_ = *new Qt3DRender::QCameraLens(this);
  Qt3DCore::QTransform& place_ = *new Qt3DCore::QTransform(this);
};

Qt3DWindow::Qt3DWindow()
    : root_(new Qt3DCore::QEntity),
      camera_(new CameraEntity(root_)),
      content_(new Qt3DCore::QEntity(root_)),
      frame_graph_(new FrameGraph(this, camera_)) {
  setSurfaceType(QSurface::OpenGLSurface);
  setFormat(surfaceFormat());
  auto* settings = new Qt3DRender::QRenderSettings(root_);
  settings->setRenderPolicy(Qt3DRender::QRenderSettings::OnDemand);
  settings->setActiveFrameGraph(frame_graph_);
  root_->addComponent(settings);
}

Qt3DWindow::~Qt3DWindow() {
  if (!started_) delete root_;
}

void Qt3DWindow::setMatrices(const QMatrix4x4& view, const QMatrix4x4& projection) {
  camera_->set(view, projection);
}

void Qt3DWindow::showEvent(QShowEvent* event) {
  if (!started_) start();
  QWindow::showEvent(event);
}

bool Qt3DWindow::event(QEvent* event) {
  if (event->type() == QEvent::Expose || event->type() == QEvent::UpdateRequest) frame_graph_->redraw();
  return QWindow::event(event);
}

void Qt3DWindow::start() {
  started_ = true;
  const DefaultFormat format;
  engine_ = std::make_unique<Qt3DCore::QAspectEngine>();
  engine_->registerAspect(new Qt3DRender::QRenderAspect);
  engine_->setRootEntity(Qt3DCore::QEntityPtr(root_));
}

}  // namespace ui::view3d
