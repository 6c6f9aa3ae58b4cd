#pragma once

#include <QLabel>

namespace ui {

/// The name of a number; dragging it sideways steps the number.
class ScrubLabel : public QLabel {
  Q_OBJECT

public:
  explicit ScrubLabel(const QString& text, QWidget* parent = nullptr);

signals:
  void scrubStarted();
  void scrubbed(int steps);  ///< from where the drag started, right is more
  void scrubFinished();

protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

private:
  int pressed_x_ = 0;
  int steps_ = 0;
  bool down_ = false;
};

}  // namespace ui
