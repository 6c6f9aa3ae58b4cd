#include "core/option_result.h"
#include "ui/drawings/money_charts.h"
#include "ui/handouts/dense_table.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QPicture>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::OptionResult;
using words::OptionRow;
using Rows = std::vector<std::vector<Cell>>;

constexpr std::size_t kBesideA = 4;                             // as many have room beside A
constexpr double kLeast_mm = 60, kMost_mm = 110, kStep_mm = 2;  // of the picture's height

/// What the page holds: all lines, or only those in which options differ.
enum class Lines { all, different };

bool anyDiffers(const OptionRow& row) {
  return std::ranges::find(row.differs, true) != row.differs.end();
}

Cell valueCell(const OptionRow& row, std::size_t option) {
  const bool differs = row.differs.at(option);
  Cell cell(differs ? QStringLiteral("≠ ") + row.values.at(static_cast<qsizetype>(option))
                    : row.values.at(static_cast<qsizetype>(option)));
  cell.strong = differs;
  return cell;
}

/// The reason why an option cannot be built has no room in a cell; it stands below.
bool isReason(const OptionRow& row, const Content& content) {
  for (std::size_t k = 0; k < content.plan.options.size(); ++k) {
    const core::Problems& problems = content.plan.options[k].problems;
    if (!problems.empty() &&
        row.values.at(static_cast<qsizetype>(k)) == words::problemText(problems.front(), content.format))
      return true;
  }
  return false;
}

void addRows(Rows& cells, const std::vector<OptionRow>& rows, const std::vector<std::size_t>& options,
             bool changes) {
  for (const OptionRow& row : rows) {
    if (row.is_change != changes) continue;
    cells.push_back({row.name});
    for (const std::size_t option : options) cells.back().push_back(valueCell(row, option));
  }
}

std::vector<Column> columnsOf(const std::vector<OptionResult>& results,
                              const std::vector<std::size_t>& options) {
  constexpr double kLeastNames = 0.26, kMostNames = 0.46, kForEach = 0.06;
  const auto count = static_cast<double>(options.size());
  const double names = std::max(kLeastNames, kMostNames - kForEach * (count - 2));
  std::vector<Column> columns{{Text::tr("≠ and heavy type: not as in A"), names}};
  for (const std::size_t option : options)
    columns.push_back(
        {QString::fromStdString(results[option].letter), (1 - names) / count, CellAlign::right});
  return columns;
}

/// A beside as many others as have room, then A beside the next ones.
std::vector<std::vector<std::size_t>> groupsOf(std::size_t count) {
  std::vector<std::vector<std::size_t>> groups;
  for (std::size_t k = 1; k < count; ++k) {
    if ((k - 1) % kBesideA == 0) groups.push_back({0});
    groups.back().push_back(k);
  }
  return groups;
}

void addWhyNot(Sheet& sheet, const Content& content) {
  for (const OptionResult& option : content.plan.options) {
    if (option.problems.empty()) continue;
    QStringList why;
    for (const core::Problem& problem : option.problems) why << words::problemText(problem, content.format);
    sheet.paragraph(
        Text::tr("Option %1 cannot be built: %2").arg(QString::fromStdString(option.letter), why.join(u' ')),
        kStrong);
  }
}

std::vector<OptionRow> rowsOf(const Content& content, Lines lines) {
  auto rows = words::optionRows(content.project, content.plan.options, content.format);
  std::erase_if(rows, [&](const OptionRow& row) {
    return isReason(row, content) || (lines == Lines::different && !anyDiffers(row));
  });
  return rows;
}

Sheet tables(const Sheet& like, const Content& content, Lines lines) {
  Sheet sheet({like.width(), like.height()});
  const std::vector<OptionRow> rows = rowsOf(content, lines);
  for (const auto& group : groupsOf(content.plan.options.size())) {
    Rows cells;
    addRows(cells, rows, group, true);
    if (!cells.empty()) cells.emplace_back();
    addRows(cells, rows, group, false);
    sheet.space(1);
    addDenseTable(sheet, columnsOf(content.plan.options, group), cells);
  }
  if (lines == Lines::different)
    sheet.paragraph(Text::tr("Lines that are the same in all options are left out."));
  addWhyNot(sheet, content);
  return sheet;
}

/// Whether the picture finds room in a box; without it nothing is drawn.
bool hasRoom(const Content& content, const QSizeF& box_mm) {
  QPicture picture;
  QPainter painter(&picture);
  drawings::drawOptions(painter, QRectF(QPointF(0, 0), box_mm), content.plan.options, content.format, {});
  painter.end();
  return !picture.boundingRect().isEmpty();
}

/// Least height that the picture needs: more with many options and long names.
double leastHeight(const Sheet& sheet, const Content& content) {
  double height = kLeast_mm;
  while (height + kStep_mm < sheet.height() && !hasRoom(content, {sheet.width(), height})) height += kStep_mm;
  return height;
}

}  // namespace

void buildOptions(Sheet& sheet, const Content& content) {
  const double least = leastHeight(sheet, content);
  Sheet below = tables(sheet, content, Lines::all);
  if (below.used() + least > sheet.height()) below = tables(sheet, content, Lines::different);
  addAbove(sheet, below, {least, std::max(least, kMost_mm)},
           [&content](QPainter& painter, const QRectF& box) {
             drawings::drawOptions(painter, box, content.plan.options, content.format, {});
           });
}

}  // namespace ui::handouts
