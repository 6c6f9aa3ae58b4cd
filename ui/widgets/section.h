#pragma once

#include <QWidget>

class QToolButton;
class QVBoxLayout;

namespace ui {

/// A heading that folds and unfolds what stands below it.
class Section : public QWidget {
  Q_OBJECT

public:
  Section(const QString& id, const QString& title, QWidget* parent = nullptr);

  /// Rows go in here.
  QVBoxLayout* rows() const { return rows_; }
  void setOpen(bool open);
  bool isOpen() const;

private:
  QToolButton* heading_;
  QWidget* body_;
  QVBoxLayout* rows_;
};

}  // namespace ui
