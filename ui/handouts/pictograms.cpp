#include "ui/handouts/pictograms.h"

#include "ui/handouts/sheet.h"

#include <QFile>
#include <QSvgRenderer>
#include <string>

namespace ui::handouts {
namespace {

QByteArray read(const QString& name) {
  QFile file(QStringLiteral(":/pictograms/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly)) throw std::logic_error("no pictogram " + name.toStdString());
  return file.readAll();
}

}  // namespace

void drawPictogram(QPainter& painter, const QRectF& box_mm, const QString& name) {
  QSvgRenderer renderer(read(name));
  drawUnmirrored(painter, box_mm, [&](QPainter& upright, const QRectF& room) {
    const double side = std::min(room.width(), room.height());
    const QPointF corner = room.center() - QPointF(side, side) / 2;
    renderer.render(&upright, QRectF(corner, QSizeF(side, side)));
  });
}

}  // namespace ui::handouts
