#pragma once

#include "ui/view3d/dimension_layout.h"

#include <vector>

#include <Qt3DCore/QEntity>

namespace Qt3DRender {
class QMaterial;
}

namespace ui::view3d {

class FrameGraph;
class LabelEntity;
class MeshRenderer;

/// Dimension lines with their labels, on top of all parts.
class DimensionEntity : public Qt3DCore::QEntity {
public:
  DimensionEntity(const FrameGraph& graph, Qt3DRender::QMaterial* lines, Qt3DCore::QNode* parent);

  /// @param picture size in logical pixels @param pixel real pixels to a logical one
  void show(const std::vector<PlacedDimension>& placed, const QSizeF& picture, double pixel, bool dark);

private:
  const FrameGraph& graph_;
  Qt3DCore::QEntity* line_entity_;
  MeshRenderer* lines_;
  std::vector<LabelEntity*> labels_;
};

}  // namespace ui::view3d
