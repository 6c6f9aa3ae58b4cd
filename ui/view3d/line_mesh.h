#pragma once

#include "ui/view3d/materials.h"

#include <vector>

namespace ui::view3d {

class MeshRenderer;

/// Renderer whose vertices are LineVertex.
MeshRenderer* makeLineRenderer(Qt3DCore::QNode* parent);

/// Adds the two triangles of a line.
void addLine(std::vector<LineVertex>& vertices, const std::array<float, 3>& from,
             const std::array<float, 3>& to, double width_px, const std::array<float, 4>& colour);
/// Adds a short slanting stroke across each end of a line.
void addTicks(std::vector<LineVertex>& vertices, const std::array<float, 3>& from,
              const std::array<float, 3>& to, double length_px, double width_px,
              const std::array<float, 4>& colour);

}  // namespace ui::view3d
