#pragma once

#include "ui/drawings/figure.h"

#include <QPointF>
#include <QString>
#include <vector>

namespace ui::drawings {

/// Heights of texts one below the other, as near below those wanted as their room allows [mm].
/// @param wanted_mm from the top down
/// @param rooms_mm from each text to the one below it, of the same length
std::vector<double> spread(const std::vector<double>& wanted_mm, const std::vector<double>& rooms_mm);
/// The same with one distance for all.
std::vector<double> spread(const std::vector<double>& wanted_mm, double pitch_mm);

/// A text that names a place of the drawing.
struct Leader {
  QPointF tip;
  QString text;
};

/// Distance from one row of leaders' texts to the next [mm].
double leaderPitch(const Lettering& lettering);

/// Adds texts in a column to the right of the drawing, each with a line from a dot on its place.
/// @param text_x where the texts begin [mm]
void addLeaders(Figure& figure, std::vector<Leader> leaders, double text_x, const Lettering& lettering);

/// Break lines where a drawing leaves off.
void addBreak(Figure& figure, QPointF from, QPointF to);

}  // namespace ui::drawings
