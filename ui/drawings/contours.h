#pragma once

#include <QPainterPath>
#include <vector>

namespace ui::drawings {

/// Values on the crossings of a grid, in between them linear along its lines.
struct ValueGrid {
  std::vector<double> x_mm, y_mm;
  std::vector<float> values;  ///< row after row
};

struct Contours {
  QPainterPath region;  ///< closed outlines of where values reach the level, even-odd
  QPainterPath lines;   ///< those parts of the outlines that are not the edge of the grid
};

/// Where the values of a grid of at least two columns and rows reach a level, by marching squares.
Contours contoursAt(const ValueGrid& grid, double level);

}  // namespace ui::drawings
