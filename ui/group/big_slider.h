#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QWidget>
#include <functional>

class QLabel;
class QSlider;

namespace ui {
class Document;
}

namespace ui::group {

/// One number of the tank with a slider that a hand can catch from a step away.
class BigSlider : public QWidget {
  Q_OBJECT

public:
  /// @param least, most a comfortable range in the field's unit; the value may lie outside
  BigSlider(Document& document, const core::Field& field, double least, double most, QWidget* parent);

  void refresh(const Formatter& format);
  /// Moves by steps of the field.
  void step(int steps);
  /// Shows that the arrow keys move this one.
  void setMarked(bool marked);

signals:
  /// What was asked for could not be taken, and why; empty when it was taken.
  void refused(const QString& sentence);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  Document& document_;
  const core::Field& field_;
  double least_, most_;
  Formatter format_;
  QLabel *name_, *value_;
  QSlider* slider_;
  bool marked_ = false;
  int drag_ = 0;

  double value() const;
  void take(double value);
};

}  // namespace ui::group
