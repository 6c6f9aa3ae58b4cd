#include "ui/drawings/wrap_lines.h"

#include <QTextBoundaryFinder>
#include <algorithm>

namespace ui::drawings {

namespace {

/// Between a number and its unit.
bool partsUnit(const QString& text, qsizetype at) {
  return at >= 2 && at < text.size() && text[at - 1].isSpace() && text[at - 2].isDigit() &&
         text[at].isLetter();
}

}  // namespace

QStringList wrapLines(const QString& text, const Lettering& lettering, double width_mm) {
  QStringList lines;
  for (const QString& part : text.split(u'\n')) {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, part);
    QString line;
    qsizetype from = 0;
    for (qsizetype to = finder.toNextBoundary(); to > 0; to = finder.toNextBoundary()) {
      if (partsUnit(part, to)) continue;
      const QString piece = part.mid(from, to - from);
      if (!line.isEmpty() && drawings::width_mm((line + piece).trimmed(), lettering) > width_mm) {
        lines << line.trimmed();
        line.clear();
      }
      line += piece;
      from = to;
    }
    lines << line.trimmed();
  }
  return lines;
}

double widest(const QStringList& lines, const Lettering& lettering) {
  double width = 0;
  for (const QString& line : lines) width = std::max(width, width_mm(line, lettering));
  return width;
}

}  // namespace ui::drawings
