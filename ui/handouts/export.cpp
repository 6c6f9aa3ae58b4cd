#include "ui/handouts/export.h"

#include "core/exchange/project_file.h"
#include "ui/drawings/drawings.h"
#include "ui/handouts/writing.h"

#include <QBuffer>
#include <QFile>
#include <QSvgGenerator>

namespace ui::handouts {
namespace {

constexpr double kUnitsPerMm = 100;
constexpr QSizeF kPage_mm(297, 420);  // A3

}  // namespace

QByteArray svg(const Content& content) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(static_cast<int>(25.4 * kUnitsPerMm));
  generator.setSize((kPage_mm * kUnitsPerMm).toSize());
  generator.setViewBox(QRectF(QPointF(0, 0), kPage_mm * kUnitsPerMm));
  generator.setTitle(QString::fromStdString(content.project.title));
  QPainter painter(&generator);
  painter.scale(kUnitsPerMm, kUnitsPerMm);
  drawings::drawPlan(painter, {12, 12, 273, 200}, content.plan, content.format, {});
  drawings::drawSection(painter, {12, 218, 273, 190}, content.plan, content.format, {});
  painter.end();
  return bytes;
}

QString exportSvg(const QString& file, const Content& content) {
  return writeBytes(file, svg(content));
}

QString writeBytes(const QString& file, const QByteArray& bytes) {
  const std::filesystem::path path(QFile::encodeName(file).toStdString());
  const core::Problems problems =
      core::exchange::writeWhole(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
  return problems.empty() ? QString() : QString::fromStdString(problems.front().value);
}

}  // namespace ui::handouts
