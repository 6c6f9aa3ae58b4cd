#include "core/option_result.h"
#include "ui/drawings/money_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::OptionResult;
using words::OptionRow;
using Rows = std::vector<std::vector<Cell>>;

constexpr std::size_t kBesideA = 4;  // as many have room beside A
constexpr double kName = 0.26, kLeastPicture_mm = 50, kMostPicture_mm = 110;

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

Rows cellsOf(const std::vector<OptionRow>& rows, const std::vector<std::size_t>& options, bool changes,
             Lines lines) {
  Rows cells;
  for (const OptionRow& row : rows) {
    if (row.is_change != changes || (lines == Lines::different && !anyDiffers(row))) continue;
    cells.push_back({row.name});
    for (const std::size_t option : options) cells.back().push_back(valueCell(row, option));
  }
  return cells;
}

std::vector<Column> columnsOf(const QString& title, const std::vector<OptionResult>& results,
                              const std::vector<std::size_t>& options) {
  std::vector<Column> columns{{title, kName}};
  for (const std::size_t option : options)
    columns.push_back({words::optionTitle(results[option]), (1 - kName) / static_cast<double>(options.size()),
                       CellAlign::right});
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

Sheet tables(const Sheet& like, const Content& content, Lines lines) {
  Sheet sheet({like.width(), like.height()});
  const auto& options = content.plan.options;
  const auto rows = words::optionRows(content.project, options, content.format);
  sheet.space(2);
  for (const auto& group : groupsOf(options.size())) {
    const Rows changes = cellsOf(rows, group, true, lines), results = cellsOf(rows, group, false, lines);
    if (!changes.empty()) sheet.table(columnsOf(Text::tr("What is changed"), options, group), changes);
    if (!results.empty()) sheet.table(columnsOf(Text::tr("What comes of it"), options, group), results);
  }
  QString note = Text::tr("≠ and heavy type: not as in A.");
  if (lines == Lines::different)
    note += QLatin1Char(' ') + Text::tr("Lines that are the same in all options are left out.");
  sheet.paragraph(note);
  addWhyNot(sheet, content);
  return sheet;
}

}  // namespace

void buildOptions(Sheet& sheet, const Content& content) {
  Sheet below = tables(sheet, content, Lines::all);
  if (below.used() + kLeastPicture_mm > sheet.height()) below = tables(sheet, content, Lines::different);
  addAbove(sheet, below, {kLeastPicture_mm, kMostPicture_mm},
           [&content](QPainter& painter, const QRectF& box) {
             drawings::drawOptions(painter, box, content.plan.options, content.format, {});
           });
}

}  // namespace ui::handouts
