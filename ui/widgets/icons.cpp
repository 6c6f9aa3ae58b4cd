#include "ui/widgets/icons.h"

#include <QFile>
#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QSvgRenderer>

namespace ui {

namespace {

QByteArray read(const QString& name) {
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QPixmap drawn(const QByteArray& svg, int size) {
  QPixmap pixmap(size, size);
  pixmap.fill(Qt::transparent);
  QSvgRenderer renderer(svg);
  QPainter painter(&pixmap);
  renderer.render(&painter);
  return pixmap;
}

QByteArray inColour(QByteArray svg, const QColor& colour) {
  return svg.replace("currentColor", colour.name().toLatin1());
}

/// Half way from text to ground.
QColor faint(const QPalette& palette) {
  const QColor text = palette.color(QPalette::ButtonText);
  const QColor ground = palette.color(QPalette::Window);
  return {(text.red() + ground.red()) / 2, (text.green() + ground.green()) / 2,
          (text.blue() + ground.blue()) / 2};
}

}  // namespace

QIcon icon(const QString& name) {
  const QPalette palette = QGuiApplication::palette();
  const QByteArray svg = read(name);
  const QByteArray normal = inColour(svg, palette.color(QPalette::ButtonText));
  const QByteArray disabled = inColour(svg, faint(palette));
  QIcon icon;
  for (const int size : {20, 40}) {
    icon.addPixmap(drawn(normal, size));
    icon.addPixmap(drawn(disabled, size), QIcon::Disabled);
  }
  return icon;
}

QIcon programIcon() {
  const QByteArray svg = read(QStringLiteral("tankwright"));
  QIcon icon;
  for (const int size : {16, 24, 32, 48, 64, 128}) icon.addPixmap(drawn(svg, size));
  return icon;
}

}  // namespace ui
