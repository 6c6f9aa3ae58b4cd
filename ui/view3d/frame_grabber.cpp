#include "ui/view3d/frame_grabber.h"

#include <utility>

#include <Qt3DRender/QRenderCapture>

namespace ui::view3d {
namespace {

constexpr int kMostPictures = 5;
constexpr int kTimeLimit_ms = 3000;

}  // namespace

FrameGrabber::FrameGrabber(Qt3DRender::QRenderCapture* capture, std::function<void(QImage)> done,
                           QObject* parent)
    : QObject(parent), capture_(capture), done_(std::move(done)) {
  limit_.setSingleShot(true);
  connect(&limit_, &QTimer::timeout, this, &FrameGrabber::finish);
  limit_.start(kTimeLimit_ms);
  take();
}

void FrameGrabber::take() {
  Qt3DRender::QRenderCaptureReply* reply = capture_->requestCapture();
  connect(reply, &Qt3DRender::QRenderCaptureReply::completed, this, [this, reply] { taken(reply); });
}

void FrameGrabber::taken(Qt3DRender::QRenderCaptureReply* reply) {
  const QImage image = reply->image();
  reply->deleteLater();
  if (!done_) return;
  const bool alike = count_ > 1 && !image.isNull() && image == last_;
  if (count_ > 0 && !image.isNull()) last_ = image;
  ++count_;
  alike || count_ == kMostPictures ? finish() : take();
}

void FrameGrabber::finish() {
  limit_.stop();
  if (const auto done = std::exchange(done_, nullptr)) done(last_);
  deleteLater();
}

}  // namespace ui::view3d
