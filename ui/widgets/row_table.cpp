#include "ui/widgets/row_table.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/widgets/row_table_delegate.h"
#include "ui/widgets/theme.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScopedValueRollback>
#include <QTableWidget>
#include <QToolButton>
#include <algorithm>
#include <stdexcept>
#include <string>
#include <utility>

namespace ui {

namespace {

constexpr int kCellMargin_px = 18;

using words::fromCore;

bool isNumber(const core::Field& field) {
  return field.kind == core::FieldKind::number || field.kind == core::FieldKind::whole;
}

/// More rows or cells than a place has room for.
core::Problem tooMany(std::string path, qsizetype count, qsizetype most) {
  core::Problem problem;
  problem.code = "too_many";
  problem.path = std::move(path);
  problem.value = std::to_string(count);
  problem.most = double(most);
  return problem;
}

}  // namespace

const core::List& listWithId(std::string_view id) {
  const auto all = core::lists();
  const auto found = std::ranges::find(all, id, &core::List::id);
  if (found == all.end()) throw std::logic_error("no list with id " + std::string(id));
  return *found;
}

RowTable::RowTable(Document& document, std::string_view list, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(listWithId(list)),
      table_(new QTableWidget(this)),
      problem_(new QLabel(this)),
      buttons_(new QHBoxLayout) {
  for (const core::Field& field : core::fields()) {
    if (core::listOf(field) == &list_) columns_.push_back({&field, {}});
  }
  table_->setObjectName(fromCore(list_.id));
  table_->setColumnCount(int(columns_.size()));
  table_->setTabKeyNavigation(false);  // Tab leads on; the arrow keys go from cell to cell
  table_->setSelectionMode(QAbstractItemView::ContiguousSelection);
  table_->installEventFilter(this);
  table_->setItemDelegate(
      new RowTableDelegate([this](int column) { return choicesOf(columns_[std::size_t(column)]); }, table_));
  problem_->setObjectName(fromCore(list_.id) + QStringLiteral(".problem"));
  problem_->setWordWrap(true);
  setTone(problem_, Tone::problem);
  problem_->hide();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(3);
  layout->addWidget(table_);
  layout->addWidget(problem_);
  layout->addLayout(buttons_);
  addButtons();
  connect(table_, &QTableWidget::cellChanged, this, &RowTable::takeCell);
  connect(&document_, &Document::projectChanged, this, &RowTable::refresh);
  connect(&document_, &Document::loaded, this, [this] {
    wrong_.clear();
    refresh();
  });
  refresh();
}

void RowTable::addButtons() {
  const auto button = [this](const QString& id, const QString& text, void (RowTable::*pressed)()) {
    auto* made = new QToolButton(this);
    made->setObjectName(fromCore(list_.id) + QLatin1Char('.') + id);
    made->setText(text);
    connect(made, &QToolButton::clicked, this, pressed);
    buttons_->addWidget(made);
    return made;
  };
  if (list_.least != list_.most) {
    add_ = button(QStringLiteral("add"), tr("Add a row"), &RowTable::addRow);
    remove_ = button(QStringLiteral("remove"), tr("Take out the row"), &RowTable::removeRow);
  }
  button(QStringLiteral("paste"), tr("Paste cells"), &RowTable::paste);
  buttons_->addStretch();
}

void RowTable::setChoices(std::string_view field, Choices choices) {
  for (Column& column : columns_) {
    if (column.field->id == field) column.choices = std::move(choices);
  }
  refresh();
}

void RowTable::setRowNames(std::function<QString(int, const Formatter&)> name) {
  row_name_ = std::move(name);
  showHeaders();
}

void RowTable::setNewRow(std::function<void(core::Project&, std::size_t)> fill) {
  new_row_ = std::move(fill);
}

void RowTable::setFollowing(Following following) {
  following_ = std::move(following);
}

void RowTable::setName(const QString& name) {
  table_->setAccessibleName(name);
}

void RowTable::setFormatter(const Formatter& format) {
  format_ = format;
  showHeaders();
  refresh();
}

void RowTable::setRowsShown(int rows) {
  rows_shown_ = rows;
  showHeaders();
}

void RowTable::showHeaders() {
  QStringList names;
  for (const Column& column : columns_) {
    const QString unit = format_.unit(column.field->unit);
    const QString name = words::fieldLabel(column.field->id);
    names << (unit.isEmpty() ? name : name + QLatin1Char('\n') + unit);
  }
  table_->setHorizontalHeaderLabels(names);
  for (int k = 0; k < table_->columnCount(); ++k)
    table_->horizontalHeaderItem(k)->setToolTip(words::fieldTip(*columns_[std::size_t(k)].field, format_));
  QStringList rows;
  for (int row = 0; row < table_->rowCount(); ++row)
    rows << (row_name_ ? row_name_(row, format_) : format_.integer(row + 1));
  table_->setVerticalHeaderLabels(rows);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setStretchLastSection(false);
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() + kCellMargin_px +
                         rows_shown_ * table_->verticalHeader()->defaultSectionSize());
}

CellChoices RowTable::choicesOf(const Column& column) const {
  return column.choices ? column.choices() : ui::choicesOf(*column.field);
}

QString RowTable::textOf(const Column& column, const core::FieldValue& value) const {
  return cellText(*column.field, value, choicesOf(column), format_);
}

void RowTable::fillCell(int row, int column) {
  const Column& of = columns_[std::size_t(column)];
  QTableWidgetItem* item = table_->item(row, column);
  if (item == nullptr) {
    item = new QTableWidgetItem;
    table_->setItem(row, column, item);
  }
  item->setText(textOf(of, of.field->get(document_.project(), std::size_t(row))));
  item->setTextAlignment(isNumber(*of.field) ? Qt::AlignRight | Qt::AlignVCenter
                                             : Qt::AlignLeft | Qt::AlignVCenter);
  item->setBackground(QBrush());
  item->setToolTip(words::fieldTip(*of.field, format_));
}

void RowTable::refresh() {
  const QScopedValueRollback filling(filling_, true);
  const int rows = int(list_.size(document_.project()));
  if (rows != table_->rowCount()) {
    wrong_.clear();
    table_->setRowCount(rows);
    showHeaders();
  }
  for (int row = 0; row < rows; ++row) {
    for (int column = 0; column < table_->columnCount(); ++column) {
      if (!wrong_.contains({row, column})) fillCell(row, column);
    }
  }
  say(wrong_.empty() ? core::Problems() : wrong_.begin()->second);
  if (add_ == nullptr) return;
  add_->setEnabled(list_.applies(document_.project()) && std::size_t(rows) < list_.most);
  remove_->setEnabled(std::size_t(rows) > list_.least);
}

core::Problems RowTable::valueTyped(const Column& column, int row, const QString& text,
                                    core::FieldValue& value) const {
  return cellValue(*column.field, std::size_t(row), text, choicesOf(column), format_, value);
}

void RowTable::takeCell(int row, int column) {
  if (filling_) return;
  const Column& of = columns_[std::size_t(column)];
  const QString text = table_->item(row, column)->text();
  wrong_.erase({row, column});
  if (text == textOf(of, of.field->get(document_.project(), std::size_t(row)))) return refresh();
  core::FieldValue value;
  core::Problems problems = valueTyped(of, row, text, value);
  if (problems.empty()) problems = takeValue(*of.field, std::size_t(row), value);
  if (problems.empty()) return refresh();
  const QScopedValueRollback filling(filling_, true);
  table_->item(row, column)->setBackground(wrongColour(palette()));
  wrong_[{row, column}] = problems;
  say(problems);
}

core::Problems RowTable::takeValue(const core::Field& field, std::size_t row, const core::FieldValue& value) {
  if (!following_) return document_.edit(field, row, value);
  return document_.change(words::fieldLabel(field.id), [&](core::Project& project) {
    field.set(project, row, value);
    following_(document_.project(), project);
  });
}

void RowTable::addRow() {
  const core::Problems problems = document_.change(tr("Add a row"), [this](core::Project& project) {
    const std::size_t row = list_.size(project);
    list_.resize(project, row + 1);
    if (new_row_) new_row_(project, row);
  });
  say(problems);
  if (!problems.empty()) return;
  table_->setCurrentCell(table_->rowCount() - 1, 0);
  table_->setFocus();
}

void RowTable::removeRow() {
  const int row = table_->currentRow() >= 0 ? table_->currentRow() : table_->rowCount() - 1;
  if (row < 0) return;
  say(document_.change(tr("Take out a row"), [this, row](core::Project& project) {
    const std::size_t rows = list_.size(project);
    for (std::size_t k = std::size_t(row); k + 1 < rows; ++k) {
      for (const Column& column : columns_) column.field->set(project, k, column.field->get(project, k + 1));
    }
    list_.resize(project, rows - 1);
  }));
}

void RowTable::paste() {
  QList<QStringList> lines;
  for (const QString& line : QApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
    lines << QString(line).remove(QLatin1Char('\r')).split(QLatin1Char('\t'));
  if (lines.isEmpty()) return;
  const core::Problems problems =
      takeBlock(lines, std::max(0, table_->currentRow()), std::max(0, table_->currentColumn()));
  if (problems.empty()) return refresh();
  say(problems);
  problem_->setText(problem_->text() + QLatin1Char(' ') + tr("Nothing was pasted."));
}

core::Problems RowTable::roomFor(const QList<QStringList>& lines, int row, int column) const {
  const qsizetype rows = row + lines.size();
  if (rows > qsizetype(list_.most)) return {tooMany(std::string(list_.id), rows, qsizetype(list_.most))};
  for (qsizetype r = 0; r < lines.size(); ++r) {
    const qsizetype cells = column + lines[r].size();
    const std::string path = std::string(list_.id) + '[' + std::to_string(row + r) + ']';
    if (cells > table_->columnCount()) return {tooMany(path, cells, table_->columnCount())};
  }
  return {};
}

core::Problems RowTable::takeBlock(const QList<QStringList>& lines, int row, int column) {
  struct Cell {
    const core::Field* field;
    std::size_t row;
    core::FieldValue value;
  };
  if (core::Problems problems = roomFor(lines, row, column); !problems.empty()) return problems;
  std::vector<Cell> cells;
  for (qsizetype r = 0; r < lines.size(); ++r) {
    for (qsizetype c = 0; c < lines[r].size(); ++c) {
      const Column& of = columns_[std::size_t(column + c)];
      core::FieldValue value;
      core::Problems problems = valueTyped(of, row + int(r), lines[r][c], value);
      if (!problems.empty()) return problems;
      cells.push_back({of.field, std::size_t(row + r), value});
    }
  }
  return document_.change(tr("Paste cells"), [&](core::Project& project) {
    const std::size_t wanted = std::size_t(row + lines.size());
    if (list_.size(project) < wanted) list_.resize(project, wanted);
    for (const Cell& cell : cells) cell.field->set(project, cell.row, cell.value);
    if (following_) following_(document_.project(), project);
  });
}

void RowTable::say(const core::Problems& problems) {
  problem_->setVisible(!problems.empty());
  problem_->setText(problems.empty() ? QString() : words::problemText(problems.front(), format_));
}

bool RowTable::contains(const QString& path) const {
  return path.startsWith(fromCore(list_.id) + QLatin1Char('['));
}

bool RowTable::goTo(const QString& path) {
  for (int column = 0; column < table_->columnCount(); ++column) {
    for (int row = 0; row < table_->rowCount(); ++row) {
      if (QString::fromStdString(core::pathOf(*columns_[std::size_t(column)].field, std::size_t(row))) !=
          path)
        continue;
      table_->setCurrentCell(row, column);
      table_->setFocus(Qt::OtherFocusReason);
      return true;
    }
  }
  return false;
}

bool RowTable::eventFilter(QObject*, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return false;
  auto* key = static_cast<QKeyEvent*>(event);
  if (key->matches(QKeySequence::Paste)) return paste(), true;
  if (key->key() == Qt::Key_Escape) return wrong_.clear(), refresh(), true;
  if (key->key() != Qt::Key_Delete || table_->currentItem() == nullptr) return false;
  table_->currentItem()->setText(QString());
  return true;
}

}  // namespace ui
