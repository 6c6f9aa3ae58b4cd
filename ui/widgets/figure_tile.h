#pragma once

#include <QFrame>

class QLabel;

namespace ui {

/// One answer: a name, a big value, and on a click how it was reckoned.
class FigureTile : public QFrame {
  Q_OBJECT

public:
  FigureTile(const QString& id, const QString& name, QWidget* parent = nullptr);

  /// @param rest smaller line under the value, may be empty
  void setValue(const QString& value, const QString& rest);
  /// Formula, inputs and source of the value.
  void setReckoning(const QString& text);

protected:
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  QLabel *name_, *value_, *rest_, *reckoning_;

  void toggle();
};

}  // namespace ui
