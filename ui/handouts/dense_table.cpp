#include "ui/handouts/dense_table.h"

#include <algorithm>
#include <memory>

namespace ui::handouts {
namespace {

constexpr double kAside = 1.2, kAbove = 0.35, kTitleAbove = 1.6;

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

/// Cells of one row, or a title over the whole width.
std::vector<SetCell> setRow(const std::vector<Column>& columns, const std::vector<Cell>& cells,
                            double width) {
  if (cells.size() == 1) return {setCell(cells.front(), {QString(), 1}, 0, width)};
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

Block rowBlock(std::vector<SetCell> row, double width, double above, double rule_mm) {
  const double height = above + heightOf(row) + kAbove;
  return {height, [=, row = std::move(row)](QPainter& painter, QPointF at) {
            for (const SetCell& cell : row)
              drawLines(painter, at + QPointF(cell.x, above), cell.lines, cell.lettering, cell.width,
                        cell.align);
            painter.setPen(line(rule_mm));
            painter.drawLine(at + QPointF(0, height), at + QPointF(width, height));
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
  auto head =
      std::make_shared<Block>(rowBlock(setRow(columns, titlesOf(columns), width), width, kAbove, 0.5));
  head->keep_with_next = true;
  sheet.add(*head);
  for (const auto& cells : rows) {
    const bool is_title = cells.size() == 1;
    Block block = rowBlock(setRow(columns, cells, width), width, is_title ? kTitleAbove : kAbove,
                           is_title ? 0.5 : 0.35);
    block.keep_with_next = is_title;
    block.head = head;
    sheet.add(std::move(block));
  }
}

}  // namespace ui::handouts
