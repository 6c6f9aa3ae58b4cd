#pragma once

#include "core/water/map.h"
#include "core/water/water_plan.h"

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <memory>

namespace ui {

/// Reckons the map of tank size and bed area beside the window: a coarse one at once, the fine one after it.
/// A new start cancels what is under way; answers to an older start are dropped.
class MapWorker : public QObject {
  Q_OBJECT

public:
  explicit MapWorker(QObject* parent = nullptr);
  ~MapWorker() override;

  void start(const core::water::WaterPlan& plan);
  void cancel();
  /// Waits until nothing is under way; answers still come with the event loop.
  void wait() { pool_.waitForDone(); }

signals:
  void ready(const core::water::ReliabilityMap& map, bool is_final);

private:
  using Token = std::shared_ptr<std::atomic<bool>>;  // true: cancelled

  QThreadPool pool_;
  Token token_;
};

}  // namespace ui
