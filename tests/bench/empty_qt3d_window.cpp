// How long an empty Qt 3D window in a main window takes to its first frame: what the program's own start is
// measured against.

#include "tests/bench/peak_memory.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMainWindow>
#include <cstdio>

#include <Qt3DCore/QEntity>
#include <Qt3DExtras/QForwardRenderer>
#include <Qt3DExtras/Qt3DWindow>
#include <Qt3DRender/QRenderCapture>
#include <Qt3DRender/QRenderSettings>

namespace {

bool staysOpen() {
  return qEnvironmentVariableIsSet("TANKWRIGHT_REPORT_FIRST_PICTURE") &&
         !qEnvironmentVariableIsSet("TANKWRIGHT_QUIT_AFTER_FIRST_PICTURE");
}

}  // namespace

int main(int argc, char** argv) {
  QElapsedTimer timer;
  timer.start();
  qputenv("QT3D_RENDERER", "opengl");
  QApplication application(argc, argv);
  QMainWindow window;
  auto* view = new Qt3DExtras::Qt3DWindow;
  view->renderSettings()->setRenderPolicy(Qt3DRender::QRenderSettings::OnDemand);
  view->setRootEntity(new Qt3DCore::QEntity);
  auto* capture = new Qt3DRender::QRenderCapture;
  view->defaultFrameGraph()->setParent(capture);
  view->setActiveFrameGraph(capture);
  window.setCentralWidget(QWidget::createWindowContainer(view, &window));
  window.resize(1100, 700);
  window.show();
  auto* reply = capture->requestCapture();
  QObject::connect(reply, &Qt3DRender::QRenderCaptureReply::completed, &application, [&] {
    std::fprintf(stderr, "first picture: %lld ms, peak memory %.1f MiB\n",
                 static_cast<long long>(timer.elapsed()), peakMemory_MiB());
    if (!staysOpen()) QCoreApplication::quit();
  });
  return QApplication::exec();
}
