#pragma once

#include "ui/drawings/figure.h"

#include <QString>
#include <vector>

namespace ui::drawings {

/// One measured length on paper. `from` and `to` run along the dimension line, the feet tell where the thing
/// measured lies across it [mm].
struct Measure {
  double from, to;
  double from_foot, to_foot;
  QString text;
};

enum class Side { above, below, left, right };

/// Adds a row for each measure outside the object: dimension line with oblique strokes, extension lines and
/// its text. Rows go outward from `start` in the order given, shorter ones first. A text too wide for its
/// line stands beyond the line's end, clear of all extension lines.
void addRows(Figure& figure, Side side, double start, const std::vector<Measure>& rows,
             const Lettering& lettering);

/// Room a row takes across its line [mm].
double rowPitch(const Lettering& lettering);

}  // namespace ui::drawings
