#include "ui/handouts/sheet_parts.h"

#include <algorithm>

namespace ui::handouts {
namespace {

constexpr double kPad = 1.2;
constexpr double kIndent = 5;

/// Lines of an empty table under the titles of its columns.
struct Grid {
  std::vector<QStringList> titles;
  std::vector<double> edges;  // of the columns, from 0 to the width
  double head_mm = 0;
  int rows = 0;
  QStringList names = {};  // of the rows
};

Grid gridOf(const std::vector<Column>& columns, double width_mm) {
  Grid grid{{}, {0}};
  for (const Column& column : columns) {
    const double wide = column.share * width_mm;
    grid.titles.push_back(wrapped(column.title, kStrong, wide - 2 * kPad));
    grid.edges.push_back(grid.edges.back() + wide);
    const auto lines = static_cast<double>(grid.titles.back().size());
    grid.head_mm = std::max(grid.head_mm, lines * lineHeight_mm(kStrong) + 2 * kPad);
  }
  return grid;
}

void drawNames(QPainter& painter, QPointF at, const Grid& grid) {
  const double middle = (kWriteRow_mm - lineHeight_mm(kStrong)) / 2;
  at += QPointF(kPad, grid.head_mm + middle);
  for (const QString& name : grid.names) {
    drawLines(painter, at, {name}, kStrong);
    at.ry() += kWriteRow_mm;
  }
}

void drawGrid(QPainter& painter, QPointF at, const Grid& grid) {
  const double foot = grid.head_mm + grid.rows * kWriteRow_mm, right = grid.edges.back();
  for (std::size_t k = 0; k < grid.titles.size(); ++k)
    drawLines(painter, at + QPointF(grid.edges[k] + kPad, kPad), grid.titles[k], kStrong);
  painter.setPen(line(0.35));
  for (const double x : grid.edges) painter.drawLine(at + QPointF(x, 0), at + QPointF(x, foot));
  for (int row = 1; row <= grid.rows; ++row) {
    const double y = grid.head_mm + row * kWriteRow_mm;
    painter.drawLine(at + QPointF(0, y), at + QPointF(right, y));
  }
  painter.setPen(line(0.5));
  painter.drawLine(at, at + QPointF(right, 0));
  painter.drawLine(at + QPointF(0, grid.head_mm), at + QPointF(right, grid.head_mm));
  drawNames(painter, at, grid);
}

void addGrid(Sheet& sheet, const Grid& grid) {
  sheet.add({grid.head_mm + grid.rows * kWriteRow_mm + 0.5,
             [grid](QPainter& painter, QPointF at) { drawGrid(painter, at, grid); }});
}

}  // namespace

void addWriteLine(Sheet& sheet, const QStringList& names) {
  const double wide = sheet.width() / static_cast<double>(names.size());
  sheet.add({kWriteRow_mm, [names, wide](QPainter& painter, QPointF at) {
               const double foot = kWriteRow_mm - 2;
               for (const QString& name : names) {
                 drawLines(painter, at + QPointF(0, foot - lineHeight_mm(kBody)), {name}, kBody);
                 painter.setPen(line(0.35));
                 painter.drawLine(at + QPointF(drawings::width_mm(name, kBody) + 3, foot),
                                  at + QPointF(&name == &names.back() ? wide : wide - 3, foot));
                 at += QPointF(wide, 0);
               }
             }});
}

void addWriteTable(Sheet& sheet, const std::vector<Column>& columns, double below_mm, int least_rows) {
  Grid grid = gridOf(columns, sheet.width());
  const double height = sheet.height() - sheet.used() - below_mm;
  grid.rows = std::max(least_rows, static_cast<int>((height - grid.head_mm - 1) / kWriteRow_mm));
  addGrid(sheet, grid);
}

void addWriteRows(Sheet& sheet, const std::vector<Column>& columns, const QStringList& names) {
  Grid grid = gridOf(columns, sheet.width());
  grid.rows = static_cast<int>(names.size());
  grid.names = names;
  addGrid(sheet, grid);
}

void addAbove(Sheet& sheet, const Sheet& below, DrawingHeight height,
              std::function<void(QPainter&, const QRectF&)> draw) {
  const double left = sheet.height() - sheet.used() - below.used();
  sheet.drawing(std::clamp(left, height.least, height.most), std::move(draw));
  append(sheet, below);
}

void append(Sheet& sheet, const Sheet& more) {
  for (const Block& block : more.blocks()) sheet.add(block);
}

void addPoint(Sheet& sheet, const QString& text) {
  const QStringList lines = wrapped(text, kBody, sheet.width() - kIndent);
  const double height = static_cast<double>(lines.size()) * lineHeight_mm(kBody) + 1;
  sheet.add({height, [lines](QPainter& painter, QPointF at) {
               drawLines(painter, at, {QStringLiteral("–")}, kBody);
               drawLines(painter, at + QPointF(kIndent, 0), lines, kBody);
             }});
}

}  // namespace ui::handouts
