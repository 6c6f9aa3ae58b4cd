#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QWidget>
#include <vector>

class QComboBox;
class QLabel;
class QTableWidget;
class QToolButton;

namespace ui {

class Document;

/// The options side by side: the fields that any of them changes, to be typed, and what comes of each. Option
/// A is the project as it stands and is edited at the left of the window.
class OptionsTable : public QWidget {
  Q_OBJECT

public:
  explicit OptionsTable(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  /// Shows the options as they are now; who holds the table calls it when the plan has changed.
  void refresh();

  /// Puts an option in the place of A; A as it was takes the option's place.
  void adopt(std::size_t option);
  void addOption();
  void removeOption(std::size_t option);
  /// Lets all options have a value of their own for a field; the chosen one gets A's to begin with.
  void addField(const QString& path);

private:
  Document& document_;
  Formatter format_;
  QTableWidget* table_;
  QLabel* problem_;
  QComboBox* fields_;
  QToolButton *add_, *remove_, *adopt_;
  std::vector<std::string> paths_;  // of the rows that hold fields
  bool filling_ = false;

  void makeButtons();
  void showFieldRows();
  void showResults();
  void showButtons();
  void fillFields();
  void take(int row, int column);
  std::size_t chosenOption() const;
  void say(const core::Problems& problems);
};

}  // namespace ui
