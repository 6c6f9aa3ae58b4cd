#pragma once

#include <QSize>

#include <Qt3DRender/QMaterial>

namespace Qt3DRender {
class QAbstractTexture;
class QParameter;
}  // namespace Qt3DRender

namespace ui::view3d {

/// Vertex of a line that keeps its width in pixels: a place `along` the line from one end (0) to the other
/// (1), moved by pixels along and across it.
struct LineVertex {
  std::array<float, 3> from, to;
  std::array<float, 3> offset;  ///< along 0 or 1; pixels forward; pixels leftward
  std::array<float, 4> colour;
};

/// Faces in their own colours under the two lights.
Qt3DRender::QMaterial* makeFaceMaterial(Qt3DCore::QNode* parent);

/// Lines of a width in pixels; edges lie a little nearer than their faces.
class LineMaterial : public Qt3DRender::QMaterial {
public:
  explicit LineMaterial(Qt3DCore::QNode* parent);
  /// @param picture size in real pixels @param pixel real pixels to a logical one
  void setPicture(const QSizeF& picture, double pixel);

private:
  Qt3DRender::QParameter *picture_, *pixel_;
};

/// A texture on a rectangle of the picture.
class LabelMaterial : public Qt3DRender::QMaterial {
public:
  LabelMaterial(Qt3DRender::QAbstractTexture* texture, Qt3DCore::QNode* parent);
  /// @param place in parts of the picture, from its top left
  void setPlace(const QRectF& place);

private:
  Qt3DRender::QParameter* place_;
};

}  // namespace ui::view3d
