#include "ui/view3d/pit_view.h"

#include "ui/view3d/qt3d_view.h"
#include "ui/view3d/software_view.h"

#include <QOffscreenSurface>
#include <QOpenGLContext>

namespace ui {
namespace {

bool softwareIsWanted() {
  return qEnvironmentVariableIntValue("TANKWRIGHT_SOFTWARE_VIEW") != 0;
}

bool probe() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 3);
  format.setProfile(QSurfaceFormat::CoreProfile);
  QOpenGLContext context;
  context.setFormat(format);
  if (!context.create()) return false;
  QOffscreenSurface surface;
  surface.setFormat(context.format());
  surface.create();
  if (!surface.isValid() || !context.makeCurrent(&surface)) return false;
  const QSurfaceFormat got = context.format();
  context.doneCurrent();
  return !context.isOpenGLES() && got.version() >= qMakePair(3, 3);
}

}  // namespace

bool openGlIsUsable() {
  static const bool usable = !softwareIsWanted() && probe();
  return usable;
}

PitView* makePitView(QWidget* parent) {
  if (!openGlIsUsable()) return new view3d::SoftwareView(parent);
  if (!qEnvironmentVariableIsSet("QT3D_RENDERER")) qputenv("QT3D_RENDERER", "opengl");
  return new view3d::Qt3DView(parent);
}

}  // namespace ui
