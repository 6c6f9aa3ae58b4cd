#include "ui/window/start.h"

#include "ui/text/languages.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QApplication>

namespace ui {

namespace {

void nameProgram() {
  QCoreApplication::setOrganizationName(QStringLiteral("Tankwright"));
  QCoreApplication::setApplicationName(QStringLiteral("tankwright"));
  QCoreApplication::setApplicationVersion(QStringLiteral(TANKWRIGHT_VERSION));
  QGuiApplication::setDesktopFileName(QStringLiteral("tankwright"));
}

}  // namespace

int runWindow(int& argc, char** argv, const QString& file) {
  const QApplication application(argc, argv);
  nameProgram();
  useLanguage(Settings::locale());
  MainWindow window;
  if (file.isEmpty() || !window.openFile(file)) window.startWithExample();
  window.show();
  window.offerRecovery();
  return QApplication::exec();
}

}  // namespace ui
