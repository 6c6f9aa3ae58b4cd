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

/// How a text stands that is longer than its dimension line.
enum class LongText {
  beside,           ///< in lines along it; where they are too long still, level beside an upright line
  beyond,           ///< in lines along it; where they are too long still, beyond its end
  one_line_beside,  ///< beyond the end of a level line, level beside an upright one
  one_line,         ///< beyond its end
};

enum class Side { above, below, left, right };

/// Adds a row for each measure outside the object: dimension line with oblique strokes, extension lines and
/// its text. Rows go outward from `start` in the order given, shorter ones first. A text beyond a
/// line's end is clear of all extension lines.
void addRows(Figure& figure, Side side, double start, const std::vector<Measure>& rows,
             const Lettering& lettering, LongText long_text = LongText::beyond);

}  // namespace ui::drawings
