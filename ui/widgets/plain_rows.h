#pragma once

#include "ui/widgets/field_row.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QLineEdit;

namespace ui {

/// A line of text.
class TextRow : public FieldRow {
  Q_OBJECT

public:
  TextRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);
  QWidget* editor() const override;

protected:
  void showValue(const core::FieldValue& value) override;

private:
  QLineEdit* edit_;
};

/// One of several tokens; "not known" comes first where the field may be absent.
class ChoiceRow : public FieldRow {
  Q_OBJECT

public:
  ChoiceRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);
  QWidget* editor() const override;

protected:
  void showValue(const core::FieldValue& value) override;

private:
  QComboBox* box_;
};

/// Yes, no and, where the field may be absent, not known.
class FlagRow : public FieldRow {
  Q_OBJECT

public:
  FlagRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);
  QWidget* editor() const override;

protected:
  void showValue(const core::FieldValue& value) override;

private:
  QCheckBox* box_;
};

/// A calendar date.
class DateRow : public FieldRow {
  Q_OBJECT

public:
  DateRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);
  QWidget* editor() const override;

protected:
  void showValue(const core::FieldValue& value) override;
  void showUnits() override;

private:
  QDateEdit* edit_;
};

}  // namespace ui
