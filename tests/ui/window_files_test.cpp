#include "core/exchange/project_file.h"
#include "core/exchange/short_form.h"
#include "ui/widgets/message_bar.h"
#include "window_support.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>
#include <csignal>
#include <thread>

#include <catch2/catch.hpp>

using namespace window_test;

namespace {

const QString kLength = QStringLiteral("tank.length_m");

QString source(const char* file) {
  return QStringLiteral(TANKWRIGHT_SOURCE_DIR "/resources/demo/") + QLatin1String(file);
}

core::Project read(const QString& path) {
  const auto project = core::exchange::readProject(QFile::encodeName(path).toStdString());
  REQUIRE(project.has_value());
  return project->project;
}

QDir recoveryFolder() {
  return QDir(home() + QStringLiteral("/data/Tankwright/tankwright-test/recovery"));
}

bool workIsKept() {
  return !recoveryFolder().entryList({QStringLiteral("*.recovery")}, QDir::Files).isEmpty();
}

}  // namespace

TEST_CASE("A save that fails says why, keeps the edit, the unsaved mark and the older file") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  const QString blocked = folder.filePath(QStringLiteral("no_such_folder/tank.tankwright"));
  type(control(*window, kLength), QStringLiteral("9"));
  REQUIRE(window->isWindowModified());
  CHECK_FALSE(window->saveFile(blocked));
  CHECK(window->messages().isVisible());
  CHECK(window->messages().text().contains(QStringLiteral("no_such_folder")));
  CHECK(window->isWindowModified());
  CHECK(window->document().project().tank.length_m == 9);
  CHECK(window->keeper().path().isEmpty());
  CHECK(window->saveFile(folder.filePath(QStringLiteral("tank.tankwright"))));
  CHECK_FALSE(window->isWindowModified());
}

TEST_CASE("A file with problems is not opened, its problems are said and the open project stays") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("bad.tankwright"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(
      "{\"format\":\"tankwright-project\",\"version\":1,\"tank\":{\"shape\":\"round\",\"depth_m\":-3}}");
  file.close();
  const std::string before = bytes(*window);
  CHECK_FALSE(window->openFile(path));
  CHECK(window->messages().text().contains(QStringLiteral("tank.depth_m")));
  CHECK(bytes(*window) == before);
}

TEST_CASE("Opening, saving and reopening fills the list of recent files") {
  const auto window = makeWindow();
  REQUIRE(window->openFile(source("round.tankwright")));
  CHECK(window->document().project() == read(source("round.tankwright")));
  CHECK(window->windowTitle().contains(QStringLiteral("round.tankwright")));
  REQUIRE(window->openFile(source("five_sided.tankwright")));
  const auto recent = control<QMenu>(*window, QStringLiteral("file.recent")).actions();
  REQUIRE(recent.size() >= 2);
  CHECK(recent[0]->text() == QStringLiteral("five_sided.tankwright"));
  CHECK(recent[1]->text() == QStringLiteral("round.tankwright"));
}

TEST_CASE("Unsaved work is asked about before another project takes its place") {
  const auto window = makeWindow();
  type(control(*window, kLength), QStringLiteral("9"));
  answerNextBox(QMessageBox::Cancel);
  CHECK_FALSE(window->openFile(source("round.tankwright")));
  CHECK(window->document().project().tank.length_m == 9);
  answerNextBox(QMessageBox::Cancel);
  CHECK_FALSE(window->close());
  answerNextBox(QMessageBox::Discard);
  CHECK(window->openFile(source("round.tankwright")));
  CHECK_FALSE(window->isWindowModified());
}

TEST_CASE("A project file dropped on the window is opened, any other file is not taken") {
  const auto window = makeWindow();
  const auto drop = [&](const QString& path) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    enter.setAccepted(false);
    QApplication::sendEvent(window.get(), &enter);
    if (!enter.isAccepted()) return false;
    QDropEvent event({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &event);
    return true;
  };
  CHECK_FALSE(drop(QStringLiteral(TANKWRIGHT_SOURCE_DIR "/CMakeLists.txt")));
  CHECK(drop(source("five_sided.tankwright")));
  CHECK(window->document().project() == read(source("five_sided.tankwright")));
}

TEST_CASE("child that edits and waits to be killed", "[.child]") {
  const auto window = makeWindow();
  window->openFile(qEnvironmentVariable("TANKWRIGHT_TEST_FILE"));
  type(control(*window, kLength), QStringLiteral("8.75"));
  REQUIRE(waitFor(workIsKept));
  QFile out;
  REQUIRE(out.open(stdout, QIODevice::WriteOnly));
  out.write("kept\n");
  out.flush();
  waitFor([] { return false; }, 60000);
}

TEST_CASE("Work of a program that was killed is offered at the next start and taken up unsaved") {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("terrace.tankwright"));
  REQUIRE(QFile::copy(source("terrace.tankwright"), path));
  const core::Project on_disk = read(path);

  QProcess child;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("TANKWRIGHT_TEST_HOME"), home());
  environment.insert(QStringLiteral("TANKWRIGHT_TEST_FILE"), path);
  child.setProcessEnvironment(environment);
  child.start(QCoreApplication::applicationFilePath(), {QStringLiteral("[.child]")});
  QByteArray said;
  REQUIRE(waitFor([&] { return (said += child.readAllStandardOutput()).contains("kept"); }, 30000));
  ::kill(pid_t(child.processId()), SIGKILL);
  REQUIRE(child.waitForFinished());

  const auto window = makeWindow();
  window->offerRecovery();
  auto& bar = control(*window, QStringLiteral("recovery_bar"));
  REQUIRE(bar.isVisible());
  CHECK(control<ui::MessageBar>(*window, QStringLiteral("recovery_bar"))
            .text()
            .contains(QStringLiteral("terrace.tankwright")));
  control<QPushButton>(*window, QStringLiteral("recovery.take")).click();
  CHECK(window->document().project().tank.length_m == 8.75);
  CHECK(window->keeper().path() == path);
  CHECK(window->isWindowModified());
  CHECK(read(path) == on_disk);
  REQUIRE(window->saveFile(path));
  CHECK(read(path).tank.length_m == 8.75);
  CHECK(waitFor([] { return !workIsKept(); }));
}

TEST_CASE("Work that is saved leaves nothing behind to recover") {
  const QTemporaryDir folder;
  {
    const auto window = makeWindow();
    type(control(*window, kLength), QStringLiteral("8.5"));
    REQUIRE(window->saveFile(folder.filePath(QStringLiteral("tank.tankwright"))));
    CHECK(window->close());
  }
  CHECK_FALSE(workIsKept());
}

TEST_CASE("Every kind of export is written in the background and a failure is said") {
  const auto window = makeWindow();
  const QTemporaryDir folder;
  for (const char* name : {"a.pdf", "a.csv", "a.stl", "a.glb", "a.svg", "a.png"}) {
    INFO(name);
    const QString path = folder.filePath(QLatin1String(name));
    window->exportFile(path);
    window->finishExports();
    REQUIRE(waitFor([&] { return window->messages().text().startsWith(QStringLiteral("Written")); }));
    CHECK(QFileInfo(path).size() > 200);
  }
  window->exportFile(folder.filePath(QStringLiteral("nowhere/a.csv")));
  window->finishExports();
  CHECK(waitFor([&] { return window->messages().text().contains(QStringLiteral("not written")); }));
}

TEST_CASE("A design typed in short form is put in place, a wrong one is refused and nothing is lost") {
  const auto window = makeWindow();
  window->document().change(QStringLiteral("longer"), [](core::Project& p) { p.tank.length_m = 9.3; });
  const std::string text = core::exchange::shortForm(window->document().project());
  const std::string before = bytes(*window);
  CHECK_FALSE(window->openShortForm(
      QString::fromStdString(text).replace(QStringLiteral("L9.3"), QStringLiteral("L9.4"))));
  CHECK(bytes(*window) == before);
  window->keeper().saveAs(home() + QStringLiteral("/short.tankwright"));
  REQUIRE(window->openShortForm(QString::fromStdString(text).toLower()));
  CHECK(window->document().project().tank == core::exchange::fromShortForm(text, core::Project{})->tank);
  CHECK(window->document().project().tank.length_m == 9.3);
  CHECK_FALSE(window->keeper().isSaved());
}
