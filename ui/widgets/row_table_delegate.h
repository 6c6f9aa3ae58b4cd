#pragma once

#include <QList>
#include <QPair>
#include <QString>
#include <QStyledItemDelegate>
#include <functional>

namespace ui {

/// Edits a cell as text, or with a box to choose from where its column has choices.
class RowTableDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using Choices = std::function<QList<QPair<QString, QString>>(int column)>;  ///< token and name

  RowTableDelegate(Choices choices, QObject* parent);

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

private:
  Choices choices_;
};

}  // namespace ui
