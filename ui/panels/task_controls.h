#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QWidget>
#include <optional>
#include <string>

class QDateEdit;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ui {

class Document;

/// What someone wishes for one task: not before a day, and with how many people. Every change is one step to
/// undo.
class TaskControls : public QWidget {
  Q_OBJECT

public:
  explicit TaskControls(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  /// The task that is shown; stays chosen by its id while the plan changes.
  void choose(const std::string& task);
  const std::string& chosen() const { return task_; }

  /// Moves a task's first day by so many days.
  static void shift(Document& document, const core::works::Task& task, int days);
  /// Takes one more person, or one fewer, on a task.
  static void addPeople(Document& document, const core::works::Task& task, int more);
  static void asUsual(Document& document, const std::string& task);

private:
  Document& document_;
  std::string task_;
  QLabel* name_;
  QWidget* wishes_;  // date, people and the button
  QDateEdit* date_;
  QSpinBox* people_;
  QPushButton* usual_;

  void refresh();
};

}  // namespace ui
