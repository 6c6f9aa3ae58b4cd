#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr double kPad = 1.2;
constexpr double kRow = 9;  // room to write by hand
constexpr int kLeastRows = 6;

/// A line to write on, behind its name.
void addWriteLine(Sheet& sheet, const QString& name) {
  sheet.add({kRow, [name, width = sheet.width()](QPainter& painter, QPointF at) {
               const double foot = kRow - 2;
               drawLines(painter, at + QPointF(0, foot - lineHeight_mm(kBody)), {name}, kBody);
               painter.setPen(line(0.35));
               painter.drawLine(at + QPointF(drawings::width_mm(name, kBody) + 3, foot),
                                at + QPointF(width, foot));
             }});
}

/// Lines of an empty table under the titles of its columns.
struct Grid {
  std::vector<QStringList> titles;
  std::vector<double> edges;  // of the columns, from 0 to the width
  double head_mm = 0;
  int rows = 0;
};

Grid gridOf(const std::vector<Column>& columns, double width_mm, double height_mm) {
  Grid grid{{}, {0}, 0, 0};
  for (const Column& column : columns) {
    const double wide = column.share * width_mm;
    grid.titles.push_back(wrapped(column.title, kStrong, wide - 2 * kPad));
    grid.edges.push_back(grid.edges.back() + wide);
    const auto lines = static_cast<double>(grid.titles.back().size());
    grid.head_mm = std::max(grid.head_mm, lines * lineHeight_mm(kStrong) + 2 * kPad);
  }
  grid.rows = std::max(kLeastRows, static_cast<int>((height_mm - grid.head_mm - 1) / kRow));
  return grid;
}

void drawGrid(QPainter& painter, QPointF at, const Grid& grid) {
  const double foot = grid.head_mm + grid.rows * kRow, right = grid.edges.back();
  for (std::size_t k = 0; k < grid.titles.size(); ++k)
    drawLines(painter, at + QPointF(grid.edges[k] + kPad, kPad), grid.titles[k], kStrong);
  painter.setPen(line(0.35));
  for (const double x : grid.edges) painter.drawLine(at + QPointF(x, 0), at + QPointF(x, foot));
  for (int row = 1; row <= grid.rows; ++row) {
    const double y = grid.head_mm + row * kRow;
    painter.drawLine(at + QPointF(0, y), at + QPointF(right, y));
  }
  painter.setPen(line(0.5));
  painter.drawLine(at, at + QPointF(right, 0));
  painter.drawLine(at + QPointF(0, grid.head_mm), at + QPointF(right, grid.head_mm));
}

void addGrid(Sheet& sheet, const std::vector<Column>& columns) {
  const Grid grid = gridOf(columns, sheet.width(), sheet.height() - sheet.used());
  sheet.drawing(grid.head_mm + grid.rows * kRow + 0.5,
                [grid](QPainter& painter, const QRectF& box) { drawGrid(painter, box.topLeft(), grid); });
}

}  // namespace

void buildFlowLog(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  const auto seconds = [&](int count) { return format.quantity(count, core::Unit::second, 0); };
  sheet.paragraph(
      Text::tr("How much does the tap or spring give? Catch all of its water in a vessel of known size and "
               "take the time until it is full."));
  sheet.task(Text::tr("Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.")
                 .arg(seconds(3)));
  sheet.task(Text::tr("Fill it, read the seconds, empty it, and do it again: more than %1 readings each time "
                      "you come. One line for each reading.")
                 .arg(format.integer(3)));
  sheet.task(
      Text::tr("Where it fills quickly, fill it several times running: a stroke in the tally for each time, "
               "and the seconds for all of them together."));
  sheet.task(
      Text::tr("Come back in every month, above all in the driest. The flow of the dry months decides."));
  sheet.paragraph(
      Text::tr("Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.").arg(format.integer(60)),
      kStrong);
  addWriteLine(sheet, Text::tr("Tap or spring:"));
  addWriteLine(sheet, Text::tr("Measured by:"));
  addGrid(sheet, {{Text::tr("Date"), 0.18},
                  {Text::tr("Vessel, litres"), 0.14},
                  {Text::tr("Seconds"), 0.15},
                  {Text::tr("Times filled, tally"), 0.2},
                  {Text::tr("Remarks: weather, hours it runs"), 0.33}});
}

}  // namespace ui::handouts
