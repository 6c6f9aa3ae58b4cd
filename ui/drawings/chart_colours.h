#pragma once

#include <QColor>
#include <vector>

namespace ui::drawings {

/// Colours of a chart. Every text stands on `ground` or on the window and reads at 4.5:1 or better; areas
/// that touch differ in lightness or in their hatch, so that no one needs to see hues.
struct ChartColours {
  QColor ink, ground, grid;
  QColor wide_band, band, middle;
  QColor source, roof, runoff, rain;
  QColor beds, animals, people;
  QColor unmet, marked;
};

const ChartColours& chartColours(bool dark);

/// Colour of a CIE 1976 L*a*b* value, white D65. @source iec_61966_2_1
QColor fromLab(double lightness, double a, double b);

/// `count` colours whose lightness rises or falls in even steps, away from the ground: from sand, where water
/// fails, to blue, where it lasts. The hue changes along yellow and blue, the axis that the common kinds of
/// colour blindness keep.
std::vector<QColor> ramp(int count, bool dark);

}  // namespace ui::drawings
