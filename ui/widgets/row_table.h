#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"
#include "ui/widgets/cell_text.h"

#include <QWidget>
#include <functional>
#include <map>
#include <utility>
#include <vector>

class QHBoxLayout;
class QLabel;
class QTableWidget;
class QToolButton;

namespace ui {

class Document;

/// The rows of one list of the project, a field a column. What is typed counts at once when it is good; a
/// wrong text stays to be seen with a message below the table until it is mended or Escape is pressed. Rows
/// are added, taken out, and filled from a copied block of cells.
class RowTable : public QWidget {
  Q_OBJECT

public:
  /// Choices of a text field, looked up when its editor opens: token and name.
  using Choices = std::function<CellChoices()>;

  RowTable(Document& document, std::string_view list, QWidget* parent = nullptr);

  /// Lets a text column choose from a list that may change.
  void setChoices(std::string_view field, Choices choices);
  /// Names the rows, as by month; without names they are numbered.
  void setRowNames(std::function<QString(int row, const Formatter&)> name);
  /// What a new row begins with, beside the blank values.
  void setNewRow(std::function<void(core::Project&, std::size_t row)> fill);
  /// What else of the project changes, in the same step, when cells have been typed or pasted.
  using Following = std::function<void(const core::Project& before, core::Project& after)>;
  void setFollowing(Following following);
  void setFormatter(const Formatter& format);
  void setRowsShown(int rows);
  /// Name for screen readers.
  void setName(const QString& name);
  /// Place beside the buttons for more of them.
  QHBoxLayout* buttons() const { return buttons_; }

  const core::List& list() const { return list_; }
  /// Whether a field with its row, "water.beds[1].crop", stands in the table.
  bool contains(const QString& path) const;
  /// Puts the cell of a field in view and gives it the focus. @return false when it is not of this list
  bool goTo(const QString& path);

public slots:
  void addRow();
  void removeRow();
  void paste();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  struct Column {
    const core::Field* field;
    Choices choices;
  };

  Document& document_;
  const core::List& list_;
  std::vector<Column> columns_;
  Formatter format_;
  std::function<QString(int, const Formatter&)> row_name_;
  std::function<void(core::Project&, std::size_t)> new_row_;
  Following following_;
  QTableWidget* table_;
  QLabel* problem_;
  QHBoxLayout* buttons_;
  QToolButton *add_ = nullptr, *remove_ = nullptr;
  std::map<std::pair<int, int>, core::Problems> wrong_;  // cells whose text is not taken, by row and column
  bool filling_ = false;
  int rows_shown_ = 4;

  void addButtons();
  void refresh();
  void showHeaders();
  void fillCell(int row, int column);
  QString textOf(const Column& column, const core::FieldValue& value) const;
  CellChoices choicesOf(const Column& column) const;
  core::Problems valueTyped(const Column& column, int row, const QString& text,
                            core::FieldValue& value) const;
  void takeCell(int row, int column);
  core::Problems takeValue(const core::Field& field, std::size_t row, const core::FieldValue& value);
  core::Problems roomFor(const QList<QStringList>& lines, int row, int column) const;
  core::Problems takeBlock(const QList<QStringList>& lines, int row, int column);
  void say(const core::Problems& problems);
};

/// The list with an id. @throws std::logic_error when there is none
const core::List& listWithId(std::string_view id);

}  // namespace ui
