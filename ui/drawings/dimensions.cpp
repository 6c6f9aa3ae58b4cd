#include "ui/drawings/dimensions.h"

#include "ui/drawings/wrap_lines.h"

#include <algorithm>
#include <span>

namespace ui::drawings {
namespace {

constexpr double kGap = 1.2;        // from the thing to its extension line
constexpr double kOvershoot = 1.5;  // of the extension line past the dimension line
constexpr double kStroke = 1.5;     // half an oblique end stroke
constexpr double kTextEnd = 2;      // of the dimension line, clear of its text
constexpr int kMostLines = 3;
constexpr double kRowGap = 2.4;   // from row to row
constexpr double kLeastWide = 4;  // of level lines beside an upright row, in heights of their capitals
constexpr double kTextGap = 0.7;  // between the dimension line and its text

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

/// How the text of a row stands at its dimension line.
enum class Stand { along, level_beside, beyond };

struct RowText {
  QStringList lines;
  Stand stand;
};

double heightOf(const QStringList& lines, const Lettering& lettering) {
  return static_cast<double>(lines.size()) * height_mm(lettering);
}

/// Lines as narrow as they can be where they may take a height.
QStringList narrowest(const QString& text, const Lettering& lettering, double height) {
  for (double width = kLeastWide * lettering.cap_mm;; width *= 1.15) {
    const QStringList lines = wrapLines(text, lettering, width);
    if (lines.size() == 1 || heightOf(lines, lettering) <= height) return lines;
  }
}

/// Where a row's text is clear of the extension lines of its own row and those outside it.
struct Room {
  double from, to;

  double length() const { return to - from - 2 * kTextEnd; }
  double middle() const { return (from + to) / 2; }
};

Room roomOf(std::span<const Measure> row_and_outer) {
  Room room{row_and_outer.front().from, row_and_outer.front().to};
  for (const Measure& row : row_and_outer) room = {std::max(room.from, row.from), std::min(room.to, row.to)};
  return room;
}

RowText rowText(const QString& text, const Room& along, Side side, LongText long_text,
                const Lettering& lettering) {
  const double room = along.length();
  const QStringList lines = wrapLines(text, lettering, room);
  const bool may_part = long_text == LongText::beside || long_text == LongText::beyond;
  const bool goes_beside = long_text == LongText::beside || long_text == LongText::one_line_beside;
  if (lines.size() <= (may_part ? kMostLines : 1) && widest(lines, lettering) <= room)
    return {lines, Stand::along};
  if (goes_beside && isUpright(side) && height_mm(lettering) <= room)
    return {narrowest(text, lettering, room), Stand::level_beside};
  return {{text}, Stand::beyond};
}

void addLevelText(Figure& figure, const QStringList& lines, double along, double level,
                  const Lettering& lettering) {
  const double middle = level - kTextGap - widest(lines, lettering) / 2;
  const double baseline = along - heightOf(lines, lettering) / 2 + ascent_mm(lettering);
  figure.addLines(lines, {middle, baseline}, lettering, Align::centre);
}

/// @param along middle of the text, or its beginning where it stands beyond the line
void addRowText(Figure& figure, Side side, const RowText& text, double along, double level,
                const Lettering& lettering) {
  if (text.stand == Stand::level_beside) return addLevelText(figure, text.lines, along, level, lettering);
  const Align align = text.stand == Stand::along ? Align::centre : Align::left;
  double across = level - kTextGap + ascent_mm(lettering) - heightOf(text.lines, lettering);
  for (const QString& line : text.lines) {
    figure.addText(line, place(side, along, across), lettering, align, isUpright(side) ? 90 : 0);
    across += height_mm(lettering);
  }
}

void addRow(Figure& figure, Side side, const Measure& row, double level) {
  figure.add(place(side, row.from, level), place(side, row.to, level), Line::thin);
  addExtension(figure, side, row.from, row.from_foot, level);
  addExtension(figure, side, row.to, row.to_foot, level);
  addEndStroke(figure, place(side, row.from, level));
  addEndStroke(figure, place(side, row.to, level));
}

/// Room a row with its text takes across its line.
double pitchOf(const RowText& text, const Lettering& lettering) {
  const double across =
      text.stand == Stand::level_beside ? widest(text.lines, lettering) : heightOf(text.lines, lettering);
  return across + kTextGap + kRowGap;
}

}  // namespace

void addRows(Figure& figure, Side side, double start, const std::vector<Measure>& rows,
             const Lettering& lettering, LongText long_text) {
  if (rows.empty()) return;
  const bool textInward = side == Side::below || side == Side::right;
  double level = start + outward(side) * (textInward ? 0 : kOvershoot + 1);
  double beyond = isUpright(side) ? 1e9 : -1e9;
  for (const Measure& row : rows) {
    beyond = isUpright(side) ? std::min(beyond, row.from - 3) : std::max(beyond, row.to + 3);
  }
  for (std::size_t k = 0; k < rows.size(); ++k) {
    const Room room = roomOf(std::span(rows).subspan(k));
    const RowText text = rowText(rows[k].text, room, side, long_text, lettering);
    const double pitch = pitchOf(text, lettering);
    if (textInward) level += outward(side) * pitch;
    addRow(figure, side, rows[k], level);
    addRowText(figure, side, text, text.stand == Stand::beyond ? beyond : room.middle(), level, lettering);
    if (!textInward) level += outward(side) * pitch;
  }
}

}  // namespace ui::drawings
