#pragma once

#include <QWindow>
#include <memory>

namespace Qt3DCore {
class QAspectEngine;
class QEntity;
}  // namespace Qt3DCore
namespace Qt3DRender {
class QRenderCapture;
}

namespace ui::view3d {

class FrameGraph;

/// Window that Qt 3D draws into, only when something changed. Has just the render aspect: input is taken from
/// the window's own events.
class Qt3DWindow : public QWindow {
public:
  Qt3DWindow();
  ~Qt3DWindow() override;

  /// Entity that holds what is drawn; owned by the window.
  Qt3DCore::QEntity* content() const { return content_; }
  FrameGraph& frameGraph() const { return *frame_graph_; }
  void setMatrices(const QMatrix4x4& view, const QMatrix4x4& projection);

protected:
  void showEvent(QShowEvent* event) override;
  bool event(QEvent* event) override;

private:
  class CameraEntity;

  void start();

  Qt3DCore::QEntity* root_;  // the engine's from start() on
  CameraEntity* camera_;
  Qt3DCore::QEntity* content_;
  FrameGraph* frame_graph_;
  std::unique_ptr<Qt3DCore::QAspectEngine> engine_;
  bool started_ = false;
};

}  // namespace ui::view3d
