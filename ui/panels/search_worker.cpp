#include "ui/panels/search_worker.h"

#include <algorithm>
#include <thread>
#include <utility>

namespace ui {

SearchWorker::SearchWorker(QObject* parent) : QObject(parent) {
  pool_.setMaxThreadCount(1);
}

SearchWorker::~SearchWorker() {
  cancel();
  pool_.waitForDone();
}

void SearchWorker::cancel() {
  if (token_) *token_ = true;
  token_.reset();
  pool_.clear();
}

void SearchWorker::start(const core::Project& project, const core::Plan& plan) {
  cancel();
  token_ = std::make_shared<std::atomic<bool>>(false);
  pool_.start([this, token = token_, project, plan] {
    const auto told = std::make_shared<std::atomic<int>>(-1);
    const auto tell = [this, token, told](double share) {
      const int percent = int(share * 100);
      if (told->exchange(percent) == percent) return;
      QMetaObject::invokeMethod(this, [this, token, share] {
        if (token == token_) emit progress(share);
      });
    };
    const unsigned threads = std::max(1U, std::thread::hardware_concurrency());
    auto result = core::compare::searchSizes(project, plan, threads, tell, *token);
    if (*token) return;
    QMetaObject::invokeMethod(this, [this, token, result = std::move(result)] {
      if (token != token_) return;
      token_.reset();
      emit ready(result);
    });
  });
}

}  // namespace ui
