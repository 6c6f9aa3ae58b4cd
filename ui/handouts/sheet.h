#pragma once

#include "ui/drawings/lettering.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace ui::handouts {

/// Sizes of lettering on the sheets; the smallest is over 12 point.
inline constexpr drawings::Lettering kBody{3.1, false};
inline constexpr drawings::Lettering kStrong{3.1, true};
inline constexpr drawings::Lettering kHeading{3.8, true};
inline constexpr drawings::Lettering kTitle{4.6, true};

/// A piece of a sheet that is not split between pages.
struct Block {
  double height_mm = 0;
  std::function<void(QPainter&, QPointF)> paint;  ///< at its top left corner
  bool keep_with_next = false;
  bool starts_page = false;
  std::shared_ptr<const Block> head = nullptr;  ///< repeated at the top of a page that starts with this block
  double white_mm = 0;                          ///< bare paper at the foot of its height
};

enum class CellAlign { left, centre, right };

struct Column {
  QString title;
  double share;  ///< of the sheet's width; all shares together make the whole
  CellAlign align = CellAlign::left;
};

/// A cell of a table: text, or an empty box to tick.
struct Cell {
  QString text;
  bool tick = false;
  bool strong = false;
  Cell(QString t) : text(std::move(t)) {}  // NOLINT(google-explicit-constructor)
  static Cell box() {
    Cell cell{QString()};
    cell.tick = true;
    return cell;
  }
};

/// Collects what a sheet shows, from the top down.
class Sheet {
public:
  explicit Sheet(QSizeF page_mm) : page_mm_(page_mm) {}

  double width() const { return page_mm_.width(); }    ///< [mm]
  double height() const { return page_mm_.height(); }  ///< of one page [mm]
  void heading(const QString& text);
  void paragraph(const QString& text, const drawings::Lettering& lettering = kBody);
  /// Paragraph with a box to tick before it.
  void task(const QString& text);
  void table(const std::vector<Column>& columns, const std::vector<std::vector<Cell>>& rows);
  /// Drawing in the whole width.
  void drawing(double height_mm, std::function<void(QPainter&, const QRectF&)> draw);
  void space(double height_mm);
  /// What follows starts on a new page.
  void breakPage();
  /// Blocks from `first` on stay on one page.
  void keepTogether(std::size_t first);
  /// Height of all blocks so far [mm].
  double used() const;
  void add(Block block) { blocks_.push_back(std::move(block)); }

  const std::vector<Block>& blocks() const { return blocks_; }

private:
  QSizeF page_mm_;
  std::vector<Block> blocks_;
};

/// Lines of a text broken to a width.
QStringList wrapped(const QString& text, const drawings::Lettering& lettering, double width_mm);
double lineHeight_mm(const drawings::Lettering& lettering);
/// Text shortened with an ellipsis to fit.
QString elided(const QString& text, const drawings::Lettering& lettering, double width_mm);
/// Largest lettering between the body's and `wanted` that sets the text in one line of the width.
drawings::Lettering fitting(const QString& text, drawings::Lettering wanted, double width_mm);

/// Draws lines of text below each other, the first one's top at `top`.
void drawLines(QPainter& painter, QPointF top, const QStringList& lines, const drawings::Lettering& lettering,
               double width_mm = 0, CellAlign align = CellAlign::left);
void drawTickBox(QPainter& painter, QPointF top_left, double size_mm);
QPen line(double width_mm);

/// Turns the painter for a page of a width so that what is drawn from the left stands from the right, when
/// the language is written so.
void mirrorFor(QPainter& painter, double width_mm);
/// Draws what must never be mirrored in the room that a mirrored page gives it.
void drawUnmirrored(QPainter& painter, const QRectF& room,
                    const std::function<void(QPainter&, const QRectF&)>& draw);

/// Blocks placed on pages.
struct Placed {
  const Block* block;
  double y_mm;  ///< from the top of the page's content
};
using PlacedPage = std::vector<Placed>;

/// Shares the blocks out over pages of a height; a block taller than a page gets one by itself. Where the
/// last page before a break would be nearly bare, the white between blocks shrinks if that saves the page.
std::vector<PlacedPage> paginate(const std::vector<Block>& blocks, double height_mm);

}  // namespace ui::handouts
