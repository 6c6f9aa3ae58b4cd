#include "ui/window/start.h"

#include "ui/text/languages.h"
#include "ui/view3d/pit_view.h"
#include "ui/widgets/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QApplication>
#include <QElapsedTimer>
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
void reportFirstPicture(const QObject& window, const QElapsedTimer& since_start) {
  if (!qEnvironmentVariableIsSet("TANKWRIGHT_REPORT_FIRST_PICTURE")) return;
  const auto* view = window.findChild<PitView*>();
  if (view == nullptr) return;
  QObject::connect(view, &PitView::firstFrameDrawn, &window, [&since_start] {
    std::fprintf(stderr, "first picture: %lld ms\n", static_cast<long long>(since_start.elapsed()));
    if (qEnvironmentVariableIsSet("TANKWRIGHT_QUIT_AFTER_FIRST_PICTURE")) QCoreApplication::quit();
  });
}

}  // namespace

int runWindow(int& argc, char** argv, const QString& file) {
  QElapsedTimer since_start;
  since_start.start();
  const QApplication application(argc, argv);
  nameProgram();
  useLanguage(Settings::language());
  QGuiApplication::setLayoutDirection(textDirection());
  applyTheme(isDark(Settings::theme()));  // before any widget is there to be polished twice
  MainWindow window;
  if (file.isEmpty() || !window.openFile(file)) window.startWithExample();
  reportFirstPicture(window, since_start);
  window.show();
  window.offerRecovery();
  return QApplication::exec();
}

}  // namespace ui
