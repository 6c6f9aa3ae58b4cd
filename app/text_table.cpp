#include "app/text_table.h"

#include <algorithm>

namespace app {
namespace {

const auto kGap = QStringLiteral("  ");

QString trimmedEnd(QString line) {
  while (line.endsWith(u' ')) line.chop(1);
  return line;
}

}  // namespace

QString TextTable::text() const {
  QList<qsizetype> widths;
  for (const QStringList& row : rows_) {
    widths.resize(std::max(widths.size(), row.size()));
    for (qsizetype k = 0; k < row.size(); ++k) widths[k] = std::max(widths[k], row[k].size());
  }
  QString out;
  for (const QStringList& row : rows_) {
    QString line;
    for (qsizetype k = 0; k < row.size(); ++k) {
      line += kGap + (k == 0 ? row[k].leftJustified(widths[k]) : row[k].rightJustified(widths[k]));
    }
    out += trimmedEnd(line) + u'\n';
  }
  return out;
}

}  // namespace app
