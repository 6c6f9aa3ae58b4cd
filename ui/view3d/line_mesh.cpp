#include "ui/view3d/line_mesh.h"

#include "ui/view3d/mesh_renderer.h"

#include <cmath>

namespace ui::view3d {
namespace {

using Offset = std::array<float, 3>;

void addQuad(std::vector<LineVertex>& vertices, const LineVertex& line, const std::array<Offset, 4>& corner) {
  for (const std::size_t k : {0U, 1U, 2U, 0U, 2U, 3U}) {
    vertices.push_back(line);
    vertices.back().offset = corner[k];
  }
}

}  // namespace

MeshRenderer* makeLineRenderer(Qt3DCore::QNode* parent) {
  return new MeshRenderer({{"vertexPosition", 3}, {"lineEnd", 3}, {"lineOffset", 3}, {"vertexColor", 4}},
                          parent);
}

void addLine(std::vector<LineVertex>& vertices, const std::array<float, 3>& from,
             const std::array<float, 3>& to, double width_px, const std::array<float, 4>& colour) {
  const auto half = static_cast<float>(width_px / 2);
  addQuad(vertices, {from, to, {}, colour},
          {Offset{0, 0, half}, Offset{0, 0, -half}, Offset{1, 0, -half}, Offset{1, 0, half}});
}

void addTicks(std::vector<LineVertex>& vertices, const std::array<float, 3>& from,
              const std::array<float, 3>& to, double length_px, double width_px,
              const std::array<float, 4>& colour) {
  const auto l = static_cast<float>(length_px / std::sqrt(2.0)),
             w = static_cast<float>(width_px / std::sqrt(8.0));
  for (const float end : {0.0F, 1.0F})
    addQuad(vertices, {from, to, {}, colour},
            {Offset{end, l - w, l + w}, Offset{end, -l - w, -l + w}, Offset{end, -l + w, -l - w},
             Offset{end, l + w, l - w}});
}

}  // namespace ui::view3d
