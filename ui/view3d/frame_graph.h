#pragma once

#include <QColor>

#include <Qt3DRender/QRenderSurfaceSelector>

namespace Qt3DCore {
class QEntity;
}
namespace Qt3DRender {
class QClearBuffers;
class QFrameGraphNode;
class QLayer;
class QRenderCapture;
class QRenderState;
}  // namespace Qt3DRender

namespace ui::view3d {

/// Order of drawing: clear, solid faces, their edges, water, lines and labels on top, and last the picture
/// taken for saving.
class FrameGraph : public Qt3DRender::QRenderSurfaceSelector {
public:
  FrameGraph(QObject* surface, Qt3DCore::QEntity* camera);

  Qt3DRender::QLayer* solids() const { return solids_; }
  Qt3DRender::QLayer* edges() const { return edges_; }
  Qt3DRender::QLayer* water() const { return water_; }
  Qt3DRender::QLayer* lines() const { return lines_; }
  Qt3DRender::QLayer* labels() const { return labels_; }
  Qt3DRender::QRenderCapture* capture() const { return capture_; }

  void setBackground(const QColor& colour);
  /// Has the next frame drawn although nothing changed.
  void redraw();

private:
  Qt3DRender::QLayer* addBranch(Qt3DRender::QFrameGraphNode* parent, QList<Qt3DRender::QRenderState*> states);

  Qt3DRender::QClearBuffers* clear_;
  Qt3DRender::QLayer *solids_, *edges_, *water_, *lines_, *labels_;
  Qt3DRender::QRenderCapture* capture_;
};

}  // namespace ui::view3d
