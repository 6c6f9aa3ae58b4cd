#pragma once

#include "core/plan.h"

#include <QColor>
#include <QPalette>

class QWidget;

namespace ui {

enum class Theme { system, light, dark };

/// Whether the theme comes out dark here; `system` follows the desktop's own colours.
bool isDark(Theme theme);
/// Colours of the whole program, every text at least 4.5:1 against its ground.
QPalette palette(bool dark);
/// Puts style, palette and the tones of labels in place. A label's tone is its property "tone": quiet,
/// problem.
void applyTheme(bool dark);

/// Colour that marks a severity on the ground of the present palette; always beside a word.
QColor severityColour(core::Severity severity, const QPalette& palette);
QColor quietColour(const QPalette& palette);
QColor problemColour(const QPalette& palette);

/// Marks an editor whose text is not taken.
void markWrong(QWidget* editor, bool wrong);

}  // namespace ui
