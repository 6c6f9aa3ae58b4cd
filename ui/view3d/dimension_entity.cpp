#include "ui/view3d/dimension_entity.h"

#include "ui/view3d/frame_graph.h"
#include "ui/view3d/label_entity.h"
#include "ui/view3d/line_mesh.h"
#include "ui/view3d/mesh_renderer.h"
#include "ui/view3d/palette.h"

#include <Qt3DRender/QLayer>

namespace ui::view3d {
namespace {

using core::geometry::Dimension;

std::array<float, 3> floats(const Eigen::Vector3d& v) {
  return {static_cast<float>(v.x()), static_cast<float>(v.y()), static_cast<float>(v.z())};
}

void addDimension(std::vector<LineVertex>& vertices, const Dimension& d, double width_px,
                  const QColor& colour) {
  const std::array<float, 4> rgba{colour.redF(), colour.greenF(), colour.blueF(), colour.alphaF()};
  addLine(vertices, floats(d.from), floats(d.to), width_px, rgba);
  if (d.from != d.from_foot) addLine(vertices, floats(d.from_foot), floats(d.from), width_px, rgba);
  if (d.to != d.to_foot) addLine(vertices, floats(d.to_foot), floats(d.to), width_px, rgba);
  addTicks(vertices, floats(d.from), floats(d.to), kTick_px, width_px, rgba);
}

std::vector<LineVertex> lineVertices(const std::vector<PlacedDimension>& placed, bool dark) {
  const Surroundings colours = surroundings(dark);
  std::vector<LineVertex> vertices;
  for (const PlacedDimension& one : placed)
    addDimension(vertices, *one.dimension, kHaloWidth_px, colours.halo);
  for (const PlacedDimension& one : placed)
    addDimension(vertices, *one.dimension, kDimensionWidth_px, colours.line);
  return vertices;
}

}  // namespace

DimensionEntity::DimensionEntity(const FrameGraph& graph, Qt3DRender::QMaterial* lines,
                                 Qt3DCore::QNode* parent)
    : QEntity(parent),
      graph_(graph),
      line_entity_(new QEntity(this)),
      lines_(makeLineRenderer(line_entity_)) {
  line_entity_->addComponent(lines_);
  line_entity_->addComponent(lines);
  line_entity_->addComponent(graph.lines());
  line_entity_->setEnabled(false);
}

void DimensionEntity::show(const std::vector<PlacedDimension>& placed, const QSizeF& picture, double pixel,
                           bool dark) {
  if (!placed.empty()) lines_->setVertices(lineVertices(placed, dark));
  line_entity_->setEnabled(!placed.empty());
  std::size_t used = 0;
  for (const PlacedDimension& one : placed) {
    if (one.label.isEmpty()) continue;
    if (used == labels_.size()) labels_.push_back(new LabelEntity(graph_.labels(), this));
    labels_[used++]->show(one.text, one.label, picture, pixel, dark);
  }
  for (std::size_t k = used; k < labels_.size(); ++k) labels_[k]->setEnabled(false);
}

}  // namespace ui::view3d
