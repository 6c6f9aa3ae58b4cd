#pragma once

#include "core/project/project.h"

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>
#include <memory>
#include <vector>

namespace ui {

/// Work that a program which stopped without warning had not saved.
struct LeftBehind {
  QString file;           ///< where the work was kept
  QString original_path;  ///< the project's own file; empty when it had none
  QDateTime written;
  core::Project project;
};

/// Keeps unsaved work in a file of its own, so that a crash or power cut costs at most the last seconds.
/// Each running program has its own file and a lock beside it that tells the living from the dead.
class Recovery : public QObject {
  Q_OBJECT

public:
  /// @param folder where recovery files lie; made when missing
  explicit Recovery(const QString& folder, QObject* parent = nullptr);
  ~Recovery() override;

  /// Keeps this work soon: one write for all changes within the delay, in a thread of its own.
  void keep(const core::Project& project, const QString& original_path);
  /// The work is saved or no longer wanted: nothing stays behind.
  void forget();
  /// Waits until all writes so far are on disk.
  void flush();

  /// Work of programs that no longer run. Holds its locks, so that only one program offers it.
  std::vector<LeftBehind> leftBehind();
  void discard(const LeftBehind& work);

  static constexpr int kDelay_ms = 2000;

private:
  QString folder_;
  QString base_;  // path of this program's file without its ending
  std::unique_ptr<QLockFile> lock_;
  std::vector<std::unique_ptr<QLockFile>> held_;
  QThreadPool writer_;
  QTimer delay_;
  core::Project project_;
  QString original_path_;

  void write();
};

}  // namespace ui
