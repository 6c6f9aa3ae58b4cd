#include "core/compare/refine.h"
#include "core/exchange/short_form.h"
#include "ui/handouts/handout.h"
#include "ui/panels/sheets_panel.h"
#include "ui/text/words.h"
#include "ui/widgets/message_bar.h"
#include "ui/widgets/waiting.h"
#include "ui/window/actions.h"
#include "ui/window/examples.h"
#include "ui/window/export.h"
#include "ui/window/main_window.h"
#include "ui/window/printing.h"
#include "ui/window/settings.h"

#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QInputDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

namespace ui {

namespace {

constexpr int kProblemsShown = 5;
constexpr QLatin1String kEnding(".tankwright");
constexpr qint64 kLargeFile = 1 << 20;  // bytes; from here on read beside the window

QString withEnding(const QString& path, const QString& ending) {
  return QFileInfo(path).suffix().isEmpty() ? path + ending : path;
}

}  // namespace

bool MainWindow::mayLeave() {
  if (keeper_.isSaved()) return true;
  QMessageBox box(QMessageBox::Question, tr("Unsaved work"),
                  tr("This project has changes that are not saved."),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
  box.setObjectName(QStringLiteral("unsaved_work"));
  box.setDefaultButton(QMessageBox::Save);
  switch (box.exec()) {
    case QMessageBox::Save:
      return save();
    case QMessageBox::Discard:
      return true;
    default:
      return false;
  }
}

bool MainWindow::openFile(const QString& path) {
  if (isRunningBeside() || !mayLeave()) return false;
  const FileKeeper::Beside beside = [&](const std::function<void()>& work) {
    runBeside(this, tr("Reading %1").arg(QFileInfo(path).fileName()), Patience::must_wait,
              [&](const std::atomic<bool>&) { work(); });
  };
  const bool is_large = QFileInfo(path).size() > kLargeFile;
  const core::Problems problems = keeper_.open(path, is_large ? beside : FileKeeper::Beside{});
  if (!problems.empty()) {
    sayProblems(tr("%1 was not opened.").arg(QFileInfo(path).fileName()), problems);
    return false;
  }
  Settings::addRecentFile(keeper_.path());
  actions_->setRecentFiles(Settings::recentFiles());
  const QString opened = tr("%1 is open.").arg(QFileInfo(path).fileName());
  if (keeper_.notes().empty()) {
    messages_->say(MessageBar::Kind::done, opened);
  } else {
    sayNotes(opened, keeper_.notes());
  }
  return true;
}

bool MainWindow::saveFile(const QString& path) {
  const core::Problems problems = keeper_.saveAs(path);
  if (!problems.empty()) {
    sayProblems(tr("Not saved; your changes are still here."), problems);
    return false;
  }
  Settings::addRecentFile(keeper_.path());
  actions_->setRecentFiles(Settings::recentFiles());
  messages_->say(MessageBar::Kind::done, tr("Saved as %1.").arg(keeper_.path()));
  return true;
}

QString MainWindow::listed(const QString& what, const core::Problems& problems, ProblemText text) const {
  QStringList lines{what};
  for (const core::Problem& problem : problems) {
    if (lines.size() > kProblemsShown) {
      lines << tr("and %1 more").arg(format_.integer(int(problems.size()) - kProblemsShown));
      break;
    }
    lines << text(problem, format_);
  }
  return lines.join(QLatin1Char('\n'));
}

void MainWindow::sayProblems(const QString& what, const core::Problems& problems, ProblemText text) {
  messages_->say(MessageBar::Kind::problem, listed(what, problems, text));
}

void MainWindow::sayNotes(const QString& what, const core::Problems& notes, ProblemText text) {
  messages_->say(MessageBar::Kind::done_with_notes, listed(what, notes, text));
}

void MainWindow::makeNew() {
  if (mayLeave()) keeper_.start(newProject(), QString(), FileKeeper::State::saved);
}

void MainWindow::openExample() {
  if (mayLeave()) startWithExample();
}

void MainWindow::startWithExample() {
  keeper_.start(exampleProject(), QString(), FileKeeper::State::saved);
}

void MainWindow::askOpen() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a project"), Settings::folder(),
                                                    tr("Tankwright projects (*.tankwright);;All files (*)"));
  if (!path.isEmpty()) openFile(path);
}

bool MainWindow::openShortForm(const QString& text) {
  const auto read = core::exchange::fromShortForm(text.toStdString(), core::Project{});
  if (!read) {
    sayProblems(tr("The short form was not taken."), read.error());
    return false;
  }
  if (isRunningBeside() || !mayLeave()) return false;
  const core::Problems problems = keeper_.start(*read, QString(), FileKeeper::State::unsaved);
  if (!problems.empty()) {
    sayProblems(tr("The short form was not taken."), problems);
    return false;
  }
  messages_->say(MessageBar::Kind::done,
                 tr("The design is there. What a short form does not hold is as in a new project."));
  return true;
}

void MainWindow::askShortForm() {
  bool is_given = false;
  const QString text = QInputDialog::getMultiLineText(
      this, tr("Open from short form"), tr("Type, paste or scan the line from the cover sheet:"), QString(),
      &is_given);
  if (is_given && !text.trimmed().isEmpty()) openShortForm(text);
}

void MainWindow::copyShortForm() {
  QGuiApplication::clipboard()->setText(
      QString::fromStdString(core::exchange::shortForm(document_.project())));
  messages_->say(MessageBar::Kind::done, tr("The short form can be pasted into a message."));
}

void MainWindow::openRecent(const QString& path) {
  if (openFile(path) || QFileInfo::exists(path)) return;
  Settings::forgetRecentFile(path);
  actions_->setRecentFiles(Settings::recentFiles());
}

bool MainWindow::save() {
  return keeper_.path().isEmpty() ? askSaveAs() : saveFile(keeper_.path());
}

QString MainWindow::suggestedName(const QString& ending) const {
  if (!keeper_.path().isEmpty()) {
    const QFileInfo file(keeper_.path());
    return file.dir().filePath(file.completeBaseName() + ending);
  }
  const QString title = QString::fromStdString(document_.project().title).simplified();
  const QString name =
      title.isEmpty() ? tr("tank") : QString(title).replace(QLatin1Char('/'), QLatin1Char('-'));
  return QDir(Settings::folder()).filePath(name + ending);
}

bool MainWindow::askSaveAs() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the project"), suggestedName(kEnding),
                                                    tr("Tankwright projects (*.tankwright)"));
  return !path.isEmpty() && saveFile(withEnding(path, kEnding));
}

void MainWindow::askExport(const QString& ending) {
  const QStringList kinds{tr("Sheets as PDF (*.pdf)"),       tr("Tables as CSV (*.csv)"),
                          tr("Solids as STL (*.stl)"),       tr("Solids as glTF (*.glb)"),
                          tr("Plan and section (*.svg)"),    tr("Picture of the pit (*.png)"),
                          tr("Dates for a calendar (*.ics)")};
  QString chosen;
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Export"), suggestedName(QStringLiteral(".pdf")),
      ending.isEmpty() ? kinds.join(QStringLiteral(";;")) : kinds.front(), &chosen);
  if (path.isEmpty()) return;
  const QString chosen_ending = chosen.section(QLatin1Char('*'), -1).chopped(1);
  exportFile(withEnding(path, chosen_ending));
}

void MainWindow::exportFile(const QString& path) {
  messages_->say(MessageBar::Kind::question, tr("Writing %1…").arg(path));
  exports_.start([this, path, project = document_.project(), plan = document_.plan(), format = format_,
                  sheets = sheets_->options()]() mutable {
    core::compare::refine(project, plan);
    const QString reason = exportTo(project, plan, path, format, sheets);
    QMetaObject::invokeMethod(this, [this, path, reason] {
      if (reason.isEmpty()) {
        messages_->say(MessageBar::Kind::done, tr("Written: %1.").arg(path));
      } else {
        messages_->say(MessageBar::Kind::problem, tr("%1 was not written. %2").arg(path, reason));
      }
    });
  });
}

void MainWindow::finishExports() {
  exports_.waitForDone();
}

void MainWindow::print() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(sheets_->options().page));
  document_.finishPlan();
  const handouts::Handout handout(sheets_->content(), sheets_->options());
  QPrintDialog dialog(&printer, this);
  dialog.setMinMax(1, handout.pageCount());
  if (dialog.exec() == QDialog::Accepted) printPages(handout, printer);
}

void MainWindow::offerRecovery() {
  const std::vector<LeftBehind> left = recovery_.leftBehind();
  if (left.empty()) return;
  const LeftBehind work = left.front();
  const QString title = QString::fromStdString(work.project.title);
  const QString name = !work.original_path.isEmpty() ? QFileInfo(work.original_path).fileName()
                       : title.isEmpty()             ? tr("a project without a name")
                                                     : title;
  recovery_bar_->say(
      MessageBar::Kind::question,
      tr("The program stopped before %1 was saved. What you had at %2 is kept.")
          .arg(name, format_.locale().toString(work.written, QLocale::ShortFormat)),
      {{QStringLiteral("recovery.take"), tr("Take it up again"), [this, work] { recover(work); }},
       {QStringLiteral("recovery.discard"), tr("Throw it away"), [this, work] { recovery_.discard(work); }}});
}

void MainWindow::recover(const LeftBehind& work) {
  if (!mayLeave()) return recovery_bar_->show();
  const core::Problems problems = keeper_.start(work.project, work.original_path, FileKeeper::State::unsaved);
  if (!problems.empty()) return sayProblems(tr("The kept work cannot be used."), problems);
  keepWork();
  recovery_.flush();
  recovery_.discard(work);
}

}  // namespace ui
