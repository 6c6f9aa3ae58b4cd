#pragma once

#include <QList>
#include <QString>
#include <QStringList>

namespace app {

/// Columns of text for a terminal: the first to the left, the others to the right.
class TextTable {
public:
  void add(const QStringList& row) { rows_ << row; }
  bool isEmpty() const { return rows_.isEmpty(); }
  /// Lines indented by two spaces, each with its end of line.
  QString text() const;

private:
  QList<QStringList> rows_;
};

}  // namespace app
