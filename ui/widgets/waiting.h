#pragma once

#include <QString>
#include <atomic>
#include <functional>
#include <optional>
#include <utility>

class QWidget;

namespace ui {

enum class Patience { may_give_up, must_wait };

/// True while work runs beside the window: nothing else may then be opened, closed or changed.
bool isRunningBeside();

/// Runs work beside the window until it is done. Meanwhile the window is painted but takes no input; work
/// that lasts gets a small window that says what goes on, with a button to give up where that is allowed.
/// @return whether it was done; false when someone gave up
bool runBeside(QWidget* window, const QString& what, Patience patience,
               const std::function<void(const std::atomic<bool>& cancel)>& work);

/// The same for work that gives a value; nothing when someone gave up.
template <class Work>
auto resultBeside(QWidget* window, const QString& what, Patience patience, Work work) {
  std::optional<decltype(work(std::declval<const std::atomic<bool>&>()))> result;
  const bool is_done =
      runBeside(window, what, patience, [&](const std::atomic<bool>& cancel) { result = work(cancel); });
  if (!is_done) result.reset();
  return result;
}

}  // namespace ui
