#include "ui/widgets/row_table_delegate.h"

#include <QComboBox>
#include <utility>

namespace ui {

RowTableDelegate::RowTableDelegate(Choices choices, QObject* parent)
    : QStyledItemDelegate(parent), choices_(std::move(choices)) {}

QWidget* RowTableDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const {
  const auto choices = choices_(index.column());
  if (choices.isEmpty()) return QStyledItemDelegate::createEditor(parent, option, index);
  auto* box = new QComboBox(parent);
  for (const auto& [token, name] : choices) box->addItem(name, token);
  // a choice counts at once
  connect(box, &QComboBox::activated, this, [this, box] {
    auto* self = const_cast<RowTableDelegate*>(this);
    emit self->commitData(box);
    emit self->closeEditor(box);
  });
  return box;
}

void RowTableDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* box = qobject_cast<QComboBox*>(editor)) {
    // a text that is no choice chooses none, and stays when nothing is chosen
    box->setCurrentIndex(box->findText(index.data(Qt::DisplayRole).toString()));
  } else {
    QStyledItemDelegate::setEditorData(editor, index);
  }
}

void RowTableDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                    const QModelIndex& index) const {
  if (const auto* box = qobject_cast<QComboBox*>(editor)) {
    if (box->currentIndex() >= 0) model->setData(index, box->currentText());
  } else {
    QStyledItemDelegate::setModelData(editor, model, index);
  }
}

}  // namespace ui
