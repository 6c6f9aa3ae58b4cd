#include "ui/panels/map_worker.h"

#include <algorithm>
#include <thread>
#include <utility>

namespace ui {

namespace {

constexpr std::size_t kCoarse = 16;
constexpr std::size_t kFine = 64;

}  // namespace

MapWorker::MapWorker(QObject* parent) : QObject(parent) {
  pool_.setMaxThreadCount(1);
}

MapWorker::~MapWorker() {
  cancel();
  pool_.waitForDone();
}

void MapWorker::cancel() {
  if (token_) *token_ = true;
  token_.reset();
  pool_.clear();
}

void MapWorker::start(const core::water::WaterPlan& plan) {
  cancel();
  token_ = std::make_shared<std::atomic<bool>>(false);
  const auto work = [this, token = token_, curve = plan.curve, series = plan.series,
                     area_m2 = plan.bed_area_m2] {
    const auto reach = core::water::mapReach(curve.full_m3, area_m2);
    const unsigned threads = std::max(1U, std::thread::hardware_concurrency());
    for (const std::size_t cells : {kCoarse, kFine}) {
      auto map = core::water::reliabilityMap(curve, *series, area_m2, reach, cells, threads, *token);
      if (*token) return;
      QMetaObject::invokeMethod(this, [this, token, is_final = cells == kFine, map = std::move(map)] {
        if (token == token_) emit ready(map, is_final);
      });
    }
  };
  pool_.start(work);
}

}  // namespace ui
