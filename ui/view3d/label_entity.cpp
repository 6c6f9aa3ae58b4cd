#include "ui/view3d/label_entity.h"

#include "ui/view3d/dimension_layout.h"
#include "ui/view3d/materials.h"
#include "ui/view3d/mesh_renderer.h"

#include <QPainter>

#include <Qt3DRender/QLayer>
#include <Qt3DRender/QPaintedTextureImage>
#include <Qt3DRender/QTexture>

namespace ui::view3d {
namespace {

std::vector<std::array<float, 3>> unitSquare() {
  return {{0, 0, 0}, {1, 1, 0}, {1, 0, 0}, {0, 0, 0}, {0, 1, 0}, {1, 1, 0}};
}

}  // namespace

class LabelEntity::Image : public Qt3DRender::QPaintedTextureImage {
public:
  void set(const QString& text, const QSizeF& size, double pixel, bool dark) {
    if (text == text_ && size == size_px_ && pixel == pixel_ && dark == dark_) return;
    text_ = text;
    size_px_ = size;
    pixel_ = pixel;
    dark_ = dark;
    setSize((size * pixel).toSize());
    update();
  }

protected:
  void paint(QPainter* painter) override {
    painter->setCompositionMode(QPainter::CompositionMode_Source);
    painter->fillRect(QRectF(QPointF(), size_px_ * pixel_), Qt::transparent);
    painter->setCompositionMode(QPainter::CompositionMode_SourceOver);
    painter->setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter->scale(pixel_, pixel_);
    paintLabel(*painter, QRectF(QPointF(), size_px_), text_, dark_);
  }

private:
  QString text_;
  QSizeF size_px_;
  double pixel_ = 1;
  bool dark_ = false;
};

LabelEntity::LabelEntity(Qt3DRender::QLayer* layer, Qt3DCore::QNode* parent) : QEntity(parent) {
  auto* square = new MeshRenderer({{"vertexPosition", 3}}, this);
  square->setVertices(unitSquare());
  auto* texture = new Qt3DRender::QTexture2D(this);
  texture->setMinificationFilter(Qt3DRender::QAbstractTexture::Linear);
  texture->setMagnificationFilter(Qt3DRender::QAbstractTexture::Linear);
  image_ = new Image;
  texture->addTextureImage(image_);
  material_ = new LabelMaterial(texture, this);
  addComponent(square);
  addComponent(material_);
  addComponent(layer);
}

void LabelEntity::show(const QString& text, const QRectF& place, const QSizeF& picture, double pixel,
                       bool dark) {
  image_->set(text, place.size(), pixel, dark);
  material_->setPlace({place.x() / picture.width(), place.y() / picture.height(),
                       place.width() / picture.width(), place.height() / picture.height()});
  setEnabled(true);
}

}  // namespace ui::view3d
