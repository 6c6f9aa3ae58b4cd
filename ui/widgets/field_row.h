#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QLabel>
#include <QWidget>
#include <optional>

class QGridLayout;

namespace ui {

class Document;

/// Name, editor and message of one field. What is typed counts at once when it is good; when it is wrong it
/// stays to be seen with a message below it, and the project keeps its last good value until the text is
/// mended or Escape is pressed. The editor's object name is the field's path with its row,
/// "lining.coats[1].soil".
class FieldRow : public QWidget {
  Q_OBJECT

public:
  FieldRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);

  const core::Field& field() const { return field_; }
  QString path() const { return path_; }
  bool isWrong() const { return wrong_; }

  virtual QWidget* editor() const = 0;
  void setFormatter(const Formatter& format);
  /// Shows the project's value, unless wrong text stands.
  void refresh();

protected:
  /// How a value came about. A typed text that turns out wrong leaves nothing of its beginning behind; a drag
  /// stops at the last good value.
  enum class Way { typed, dragged };
  /// Tries a value; says what is wrong with it.
  void take(const core::FieldValue& value, Way way = Way::typed);
  /// Refuses a typed text that cannot even be read as a value.
  void refuse(const core::Problem& problem);
  /// Gives up what stands and shows the project's value again.
  void giveUp();
  /// Tries again what was refused; the rest of the project may have changed since.
  void tryAgain();
  /// What follows is a new undo step.
  void endBurst() { burst_ = 0; }

  virtual void showValue(const core::FieldValue& value) = 0;
  /// Takes up the reader's units and digits before the value is shown again.
  virtual void showUnits() {}

  core::FieldValue value() const;
  const Formatter& format() const { return format_; }
  Document& document() const { return document_; }
  QGridLayout* grid() const { return grid_; }
  /// Puts name and editor in place and names them for tests and screen readers.
  void arrange(QLabel* label, QWidget* editor, QWidget* unit);

  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  Document& document_;
  const core::Field& field_;
  std::size_t row_;
  QString path_;
  Formatter format_;
  QGridLayout* grid_;
  QLabel* label_ = nullptr;
  QLabel* problem_;
  core::FieldValue shown_;
  std::optional<core::FieldValue> refused_;
  bool wrong_ = false;
  bool taking_ = false;
  int burst_ = 0;
  core::FieldValue before_burst_;

  void say(const core::Problems& problems);
  void standWrong();
  void beginBurst();
  void takeBack();
};

/// The row that suits the kind of field.
FieldRow* makeFieldRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent);

}  // namespace ui
