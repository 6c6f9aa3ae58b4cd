#pragma once

#include <Qt3DCore/QEntity>

namespace Qt3DRender {
class QLayer;
}

namespace ui::view3d {

class LabelMaterial;

/// A dimension's text on top of the picture, in its own texture.
class LabelEntity : public Qt3DCore::QEntity {
public:
  LabelEntity(Qt3DRender::QLayer* layer, Qt3DCore::QNode* parent);

  /// @param place in logical pixels @param pixel real pixels to a logical one
  void show(const QString& text, const QRectF& place, const QSizeF& picture, double pixel, bool dark);

private:
  class Image;

  Image* image_;
  LabelMaterial* material_;
};

}  // namespace ui::view3d
