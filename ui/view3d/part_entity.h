#pragma once

#include "ui/view3d/shaded_part.h"

#include <Qt3DCore/QEntity>

namespace Qt3DRender {
class QMaterial;
}

namespace ui::view3d {

class FrameGraph;
class MeshRenderer;

/// A part of the picture: its faces and the lines along its edges.
class PartEntity : public Qt3DCore::QEntity {
public:
  PartEntity(bool translucent, const FrameGraph& graph, Qt3DRender::QMaterial* faces,
             Qt3DRender::QMaterial* lines, Qt3DCore::QNode* parent);

  void setPart(const ShadedPart& part);
  void setShown(bool shown);

private:
  void enable();

  Qt3DCore::QEntity *face_entity_, *edge_entity_;
  MeshRenderer *faces_, *edges_;
  bool has_faces_ = false, has_edges_ = false, shown_ = true;
};

}  // namespace ui::view3d
