#pragma once

#include "ui/widgets/field_row.h"

class QLineEdit;
class QSlider;

namespace ui {

class ScrubLabel;

/// A number with its unit in the reader's units. Typing, arrow keys, dragging the name and an optional slider
/// change it. An empty text means "not known" where the field may be absent.
class NumberRow : public FieldRow {
  Q_OBJECT

public:
  NumberRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);

  QWidget* editor() const override;
  /// Adds a slider over a comfortable range [the field's unit]; numbers beyond it can still be typed.
  void addSlider(double least, double most);

protected:
  void showValue(const core::FieldValue& value) override;
  void showUnits() override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  ScrubLabel* label_;
  QLineEdit* edit_;
  QLabel* unit_;
  QSlider* slider_ = nullptr;
  double slider_least_ = 0, slider_most_ = 0;
  double scrub_start_ = 0;

  double step() const;
  double number() const;
  void takeText(const QString& text);
  void takeNumber(double number);
  void stepFrom(double number, int steps);
  void showText(const core::FieldValue& value);
  void showSlider(const core::FieldValue& value);
  void connectSlider();
};

}  // namespace ui
