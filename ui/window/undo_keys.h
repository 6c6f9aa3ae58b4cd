#pragma once

#include <QObject>

namespace ui {

/// Leaves the keys for undo and redo to the document, also while a text is being edited.
class UndoKeys : public QObject {
  Q_OBJECT

public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ui
