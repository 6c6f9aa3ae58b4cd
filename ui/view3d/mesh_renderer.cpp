#include "ui/view3d/mesh_renderer.h"

#include <stdexcept>

#include <Qt3DCore/QAttribute>
#include <Qt3DCore/QBuffer>
#include <Qt3DCore/QGeometry>

namespace ui::view3d {

using Qt3DCore::QAttribute;

MeshRenderer::MeshRenderer(std::initializer_list<Field> fields, Qt3DCore::QNode* parent)
    : Qt3DRender::QGeometryRenderer(parent) {
  auto* geometry = new Qt3DCore::QGeometry(this);
  buffer_ = new Qt3DCore::QBuffer(geometry);
  for (const Field& field : fields) {
    auto* attribute = new QAttribute(buffer_, QString::fromLatin1(field.name), QAttribute::Float,
                                     field.floats, 0, static_cast<unsigned>(stride_), 0, geometry);
    stride_ += static_cast<qsizetype>(field.floats * sizeof(float));
    attributes_.append(attribute);
    geometry->addAttribute(attribute);
  }
  for (QAttribute* attribute : attributes_) attribute->setByteStride(static_cast<unsigned>(stride_));
  geometry->setBoundingVolumePositionAttribute(attributes_.front());
  setGeometry(geometry);
  setPrimitiveType(Triangles);
}

void MeshRenderer::setData(const QByteArray& data) {
  if (data.size() % stride_ != 0) throw std::logic_error("vertex data does not fit its fields");
  const auto count = static_cast<unsigned>(data.size() / stride_);
  buffer_->setData(data);
  for (QAttribute* attribute : attributes_) attribute->setCount(count);
  setVertexCount(static_cast<int>(count));
}

}  // namespace ui::view3d
