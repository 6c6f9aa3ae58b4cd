#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"

#include <QObject>
#include <QString>
#include <functional>

namespace ui {

class Document;

/// Where the document's file is, and whether the file holds what the document holds.
class FileKeeper : public QObject {
  Q_OBJECT

public:
  explicit FileKeeper(Document& document, QObject* parent = nullptr);

  /// Absolute path of the file; empty while the project has none.
  const QString& path() const { return path_; }
  bool isSaved() const;
  /// Notes that did not stop the last file from being read (keys not known).
  const core::Problems& notes() const { return notes_; }

  /// Opens a file in place of the open project. @return what is wrong with it, the open project then staying
  /// @param read_beside runs the reading of a large file beside the window; empty: in place
  using Beside = std::function<void(const std::function<void()>& work)>;
  core::Problems open(const QString& path, const Beside& read_beside = {});
  /// Writes the file whole or not at all. @return the reason; path and unsaved state then stay as they were
  core::Problems saveAs(const QString& path);

  enum class State { saved, unsaved };
  /// Puts a project in place that does not come from its own file: new, example or recovered.
  core::Problems start(const core::Project& project, const QString& path, State state);

signals:
  void changed();  ///< path or saved state

private:
  Document& document_;
  QString path_;
  core::Problems notes_;
};

}  // namespace ui
