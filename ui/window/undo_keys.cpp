#include "ui/window/undo_keys.h"

#include <QKeyEvent>

namespace ui {

bool UndoKeys::eventFilter(QObject*, QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return false;
  const auto* key = static_cast<QKeyEvent*>(event);
  if (!key->matches(QKeySequence::Undo) && !key->matches(QKeySequence::Redo)) return false;
  event->ignore();
  return true;
}

}  // namespace ui
