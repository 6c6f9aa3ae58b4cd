#pragma once

class QWidget;

namespace ui {

/// Lets the wheel scroll the panel instead of changing the value under the pointer.
void ignoreWheel(QWidget* editor);

}  // namespace ui
