#pragma once

#include "core/compare/search.h"

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <memory>

namespace ui {

/// Tries sizes beside the window. A new start cancels what is under way; answers to an older start are
/// dropped.
class SearchWorker : public QObject {
  Q_OBJECT

public:
  explicit SearchWorker(QObject* parent = nullptr);
  ~SearchWorker() override;

  void start(const core::Project& project, const core::Plan& plan);
  void cancel();
  bool isRunning() const { return token_ != nullptr; }
  /// Waits until nothing is under way; the answer still comes with the event loop.
  void wait() { pool_.waitForDone(); }

signals:
  void progress(double share);
  void ready(const core::compare::SearchResult& result);

private:
  using Token = std::shared_ptr<std::atomic<bool>>;  // true: cancelled

  QThreadPool pool_;
  Token token_;
};

}  // namespace ui
