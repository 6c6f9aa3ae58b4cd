#pragma once

#include <QByteArray>
#include <initializer_list>

#include <Qt3DRender/QGeometryRenderer>

namespace Qt3DCore {
class QAttribute;
class QBuffer;
}  // namespace Qt3DCore

namespace ui::view3d {

/// Triangles of one interleaved buffer of floats. Data and all counts change together; nothing else may touch
/// the buffer.
class MeshRenderer : public Qt3DRender::QGeometryRenderer {
public:
  struct Field {
    const char* name;
    unsigned floats;
  };

  /// @param fields what a vertex holds, in order
  explicit MeshRenderer(std::initializer_list<Field> fields, Qt3DCore::QNode* parent = nullptr);

  template <typename Vertex>
  void setVertices(const std::vector<Vertex>& vertices) {
    static_assert(sizeof(Vertex) % sizeof(float) == 0);
    setData(QByteArray(reinterpret_cast<const char*>(vertices.data()),
                       static_cast<qsizetype>(vertices.size() * sizeof(Vertex))));
  }

private:
  void setData(const QByteArray& data);

  Qt3DCore::QBuffer* buffer_;
  QList<Qt3DCore::QAttribute*> attributes_;
  qsizetype stride_ = 0;
};

}  // namespace ui::view3d
