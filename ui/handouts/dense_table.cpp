#include "ui/handouts/dense_table.h"

#include <algorithm>
#include <memory>

namespace ui::handouts {
namespace {

constexpr double kAside = 1.2;
constexpr double kHeavy_mm = 0.7;
constexpr double kOver = 0.75;  // of the room over capitals that a row goes without [mm]

struct SetCell {
  QStringList lines;
  drawings::Lettering lettering;
  double x, width;
  CellAlign align;
};

SetCell setCell(const Cell& cell, const Column& column, double x, double width) {
  const drawings::Lettering& lettering = cell.strong ? kStrong : kBody;
  return {wrapped(cell.text, lettering, width - 2 * kAside), lettering, x + kAside, width - 2 * kAside,
          column.align};
}

std::vector<SetCell> setRow(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                            double width) {
  std::vector<SetCell> row;
  double x = 0;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    row.push_back(setCell(cells[k], columns[k], x, columns[k].share * width));
    x += columns[k].share * width;
  }
  return row;
}

double heightOf(const std::vector<SetCell>& row) {
  double height = 0;
  for (const SetCell& cell : row)
    height = std::max(height, static_cast<double>(cell.lines.size()) * lineHeight_mm(cell.lettering));
  return height;
}

/// Letters that are no higher than capitals with an accent.
bool isLow(const QString& text) {
  return std::ranges::all_of(text, [](QChar c) {
    const QChar::Script script = c.script();
    return script <= QChar::Script_Cyrillic;  // after them come scripts that take all of a line's height
  });
}

/// Room over and under a row's letters [mm]; below 0 where a line's own room is more than they need.
struct Room {
  double over, under;
};

Room roomAbout(const std::vector<SetCell>& row) {
  const auto is_low = [](const SetCell& cell) { return std::ranges::all_of(cell.lines, isLow); };
  return std::ranges::all_of(row, is_low) ? Room{-kOver, 0.1} : Room{1, 0.8};
}

Block rowBlock(std::vector<SetCell> row, double width, double rule_mm) {
  const Room room = roomAbout(row);
  const double above = room.over, height = above + heightOf(row) + room.under;
  return {height, [=, row = std::move(row)](QPainter& painter, QPointF at) {
            for (const SetCell& cell : row)
              drawLines(painter, at + QPointF(cell.x, above), cell.lines, cell.lettering, cell.width,
                        cell.align);
            painter.setPen(line(rule_mm));
            painter.drawLine(at + QPointF(0, height), at + QPointF(width, height));
          }};
}

Block heavyLine(double width) {
  return {kHeavy_mm, [width](QPainter& painter, QPointF at) {
            painter.setPen(line(kHeavy_mm));
            painter.drawLine(at + QPointF(0, kHeavy_mm / 2), at + QPointF(width, kHeavy_mm / 2));
          }};
}

std::vector<Cell> titlesOf(const std::vector<Column>& columns) {
  std::vector<Cell> cells;
  for (const Column& column : columns) {
    cells.emplace_back(column.title);
    cells.back().strong = true;
  }
  return cells;
}

}  // namespace

void addDenseTable(Sheet& sheet, const std::vector<Column>& columns,
                   const std::vector<std::vector<Cell>>& rows) {
  const double width = sheet.width();
  auto head = std::make_shared<Block>(rowBlock(setRow(columns, titlesOf(columns), width), width, 0.5));
  head->keep_with_next = true;
  sheet.add(*head);
  for (const auto& cells : rows) {
    Block block = cells.empty() ? heavyLine(width) : rowBlock(setRow(columns, cells, width), width, 0.35);
    block.head = head;
    sheet.add(std::move(block));
  }
}

}  // namespace ui::handouts
