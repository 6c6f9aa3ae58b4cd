#include "core/exchange/district_file.h"
#include "ui/widgets/message_bar.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

namespace ui {

namespace {

const auto kEnding = QStringLiteral(".district");

}  // namespace

void MainWindow::askDistrict() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Read a district file"), Settings::folder(),
                                                    tr("District files (*.district);;All files (*)"));
  if (!path.isEmpty()) readDistrict(path);
}

void MainWindow::askDistrictTarget() {
  QString path = QFileDialog::getSaveFileName(this, tr("Write a district file"), suggestedName(kEnding),
                                              tr("District files (*.district)"));
  if (path.isEmpty()) return;
  if (!path.endsWith(kEnding, Qt::CaseInsensitive)) path += kEnding;
  writeDistrict(path);
}

void MainWindow::readDistrict(const QString& path) {
  const QString name = QFileInfo(path).fileName();
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    messages_->say(MessageBar::Kind::problem, tr("%1 cannot be read: %2").arg(name, file.errorString()));
    return;
  }
  const auto read = core::exchange::withDistrict(document_.project(), file.readAll().toStdString());
  if (!read) return sayProblems(tr("%1 was not taken; nothing has changed.").arg(name), read.error());
  const core::Problems problems =
      document_.change(tr("Read a district file"), [&](core::Project& project) { project = read->project; });
  if (!problems.empty()) return sayProblems(tr("%1 was not taken; nothing has changed.").arg(name), problems);
  const QString taken = tr("%1: prices, records and rates taken.").arg(name);
  if (read->notes.empty()) {
    messages_->say(MessageBar::Kind::done, taken);
  } else {
    sayNotes(taken, read->notes);
  }
}

void MainWindow::writeDistrict(const QString& path) {
  const std::string text =
      core::exchange::districtText(document_.project(), QFileInfo(path).completeBaseName().toStdString());
  const core::Problems problems =
      core::exchange::writeWhole(std::filesystem::path(QFile::encodeName(path).toStdString()), text);
  if (!problems.empty()) return sayProblems(tr("%1 was not written.").arg(path), problems);
  messages_->say(MessageBar::Kind::done, tr("Written: %1.").arg(path));
}

}  // namespace ui
