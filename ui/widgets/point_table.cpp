#include "ui/widgets/point_table.h"

#include "ui/text/words.h"
#include "ui/widgets/theme.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QRegularExpression>
#include <QScopedValueRollback>
#include <QTableWidget>
#include <QToolButton>

namespace ui {

namespace {

constexpr int kDecimals = 3;
constexpr int kNumber = Qt::UserRole;         // the exact number behind a cell
constexpr int kTextShown = Qt::UserRole + 1;  // the text it was shown as
constexpr double kBulge = 0.05;               // of the edge, so that a new corner stands out a little
constexpr int kRowsShown = 5;

core::Problem notANumber(const QString& path, int row, const QString& text) {
  return {.code = "wrong_type",
          .path = QStringLiteral("%1[%2]").arg(path).arg(row).toStdString(),
          .value = text.toStdString(),
          .least = {},
          .most = {},
          .unit = core::Unit::metre,
          .allowed = "number"};
}

/// A point to begin with: between the last and the first, a little to the right of the way from one to the
/// other.
PointTable::Point between(const std::vector<PointTable::Point>& points, int columns) {
  PointTable::Point point(std::size_t(columns), 0.0);
  if (points.empty()) return point;
  for (std::size_t k = 0; k < point.size(); ++k) point[k] = (points.back()[k] + points.front()[k]) / 2;
  point[0] += kBulge * (points.front()[1] - points.back()[1]);
  point[1] -= kBulge * (points.front()[0] - points.back()[0]);
  return point;
}

}  // namespace

PointTable::PointTable(const QString& path, const QStringList& columns, QWidget* parent)
    : QWidget(parent),
      path_(path),
      table_(new QTableWidget(0, int(columns.size()), this)),
      problem_(new QLabel(this)) {
  table_->setObjectName(path);
  table_->setHorizontalHeaderLabels(columns);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                         kRowsShown * table_->verticalHeader()->defaultSectionSize());
  table_->setTabKeyNavigation(false);
  table_->installEventFilter(this);
  problem_->setObjectName(path + QStringLiteral(".problem"));
  problem_->setWordWrap(true);
  setTone(problem_, Tone::problem);
  problem_->hide();
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(addButton(QStringLiteral("add"), tr("Add a point"), &PointTable::addPoint));
  buttons->addWidget(addButton(QStringLiteral("remove"), tr("Remove the point"), &PointTable::removePoint));
  buttons->addWidget(addButton(QStringLiteral("paste"), tr("Paste"), &PointTable::paste));
  buttons->addStretch();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(table_);
  layout->addWidget(problem_);
  layout->addLayout(buttons);
  connect(table_, &QTableWidget::cellChanged, this, &PointTable::tryTable);
}

QToolButton* PointTable::addButton(const QString& id, const QString& text, void (PointTable::*pressed)()) {
  auto* button = new QToolButton(this);
  button->setObjectName(path_ + QLatin1Char('.') + id);
  button->setText(text);
  connect(button, &QToolButton::clicked, this, pressed);
  return button;
}

void PointTable::setFormatter(const Formatter& format) {
  format_ = format;
  if (!wrong_) fill(good_);
}

void PointTable::showPoints(const std::vector<Point>& points) {
  const bool same = points == good_;
  good_ = points;
  if (taking_ || (wrong_ && same)) return;
  giveUp();
}

void PointTable::fill(const std::vector<Point>& points) {
  const QScopedValueRollback filling(filling_, true);
  table_->setRowCount(int(points.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    for (int column = 0; column < table_->columnCount(); ++column) {
      const double number = points[std::size_t(row)][std::size_t(column)];
      auto* item = new QTableWidgetItem(format_.number(number, core::Unit::metre, kDecimals));
      item->setData(kNumber, number);
      item->setData(kTextShown, item->text());
      table_->setItem(row, column, item);
    }
  }
}

std::optional<std::vector<PointTable::Point>> PointTable::pointsTyped() {
  std::vector<Point> points;
  for (int row = 0; row < table_->rowCount(); ++row) {
    Point point;
    for (int column = 0; column < table_->columnCount(); ++column) {
      const QTableWidgetItem* item = table_->item(row, column);
      const QString text = item != nullptr ? item->text() : QString();
      const bool untouched = item != nullptr && item->data(kTextShown).toString() == text;
      const auto number =
          untouched ? std::optional(item->data(kNumber).toDouble()) : format_.parse(text, core::Unit::metre);
      if (!number) {
        say({notANumber(path_, row, text)});
        return std::nullopt;
      }
      point.push_back(*number);
    }
    points.push_back(std::move(point));
  }
  return points;
}

void PointTable::tryTable() {
  if (filling_) return;
  if (const auto points = pointsTyped()) tryPoints(*points);
}

void PointTable::tryPoints(const std::vector<Point>& points) {
  if (!take_) return;
  const QScopedValueRollback taking(taking_, true);
  say(take_(points));
  if (!wrong_) good_ = points;
}

void PointTable::say(const core::Problems& problems) {
  wrong_ = !problems.empty();
  problem_->setVisible(wrong_);
  problem_->setText(wrong_ ? words::problemText(problems.front(), format_) : QString());
}

void PointTable::addPoint() {
  auto points = pointsTyped();
  if (!points) return;
  points->push_back(between(*points, table_->columnCount()));
  fill(*points);
  tryPoints(*points);
  table_->setCurrentCell(table_->rowCount() - 1, 0);
}

void PointTable::removePoint() {
  const int row = table_->currentRow();
  if (row < 0) return;
  table_->removeRow(row);
  tryTable();
}

void PointTable::paste() {
  static const QRegularExpression kGap(QStringLiteral("[\\t;]|\\s{2,}|,\\s+|\\s"));
  std::vector<Point> points;
  const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  for (const QString& line : lines) {
    Point point;
    for (const QString& cell : line.trimmed().split(kGap, Qt::SkipEmptyParts)) {
      const auto number = format_.parse(cell, core::Unit::metre);
      if (!number) return say({notANumber(path_, int(points.size()), cell)});
      point.push_back(*number);
    }
    if (int(point.size()) != table_->columnCount()) return say({notANumber(path_, int(points.size()), line)});
    points.push_back(std::move(point));
  }
  if (points.empty()) return;
  fill(points);
  tryPoints(points);
}

void PointTable::giveUp() {
  say({});
  fill(good_);
}

bool PointTable::eventFilter(QObject*, QEvent* event) {
  if (event->type() != QEvent::KeyPress || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
    return false;
  giveUp();
  return true;
}

}  // namespace ui
