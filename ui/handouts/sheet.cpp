#include "ui/handouts/sheet.h"

#include "ui/text/languages.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <span>

namespace ui::handouts {
namespace {

using drawings::Lettering;

constexpr double kCellPad = 1.2;
constexpr double kTick = 5;
constexpr double kRowWhite = 0.8;       // of the next row, over its text
constexpr double kNearlyBare = 1. / 3;  // of a page
constexpr double kNarrow = 0.4;  // parts of the body; letters of a text are seldom that narrow in the mean
constexpr std::size_t kShortTable = 9;  // rows that are not split between pages

Block textBlock(const QString& text, const Lettering& lettering, double width, double after,
                double indent = 0) {
  const QStringList lines = wrapped(text, lettering, width - indent);
  return {
      static_cast<double>(lines.size()) * lineHeight_mm(lettering) + after,
      [=](QPainter& painter, QPointF at) { drawLines(painter, at + QPointF(indent, 0), lines, lettering); },
      false,
      false,
      nullptr,
      after};
}

/// A cell as set in its column.
struct SetCell {
  QStringList lines;
  bool tick;
  Lettering lettering;
  double x, width;
  CellAlign align;
};

struct SetRow {
  std::vector<SetCell> cells;
  double height;
  double width;
};

SetRow setRow(const std::vector<Column>& columns, const std::vector<Cell>& cells, double width) {
  SetRow row{{}, lineHeight_mm(kBody) + 2 * kCellPad, width};
  double x = 0;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const double column = columns[k].share * width;
    const Lettering lettering = cells[k].strong ? kStrong : kBody;
    SetCell cell{wrapped(cells[k].text, lettering, column - 2 * kCellPad),
                 cells[k].tick,
                 lettering,
                 x + kCellPad,
                 column - 2 * kCellPad,
                 columns[k].align};
    row.height = std::max(row.height,
                          static_cast<double>(cell.lines.size()) * lineHeight_mm(lettering) + 2 * kCellPad);
    row.cells.push_back(std::move(cell));
    x += column;
  }
  return row;
}

void paintCell(QPainter& painter, const SetCell& cell, QPointF at, double height) {
  if (cell.tick) {
    drawTickBox(painter, at + QPointF(cell.x + (cell.width - kTick) / 2, (height - kTick) / 2), kTick);
  } else {
    drawLines(painter, at + QPointF(cell.x, kCellPad), cell.lines, cell.lettering, cell.width, cell.align);
  }
}

Block rowBlock(SetRow row, double rule_mm) {
  Block block{row.height, [row = std::move(row), rule_mm](QPainter& painter, QPointF at) {
                for (const SetCell& cell : row.cells) paintCell(painter, cell, at, row.height);
                painter.setPen(line(rule_mm));
                painter.drawLine(at + QPointF(0, row.height), at + QPointF(row.width, row.height));
              }};
  block.white_mm = kRowWhite;
  return block;
}

std::vector<Cell> titles(const std::vector<Column>& columns) {
  std::vector<Cell> cells;
  for (const Column& column : columns) {
    cells.emplace_back(column.title);
    cells.back().strong = true;
  }
  return cells;
}

double heightOf(const Block& block, double less) {
  return block.height_mm - less * block.white_mm;
}

/// Height of block k with all that must stay with it, a share of their white left out.
double groupHeight(std::span<const Block> blocks, std::size_t k, double less) {
  double height = heightOf(blocks[k], less);
  while (blocks[k].keep_with_next && k + 1 < blocks.size()) height += heightOf(blocks[++k], less);
  return height;
}

/// Blocks on pages, a share of all white left out.
std::vector<PlacedPage> placed(std::span<const Block> blocks, double height_mm, double less) {
  std::vector<PlacedPage> pages(1);
  double y = 0;
  for (std::size_t k = 0; k < blocks.size(); ++k) {
    const Block& block = blocks[k];
    if (y > 0 && y + groupHeight(blocks, k, less) > height_mm + 1e-6) {
      if (!block.paint) continue;
      pages.emplace_back();
      y = 0;
      if (block.head) {
        pages.back().push_back({block.head.get(), 0});
        y = heightOf(*block.head, less);
      }
    }
    if (y == 0 && !block.paint) continue;
    if (block.paint) pages.back().push_back({&block, y});
    y += heightOf(block, less);
  }
  return pages;
}

double footOf(const PlacedPage& page) {
  return page.empty() ? 0 : page.back().y_mm + page.back().block->height_mm;
}

/// Blocks on pages, closer to each other where that saves a page that would be nearly bare.
std::vector<PlacedPage> savingPages(std::span<const Block> blocks, double height_mm) {
  std::vector<PlacedPage> pages = placed(blocks, height_mm, 0);
  if (pages.size() < 2 || footOf(pages.back()) > kNearlyBare * height_mm) return pages;
  for (const double less : {0.2, 0.4, 0.6}) {
    std::vector<PlacedPage> tighter = placed(blocks, height_mm, less);
    if (tighter.size() < pages.size()) return tighter;
  }
  return pages;
}

/// How far from the left edge a text starts in a width [mm].
double shiftFor(const QString& text, const Lettering& lettering, double width, CellAlign align) {
  if (align == CellAlign::left) return 0;
  const double spare = width - drawings::width_mm(text, lettering);
  return align == CellAlign::centre ? spare / 2 : spare;
}

}  // namespace

void Sheet::heading(const QString& text) {
  if (!blocks_.empty()) space(3);
  Block block = textBlock(text, kHeading, width(), 1);
  block.keep_with_next = true;
  add(std::move(block));
}

void Sheet::paragraph(const QString& text, const Lettering& lettering) {
  add(textBlock(text, lettering, width(), 1.5));
}

void Sheet::task(const QString& text) {
  Block block = textBlock(text, kBody, width(), 2, 8);
  block.paint = [words = block.paint](QPainter& painter, QPointF at) {
    drawTickBox(painter, at + QPointF(0, 0.4), kTick);
    words(painter, at);
  };
  add(std::move(block));
}

void Sheet::table(const std::vector<Column>& columns, const std::vector<std::vector<Cell>>& rows) {
  auto head = std::make_shared<Block>(rowBlock(setRow(columns, titles(columns), width()), 0.5));
  head->keep_with_next = true;
  add(*head);
  const std::size_t first = blocks_.size();
  for (const auto& row : rows) {
    Block block = rowBlock(setRow(columns, row, width()), 0.35);
    block.head = head;
    add(std::move(block));
  }
  if (rows.size() <= kShortTable) keepTogether(first);
  space(2.5);
}

void Sheet::drawing(double height_mm, std::function<void(QPainter&, const QRectF&)> draw) {
  add({height_mm, [draw = std::move(draw), size = QSizeF(width(), height_mm)](QPainter& painter, QPointF at) {
         drawUnmirrored(painter, QRectF(at, size), draw);
       }});
}

void Sheet::space(double height_mm) {
  Block block{height_mm, nullptr};
  block.white_mm = height_mm;
  add(std::move(block));
}

void Sheet::breakPage() {
  Block block;
  block.starts_page = true;
  add(std::move(block));
}

void Sheet::keepTogether(std::size_t first) {
  for (std::size_t k = first; k + 1 < blocks_.size(); ++k) blocks_[k].keep_with_next = true;
}

double Sheet::used() const {
  double height = 0;
  for (const Block& block : blocks_) height += block.height_mm;
  return height;
}

QStringList wrapped(const QString& text, const Lettering& lettering, double width_mm) {
  const bool may_be_one_line = !text.isEmpty() && !text.contains(u'\n') &&
                               double(text.size()) * kNarrow * drawings::body_mm(lettering) <= width_mm;
  if (may_be_one_line && drawings::width_mm(text, lettering) <= width_mm) return {text.trimmed()};
  QStringList lines;
  QTextOption option;
  option.setTextDirection(textDirection());
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  for (const QString& part : text.split(u'\n')) {
    QTextLayout layout(part, drawings::font(lettering, part));
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine l = layout.createLine(); l.isValid(); l = layout.createLine()) {
      l.setLineWidth(std::max(1., width_mm) * 100);
      lines << part.mid(l.textStart(), l.textLength()).trimmed();
    }
    layout.endLayout();
  }
  return lines;
}

double lineHeight_mm(const Lettering& lettering) {
  return drawings::height_mm(lettering) + 0.15;
}

QString elided(const QString& text, const Lettering& lettering, double width_mm) {
  if (drawings::width_mm(text, lettering) <= width_mm) return text;
  return QFontMetricsF(drawings::font(lettering, text)).elidedText(text, Qt::ElideRight, width_mm * 100);
}

Lettering fitting(const QString& text, Lettering wanted, double width_mm) {
  while (wanted.cap_mm > kBody.cap_mm && drawings::width_mm(text, wanted) > width_mm) {
    wanted.cap_mm = std::max(kBody.cap_mm, wanted.cap_mm - 0.2);
  }
  return wanted;
}

void drawLines(QPainter& painter, QPointF top, const QStringList& lines, const Lettering& lettering,
               double width_mm, CellAlign align) {
  painter.setPen(Qt::black);
  const double high = lineHeight_mm(lettering);
  double baseline = top.y() + drawings::ascent_mm(lettering);
  for (const QString& text : lines) {
    drawings::drawText(painter, {top.x() + shiftFor(text, lettering, width_mm, align), baseline}, text,
                       lettering);
    baseline += high;
  }
}

void drawTickBox(QPainter& painter, QPointF top_left, double size_mm) {
  painter.setPen(line(0.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(top_left, QSizeF(size_mm, size_mm)));
}

QPen line(double width_mm) {
  return {Qt::black, width_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

void mirrorFor(QPainter& painter, double width_mm) {
  if (textDirection() == Qt::LeftToRight) return;
  painter.translate(width_mm, 0);
  painter.scale(-1, 1);
}

void drawUnmirrored(QPainter& painter, const QRectF& room,
                    const std::function<void(QPainter&, const QRectF&)>& draw) {
  painter.save();
  if (painter.worldTransform().determinant() < 0) {
    painter.translate(2 * room.center().x(), 0);
    painter.scale(-1, 1);
  }
  draw(painter, room);
  painter.restore();
}

std::vector<PlacedPage> paginate(const std::vector<Block>& blocks, double height_mm) {
  std::vector<PlacedPage> pages;
  for (auto from = blocks.begin(); from != blocks.end();) {
    const auto to =
        std::find_if(from + 1, blocks.end(), [](const Block& block) { return block.starts_page; });
    std::vector<PlacedPage> more = savingPages({from, to}, height_mm);
    if (!more.front().empty()) std::ranges::move(more, std::back_inserter(pages));
    from = to;
  }
  if (pages.empty()) pages.emplace_back();
  return pages;
}

}  // namespace ui::handouts
