#pragma once

#include <QFrame>
#include <QTimer>
#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ui {

/// A line across the window that says what happened without stopping the work.
class MessageBar : public QFrame {
  Q_OBJECT

public:
  enum class Kind { done, done_with_notes, problem, question };
  struct Choice {
    QString id;  ///< object name of its button
    QString text;
    std::function<void()> chosen;
  };

  explicit MessageBar(QWidget* parent = nullptr);

  /// A done message goes away by itself; the others stay until they are closed or answered.
  void say(Kind kind, const QString& text, const std::vector<Choice>& choices = {});
  QString text() const;

private:
  QLabel* text_;
  QHBoxLayout* buttons_;
  std::vector<QPushButton*> choices_;
  QTimer hide_;
};

}  // namespace ui
