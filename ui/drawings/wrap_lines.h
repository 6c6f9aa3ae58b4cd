#pragma once

#include "ui/drawings/lettering.h"

#include <QString>
#include <QStringList>

namespace ui::drawings {

/// Lines of a text that are at most `width_mm` wide, unless a single word is wider. A number keeps its
/// unit.
QStringList wrapLines(const QString& text, const Lettering& lettering, double width_mm);
/// Width of the widest line [mm].
double widest(const QStringList& lines, const Lettering& lettering);

}  // namespace ui::drawings
