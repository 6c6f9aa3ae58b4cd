#include "ui/widgets/field_row.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/number_row.h"
#include "ui/widgets/plain_rows.h"
#include "ui/widgets/theme.h"

#include <QGridLayout>
#include <QKeyEvent>

namespace ui {

namespace {

constexpr int kEditorWidth = 96;
constexpr int kUnitWidth = 44;

}  // namespace

FieldRow::FieldRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : QWidget(parent),
      document_(document),
      field_(field),
      row_(row),
      path_(QString::fromStdString(core::pathOf(field, row))),
      grid_(new QGridLayout(this)),
      problem_(new QLabel(this)),
      shown_(field.get(document.project(), row)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(6);
  grid_->setVerticalSpacing(1);
  grid_->setColumnStretch(0, 1);
  problem_->setObjectName(path_ + QStringLiteral(".problem"));
  problem_->setWordWrap(true);
  setTone(problem_, Tone::problem);
  problem_->hide();
  connect(&document_, &Document::projectChanged, this, &FieldRow::refresh);
  connect(&document_, &Document::loaded, this, [this] { giveUp(); });
}

void FieldRow::arrange(QLabel* label, QWidget* editor, QWidget* unit) {
  const QString name = words::fieldLabel(field_.id);
  label_ = label;
  label->setText(name);
  label->setWordWrap(true);
  label->setBuddy(editor);
  label->setObjectName(path_ + QStringLiteral(".label"));
  editor->setObjectName(path_);
  editor->setAccessibleName(name);
  editor->setAccessibleDescription(words::fieldHelp(field_.id));
  editor->setAcceptDrops(false);
  editor->installEventFilter(this);
  grid_->addWidget(label, 0, 0);
  if (unit != nullptr) {
    editor->setFixedWidth(kEditorWidth);
    unit->setMinimumWidth(kUnitWidth);
    grid_->addWidget(editor, 0, 1);
    grid_->addWidget(unit, 0, 2);
  } else {
    editor->setFixedWidth(kEditorWidth + kUnitWidth + grid_->horizontalSpacing());
    grid_->addWidget(editor, 0, 1, 1, 2);
  }
  grid_->addWidget(problem_, 2, 0, 1, 3);
}

core::FieldValue FieldRow::value() const {
  return field_.get(document_.project(), row_);
}

void FieldRow::setFormatter(const Formatter& format) {
  format_ = format;
  setLocale(format.locale());
  showUnits();
  const QString tip = words::fieldTip(field_, format_);
  editor()->setToolTip(tip);
  if (label_ != nullptr) label_->setToolTip(tip);
  if (!wrong_) showValue(value());
}

void FieldRow::refresh() {
  if (row_ >= core::rowCount(field_, document_.project())) return;
  setVisible(field_.applies(document_.project()));
  if (taking_) return;
  endBurst();
  if (wrong_ && value() == shown_ && !editor()->hasFocus()) {
    standWrong();
  } else {
    giveUp();
  }
}

void FieldRow::standWrong() {
  if (!refused_) return;
  const core::Problems problems = document_.problemsOf(field_, row_, *refused_);
  if (!problems.empty()) return say(problems);
  problem_->setText(tr("This would do now: press Enter to use it, Escape to leave it."));
}

void FieldRow::beginBurst() {
  if (burst_ != 0) return;
  burst_ = document_.newDrag();
  before_burst_ = value();
}

void FieldRow::take(const core::FieldValue& value, Way way) {
  beginBurst();
  taking_ = true;
  const core::Problems problems = document_.edit(field_, row_, value, burst_);
  taking_ = false;
  wrong_ = !problems.empty();
  refused_ = wrong_ ? std::optional(value) : std::nullopt;
  if (wrong_ && way == Way::typed) takeBack();
  shown_ = this->value();
  say(problems);
}

void FieldRow::takeBack() {
  taking_ = true;
  document_.edit(field_, row_, before_burst_, burst_);
  taking_ = false;
}

void FieldRow::refuse(const core::Problem& problem) {
  beginBurst();
  takeBack();
  wrong_ = true;
  refused_.reset();
  shown_ = value();
  say({problem});
}

void FieldRow::giveUp() {
  if (row_ >= core::rowCount(field_, document_.project())) return;
  wrong_ = false;
  refused_.reset();
  shown_ = value();
  say({});
  showValue(shown_);
}

void FieldRow::tryAgain() {
  if (wrong_ && refused_) take(*refused_);
  endBurst();
  if (!wrong_) showValue(value());
}

void FieldRow::say(const core::Problems& problems) {
  problem_->setVisible(!problems.empty());
  problem_->setText(problems.empty() ? QString() : words::problemText(problems.front(), format_));
  markWrong(editor(), !problems.empty());
}

bool FieldRow::eventFilter(QObject*, QEvent* event) {
  if (!wrong_ || event->type() != QEvent::KeyPress) return false;
  if (static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape) return false;
  giveUp();
  return true;
}

FieldRow* makeFieldRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent) {
  switch (field.kind) {
    case core::FieldKind::number:
    case core::FieldKind::whole:
      return new NumberRow(document, field, row, parent);
    case core::FieldKind::flag:
      return new FlagRow(document, field, row, parent);
    case core::FieldKind::choice:
      return new ChoiceRow(document, field, row, parent);
    case core::FieldKind::date:
      if (field.nullable) return new TextRow(document, field, row, parent);  // a date edit is never empty
      return new DateRow(document, field, row, parent);
    case core::FieldKind::text:
      break;
  }
  return new TextRow(document, field, row, parent);
}

}  // namespace ui
