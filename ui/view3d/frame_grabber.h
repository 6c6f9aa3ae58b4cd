#pragma once

#include <QImage>
#include <QObject>
#include <QTimer>
#include <functional>

namespace Qt3DRender {
class QRenderCapture;
class QRenderCaptureReply;
}  // namespace Qt3DRender

namespace ui::view3d {

/// Takes a picture of what Qt 3D draws. The first picture is thrown away; then two alike in a row are waited
/// for, at most five in all. Hands over the last one taken, or a null picture when none came in time.
class FrameGrabber : public QObject {
public:
  FrameGrabber(Qt3DRender::QRenderCapture* capture, std::function<void(QImage)> done, QObject* parent);

private:
  void take();
  void taken(Qt3DRender::QRenderCaptureReply* reply);
  void finish();

  Qt3DRender::QRenderCapture* capture_;
  std::function<void(QImage)> done_;
  QTimer limit_;
  QImage last_;
  int count_ = 0;
};

}  // namespace ui::view3d
