#include "ui/widgets/wheel_guard.h"

#include <QEvent>
#include <QWidget>

namespace ui {

namespace {

class WheelGuard : public QObject {
public:
  using QObject::QObject;

  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() != QEvent::Wheel) return false;
    event->ignore();
    return true;
  }
};

}  // namespace

void ignoreWheel(QWidget* editor) {
  editor->installEventFilter(new WheelGuard(editor));
}

}  // namespace ui
