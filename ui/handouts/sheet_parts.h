#pragma once

#include "ui/handouts/sheet.h"

#include <QPainter>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

namespace ui::handouts {

/// Height of a row to write in by hand [mm].
inline constexpr double kWriteRow_mm = 9;

/// Lines to write on, side by side, each behind its name.
void addWriteLine(Sheet& sheet, const QStringList& names);

/// Empty table to fill in by hand, as many rows as the page has room for after `below_mm`.
void addWriteTable(Sheet& sheet, const std::vector<Column>& columns, double below_mm = 0, int least_rows = 5);

/// Table to fill in by hand with a row for each name, which stands in its first column; an empty name is a
/// row without one.
void addWriteRows(Sheet& sheet, const std::vector<Column>& columns, const QStringList& names);

/// Bounds of a drawing's height [mm].
struct DrawingHeight {
  double least = 62, most = 115;
};

/// Adds a drawing that takes what the blocks of `below` leave of the page, then those blocks.
void addAbove(Sheet& sheet, const Sheet& below, DrawingHeight height,
              std::function<void(QPainter&, const QRectF&)> draw);

/// Adds all blocks of another sheet.
void append(Sheet& sheet, const Sheet& more);

/// A statement of a list, its lines set in behind a dash.
void addPoint(Sheet& sheet, const QString& text);

}  // namespace ui::handouts
