#include "ui/window/start.h"

#include "ui/text/languages.h"
#include "ui/view3d/pit_view.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QApplication>
#include <cstdio>

namespace ui {

namespace {

void nameProgram() {
  QCoreApplication::setOrganizationName(QStringLiteral("Tankwright"));
  QCoreApplication::setApplicationName(QStringLiteral("tankwright"));
  QCoreApplication::setApplicationVersion(QStringLiteral(TANKWRIGHT_VERSION));
  QGuiApplication::setDesktopFileName(QStringLiteral("tankwright"));
}

/// For measuring the start: says on stderr when the first picture is there, and may end there.
void reportFirstPicture(const QObject& window) {
  if (!qEnvironmentVariableIsSet("TANKWRIGHT_REPORT_FIRST_PICTURE")) return;
  const auto* view = window.findChild<PitView*>();
  if (view == nullptr) return;
  QObject::connect(view, &PitView::firstFrameDrawn, &window, [] {
    std::fputs("first picture\n", stderr);
    if (qEnvironmentVariableIsSet("TANKWRIGHT_QUIT_AFTER_FIRST_PICTURE")) QCoreApplication::quit();
  });
}

}  // namespace

int runWindow(int& argc, char** argv, const QString& file) {
  const QApplication application(argc, argv);
  nameProgram();
  useLanguage(Settings::locale());
  MainWindow window;
  if (file.isEmpty() || !window.openFile(file)) window.startWithExample();
  reportFirstPicture(window);
  window.show();
  window.offerRecovery();
  return QApplication::exec();
}

}  // namespace ui
