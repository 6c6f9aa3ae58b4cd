#include "ui/handouts/handout.h"
#include "ui/handouts/pdf_text.h"
#include "ui/handouts/writing.h"

#include <QBuffer>
#include <QPdfWriter>

namespace ui::handouts {
namespace {

constexpr int kDotsPerInch = 1200;

/// The writer stamps the moment of writing into the file; a fixed date of the same length keeps equal sheets
/// equal byte for byte.
void fixDate(QByteArray& pdf) {
  const QByteArray key = "/CreationDate (D:";
  const qsizetype at = pdf.indexOf(key);
  if (at < 0) return;
  const qsizetype first = at + key.size();
  const qsizetype end = pdf.indexOf(')', first);
  const QByteArray fixed = QByteArray("20000101000000Z00'00'").left(end - first);
  if (end > first && fixed.size() == end - first) pdf.replace(first, fixed.size(), fixed);
}

/// A PDF that keeps the texts drawn on it.
class Writer : public QPdfWriter, public drawings::TextLog {
public:
  using QPdfWriter::QPdfWriter;
};

}  // namespace

QByteArray Handout::pdf() const {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  Writer writer(&buffer);
  writer.setCreator(QStringLiteral("Tankwright"));
  writer.setTitle(pageCount() > 0 ? pageTitle(0) : QString());
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(pageSize_mm(), QPageSize::Millimeter));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  QPainter painter(&writer);
  std::vector<PageTexts> texts;
  for (int page = 0; page < pageCount(); ++page) {
    if (page > 0) writer.newPage();
    painter.save();
    painter.scale(kDotsPerInch / 25.4, kDotsPerInch / 25.4);
    paint(painter, page);
    painter.restore();
    texts.push_back(writer.takeTexts());
  }
  painter.end();
  fixDate(bytes);
  return pdfWithTexts(bytes, texts);
}

QString Handout::writePdf(const QString& file) const {
  return writeBytes(file, pdf());
}

}  // namespace ui::handouts
