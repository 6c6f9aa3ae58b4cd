#include "ui/view3d/part_entity.h"

#include "ui/view3d/frame_graph.h"
#include "ui/view3d/line_mesh.h"
#include "ui/view3d/materials.h"
#include "ui/view3d/mesh_renderer.h"
#include "ui/view3d/palette.h"

#include <Qt3DRender/QLayer>

namespace ui::view3d {
namespace {

std::vector<LineVertex> edgeVertices(const std::vector<EdgeLine>& edges) {
  std::vector<LineVertex> vertices;
  vertices.reserve(6 * edges.size());
  for (const EdgeLine& edge : edges) addLine(vertices, edge.from, edge.to, kEdgeWidth_px, edge.colour);
  return vertices;
}

}  // namespace

PartEntity::PartEntity(bool translucent, const FrameGraph& graph, Qt3DRender::QMaterial* faces,
                       Qt3DRender::QMaterial* lines, Qt3DCore::QNode* parent)
    : QEntity(parent), face_entity_(new QEntity(this)), edge_entity_(new QEntity(this)) {
  faces_ = new MeshRenderer({{"vertexPosition", 3}, {"vertexNormal", 3}, {"vertexColor", 4}}, face_entity_);
  face_entity_->addComponent(faces_);
  face_entity_->addComponent(faces);
  face_entity_->addComponent(translucent ? graph.water() : graph.solids());
  edges_ = makeLineRenderer(edge_entity_);
  edge_entity_->addComponent(edges_);
  edge_entity_->addComponent(lines);
  edge_entity_->addComponent(graph.edges());
}

void PartEntity::setPart(const ShadedPart& part) {
  has_faces_ = !part.faces.empty();
  has_edges_ = !part.edges.empty();
  if (has_faces_) faces_->setVertices(part.faces);
  if (has_edges_) edges_->setVertices(edgeVertices(part.edges));
  enable();
}

void PartEntity::setShown(bool shown) {
  shown_ = shown;
  enable();
}

void PartEntity::enable() {
  face_entity_->setEnabled(shown_ && has_faces_);
  edge_entity_->setEnabled(shown_ && has_edges_);
}

}  // namespace ui::view3d
