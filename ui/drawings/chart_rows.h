#pragma once

#include "ui/drawings/chart.h"
#include "ui/text/formatter.h"

#include <QRectF>
#include <QString>
#include <QStringList>
#include <optional>

namespace ui::drawings {

/// The text, or its beginning and end with a sign for what is left out between them: a number at the end
/// stays.
QString shortened(const QString& text, const Lettering& lettering, double width_mm);

/// The title of an axis, shortened to fit into the row above a plot that reaches to the right end of its box.
QString fittedTitle(const QString& title, const QRectF& box_mm, const Type& type);

/// Rows one under the other, each with its name beside it.
struct Rows {
  QRectF names, plot;  ///< side by side [mm]
  int count = 0;
  double most_bar_mm = 3.4;

  bool isEmpty() const { return count == 0 || plot.isEmpty(); }
  double pitch() const { return plot.height() / count; }
  QRectF row(int k) const;  ///< across the plot
  /// A bar in the middle of its row.
  QRectF bar(int k, double from_mm, double to_mm) const;
  /// The row at a place, on its name too.
  std::optional<int> at(QPointF place) const;
  bool holdsText(const Type& type) const;  ///< a line of text stands in each row
};

/// Height of a row with air about its name [mm].
double bestPitch(const Type& type);

/// Rows from the top of the room down, lower than the best where room is short; empty when too little is
/// left.
/// @param right_mm kept free at the right
/// @param stretch how many times the best height they may have where there is room
Rows rowsIn(const QRectF& room, const QStringList& names, double right_mm, const Type& type,
            double stretch = 1);

/// Names in the reader's direction; where rows are too low only every second, third, ...
void addNames(Chart& chart, const Rows& rows, const QStringList& names, const Formatter& format);

}  // namespace ui::drawings
