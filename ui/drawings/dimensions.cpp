#include "ui/drawings/dimensions.h"

#include <algorithm>

namespace ui::drawings {
namespace {

constexpr double kGap = 1.2;        // from the thing to its extension line
constexpr double kOvershoot = 1.5;  // of the extension line past the dimension line
constexpr double kStroke = 1.5;     // half an oblique end stroke
constexpr double kTextGap = 0.7;    // between the dimension line and its text

bool isUpright(Side side) {
  return side == Side::left || side == Side::right;
}

double outward(Side side) {
  return side == Side::below || side == Side::right ? 1 : -1;
}

/// Maps a place along and across the rows to paper.
QPointF place(Side side, double along, double across) {
  return isUpright(side) ? QPointF(across, along) : QPointF(along, across);
}

void addExtension(Figure& figure, Side side, double along, double foot, double level) {
  const double way = outward(side);
  figure.add(place(side, along, foot + way * kGap), place(side, along, level + way * kOvershoot), Line::thin);
}

void addEndStroke(Figure& figure, QPointF at) {
  figure.add(at + QPointF(-kStroke, kStroke), at + QPointF(kStroke, -kStroke), Line::edge);
}

void addRowText(Figure& figure, Side side, const Measure& row, double level, double beyond,
                const Lettering& lettering) {
  const bool inside = width_mm(row.text, lettering) + 4 <= row.to - row.from;
  const double across = level - kTextGap - descent_mm(lettering, row.text);
  const double middle = (row.from + row.to) / 2;
  if (isUpright(side)) {
    figure.addText(row.text, {across, inside ? middle : beyond}, lettering,
                   inside ? Align::centre : Align::left, 90);
  } else {
    figure.addText(row.text, {inside ? middle : beyond, across}, lettering,
                   inside ? Align::centre : Align::left);
  }
}

void addRow(Figure& figure, Side side, const Measure& row, double level, double beyond,
            const Lettering& lettering) {
  figure.add(place(side, row.from, level), place(side, row.to, level), Line::thin);
  addExtension(figure, side, row.from, row.from_foot, level);
  addExtension(figure, side, row.to, row.to_foot, level);
  addEndStroke(figure, place(side, row.from, level));
  addEndStroke(figure, place(side, row.to, level));
  addRowText(figure, side, row, level, beyond, lettering);
}

}  // namespace

double rowPitch(const Lettering& lettering) {
  return height_mm(lettering) + kTextGap + 2.4;
}

void addRows(Figure& figure, Side side, double start, const std::vector<Measure>& rows,
             const Lettering& lettering) {
  if (rows.empty()) return;
  const double pitch = rowPitch(lettering);
  const bool textOutside = side == Side::below || side == Side::right;
  double level = start + outward(side) * (textOutside ? pitch : kOvershoot + 1);
  double beyond = isUpright(side) ? 1e9 : -1e9;
  for (const Measure& row : rows) {
    beyond = isUpright(side) ? std::min(beyond, row.from - 3) : std::max(beyond, row.to + 3);
  }
  for (const Measure& row : rows) {
    addRow(figure, side, row, level, beyond, lettering);
    level += outward(side) * pitch;
  }
}

}  // namespace ui::drawings
