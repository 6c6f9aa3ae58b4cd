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
/// Puts style and palette in place.
void applyTheme(bool dark);

/// How loud a text is.
enum class Tone { plain, quiet, problem };
/// Gives a widget's text its tone; it follows the palette from then on.
void setTone(QWidget* text, Tone tone);

/// Colour that marks a severity on the ground of the present palette; always beside a word.
QColor severityColour(core::Severity severity, const QPalette& palette);
QColor quietColour(const QPalette& palette);
QColor problemColour(const QPalette& palette);

/// Ground of a text that is not taken.
QColor wrongColour(const QPalette& palette);
/// Marks an editor whose text is not taken.
void markWrong(QWidget* editor, bool wrong);

}  // namespace ui
