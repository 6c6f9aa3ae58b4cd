#include "window_support.h"

#include "core/exchange/project_file.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QKeyEvent>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

namespace window_test {

namespace {

constexpr int kPoll_ms = 10;

void pressIn(int button, int tries) {
  QTimer::singleShot(kPoll_ms, qApp, [button, tries] {
    if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
      box->button(QMessageBox::StandardButton(button))->click();
    } else if (tries > 0) {
      pressIn(button, tries - 1);
    }
  });
}

}  // namespace

QString home() {
  static const QTemporaryDir folder;
  const QString given = qEnvironmentVariable("TANKWRIGHT_TEST_HOME");
  return given.isEmpty() ? folder.path() : given;
}

std::unique_ptr<ui::MainWindow> makeWindow() {
  qputenv("XDG_CONFIG_HOME", QFile::encodeName(home() + QStringLiteral("/config")));
  qputenv("XDG_DATA_HOME", QFile::encodeName(home() + QStringLiteral("/data")));
  QCoreApplication::setOrganizationName(QStringLiteral("Tankwright"));
  QCoreApplication::setApplicationName(QStringLiteral("tankwright-test"));
  QLocale::setDefault(QLocale(QStringLiteral("en_GB")));
  qputenv("TANKWRIGHT_LOCALE", "en_GB");
  auto window = std::make_unique<ui::MainWindow>();
  window->startWithExample();
  window->show();
  REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  return window;
}

bool waitFor(const std::function<bool()>& condition, int limit_ms) {
  return QTest::qWaitFor(condition, limit_ms);
}

void type(QWidget& editor, const QString& text) {
  QTest::keyClick(&editor, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClick(&editor, Qt::Key_Delete);
  for (const QChar c : text) QTest::sendKeyEvent(QTest::Click, &editor, Qt::Key_unknown, c, Qt::NoModifier);
}

std::string bytes(const core::Project& project) {
  return core::exchange::projectText(project);
}

std::string bytes(const ui::MainWindow& window) {
  return bytes(const_cast<ui::MainWindow&>(window).document().project());
}

void undoAll(ui::MainWindow& window) {
  while (window.document().undoStack()->canUndo()) window.document().undoStack()->undo();
}

void redoAll(ui::MainWindow& window) {
  while (window.document().undoStack()->canRedo()) window.document().undoStack()->redo();
}

void answerNextBox(int button) {
  pressIn(button, 500);
}

}  // namespace window_test
