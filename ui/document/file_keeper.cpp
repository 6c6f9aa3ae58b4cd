#include "ui/document/file_keeper.h"

#include "core/exchange/project_file.h"
#include "ui/document/document.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace ui {

namespace {

std::filesystem::path systemPath(const QString& path) {
  return std::filesystem::path(QFile::encodeName(path).toStdString());
}

}  // namespace

FileKeeper::FileKeeper(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(document_.undoStack(), &QUndoStack::cleanChanged, this, &FileKeeper::changed);
}

bool FileKeeper::isSaved() const {
  return document_.undoStack()->isClean();
}

core::Problems FileKeeper::open(const QString& path, const Beside& read_beside) {
  tl::expected<core::exchange::ReadProject, core::Problems> read;
  const auto work = [&] { read = core::exchange::readProject(systemPath(path)); };
  if (read_beside) {
    read_beside(work);
  } else {
    work();
  }
  if (!read) return read.error();
  core::Problems problems = start(read->project, QFileInfo(path).absoluteFilePath(), State::saved);
  if (problems.empty()) notes_ = read->notes;
  return problems;
}

core::Problems FileKeeper::saveAs(const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  core::Problems problems = core::exchange::writeProject(systemPath(absolute), document_.project());
  if (!problems.empty()) return problems;
  path_ = absolute;
  document_.undoStack()->setClean();
  emit changed();
  return {};
}

core::Problems FileKeeper::start(const core::Project& project, const QString& path, State state) {
  core::Problems problems = document_.load(project);
  if (!problems.empty()) return problems;
  notes_.clear();
  path_ = path;
  if (state == State::unsaved) document_.undoStack()->resetClean();
  emit changed();
  return {};
}

}  // namespace ui
