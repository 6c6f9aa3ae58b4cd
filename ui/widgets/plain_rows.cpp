#include "ui/widgets/plain_rows.h"

#include "ui/text/words.h"
#include "ui/widgets/wheel_guard.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QSignalBlocker>

namespace ui {

namespace {

QString textOf(const core::FieldValue& value) {
  const std::string* text = std::get_if<std::string>(&value);
  return text != nullptr ? QString::fromStdString(*text) : QString();
}

/// The locale's own order of day, month and year, the year with all its digits.
QString dateFormat(const QLocale& locale) {
  QString format = locale.dateFormat(QLocale::ShortFormat);
  if (!format.contains(QStringLiteral("yyyy"))) format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
  return format;
}

}  // namespace

TextRow::TextRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : FieldRow(document, field, row, parent), edit_(new QLineEdit(this)) {
  arrange(new QLabel(this), edit_, nullptr);
  connect(edit_, &QLineEdit::textEdited, this, [this](const QString& text) {
    const bool is_absent = text.trimmed().isEmpty() && this->field().nullable;
    take(is_absent ? core::FieldValue() : core::FieldValue(text.toStdString()));
  });
  if (field.kind == core::FieldKind::date) edit_->setPlaceholderText(tr("year-month-day"));
  connect(edit_, &QLineEdit::editingFinished, this, &TextRow::tryAgain);
}

QWidget* TextRow::editor() const {
  return edit_;
}

void TextRow::showValue(const core::FieldValue& value) {
  const QString text = textOf(value);
  if (edit_->text() == text) return;
  edit_->setText(text);
  edit_->setCursorPosition(0);
}

ChoiceRow::ChoiceRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : FieldRow(document, field, row, parent), box_(new QComboBox(this)) {
  if (field.nullable) box_->addItem(tr("not known"));
  for (const std::string_view token : field.choices)
    box_->addItem(words::choiceLabel(field.id, token),
                  QString::fromUtf8(token.data(), qsizetype(token.size())));
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  ignoreWheel(box_);
  arrange(new QLabel(this), box_, nullptr);
  connect(box_, &QComboBox::currentIndexChanged, this, [this](int index) {
    const QVariant token = box_->itemData(index);
    take(token.isNull() ? core::FieldValue() : core::FieldValue(token.toString().toStdString()));
    endBurst();
  });
}

QWidget* ChoiceRow::editor() const {
  return box_;
}

void ChoiceRow::showValue(const core::FieldValue& value) {
  const QSignalBlocker quiet(box_);
  const bool known = std::holds_alternative<std::string>(value);
  box_->setCurrentIndex(known ? box_->findData(textOf(value)) : 0);
}

FlagRow::FlagRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : FieldRow(document, field, row, parent), box_(new QCheckBox(this)) {
  box_->setTristate(field.nullable);
  arrange(new QLabel(this), box_, nullptr);
  connect(box_, &QCheckBox::stateChanged, this, [this](int state) {
    take(state == Qt::PartiallyChecked ? core::FieldValue() : core::FieldValue(state == Qt::Checked));
    showValue(this->value());
    endBurst();
  });
}

QWidget* FlagRow::editor() const {
  return box_;
}

void FlagRow::showValue(const core::FieldValue& value) {
  const QSignalBlocker quiet(box_);
  const bool* flag = std::get_if<bool>(&value);
  box_->setCheckState(flag == nullptr ? Qt::PartiallyChecked : *flag ? Qt::Checked : Qt::Unchecked);
  box_->setText(flag == nullptr ? tr("not known") : *flag ? tr("yes") : tr("no"));
}

DateRow::DateRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : FieldRow(document, field, row, parent), edit_(new QDateEdit(this)) {
  edit_->setCalendarPopup(true);
  ignoreWheel(edit_);
  arrange(new QLabel(this), edit_, nullptr);
  connect(edit_, &QDateEdit::dateChanged, this,
          [this](const QDate& date) { take(date.toString(Qt::ISODate).toStdString()); });
  connect(edit_, &QDateEdit::editingFinished, this, &DateRow::tryAgain);
}

QWidget* DateRow::editor() const {
  return edit_;
}

void DateRow::showValue(const core::FieldValue& value) {
  const QSignalBlocker quiet(edit_);
  edit_->setDate(QDate::fromString(textOf(value), Qt::ISODate));
}

void DateRow::showUnits() {
  const QSignalBlocker quiet(edit_);
  edit_->setLocale(format().locale());
  edit_->setDisplayFormat(dateFormat(format().locale()));
}

}  // namespace ui
